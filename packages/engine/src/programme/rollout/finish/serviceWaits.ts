import { calendarDay, neverServes_days, type WaitsByYear } from '../../../kernel/index.ts';
import { leapDays } from '../leapDays.ts';
import type { RolloutProblem } from '../problem.ts';
import { knownOfYear_fraction, yearDrawn_days } from './constants.ts';

/** Waits from hand-over to service, ready to be looked up in the year that was drawn. */
export interface ReadyWaits {
  readonly ofJobs: readonly (WaitsByYear | null)[];
  /** Of each day looked ahead: its day of a leap year, and how many calendar years it lies after the first day of its year of the rollout. */
  readonly dayOfYear: Uint16Array;
  readonly after_years: Int16Array;
}

/** Makes the waits of all jobs ready. */
export function readyWaits(problem: RolloutProblem): ReadyWaits {
  const { firstDay, horizon_days } = problem;
  const first = calendarDay(firstDay).year;
  // A year looked at is whole, also where fewer days are looked ahead.
  const days = Math.max(horizon_days, yearDrawn_days);
  return {
    ofJobs: problem.jobs.map(({ serviceWaits }) => serviceWaits),
    dayOfYear: leapDays({ firstDay, horizon_days: days }),
    after_years: Int16Array.from(
      { length: days },
      (_, day) => calendarDay(firstDay + day).year - first - Math.floor(day / yearDrawn_days),
    ),
  };
}

/** The years of each job's record of which enough is known; jobs of the same years share a list. */
export function waitsOfYears(waits: ReadyWaits): readonly (readonly number[])[] {
  const lists = new Map<string, readonly number[]>();
  return waits.ofJobs.map((own) => {
    const found: number[] = [];
    for (let at = 0; at < (own?.years_count ?? 0); at++) {
      let known = 0;
      for (let day = 0; day < yearDrawn_days; day++)
        if (waitOf(waits, own!, own!.firstYear + at, day) !== null) known++;
      if (known >= knownOfYear_fraction * yearDrawn_days) found.push(own!.firstYear + at);
    }
    const key = found.join();
    const list = lists.get(key) ?? found;
    lists.set(key, list);
    return list;
  });
}

/** How long would a site that is handed over on a day wait, were its year of the rollout that year of its record [day]? Null: the record does not say. */
export function waitOf(waits: ReadyWaits, own: WaitsByYear, year: number, day: number): number | null {
  const at = year + waits.after_years[day]! - own.firstYear;
  if (at < 0 || at >= own.years_count) return null;
  const wait = own.wait_days[waits.dayOfYear[day]! * own.years_count + at]!;
  return wait < neverServes_days ? wait : null;
}
