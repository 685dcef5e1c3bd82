import { describe, expect, it } from 'vitest';
import { betaBinomialShares, nextCountRange } from './numericsBetaBinomial.ts';

describe('betaBinomialShares', () => {
  it('gives every count the same share where both shapes are 1', () => {
    betaBinomialShares(9, 1, 1).forEach((share, count) => {
      expect(share).toBeCloseTo((count + 1) / 10, 12);
    });
  });

  it('ends at exactly 1, and takes tries of 0', () => {
    expect(betaBinomialShares(31, 28.5, 3.5).at(-1)).toBe(1);
    expect([...betaBinomialShares(0, 2, 3)]).toEqual([1]);
    expect(() => betaBinomialShares(1.5, 1, 1)).toThrow(RangeError);
    expect(() => betaBinomialShares(3, 0, 1)).toThrow(RangeError);
  });
});

describe('nextCountRange', () => {
  it('holds at least what it says, and a count less at either end would leave out too much', () => {
    for (const [k, n, next] of [
      [11, 31, 31],
      [28, 31, 10],
      [0, 4, 20],
      [4, 4, 20],
    ] as const) {
      const { low, high } = nextCountRange(k, n, next, 0.9);
      const shares = betaBinomialShares(next, k + 0.5, n - k + 0.5);
      expect(low === 0 ? 0 : shares[low - 1]!).toBeLessThan(0.05);
      expect(shares[low]!).toBeGreaterThanOrEqual(0.05);
      expect(shares[high]!).toBeGreaterThanOrEqual(0.95);
      expect(high === 0 ? 0 : shares[high - 1]!).toBeLessThan(0.95);
    }
  });

  it('mirrors good and bad, but for the side on which a share that is met exactly is counted', () => {
    const good = nextCountRange(23, 30, 30, 0.9);
    const bad = nextCountRange(7, 30, 30, 0.9);
    expect([30 - bad.high, 30 - bad.low]).toEqual([good.low, good.high]);
    expect(() => nextCountRange(3, 2, 5, 0.9)).toThrow(RangeError);
  });
});
