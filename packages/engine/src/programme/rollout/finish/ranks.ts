import { rankRange_fraction } from './constants.ts';

/** A value at a share of the replicates, and between which it lies with the chance said, for there were only so many. */
export interface Ranked {
  readonly value: number;
  readonly from: number;
  readonly to: number;
}

/** Which of the sorted values to look at: counted from 1. */
export interface Ranks {
  readonly rank: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Which of so many sorted draws stands for a quantile (nearest rank), and between which two does the true one lie? Ends of the middle share of a binomial
 * distribution: the count of draws below the true quantile.
 *
 * @param count - how many draws [count], whole, 1 or more
 * @param p - share below [fraction], above 0, below 1
 * @param range_fraction - how sure [fraction], above 0, below 1
 * @returns ranks, from 1 to count [count]
 * @law from ≤ rank ≤ to
 * @source scipy, binom.ppf: both ends of the middle share
 * @example
 * quantileRanks(2000, 0.9) // → { rank: 1800, from: 1773, to: 1826 }
 */
export function quantileRanks(count: number, p: number, range_fraction: number = rankRange_fraction): Ranks {
  const tail = (1 - range_fraction) / 2;
  const rank = Math.min(count, Math.max(1, Math.ceil(p * count - 1e-9)));
  let below = 0;
  let from = -1;
  let logTerm = count * Math.log1p(-p);
  for (let at = 0; at <= count; at++) {
    below += Math.exp(logTerm);
    if (from < 0 && below >= tail) from = at;
    if (below >= 1 - tail || at === count)
      return { rank, from: Math.min(rank, Math.max(1, from)), to: Math.max(rank, Math.min(count, at)) };
    logTerm += Math.log((count - at) / (at + 1)) + Math.log(p) - Math.log1p(-p);
  }
  return { rank, from: 1, to: count };
}

/** The three quantiles asked for everywhere. */
export interface Spans {
  readonly p10: Ranked;
  readonly p50: Ranked;
  readonly p90: Ranked;
}

/** Ranks of the three quantiles of so many draws, each with its ends. */
export function spanRanks(count: number): readonly number[] {
  return [0.1, 0.5, 0.9].flatMap((p) => {
    const { rank, from, to } = quantileRanks(count, p);
    return [rank, from, to];
  });
}

/** The three quantiles of values that were counted by day: `counts[first + day]`. */
export function spansOfCounts(counts: Uint16Array, first: number, days: number, ranks: readonly number[]): Spans {
  const order = ranks.map((_, at) => at).sort((a, b) => ranks[a]! - ranks[b]!);
  const found = new Array<number>(ranks.length).fill(days);
  let seen = 0;
  let next = 0;
  for (let day = 0; day < days && next < order.length; day++) {
    seen += counts[first + day]!;
    for (; next < order.length && ranks[order[next]!]! <= seen; next++) found[order[next]!] = day;
  }
  return spansFrom(found);
}

/** The three quantiles of values that are sorted. */
export function spansOfSorted(sorted: Float64Array, ranks: readonly number[]): Spans {
  return spansFrom(ranks.map((rank) => sorted[rank - 1]!));
}

function spansFrom(found: readonly number[]): Spans {
  const ranked = (at: number): Ranked => ({ value: found[at]!, from: found[at + 1]!, to: found[at + 2]! });
  return { p10: ranked(0), p50: ranked(3), p90: ranked(6) };
}
