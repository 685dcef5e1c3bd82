import { describe, expect, it } from 'vitest';
import { airDensity_kg_per_m3, airViscosity_Pas } from './air.ts';
import { type AirTest, airToWaterSmooth_ratio, airToWaterStirred_ratio } from './airThroughDefects.ts';

const kPa_per_psi = 6.894757;
const test: AirTest = {
  test_kPa: 15 * kPa_per_psi,
  back_kPa: 0,
  across_kPa: 10 * kPa_per_psi,
  temperature_C: 20,
  atmosphere_kPa: 14.7 * kPa_per_psi,
};

describe('air through defects', () => {
  it('is 125.1 times the water through long narrow ones, worked out elsewhere from the same physics', () => {
    expect(airToWaterSmooth_ratio(test)).toBeCloseTo(125.1, 1);
  });

  it('is 172.6 ÷ 170 times the printed 49.38 through short wide ones, worked out elsewhere', () => {
    expect(airToWaterStirred_ratio(test, 1) / 49.38).toBeCloseTo(172.6 / 170, 2);
    expect(airToWaterStirred_ratio(test, 0.6)).toBeCloseTo(airToWaterStirred_ratio(test, 1) * 0.6, 12);
  });

  it('is none where the water behind pushes as hard', () => {
    expect(airToWaterSmooth_ratio({ ...test, back_kPa: test.test_kPa })).toBe(0);
    expect(airToWaterStirred_ratio({ ...test, back_kPa: test.test_kPa }, 1)).toBe(0);
  });
});

describe('air', () => {
  it('is thicker and lighter when warm', () => {
    expect(airViscosity_Pas(40)).toBeGreaterThan(airViscosity_Pas(0));
    expect(airDensity_kg_per_m3(40, 100)).toBeLessThan(airDensity_kg_per_m3(0, 100));
  });
});
