import { describe, expect, it } from 'vitest';
import { dualBound, type LinearProgramme } from './linearProgramme.ts';

/** Least 2x + 3y with x + y ≥ 4 and 0 ≤ x ≤ 3, 0 ≤ y: by hand x = 3, y = 1, cost 9, the price of the row 3. */
const diet: LinearProgramme = {
  cost: Float64Array.of(2, 3),
  low: Float64Array.of(0, 0),
  high: Float64Array.of(3, Infinity),
  rowLow: Float64Array.of(4),
  rowHigh: Float64Array.of(Infinity),
  starts: Int32Array.of(0, 1, 2),
  rows: Int32Array.of(0, 0),
  values: Float64Array.of(1, 1),
};

describe('dualBound', () => {
  it('is the value itself at the right price', () => {
    expect(dualBound(diet, [3])).toBeCloseTo(9, 12);
  });

  it('is never above it at a wrong one', () => {
    for (const price of [0, 1, 2, 2.5, 2.999]) expect(dualBound(diet, [price])).toBeLessThanOrEqual(9);
    expect(dualBound(diet, [2.5])).toBeCloseTo(2.5 * 4 - 0.5 * 3, 12);
  });

  it('pays nothing for a limit that is not there', () => {
    expect(dualBound(diet, [-1])).toBe(0);
  });

  it('says so where a column without an end could gain without end', () => {
    expect(dualBound(diet, [4])).toBe(-Infinity);
  });
});
