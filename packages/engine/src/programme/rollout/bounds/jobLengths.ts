import type { Arrival, RolloutProblem } from '../problem.ts';

/** What is least about each job, whatever the plan. Arrays are as the jobs. */
export interface JobLeast {
  /** Days of work, by the quickest crew after all that it could have learned [working day]. */
  readonly install_days: Float64Array;
  /** The first day on which its store could have what it takes, were it the only one [day]. */
  readonly goodsFrom: Float64Array;
  /** The first and the last day on which work may be done there [day]. */
  readonly opens: Float64Array;
  readonly closes: Float64Array;
  /** The least days from hand-over to service, over all days of a year. */
  readonly serviceWait_days: Float64Array;
}

/**
 * What is least about each job?
 *
 * @param problem - the rollout
 * @returns least work [working day], first days [day]
 * @definition ours: docs/methods/rollout.md, Bounds
 */
export function jobLeast(problem: RolloutProblem): JobLeast {
  const { jobs, crews, learning_fraction, horizon_days } = problem;
  const most = jobs.length + Math.max(0, ...crews.map(({ done_count }) => done_count));
  const pace =
    Math.min(...crews.map(({ pace_factor }) => pace_factor)) * Math.max(1, most) ** Math.log2(learning_fraction);
  const openDays = reachableDays(problem);
  const of = (value: (job: (typeof jobs)[number]) => number) => Float64Array.from(jobs, value);
  return {
    install_days: of(({ install_days }) => install_days.likely * pace),
    goodsFrom: of(({ needs }) => firstDayOfGoods(problem, needs)),
    opens: Float64Array.from(jobs, (_, job) => firstStart(problem, job, openDays[job]!)),
    closes: of(({ windows }) => windows.at(-1)?.to ?? horizon_days),
    serviceWait_days: of(({ serviceWait_days }) =>
      Array.from(serviceWait_days).reduce((a, b) => Math.min(a, b), Infinity),
    ),
  };
}

/** 1 on the days on which some leg to a job is open, for anybody; as the jobs, `horizon_days` long. */
function reachableDays({ travels, periods, placeIds, jobs, horizon_days }: RolloutProblem): readonly Uint8Array[] {
  const nodes = placeIds.length + jobs.length;
  const open = jobs.map(() => new Uint8Array(horizon_days));
  for (const [at, { from }] of periods.entries()) {
    const to = Math.min(horizon_days, periods[at + 1]?.from ?? horizon_days);
    for (const [job, days] of open.entries()) {
      const into = placeIds.length + job;
      const isOpen = travels.some(({ byPeriod }) => {
        const { landBefore_h, river_h, landAfter_h } = byPeriod[at]!;
        for (let node = 0; node < nodes; node++) {
          const leg = node * nodes + into;
          if (node !== into && landBefore_h[leg]! + river_h[leg]! + landAfter_h[leg]! < Number.POSITIVE_INFINITY)
            return true;
        }
        return false;
      });
      if (isOpen) days.fill(1, Math.max(0, from), to);
    }
  }
  return open;
}

/** The first day on which work may be done, and a crew can have come no longer ago than it may be away; the horizon where there is none. */
function firstStart({ jobs, crews, horizon_days }: RolloutProblem, job: number, reachable: Uint8Array): number {
  const away = Math.max(...crews.map(({ mostDaysAway }) => mostDaysAway));
  for (const { from, to } of jobs[job]!.windows) {
    let came = Number.NEGATIVE_INFINITY;
    for (
      let day = Math.max(0, Math.floor(from - Math.min(away, horizon_days)));
      day <= Math.min(to, horizon_days - 1);
      day++
    ) {
      if (reachable[day] === 1) came = day;
      if (day >= from && day - came <= away) return day;
    }
  }
  return horizon_days;
}

/** The first day on which some store could have received as much as is asked, nothing taken before; the horizon where none has. */
function firstDayOfGoods({ stores, crews, horizon_days }: RolloutProblem, needs: readonly number[]): number {
  if (needs.every((need) => need === 0)) return 0;
  let first = horizon_days;
  for (const index of new Set(crews.map(({ store }) => store))) {
    let store = stores[index]!;
    let carried_days = 0;
    while (store.filledBy !== null) {
      carried_days += Math.min(...store.filledBy.there_days);
      store = stores[store.filledBy.store]!;
    }
    const has = needs.map(() => 0);
    const inOrder = [...store.arrivals].sort((a, b) => arrivalDay(a) - arrivalDay(b));
    const enough = inOrder.find(({ goods, quantity_count }) => {
      has[goods] = has[goods]! + quantity_count;
      return needs.every((need, each) => has[each]! >= need);
    });
    if (enough) first = Math.min(first, Math.floor(arrivalDay(enough) + carried_days));
  }
  return first;
}

/**
 * From which day on is an arrival in its store, if it is as late as is likely?
 *
 * @param arrival - when it is due, and how late it may be [day]
 * @returns the first whole day [day], 0 or later
 * @definition docs/methods/rollout.md
 */
export function arrivalDay({ day, slip_days }: Arrival): number {
  return Math.max(0, Math.ceil(day + slip_days.likely - 1e-9));
}

/**
 * On which day does a job first serve, were it handed over on this day or any later one?
 *
 * @param serviceWait_days - days from hand-over to service by day of a year, 366 values [day]
 * @param dayOfYear - day of a year of each day of the horizon, 0 to 365
 * @returns for each day of the horizon the earliest first day of service [day]
 * @law never falls, and is never before the day
 * @definition ours
 */
export function earliestService(serviceWait_days: ArrayLike<number>, dayOfYear: ArrayLike<number>): Float64Array {
  const service = new Float64Array(dayOfYear.length);
  let earliest = Infinity;
  for (let day = dayOfYear.length - 1; day >= 0; day--) {
    earliest = Math.min(earliest, day + serviceWait_days[dayOfYear[day]!]!);
    service[day] = earliest;
  }
  return service;
}
