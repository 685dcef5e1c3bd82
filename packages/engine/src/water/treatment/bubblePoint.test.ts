import { describe, expect, it } from 'vitest';
import { leastTestPressure_kPa, roundAndWetted, smallestDefect_um } from './bubblePoint.ts';

describe('leastTestPressure_kPa', () => {
  it('is 19.19 MPa for pores of 15 nm at 25 °C and 14.55 MPa for 20 nm at 20 °C, worked out elsewhere: no test in the field', () => {
    expect(leastTestPressure_kPa(0.015, 25, roundAndWetted, 0) / 1000).toBeCloseTo(19.19, 2);
    expect(leastTestPressure_kPa(0.02, 20, roundAndWetted, 0) / 1000).toBeCloseTo(14.55, 2);
  });

  it('is higher by the pressure of the water behind, and lower in a hole that is not round or not wetted', () => {
    const round = leastTestPressure_kPa(3, 5, roundAndWetted, 0);
    expect(leastTestPressure_kPa(3, 5, roundAndWetted, 12)).toBeCloseTo(round + 12, 9);
    expect(leastTestPressure_kPa(3, 5, { shape_factor: 0.7, contact_deg: 60 }, 0)).toBeCloseTo(round * 0.35, 9);
  });
});

describe('smallestDefect_um', () => {
  it('is 2.9, 4.2 and 8.3 µm at 100, 70 and 35 kPa and 20 °C, worked out elsewhere', () => {
    for (const [test_kPa, wanted] of [
      [100, 2.9],
      [70, 4.2],
      [35, 8.3],
    ] as const)
      expect(smallestDefect_um(test_kPa, 20, roundAndWetted, 0)).toBeCloseTo(wanted, 1);
  });

  it('is the size for which the pressure is the least', () => {
    const wetting = { shape_factor: 0.8, contact_deg: 30 };
    const test_kPa = leastTestPressure_kPa(5, 12, wetting, 7);
    expect(smallestDefect_um(test_kPa, 12, wetting, 7)).toBeCloseTo(5, 9);
  });

  it('is endless where the water pushes as hard as the air', () => {
    expect(smallestDefect_um(10, 20, roundAndWetted, 10)).toBe(Infinity);
  });
});
