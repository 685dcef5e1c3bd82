import { betaQuantile } from './numericsBeta.ts';
import { normalShares } from './numericsGamma.ts';

/**
 * Below which value does this share of Student's t distribution lie?
 *
 * @param p - share below [fraction], above 0, below 1
 * @param freedom - degrees of freedom [count], above 0
 * @returns the quantile [number]
 * @law studentQuantile(1 − p) = −studentQuantile(p)
 * @source dlmf, 8.17 (the share is a regularised incomplete beta function of freedom ÷ (freedom + t²))
 * @example
 * studentQuantile(0.5, 4) // → 0
 */
export function studentQuantile(p: number, freedom: number): number {
  if (!(p > 0 && p < 1 && freedom > 0 && Number.isFinite(freedom)))
    throw new RangeError('studentQuantile: needs 0 < p < 1 and degrees of freedom above 0');
  if (p === 0.5) return 0;
  if (p > 0.5) return -studentQuantile(1 - p, freedom);
  const x = betaQuantile(2 * p, freedom / 2, 0.5);
  return -Math.sqrt(freedom * (1 / x - 1));
}

/**
 * Which share is to be cut off at each end of a bootstrap distribution, for a range to hold what it says although few were
 * seen? Percentiles of means of n values spread as if s were divided by n and t were normal: this is the share at which
 * they come to Student's range.
 *
 * @param n - values seen [count], whole, 1 or more
 * @param fraction - how much the range is to hold [fraction], above 0, below 1
 * @returns share to cut off at each end [fraction]; 0 where one was seen
 * @law never above (1 − fraction) ÷ 2, and nears it as n grows
 * @source hesterberg-2014, expanded percentile interval; r-resample, ExpandProbs
 * @example
 * widenedTail_fraction(1, 0.9) // → 0
 */
export function widenedTail_fraction(n: number, fraction: number): number {
  if (!(Number.isInteger(n) && n >= 1 && fraction > 0 && fraction < 1))
    throw new RangeError('widenedTail_fraction: needs n ≥ 1 and 0 < fraction < 1');
  if (n === 1) return 0;
  const t = studentQuantile((1 - fraction) / 2, n - 1);
  return normalShares(t * Math.sqrt(n / (n - 1))).below_fraction;
}
