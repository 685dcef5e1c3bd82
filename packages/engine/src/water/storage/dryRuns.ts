import type { DayIndex, DryRun, WaterYear } from '../../kernel/index.ts';

/** The dry runs of a record, and how long each year's longest got. */
export interface DryRuns {
  /** Runs with a day in a judged year, longest first, then earliest. */
  readonly runs: readonly DryRun[];
  /** By year, judged or not: the longest run reached within it, days before it included [day]. */
  readonly longestByYear_days: readonly number[];
}

/**
 * When was it dry, and for how long? The record is a loop: a run that crosses its seam is one run, of the year of its last day.
 *
 * @param dry - 1 on a dry day, else 0, by day [count]
 * @param years - the record's water years, adjoining, from its first day to its last
 * @param firstDay - the record's first day [day]
 * @returns runs [day], longest first, and the longest by year [day]
 * @definition ours: an unbroken run of days whose judged litres were not wholly met
 */
export function dryRuns(dry: Uint8Array, years: readonly WaterYear[], firstDay: DayIndex): DryRuns {
  const days = dry.length;
  const longest = years.map(() => 0);
  const runs: DryRun[] = [];
  // Length of the run that the end of the record hands on to its beginning.
  let length = 0;
  while (length < days && dry[days - 1 - length] === 1) length++;
  for (const [index, year] of years.entries()) {
    for (let day = year.from; day < year.to; day++) {
      if (dry[day] === 0) {
        length = 0;
        continue;
      }
      length = Math.min(length + 1, days);
      if (length > longest[index]!) longest[index] = length;
      const ends = dry[day + 1 === days ? 0 : day + 1] === 0 || (length === days && day === days - 1);
      if (!ends || !isAnyJudged(years, day - length + 1, day, days)) continue;
      const to = firstDay + day;
      const from = day - length + 1 < 0 ? to - length + 1 + days : to - length + 1;
      runs.push({ from, to, days: length, waterYear: year.label });
    }
  }
  runs.sort((a, b) => b.days - a.days || a.to - b.to);
  return { runs, longestByYear_days: longest };
}

/** Does a run from one day to another, before the record's first where it crosses the seam, touch a judged year? */
function isAnyJudged(years: readonly WaterYear[], from: number, to: number, days: number): boolean {
  return years.some((year) => year.judged && ((year.from <= to && year.to > from) || year.to > from + days));
}
