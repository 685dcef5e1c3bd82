import type { DayIndex } from '@eavewell/engine';
import type { RolloutSheet } from '@eavewell/tables';
import { axisOf, dayOf, type WeekAxis } from './axis.ts';

/** How many weeks are shown at once: a quarter, half a year, or all there are. */
export const weekChoices = ['quarter', 'half', 'all'] as const;
export type WeekChoice = (typeof weekChoices)[number];

/** Weeks of each choice; 30 of them fill a laptop's page with names of villages' crews beside. Ours. */
const weeksOf = { quarter: 13, half: 26 } as const;

/** A week is never drawn narrower than this, so that a trip of a few days is still one [px]. Ours. */
const least_px = 4;

/** More years than this after the first day are a mistake in a date, and not drawn. Ours. */
const most_days = 12 * 366;

type Spanned = Pick<RolloutSheet, 'day' | 'from' | 'until' | 'crews'>;

/** The first and the last day that are drawn: all trips, today, and the days of the plan. */
export function spanOf({ day, from, until, crews }: Spanned): { readonly from: DayIndex; readonly until: DayIndex } {
  const trips = crews.flatMap((crew) => crew.trips);
  const days = (texts: readonly string[]) => texts.map(dayOf).filter((one) => one !== null);
  const first = days([day, from, ...trips.map(({ leaves }) => leaves)]).reduce((a, b) => Math.min(a, b), Infinity);
  const last = days([day, until, ...trips.map(({ back }) => back)]).reduce((a, b) => Math.max(a, b), -Infinity);
  if (first > last) return { from: 0, until: 0 };
  return { from: first, until: Math.min(last, first + most_days) };
}

/**
 * The axis of what is shown at once.
 *
 * @param span - the days that have to be on it
 * @param choice - how many weeks are to be seen
 * @param room_px - how wide the place for them is
 */
export function axisFor({ from, until }: ReturnType<typeof spanOf>, choice: WeekChoice, room_px: number): WeekAxis {
  const all = axisOf(from, until, 1).weeks_count;
  const shown = choice === 'all' ? all : Math.min(all, weeksOf[choice]);
  return axisOf(from, until, Math.max(least_px, room_px / shown));
}

/** Weeks on a sheet of paper at the most: narrower ones cannot be read there. Ours. */
const onPaper_weeks = 30;

/** The axes of the sheets of paper, one after another: from two weeks before today on, or from the start where nothing comes after. */
export function paperAxes(
  { from, until }: ReturnType<typeof spanOf>,
  today: DayIndex,
  room_px: number,
): readonly WeekAxis[] {
  const begin = today - 14 > from && today <= until ? today - 14 : from;
  const all = axisOf(begin, until, 1);
  const sheets = Math.ceil(all.weeks_count / onPaper_weeks);
  const each = Math.ceil(all.weeks_count / sheets);
  return Array.from({ length: sheets }, (_, nth) => {
    const first = all.first + nth * each * 7;
    return axisOf(first, first + each * 7 - 1, room_px / each);
  });
}
