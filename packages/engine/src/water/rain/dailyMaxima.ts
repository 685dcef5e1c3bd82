import { calendarDay, dayIndexOf, measured, type RainRecord } from '../../kernel/index.ts';

/** The most rain measured in one day of a year of the calendar. */
export interface DailyMaximum {
  readonly year: number;
  readonly rain_mm: number;
}

/**
 * What was the most rain in a day of each year of the calendar? For storms: a year is left out where more than a share of its days was not measured,
 * or where none had rain; filled days do not count.
 *
 * @param record - rain_mm [mm] by day and state by day
 * @param missingDays_fraction - the most of a year's days that may be missing [fraction], 0 to 1
 * @returns the largest day's rain of each year that is left in [mm], above 0, in their order
 * @source etccdi, maximum 1-day rain; the share of missing days is ours: docs/decisions/0173-years-of-a-short-record.md
 */
export function dailyMaxima(record: RainRecord, missingDays_fraction: number): readonly DailyMaximum[] {
  const { firstDay, rain_mm, state } = record;
  if (rain_mm.length === 0) return [];
  const maxima: DailyMaximum[] = [];
  const lastYear = calendarDay(firstDay + rain_mm.length - 1).year;
  for (let { year } = calendarDay(firstDay); year <= lastYear; year++) {
    const [from, to] = [dayIndexOf(year, 1, 1), dayIndexOf(year + 1, 1, 1)];
    let [days, most_mm] = [0, 0];
    for (let at = Math.max(0, from - firstDay); at < Math.min(rain_mm.length, to - firstDay); at++) {
      if (state[at] !== measured) continue;
      days++;
      if (rain_mm[at]! > most_mm) most_mm = rain_mm[at]!;
    }
    if (most_mm > 0 && to - from - days <= missingDays_fraction * (to - from)) maxima.push({ year, rain_mm: most_mm });
  }
  return maxima;
}
