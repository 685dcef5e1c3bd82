import { type CalendarDays, type CrewFacts, calendarDay, type DayIndex, type SiteWork } from './kernel/index.ts';

/** Days counted from the first day of a plan. */
export interface PlanDays {
  readonly firstDay: DayIndex;
  readonly horizon_days: number;
}

/**
 * On which days does a crew work? From its first to its last, but on its days of rest, and as its calendar says of a day.
 *
 * @param crew - days of rest, first and last day [day]
 * @param calendars - days on which those of a calendar rest, or work though they would rest [day]
 * @param plan - first day and how many are looked at [day]
 * @returns 1 on a day it works, a day each [count]
 * @definition ours: what a calendar says of a day counts before the days of rest; of two that speak of it, the one that rests
 */
export function workingDays(crew: CrewFacts, calendars: readonly CalendarDays[], plan: PlanDays): Uint8Array {
  const { firstDay, horizon_days } = plan;
  const works = Uint8Array.from({ length: horizon_days }, (_, index) =>
    crew.restDays.includes(weekdayOf(firstDay + index)) ? 0 : 1,
  );
  const own = calendars.filter(({ calendarId }) => calendarId === crew.calendarId);
  for (const one of [...own.filter(({ works: at }) => at), ...own.filter(({ works: at }) => !at)])
    works.fill(
      one.works ? 1 : 0,
      clamped(one.from - firstDay, horizon_days),
      clamped(one.to - firstDay + 1, horizon_days),
    );
  if (crew.from !== null) works.fill(0, 0, clamped(crew.from - firstDay, horizon_days));
  if (crew.to !== null) works.fill(0, clamped(crew.to - firstDay + 1, horizon_days));
  return works;
}

/**
 * When may work be done at a site? On days of its months, from the day it is ready and agreed on.
 *
 * @param work - months, ready from, agreed on [day]
 * @param plan - first day and how many are looked at [day]
 * @returns stretches of days of the plan [day], both ends included, in order; empty where there is none
 * @definition ours
 */
export function workWindows(
  { workMonths, readyFrom, agreedOn }: Pick<SiteWork, 'workMonths' | 'readyFrom' | 'agreedOn'>,
  { firstDay, horizon_days }: PlanDays,
): readonly { readonly from: number; readonly to: number }[] {
  const first = Math.max(0, (readyFrom ?? firstDay) - firstDay, (agreedOn ?? firstDay) - firstDay);
  const windows: { from: number; to: number }[] = [];
  for (let day = first; day < horizon_days; day++) {
    if (workMonths.length > 0 && !workMonths.includes(calendarDay(firstDay + day).month)) continue;
    const last = windows.at(-1);
    if (last?.to === day - 1) last.to = day;
    else windows.push({ from: day, to: day });
  }
  return windows;
}

function clamped(day: number, most: number): number {
  return Math.min(most, Math.max(0, day));
}

/** Day of the week, Sunday 0: 1 January 1970 was a Thursday. */
function weekdayOf(day: DayIndex): number {
  return (((day + 4) % 7) + 7) % 7;
}
