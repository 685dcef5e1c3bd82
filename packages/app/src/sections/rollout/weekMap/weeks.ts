import { isoDay, readIsoDay } from '@eavewell/engine';

/** A week from Monday to Sunday, both as YYYY-MM-DD. */
export interface Week {
  readonly from: string;
  readonly to: string;
}

const week_days = 7;
/** Day 0 is a Thursday, 1 January 1970; three days before it a week begins. */
const thursday_days = 3;

/** The week a day lies in; null where the text is no day. */
export function weekOfDay(day: string): Week | null {
  const index = readIsoDay(day);
  if (index === null) return null;
  const back = (((index + thursday_days) % week_days) + week_days) % week_days;
  return { from: isoDay(index - back), to: isoDay(index - back + week_days - 1) };
}

/** The weeks from one day to another, both in them; none where one is no day or they are the wrong way round. */
export function weeksBetween(first: string, last: string): readonly Week[] {
  const [begin, end] = [weekOfDay(first), weekOfDay(last)];
  if (begin === null || end === null) return [];
  const [from, to] = [readIsoDay(begin.from)!, readIsoDay(end.from)!];
  const count = Math.max(0, Math.floor((to - from) / week_days) + 1);
  return Array.from({ length: count }, (_, i) => {
    const monday = from + i * week_days;
    return { from: isoDay(monday), to: isoDay(monday + week_days - 1) };
  });
}

/** Have two spans of days one in common? A day that is not known has none. */
export const meets = (week: Week, first: string | null, last: string | null): boolean =>
  first !== null && last !== null && first <= week.to && last >= week.from;
