import { calendarDay, type DayIndex, dayIndexOf, isoDay, readIsoDay } from '@eavewell/engine';

/** One axis of weeks for all bands: whole weeks, Monday first, as many pixels each. No clock and no time zone enters. */
export interface WeekAxis {
  /** The Monday it begins with. */
  readonly first: DayIndex;
  readonly weeks_count: number;
  readonly week_px: number;
  readonly width_px: number;
}

/** A week by its number, after ISO 8601: weeks begin on Monday, and week 1 has the year's first Thursday. */
export interface IsoWeek {
  readonly year: number;
  readonly week: number;
}

/** A week on the axis. */
export interface WeekOnAxis extends IsoWeek {
  readonly monday: DayIndex;
  readonly x_px: number;
}

/** The part of a month that is on the axis. */
export interface MonthOnAxis {
  readonly year: number;
  readonly month: number;
  readonly x_px: number;
  readonly end_px: number;
}

/** The Monday of a day's week. 1970-01-01 was a Thursday. */
export const mondayOf = (day: DayIndex): DayIndex => day - ((((day + 3) % 7) + 7) % 7);

/** Which week of which year is a day in? The year is that of the week's Thursday. */
export function isoWeekOf(day: DayIndex): IsoWeek {
  const thursday = mondayOf(day) + 3;
  const { year } = calendarDay(thursday);
  return { year, week: Math.floor((thursday - dayIndexOf(year, 1, 1)) / 7) + 1 };
}

/**
 * An axis of the whole weeks from one day to another.
 *
 * @param from - the first day that has to be on it
 * @param until - the last
 * @param week_px - width of a week
 */
export function axisOf(from: DayIndex, until: DayIndex, week_px: number): WeekAxis {
  const first = mondayOf(from);
  const weeks_count = (mondayOf(Math.max(from, until)) - first) / 7 + 1;
  return { first, weeks_count, week_px, width_px: weeks_count * week_px };
}

/** Where a day begins; a day and a half later half a day further right. Days before or after the axis lie beside it. */
export const xOf = ({ first, week_px }: WeekAxis, day: number): number => ((day - first) / 7) * week_px;

/** The day that is at a place of the axis, from its first to its last. */
export function dayAt({ first, week_px, weeks_count }: WeekAxis, x_px: number): DayIndex {
  const days = Math.floor((x_px / week_px) * 7 + 1e-9);
  return first + Math.min(weeks_count * 7 - 1, Math.max(0, days));
}

/** The day of a date; null where there is none, or none that can be read. */
export const dayOf = (date: string | null): DayIndex | null => (date === null ? null : readIsoDay(date));

/** The weeks that are seen between two places. */
export function weeksBetween(axis: WeekAxis, from_px: number, to_px: number): readonly WeekOnAxis[] {
  const begin = Math.max(0, Math.floor(from_px / axis.week_px));
  const end = Math.min(axis.weeks_count, Math.ceil(to_px / axis.week_px));
  return Array.from({ length: Math.max(0, end - begin) }, (_, nth) => {
    const monday = axis.first + (begin + nth) * 7;
    return { ...isoWeekOf(monday), monday, x_px: (begin + nth) * axis.week_px };
  });
}

/** The months of which something is seen between two places, cut to the axis and not to what is seen. */
export function monthsBetween(axis: WeekAxis, from_px: number, to_px: number): readonly MonthOnAxis[] {
  if (to_px <= from_px) return [];
  const found: MonthOnAxis[] = [];
  const last = dayAt(axis, to_px);
  let { year, month } = calendarDay(dayAt(axis, from_px));
  for (let begin = dayIndexOf(year, month, 1); begin <= last; ) {
    const next = month === 12 ? { year: year + 1, month: 1 } : { year, month: month + 1 };
    const end = dayIndexOf(next.year, next.month, 1);
    found.push({ year, month, x_px: Math.max(0, xOf(axis, begin)), end_px: Math.min(axis.width_px, xOf(axis, end)) });
    ({ year, month } = next);
    begin = end;
  }
  return found;
}

/** Every so many weeks a number is written, so that two of them never touch. */
export function weekStep({ week_px }: WeekAxis, letters_px = 24): number {
  const least = letters_px / week_px;
  return [1, 2, 4, 13, 26, 52].find((step) => step >= least) ?? 52;
}

/** A day as an address or the server has it. */
export const dateOf = (day: DayIndex): string => isoDay(day);
