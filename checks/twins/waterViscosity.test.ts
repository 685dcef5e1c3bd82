import { waterDensity_kg_per_m3, waterViscosity_Pas } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';

// The four terms for water at 0.1 MPa against the whole formulation of IAPWS R12-08 (without critical enhancement), written out plainly.

const hundredths = [1.67752, 2.20462, 0.6366564, -0.241605];
/** Table 2 of the release: power of (1/T − 1), power of (ρ − 1), factor. */
const table2 = [
  [0, 0, 0.520094],
  [1, 0, 0.0850895],
  [2, 0, -1.08374],
  [3, 0, -0.289555],
  [0, 1, 0.222531],
  [1, 1, 0.999115],
  [2, 1, 1.88797],
  [3, 1, 1.26613],
  [5, 1, 0.120573],
  [0, 2, -0.281378],
  [1, 2, -0.906851],
  [2, 2, -0.772479],
  [3, 2, -0.489837],
  [4, 2, -0.25704],
  [0, 3, 0.161913],
  [1, 3, 0.257399],
  [0, 4, -0.0325372],
  [3, 4, 0.0698452],
  [4, 5, 0.00872102],
  [3, 6, -0.00435673],
  [5, 6, -0.000593264],
] as const;

function wholeViscosity_uPas(temperature_K: number, density_kg_per_m3: number): number {
  const t = temperature_K / 647.096;
  const d = density_kg_per_m3 / 322;
  const dilute = (100 * Math.sqrt(t)) / hundredths.reduce((sum, factor, power) => sum + factor / t ** power, 0);
  const dense = table2.reduce((sum, [i, j, factor]) => sum + factor * (1 / t - 1) ** i * (d - 1) ** j, 0);
  return dilute * Math.exp(d * dense);
}

describe('the whole formulation', () => {
  it.each([
    [298.15, 998, 889.7351],
    [298.15, 1200, 1437.649467],
    [373.15, 1000, 307.883622],
  ])('meets table 4 of the release at %d K and %d kg/m³', (temperature_K, density, printed) => {
    expect(wholeViscosity_uPas(temperature_K, density)).toBeCloseTo(printed, 6);
  });
});

describe('the four terms', () => {
  it('are within 0.01 % of it from 0 to 40 °C, at the density of the water', () => {
    for (let t = 0; t <= 40; t++) {
      const whole = wholeViscosity_uPas(t + 273.15, waterDensity_kg_per_m3(t));
      expect(Math.abs((waterViscosity_Pas(t) * 1e6) / whole - 1)).toBeLessThan(1e-4);
    }
  });
});
