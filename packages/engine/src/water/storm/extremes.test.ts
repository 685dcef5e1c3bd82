import { describe, expect, it } from 'vitest';
import { type ExtremeFit, maximumOnceIn_mm, returnPeriodOf_years } from './extremes.ts';

const fit = (shape: number): ExtremeFit => ({ location_mm: 20, scale_mm: 5, shape });

describe('maxima and their return periods', () => {
  it('half the years have more than the median, by its formula', () => {
    // ln 2 to the −k: location + scale × (1 − (ln 2)^k) ÷ k.
    expect(maximumOnceIn_mm(fit(0.2), 2)).toBeCloseTo(20 + (5 * (1 - Math.LN2 ** 0.2)) / 0.2, 12);
    expect(maximumOnceIn_mm(fit(0), 2)).toBeCloseTo(20 - 5 * Math.log(Math.LN2), 12);
  });

  it('a shape near 0 is a Gumbel distribution, from both sides', () => {
    for (const shape of [1e-5, -1e-5, 1e-7, -1e-7]) {
      expect(maximumOnceIn_mm(fit(shape), 50) / maximumOnceIn_mm(fit(0), 50)).toBeCloseTo(1, 4);
      expect(returnPeriodOf_years(fit(shape), 40)! / returnPeriodOf_years(fit(0), 40)!).toBeCloseTo(1, 3);
    }
  });

  it('what the distribution never reaches has no return period, what it always passes has one of a year', () => {
    expect(returnPeriodOf_years(fit(0.5), 30)).toBeNull();
    expect(returnPeriodOf_years(fit(0.5), 31)).toBeNull();
    expect(returnPeriodOf_years(fit(-0.5), 10)).toBe(1);
    expect(returnPeriodOf_years(fit(0), 1e9)).toBeNull();
  });

  it('a return period of a year or less is a mistake of ours', () => {
    expect(() => maximumOnceIn_mm(fit(0), 1)).toThrow(RangeError);
    expect(() => maximumOnceIn_mm(fit(0), Number.NaN)).toThrow(RangeError);
  });
});
