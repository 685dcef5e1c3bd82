import { describe, expect, it } from 'vitest';
import { lMoments } from './lMoments.ts';

describe('L-moments', () => {
  it('are those of an even spread', () => {
    // 1 to 5: the mean difference of two is 2, and it is as skew one way as the other.
    const moments = lMoments([5, 1, 4, 2, 3])!;
    expect(moments.l1_mm).toBe(3);
    expect(moments.l2_mm).toBeCloseTo(1, 12);
    expect(moments.t3_ratio).toBeCloseTo(0, 12);
    expect(moments.t4_ratio).toBeCloseTo(0, 12);
  });

  it('of values without a spread, of too few or of none that are finite there are none', () => {
    expect(lMoments([3, 3, 3, 3, 3])).toBeNull();
    expect(lMoments([1, 2, 3])).toBeNull();
    expect(lMoments([1, 2, 3, Number.NaN])).toBeNull();
    expect(lMoments([1, 2, 3, Number.POSITIVE_INFINITY])).toBeNull();
    expect(lMoments([])).toBeNull();
  });

  it('keep the values as they are', () => {
    const values = [5, 1, 4, 2];
    lMoments(values);
    expect(values).toEqual([5, 1, 4, 2]);
  });
});
