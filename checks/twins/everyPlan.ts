import {
  type BrokenKind,
  brokenKinds,
  type CrewTrips,
  crewsTogether,
  type Retiming,
  type RolloutPlan,
  type RolloutProblem,
  retiming,
} from '../../packages/engine/src/programme/rollout/index.ts';

/** What a plan may have wrong with it and still be counted; and what is the least. */
export interface BestAsked {
  /** Kinds of what is broken that a plan may have. Given none: `late` and `sleepsAtSite`. */
  readonly mayHave?: readonly BrokenKind[];
  /** May sites stand in no trip? They then count to the horizon. */
  readonly mayLeaveOut?: boolean;
  /** What is to be least; given none: waiting. Sites left out are in `waiting`. */
  readonly price?: (waiting: number, ready: Retiming) => number;
}

export interface BestPlan {
  readonly plan: RolloutPlan;
  /** Sum of weight x first day of service [person-day], and the price, the same where none was asked. */
  readonly waiting: number;
  readonly price: number;
  /** Plans looked at. */
  readonly plans_count: number;
}

/** The best of all plans of a tiny rollout, by timing each: 4 sites and 2 crews are 672 plans, 5 are 7,680, 6 are 103,680. Null where none can be done. */
export function bestPlan(problem: RolloutProblem, asked: BestAsked = {}): BestPlan | null {
  const ready = retiming(problem);
  const crews = problem.crews.map((_, crew) => crew);
  const allowed = new Set((asked.mayHave ?? ['late', 'sleepsAtSite']).map((kind) => brokenKinds.indexOf(kind)));
  let best: BestPlan | null = null;
  let plans_count = 0;
  everyPlan(problem.jobs.length, crews.length, asked.mayLeaveOut ?? false, (tripsOf, leftOut) => {
    plans_count++;
    let waiting = crewsTogether(ready, crews, tripsOf);
    for (let at = 0; at < ready.broken.count; at++) if (!allowed.has(ready.broken.kind[at]!)) return;
    for (const job of leftOut) waiting += problem.jobs[job]!.weight * problem.horizon_days;
    const price = asked.price?.(waiting, ready) ?? waiting;
    if (best === null || price < best.price) best = { plan: planOf(tripsOf), waiting, price, plans_count };
  });
  return best === null ? null : { ...(best as BestPlan), plans_count };
}

/** Tells every plan of so many jobs and crews: each order of each share of the jobs on each crew, cut into trips in every way. */
export function everyPlan(
  jobs: number,
  crews: number,
  mayLeaveOut: boolean,
  tell: (tripsOf: readonly CrewTrips[], leftOut: readonly number[]) => void,
): void {
  const tripsOf = Array.from({ length: crews }, (): CrewTrips => {
    return { stops: new Int32Array(jobs), ends: new Int32Array(jobs), trips_count: 0, notBefore: null };
  });
  const left = new Set(Array.from({ length: jobs }, (_, job) => job));
  const fill = (crew: number, stops_count: number) => {
    if (crew === crews) {
      if (left.size === 0 || mayLeaveOut) tell(tripsOf, [...left]);
      return;
    }
    const own = tripsOf[crew]!;
    fill(crew + 1, 0);
    for (const job of [...left]) {
      left.delete(job);
      own.stops[stops_count] = job;
      for (const isNew of own.trips_count === 0 ? [true] : [false, true]) {
        if (isNew) own.trips_count++;
        own.ends[own.trips_count - 1] = stops_count + 1;
        fill(crew, stops_count + 1);
        if (isNew) own.trips_count--;
        if (own.trips_count > 0) own.ends[own.trips_count - 1] = stops_count;
      }
      left.add(job);
    }
    for (let later = crew + 1; later < crews; later++) tripsOf[later]!.trips_count = 0;
  };
  fill(0, 0);
}

function planOf(tripsOf: readonly CrewTrips[]): RolloutPlan {
  return {
    trips: tripsOf.map(({ stops, ends, trips_count }) =>
      Array.from({ length: trips_count }, (_, trip) => ({
        stops: Array.from(stops.subarray(trip === 0 ? 0 : ends[trip - 1]!, ends[trip]!)),
        notBefore: 0,
        isLocked: false,
      })),
    ),
  };
}
