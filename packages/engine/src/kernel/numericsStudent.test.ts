import { describe, expect, it } from 'vitest';
import { studentQuantile, widenedTail_fraction } from './numericsStudent.ts';

describe('studentQuantile', () => {
  it('is that of Cauchy at one degree of freedom, and odd about the middle', () => {
    for (const p of [0.01, 0.2, 0.4]) {
      expect(studentQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 10);
      expect(studentQuantile(1 - p, 7)).toBeCloseTo(-studentQuantile(p, 7), 12);
    }
  });

  it('refuses what is no share', () => {
    expect(() => studentQuantile(0, 3)).toThrow(RangeError);
    expect(() => studentQuantile(0.5, 0)).toThrow(RangeError);
    expect(() => studentQuantile(Number.NaN, 3)).toThrow(RangeError);
  });
});

describe('widenedTail_fraction', () => {
  it('cuts off nothing where one was seen, ever more as more were, and never more than the half of the rest', () => {
    let last = -1;
    for (const n of [1, 2, 3, 5, 10, 30, 100, 1000]) {
      const tail = widenedTail_fraction(n, 0.9);
      expect(tail).toBeGreaterThan(last);
      expect(tail).toBeLessThan(0.05);
      last = tail;
    }
    expect(widenedTail_fraction(1, 0.9)).toBe(0);
    expect(() => widenedTail_fraction(0, 0.9)).toThrow(RangeError);
  });
});
