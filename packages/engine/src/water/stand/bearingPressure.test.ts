import { expect, it } from 'vitest';
import { bearingPressure_kPa, weight_kN } from './bearingPressure.ts';
import { waterMass_kg } from './waterMass.ts';

// Reference case worked by hand: 5,000 L at 20 °C, a tank of 150 kg on a stand of 400 kg, four pads of 0.6 m.
it('presses as worked by hand', () => {
  const mass_kg = waterMass_kg(5000) + 150 + 400;
  expect(Math.abs(weight_kN(mass_kg) / 54.34 - 1)).toBeLessThan(0.001);
  expect(Math.abs(bearingPressure_kPa(mass_kg, 4 * 0.6 * 0.6)! / 37.74 - 1)).toBeLessThan(0.001);
});

it('has no pressure on no area', () => {
  expect(bearingPressure_kPa(500, 0)).toBeNull();
  expect(bearingPressure_kPa(500, Number.NaN)).toBeNull();
});
