import { voidFromConsecutive_days, voidFromMissing_days } from './constants.ts';

/** What may be worked out from a month with days missing. */
export interface MonthCompleteness {
  readonly meanValid: boolean;
  readonly totalValid: boolean;
}

/**
 * What may be said of a month with these days missing? A mean needs fewer than 11 missing days and fewer than 5 in a row;
 * a total of rain needs every day.
 *
 * @param missingDays - days of the month that are missing [day], 1 to 31, in any order
 * @returns meanValid and totalValid, true or false
 * @source wmo-1203, 11-or-5 rule; totals: wmo-100, totals of rain (quoted by other open sources)
 * @example
 * monthCompleteness([10, 11, 12, 13, 14]) // → { meanValid: false, totalValid: false }
 * monthCompleteness([]) // → { meanValid: true, totalValid: true }
 */
export function monthCompleteness(missingDays: readonly number[]): MonthCompleteness {
  const days = [...new Set(missingDays)].sort((a, b) => a - b);
  let run = 0;
  let longestRun = 0;
  for (const [i, day] of days.entries()) {
    run = i > 0 && day === days[i - 1]! + 1 ? run + 1 : 1;
    if (run > longestRun) longestRun = run;
  }
  return {
    meanValid: days.length < voidFromMissing_days && longestRun < voidFromConsecutive_days,
    totalValid: days.length === 0,
  };
}
