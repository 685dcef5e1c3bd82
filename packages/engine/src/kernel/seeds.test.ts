import { describe, expect, it } from 'vitest';
import { numberOfDay } from './seeds.ts';

const count = 40_000;
const numbersOf = (seed: number, firstDay = -8000) =>
  Array.from({ length: count }, (_, i) => numberOfDay(seed, firstDay + i));

/** Correlation of two lists of numbers that are even between 0 and 1. */
function correlation(a: readonly number[], b: readonly number[]): number {
  const sum = a.reduce((total, one, i) => total + (one - 0.5) * (b[i]! - 0.5), 0);
  return (12 * sum) / a.length;
}

describe('numberOfDay', () => {
  it('is even between 0 and 1: each of 20 equal parts has its share, by chi-square', () => {
    for (const seed of [0, 1, 77, 2 ** 31 - 1, 4_000_000_000]) {
      const found = numbersOf(seed);
      const parts = new Array<number>(20).fill(0);
      for (const one of found) parts[Math.floor(one * 20)]!++;
      const expected = count / 20;
      const chiSquare = parts.reduce((sum, part) => sum + (part - expected) ** 2 / expected, 0);
      // 19 degrees of freedom: above 50.8 once in 10,000 runs.
      expect(chiSquare, `seed ${seed}`).toBeLessThan(50.8);
    }
  });

  it('says nothing of the next days, nor of another seed: correlations within four standard errors', () => {
    const found = numbersOf(5);
    const limit = 4 / Math.sqrt(count);
    for (const later of [1, 2, 7, 365])
      expect(Math.abs(correlation(found.slice(0, -later), found.slice(later)))).toBeLessThan(1.1 * limit);
    expect(Math.abs(correlation(found, numbersOf(6)))).toBeLessThan(limit);
  });

  it('is the same for the same seed and day', () => {
    expect(numberOfDay(9, 123)).toBe(numberOfDay(9, 123));
    expect(numberOfDay(9, 123)).not.toBe(numberOfDay(9, 124));
  });
});
