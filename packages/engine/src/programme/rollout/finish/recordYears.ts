import { calendarDay, type DayIndex, dayIndexOf, daysInMonth } from '../../../kernel/index.ts';
import type { RolloutProblem } from '../problem.ts';
import { knownOfYear_fraction, yearDrawn_days, yearsToDraw_count } from './constants.ts';
import { type ReadyWaits, waitsOfYears } from './serviceWaits.ts';
import type { ClosedDays } from './weatherChain.ts';

/** Years of records that may stand for a year of the rollout: of each area, and of each site's wait for water. */
export interface RecordYears {
  readonly ofAreas: readonly (readonly number[])[];
  readonly ofJobs: readonly (readonly number[])[];
}

/**
 * From which years may be drawn? A year begins on the rollout's first day of the year and counts with nine tenths of its days known. Areas and sites of whose records
 * five and more count take those they have in common, if these are five: then one throw gives all of them the same year, and what is wet is wet for all. Else each takes
 * its own, at the same place of its list. Of fewer than five years an area draws none, as it has a chain; a site draws from those there are.
 */
export function recordYears(
  problem: RolloutProblem,
  areas: readonly { readonly days: ClosedDays | null }[],
  waits: ReadyWaits,
): RecordYears {
  const ofAreas = problem.areaIds.map((_, area) => yearsOf(areas[area]?.days ?? null, problem.firstDay));
  const ofJobs = waitsOfYears(waits);
  const long = [...new Set([...ofAreas, ...ofJobs])].filter(({ length }) => length >= yearsToDraw_count);
  const common = (long[0] ?? []).filter((year) => long.every((years) => years.includes(year)));
  const isCommon = common.length >= yearsToDraw_count;
  const drawn = (years: readonly number[]) => (isCommon && years.length >= yearsToDraw_count ? common : years);
  return {
    ofAreas: ofAreas.map((years) => (years.length < yearsToDraw_count ? [] : drawn(years))),
    ofJobs: ofJobs.map(drawn),
  };
}

/** The years of a record that begin on the rollout's first day of the year and of which enough is known. */
function yearsOf(days: ClosedDays | null, firstDay: DayIndex): readonly number[] {
  if (days === null) return [];
  const { firstDay: begins, state } = days;
  const found: number[] = [];
  const last = begins + state.length - yearDrawn_days;
  for (let year = calendarDay(begins).year; sameDay(firstDay, year) <= last; year++) {
    const start = sameDay(firstDay, year) - begins;
    if (start < 0) continue;
    let known = 0;
    for (let day = start; day < start + yearDrawn_days; day++) if (state[day]! < 2) known++;
    if (known >= knownOfYear_fraction * yearDrawn_days) found.push(year);
  }
  return found;
}

/** The same day of another year; 29 February is 28 February. */
export function sameDay(day: DayIndex, year: number): DayIndex {
  const { month, day: ofMonth } = calendarDay(day);
  return dayIndexOf(year, month, Math.min(ofMonth, month === 2 ? 28 : daysInMonth(year, month)));
}
