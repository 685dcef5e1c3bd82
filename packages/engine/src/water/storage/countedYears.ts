import { jeffreysRange, nextCountRange, type Range, widenedTail_fraction } from '../../kernel/index.ts';

/** What a count of good years says by itself. */
export interface CountedYears {
  /** In which the underlying share of good years lies. */
  readonly share_fraction: Range;
  /** Good ones of as many coming years. */
  readonly comingGood_years: Range;
  /** Share of the drawn records that is cut off at each end. */
  readonly tail_fraction: number;
}

/** Counts that were asked for before: a programme asks for the same few, thousands of times. */
const known = new Map<string, CountedYears>();

/**
 * What do so many good years of so many say of the years to come?
 *
 * @param goodYears - good ones [year], whole
 * @param judgedYears - all that were judged [year], whole, 1 or more
 * @param range_fraction - how much of the doubt a range holds [fraction], above 0, below 1
 * @returns the range of the share [fraction] and of as many coming years [year]; the share of draws to cut off [fraction]
 * @law the same arguments give the same answer
 * @definition ours: docs/methods/storage.md, how sure
 */
export function countedYears(goodYears: number, judgedYears: number, range_fraction: number): CountedYears {
  const key = `${goodYears}|${judgedYears}|${range_fraction}`;
  const found = known.get(key);
  if (found) return found;
  const counted = {
    share_fraction: jeffreysRange(goodYears, judgedYears, range_fraction),
    comingGood_years: nextCountRange(goodYears, judgedYears, judgedYears, range_fraction),
    tail_fraction: widenedTail_fraction(judgedYears, range_fraction),
  };
  known.set(key, counted);
  return counted;
}
