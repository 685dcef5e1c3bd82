import { describe, expect, it } from 'vitest';
import { maximumOnceIn_mm } from './extremes.ts';
import { gevByLMoments, gumbelByLMoments } from './gevFits.ts';
import { lMoments } from './lMoments.ts';

/** Values that stand evenly in a distribution: its own quantiles. */
const spread = (shape: number, n = 20_000) =>
  Array.from({ length: n }, (_, i) =>
    maximumOnceIn_mm({ location_mm: 30, scale_mm: 8, shape }, 1 / (1 - (i + 0.5) / n)),
  );

describe('fits by L-moments', () => {
  it.each([0.4, 0.1, 0, -0.1, -0.25])('find the distribution again whose values they are given, shape %d', (shape) => {
    const fit = gevByLMoments(spread(shape))!;
    expect(Math.abs(fit.shape - shape)).toBeLessThan(0.002);
    expect(Math.abs(fit.location_mm - 30)).toBeLessThan(0.02);
    expect(Math.abs(fit.scale_mm - 8)).toBeLessThan(0.02);
  });

  it('values as skew as a Gumbel distribution are given one', () => {
    const gumbel = gumbelByLMoments(spread(0))!;
    expect(gumbel.shape).toBe(0);
    expect(Math.abs(gumbel.location_mm - 30)).toBeLessThan(0.01);
  });

  it('have the mean, the second moment and the skewness of their values', () => {
    const values = [31, 44, 29, 70, 38, 52, 33, 61, 120, 35];
    const fit = gevByLMoments(values)!;
    const moments = lMoments(values)!;
    // Hosking's moments of the distribution, by its formulas.
    const k = fit.shape;
    const g = gamma(1 + k);
    expect(fit.location_mm + (fit.scale_mm * (1 - g)) / k).toBeCloseTo(moments.l1_mm, 8);
    expect((fit.scale_mm * (1 - 2 ** -k) * g) / k).toBeCloseTo(moments.l2_mm, 8);
    expect((2 * (1 - 3 ** -k)) / (1 - 2 ** -k) - 3).toBeCloseTo(moments.t3_ratio, 10);
  });

  it('are not found where nothing can be fitted', () => {
    for (const values of [[], [1, 2, 3], [4, 4, 4, 4, 4]]) {
      expect(gevByLMoments(values)).toBeNull();
      expect(gumbelByLMoments(values)).toBeNull();
    }
    // All but one the same: as skew as a sample can be, and no such distribution.
    expect(gevByLMoments([0, 0, 0, 0, 0, 9])).toBeNull();
    expect(gevByLMoments([9, 9, 9, 9, 9, 0])).toBeNull();
  });
});

/** Γ by its product of n factors, slow and plain, less what the rest comes to in 1/n. */
function gamma(x: number): number {
  let log = -Math.log(x);
  const n = 2_000_000;
  for (let i = 1; i <= n; i++) log += x * Math.log1p(1 / i) - Math.log1p(x / i);
  return Math.exp(log - (x - (x * (x + 1)) / 2) / n);
}
