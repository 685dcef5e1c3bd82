import { gammaShares, logGamma } from '../../kernel/index.ts';

/** The series Σ μᵏ limit! ÷ (limit + k)!, from 1 up; well behaved up to a mean of the limit. */
function tailSeries(mean_count: number, limit_count: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; term > sum * 1e-17; k++) {
    term *= mean_count / (limit_count + k);
    sum += term;
  }
  return sum;
}

/** ln of the chance that a plate has the limit or more, at this mean. It keeps its digits where the chance is far too small for a number of its own. */
export function logTail(mean_count: number, limit_count: number): number {
  if (mean_count > limit_count + 1) return Math.log(gammaShares(mean_count, limit_count).below_fraction);
  const first = limit_count * Math.log(mean_count) - mean_count - logGamma(limit_count + 1);
  return first + Math.log(tailSeries(mean_count, limit_count));
}

/** How fast logTail grows with ln of the mean: from the limit at none down to 0 at many. */
export function tailSlope(mean_count: number, limit_count: number): number {
  if (mean_count <= limit_count + 1) return limit_count / tailSeries(mean_count, limit_count);
  const density = limit_count * Math.log(mean_count) - mean_count - logGamma(limit_count);
  return Math.exp(density) / gammaShares(mean_count, limit_count).below_fraction;
}
