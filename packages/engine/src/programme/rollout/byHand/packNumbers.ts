import type { Crew, Haul, Job, RolloutProblem } from '../problem.ts';
import { ended, Once, type PackedCrew, type PackedHaul, type PackedJobs, type PackedRollout } from './packedForm.ts';
import { packLegs } from './packLegs.ts';
import type { TravelPair } from './pairs.ts';

/**
 * A rollout as JSON carries it, with the legs of some pairs alone: what another thread or the page times plans by.
 *
 * @param problem - the rollout [day, h, kg, L, person]
 * @param pairs - which legs go with it [index]
 * @returns what `readNumbers` makes a rollout of again [day, h, kg, L, person]
 * @law what is read again times every plan that goes by these legs to the same last digit
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function packNumbers(problem: RolloutProblem, pairs: readonly TravelPair[]): PackedRollout {
  const { firstDay, horizon_days, placeIds, areaIds, periods, goods, pools } = problem;
  const calendars = new Once<string>();
  return {
    ...{ firstDay, horizon_days, placeIds, areaIds, periods, goods, pools },
    ...{ learning_fraction: problem.learning_fraction, riverEnds_h: problem.riverEnds_h },
    fuelPrice_per_L: problem.fuelPrice_per_L,
    stores: problem.stores.map(({ node, arrivals, filledBy }) => ({
      ...{ node, arrivals },
      filledBy: filledBy === null ? null : packedHaul(filledBy),
    })),
    crews: problem.crews.map((crew) => packedCrew(crew, calendars)),
    calendars: calendars.list,
    jobs: packedJobs(problem),
    legs: packLegs(problem, pairs),
  };
}

function packedHaul({ there_days, back_days, limit_kg, limit_L, ...rest }: Haul): PackedHaul {
  return {
    ...rest,
    ...{ there_days: there_days.map(ended), back_days: back_days.map(ended) },
    ...{ limit_kg: ended(limit_kg), limit_L: ended(limit_L) },
  };
}

function packedCrew({ works, ...crew }: Crew, calendars: Once<string>): PackedCrew {
  const days = works.join('');
  return {
    ...crew,
    calendar: calendars.place(days, days),
    ...{ freeFrom: ended(crew.freeFrom), mostDaysAway: ended(crew.mostDaysAway) },
    ...{ limit_kg: ended(crew.limit_kg), limit_L: ended(crew.limit_L), longest_m: ended(crew.longest_m) },
  };
}

function packedJobs({ jobs, goods }: RolloutProblem): PackedJobs {
  const windowLists = new Once<readonly number[]>();
  const waitLists = new Once<readonly number[]>();
  const column = (of: (job: Job) => number) => jobs.map(of);
  return {
    siteId: jobs.map(({ siteId }) => siteId),
    ...{ people: column(({ people }) => people), weight: column(({ weight }) => weight) },
    low_days: column(({ install_days }) => install_days.low),
    likely_days: column(({ install_days }) => install_days.likely),
    high_days: column(({ install_days }) => install_days.high),
    finishBy: jobs.map(({ finishBy }) => finishBy),
    ...{ kg: column(({ kg }) => kg), litres: column(({ litres }) => litres) },
    longest_m: column(({ longest_m }) => longest_m),
    ...{ skills: column(({ skills }) => skills), area: column(({ area }) => area) },
    needs: goods.map((_, at) => column(({ needs }) => needs[at] ?? 0)),
    windows: jobs.map(({ windows }) => {
      const days = windows.flatMap(({ from, to }) => [from, to]);
      return windowLists.place(days, days.join());
    }),
    windowLists: windowLists.list,
    waits: jobs.map(({ serviceWait_days }) => {
      const runs = waitRuns(serviceWait_days);
      return runs === null ? null : waitLists.place(runs, runs.join());
    }),
    waitLists: waitLists.list,
  };
}

/** Days of a year as runs that go up or down by the same each day: value, step, days. Null: all 0. */
function waitRuns(days: ArrayLike<number>): readonly number[] | null {
  const runs: number[] = [];
  for (let at = 0; at < days.length; ) {
    const first = days[at]!;
    const step = at + 1 < days.length ? days[at + 1]! - first : 0;
    let count = 1;
    while (at + count < days.length && first + count * step === days[at + count]) count++;
    runs.push(first, count === 1 ? 0 : step, count);
    at += count;
  }
  return runs.length === 3 && runs[0] === 0 && runs[1] === 0 ? null : runs;
}
