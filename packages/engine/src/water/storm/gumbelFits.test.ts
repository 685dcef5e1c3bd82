import { describe, expect, it } from 'vitest';
import { maximumOnceIn_mm } from './extremes.ts';
import { gumbelByMoments, gumbelChow, gumbelThrough, reducedMoments, sampleMoments } from './gumbelFits.ts';

describe('Gumbel distributions', () => {
  it('by moments, ten-minute maxima of Chicago 1913 to 1947: chow-maidment-mays-1988, Example 12.2.1 (from memory)', () => {
    const fit = gumbelByMoments({ mean_mm: 0.649, sd_mm: 0.177 });
    expect(Math.abs(fit.scale_mm - 0.138)).toBeLessThan(0.0005);
    expect(Math.abs(fit.location_mm - 0.569)).toBeLessThan(0.0005);
    for (const [period, printed] of [
      [5, 0.78],
      [10, 0.88],
      [50, 1.11],
    ] as const)
      expect(Math.abs(maximumOnceIn_mm(fit, period) - printed)).toBeLessThan(0.005);
  });

  it('of few years are wider than by their moments, and those of many are not', () => {
    const moments = { mean_mm: 50, sd_mm: 12 };
    const plain = gumbelByMoments(moments).scale_mm;
    expect(gumbelChow(moments, 10).scale_mm).toBeGreaterThan(1.3 * plain);
    expect(gumbelChow(moments, 100_000).scale_mm / plain).toBeCloseTo(1, 3);
  });

  it('reduced moments near those of the distribution', () => {
    const { mean_ratio, sd_ratio } = reducedMoments(200_000);
    expect(mean_ratio).toBeCloseTo(0.5772, 3);
    expect(sd_ratio).toBeCloseTo(Math.PI / Math.sqrt(6), 3);
    expect(() => reducedMoments(1)).toThrow(RangeError);
  });

  it('run through two values, where the rarer one is larger', () => {
    const one = { returnPeriod_years: 10, maximum_mm: 100 };
    const other = { returnPeriod_years: 50, maximum_mm: 150 };
    const fit = gumbelThrough(one, other)!;
    for (const { returnPeriod_years, maximum_mm } of [one, other])
      expect(maximumOnceIn_mm(fit, returnPeriod_years)).toBeCloseTo(maximum_mm, 9);
    expect(gumbelThrough(one, { ...other, maximum_mm: 90 })).toBeNull();
    expect(gumbelThrough(one, one)).toBeNull();
  });

  it('have no moments where there are not two different values', () => {
    expect(sampleMoments([])).toBeNull();
    expect(sampleMoments([3])).toBeNull();
    expect(sampleMoments([3, 3])).toBeNull();
    expect(sampleMoments([1, 3])).toEqual({ mean_mm: 2, sd_mm: Math.SQRT2 });
  });
});
