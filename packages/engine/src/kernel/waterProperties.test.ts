import { describe, expect, it } from 'vitest';
import {
  isWaterTemperature,
  kinematicViscosity_m2_per_s,
  waterDensity_kg_per_m3,
  waterViscosity_Pas,
} from './waterProperties.ts';

// Density of IAPWS-95 and viscosity of R12-08 at 101.325 kPa, worked out elsewhere with a library for the properties of water.
const table = [
  [0, 999.8431, 1791.756],
  [5, 999.9666, 1518.173],
  [10, 999.7025, 1305.9],
  [15, 999.1026, 1137.568],
  [20, 998.2072, 1001.596],
  [25, 997.0476, 890.0225],
  [30, 995.6495, 797.2218],
  [35, 994.0333, 719.1256],
  [40, 992.2164, 652.7287],
] as const;

describe('the properties of water', () => {
  it.each(table)(
    'at %s °C are those of the full formulations: density to 0.01 kg/m³, viscosity to 0.01 %%',
    (t, density, viscosity) => {
      expect(Math.abs(waterDensity_kg_per_m3(t) - density)).toBeLessThan(0.01);
      expect(Math.abs((waterViscosity_Pas(t) * 1e6) / viscosity - 1)).toBeLessThan(1e-4);
      const kinematic_mm2_per_s = viscosity / density;
      expect(kinematicViscosity_m2_per_s(t) * 1e6).toBeCloseTo(kinematic_mm2_per_s, 3);
    },
  );

  it('give viscosity within 0.1 % of the equation of Kestin, Sokolov and Wakeham (1978)', () => {
    for (let t = 0; t <= 40; t += 2.5) {
      const below = 20 - t;
      const power = (below / (t + 96)) * (1.2364 - 1.37e-3 * below + 5.7e-6 * below * below);
      expect(Math.abs((waterViscosity_Pas(t) * 1e6) / (1002 * 10 ** power) - 1)).toBeLessThan(1e-3);
    }
  });

  it('are heaviest near 4 °C', () => {
    const densities = [2, 3, 4, 5, 6].map(waterDensity_kg_per_m3);
    expect(Math.max(...densities)).toBe(densities[2]);
  });

  it('are not worked out for ice, steam or what is no temperature', () => {
    for (const wrong of [-0.1, 40.1, Number.NaN, Infinity]) {
      expect(isWaterTemperature(wrong)).toBe(false);
      expect(() => waterViscosity_Pas(wrong)).toThrow(RangeError);
      expect(() => waterDensity_kg_per_m3(wrong)).toThrow(RangeError);
    }
  });
});
