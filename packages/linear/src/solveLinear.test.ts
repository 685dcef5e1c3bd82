import { dualBound, type LinearProgramme } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { loadSolveLinear } from './solveLinear.ts';

const solve = await loadSolveLinear();

/** Least 2x + 3y with x + y ≥ 4 and 0 ≤ x ≤ 3, 0 ≤ y: by hand x = 3, y = 1, cost 9. */
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

describe('solveLinear', () => {
  it('finds what can be found by hand, with prices that bound it', () => {
    const { status, value, columns, duals } = solve(diet);
    expect(status).toBe('optimal');
    expect(value).toBeCloseTo(9, 9);
    expect([...columns]).toEqual([expect.closeTo(3, 9), expect.closeTo(1, 9)]);
    expect(dualBound(diet, duals)).toBeCloseTo(9, 9);
  });

  it('says where nothing meets the rows, and where there is no end', () => {
    expect(solve({ ...diet, high: Float64Array.of(1, 1) }).status).toBe('infeasible');
    expect(solve({ ...diet, cost: Float64Array.of(2, -1) }).status).toMatch(/unbounded|infeasible/);
  });
});
