import { gammaShares, type Range, risingRoot } from '../../kernel/index.ts';
import { limitsHold_fraction } from './constants.ts';

/**
 * So many colonies were counted. Between which means may the true one lie? Exact limits of a Poisson count, each end with half of the doubt.
 *
 * @param count - colonies counted [count], whole, 0 or more
 * @param held_fraction - how much of the doubt the limits hold [fraction], above 0, below 1
 * @returns lowest and highest mean [count]; the lowest is 0 where none were counted
 * @law the count lies between them
 * @source garwood-1936, fiducial limits of the Poisson distribution (from memory)
 */
export function garwoodLimits_count(count: number, held_fraction: number = limitsHold_fraction): Range {
  if (!(Number.isSafeInteger(count) && count >= 0 && held_fraction > 0 && held_fraction < 1))
    throw new RangeError('garwoodLimits_count: needs a whole count and 0 < fraction < 1');
  const tail = (1 - held_fraction) / 2;
  const tooFew = (mean_count: number) => tail - gammaShares(mean_count, count + 1).above_fraction;
  let most = count + 1;
  while (tooFew(most) < 0) most *= 2;
  return {
    low: count === 0 ? 0 : risingRoot((mean_count) => gammaShares(mean_count, count).below_fraction - tail, 0, count),
    high: risingRoot(tooFew, count, most),
  };
}
