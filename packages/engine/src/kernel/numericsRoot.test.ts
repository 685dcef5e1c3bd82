import { describe, expect, it } from 'vitest';
import { risingRoot } from './numericsRoot.ts';

describe('risingRoot', () => {
  it('finds roots known beforehand', () => {
    expect(risingRoot((x) => x * x * x - 27, 0, 10)).toBeCloseTo(3, 14);
    expect(risingRoot((x) => Math.log(x), 0.1, 50)).toBeCloseTo(1, 14);
    expect(risingRoot((x) => x - 1e-9, 0, 1e6)).toBeCloseTo(1e-9, 20);
  });

  it('finds where a function jumps over zero', () => {
    expect(risingRoot((x) => (x < 0.3 ? -1 : 1), 0, 1)).toBe(0.3);
  });

  it('stays between its ends', () => {
    expect(risingRoot((x) => x + 5, 0, 1)).toBe(0);
    expect(risingRoot((x) => x - 5, 0, 1)).toBe(1);
    expect(risingRoot(() => 0, 2, 2)).toBe(2);
    expect(() => risingRoot((x) => x, 1, 0)).toThrow(RangeError);
  });
});
