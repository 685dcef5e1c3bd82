import { describe, expect, it } from 'vitest';
import { betaQuantile, jeffreysRange } from './numericsBeta.ts';

describe('betaQuantile', () => {
  // R documentation and R itself: qbeta(1e-4, .2, 30)
  it('keeps its digits where the answer is very small', () => {
    expect(betaQuantile(1e-4, 0.2, 30) / 2.20445371484968e-22).toBeCloseTo(1, 10);
  });

  // SciPy 1.17.1: python3 -c "from scipy.stats import beta; print(repr(beta.ppf(P, A, B)))"
  const rows = [
    [0.05, 30.5, 2.5, 0.8375867349575379],
    [0.05, 28.5, 2.5, 0.8274850183526017],
    [0.05, 19.5, 1.5, 0.8204445799637782],
    [0.05, 15.5, 0.5, 0.8816933835471762],
    [0.975, 0.5, 0.5, 0.9984586668665639],
    [0.95, 3.5, 7.5, 0.558126766484634],
    [0.025, 300.5, 100.5, 0.7058692882657005],
    [0.9, 2, 3, 0.6795394162781817],
    [0.999, 0.5, 20.5, 0.23452104984225847],
    [1e-10, 5, 5, 0.0038109291304125187],
    [0.5, 1000, 2000, 0.3332962917247511],
    [0.05, 10950.5, 0.5, 0.9998246103087863],
  ] as const;
  it.each(rows)('p %f, shapes %f and %f', (p, a, b, printed) => {
    expect(betaQuantile(p, a, b) / printed).toBeCloseTo(1, 10);
  });

  // Closed forms: I_x(1, b) = 1 − (1 − x)^b; I_x(a, 1) = x^a; shapes ½ and ½ give x = sin²(πp/2).
  it('agrees with the closed forms', () => {
    for (const p of [1e-6, 0.05, 0.3, 0.5, 0.9, 0.999999]) {
      expect(betaQuantile(p, 1, 7)).toBeCloseTo(1 - (1 - p) ** (1 / 7), 12);
      expect(betaQuantile(p, 7, 1)).toBeCloseTo(p ** (1 / 7), 12);
      expect(betaQuantile(p, 0.5, 0.5)).toBeCloseTo(Math.sin((Math.PI * p) / 2) ** 2, 12);
    }
  });

  it('refuses what is no share or no shape', () => {
    expect(() => betaQuantile(1.1, 1, 1)).toThrow(RangeError);
    expect(() => betaQuantile(0.5, 0, 1)).toThrow(RangeError);
    expect(() => betaQuantile(0.5, Infinity, 1)).toThrow(RangeError);
  });
});

describe('jeffreysRange', () => {
  it('reaches 0 and 1 where none or all were good', () => {
    expect(jeffreysRange(0, 12, 0.9).low).toBe(0);
    expect(jeffreysRange(12, 12, 0.9).high).toBe(1);
  });

  it('mirrors when good and bad change places', () => {
    const good = jeffreysRange(23, 30, 0.9);
    const bad = jeffreysRange(7, 30, 0.9);
    expect(good.low).toBeCloseTo(1 - bad.high, 12);
    expect(good.high).toBeCloseTo(1 - bad.low, 12);
  });

  // The least good years whose low end reaches 0.8, from SciPy's beta.ppf(0.05, k + 0.5, n - k + 0.5).
  it.each([
    [32, 30],
    [30, 28],
    [20, 19],
    [15, 15],
  ])('of %i years at least %i must be good for 4 years of 5', (n, least) => {
    expect(jeffreysRange(least, n, 0.9).low).toBeGreaterThanOrEqual(0.8);
    expect(jeffreysRange(least - 1, n, 0.9).low).toBeLessThan(0.8);
  });
});
