import { describe, expect, it } from 'vitest';
import { allSizes } from './allSizes.ts';

const rules = { order: 'drawFirst', passes: 2, start: 'empty' } as const;

function balanceOf(inflow: number[], judged: number[], other?: number[]) {
  return {
    inflow_L: Float64Array.from(inflow),
    judged_L: Float64Array.from(judged),
    other_L: other ? Float64Array.from(other) : new Float64Array(inflow.length),
  };
}

describe('allSizes', () => {
  it('gives a day the volume from which it is met', () => {
    // 6 L come on the first day; the second and third day draw 2 L each, so they want tanks of 2 L and 4 L; the first
    // day of the second run finds what 6 L less 4 L left: 2 L, kept only by a tank of 6 L.
    expect([...allSizes(balanceOf([6, 0, 0], [2, 2, 2]), rules).critical_L]).toEqual([6, 2, 4]);
  });

  it('says that no tank would do where less comes in than is asked', () => {
    expect([...allSizes(balanceOf([5, 0, 0], [2, 2, 2]), rules).critical_L]).toEqual([Infinity, 2, 4]);
  });

  it('never calls a day dry on which nothing is asked', () => {
    expect([...allSizes(balanceOf([0, 0], [0, 0]), rules).critical_L]).toEqual([0, 0]);
  });

  it('serves a day from its own rain under ybs, in any tank', () => {
    const { critical_L, asked_L } = allSizes(balanceOf([6, 0, 0], [2, 2, 2]), { ...rules, order: 'ybs' });
    expect([...critical_L]).toEqual([0, 2, 4]);
    expect(asked_L).toBe(4);
  });

  it('gives the other purposes critical volumes of their own', () => {
    const { critical_L, otherCritical_L } = allSizes(balanceOf([8, 0], [1, 1], [2, 2]), rules);
    expect([...critical_L]).toEqual([4, 1]);
    expect([...otherCritical_L]).toEqual([6, 3]);
  });

  it('a full tank of any size meets the first days when the record runs once from full', () => {
    const run = allSizes(balanceOf([0, 0], [3, 3]), { order: 'drawFirst', passes: 1, start: 'full' });
    expect([...run.critical_L]).toEqual([3, 6]);
  });
});
