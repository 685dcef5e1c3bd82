import { describe, expect, it } from 'vitest';
import { limitsOfStorms_mm, stormDistribution } from './extremeLimits.ts';
import { type ExtremeFit, maximumOnceIn_mm } from './extremes.ts';
import { gevByLMoments, gumbelByLMoments } from './gevFits.ts';

const fit: ExtremeFit = { location_mm: 60, scale_mm: 18, shape: -0.1 };
const evenly = (n: number, of: ExtremeFit) =>
  Array.from({ length: n }, (_, i) => maximumOnceIn_mm(of, 1 / (1 - (i + 0.5) / n)));

describe('the distribution a storm is taken from', () => {
  it('keeps a heavy tail', () => {
    const values = evenly(40, { ...fit, shape: -0.3 });
    expect(stormDistribution(values)).toEqual(gevByLMoments(values));
    expect(stormDistribution(values)!.shape).toBeLessThan(0);
  });

  it('never has a greatest value', () => {
    const values = evenly(40, { ...fit, shape: 0.3 });
    expect(gevByLMoments(values)!.shape).toBeGreaterThan(0);
    expect(stormDistribution(values)).toEqual(gumbelByLMoments(values));
  });

  it('is none where nothing can be fitted', () => {
    expect(stormDistribution([5, 5, 5, 5, 5])).toBeNull();
  });
});

describe('the limits of a storm', () => {
  it('lie on both sides of it, and closer the more years there are', () => {
    const width = (years: number) => {
      const [range] = limitsOfStorms_mm(fit, years, [20], 0.9, 7);
      expect(range!.low).toBeLessThan(maximumOnceIn_mm(fit, 20));
      expect(range!.high).toBeGreaterThan(maximumOnceIn_mm(fit, 20));
      return range!.high - range!.low;
    };
    expect(width(10)).toBeGreaterThan(width(40));
    expect(width(40)).toBeGreaterThan(width(160));
  });

  it('are the same for the same seed', () => {
    const once = limitsOfStorms_mm(fit, 20, [10, 20], 0.9, 7);
    expect(limitsOfStorms_mm(fit, 20, [10, 20], 0.9, 7)).toEqual(once);
    expect(limitsOfStorms_mm(fit, 20, [10, 20], 0.9, 8)).not.toEqual(once);
  });

  it('of a Gumbel distribution of many years come near those of theory', () => {
    // Large-sample spread of a Gumbel quantile by L-moments: scale × √((1.1128 + 0.4574 y + 0.8046 y²) ÷ n), hosking-1990 (from memory);
    // keeping off greatest values makes the upper end a little wider, so a tenth is allowed above it.
    const gumbel = { location_mm: 60, scale_mm: 18, shape: 0 };
    const n = 2000;
    const y = -Math.log(-Math.log(1 - 1 / 20));
    const sd = 18 * Math.sqrt((1.1128 + 0.4574 * y + 0.8046 * y * y) / n);
    const [range] = limitsOfStorms_mm(gumbel, n, [20], 0.9, 3);
    const low = (maximumOnceIn_mm(gumbel, 20) - range!.low) / (1.645 * sd);
    expect(low).toBeGreaterThan(0.6);
    expect(low).toBeLessThan(1.2);
  });
});
