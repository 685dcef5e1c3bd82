/** Jobs for the plain planner of vehicles that go out several times: ways from stop to stop (i × stops + j), base first. */
export interface PlainTurns {
  readonly cost: Float64Array;
  readonly time: Float64Array;
  readonly demand: readonly number[];
  readonly capacity: number;
  readonly vehicles: number;
  readonly opens: readonly number[];
  readonly closes: readonly number[];
  /** Of the base: loading. */
  readonly service: readonly number[];
  readonly release: readonly number[];
}

/** A vehicle's trips in their order, each with its jobs. */
export type PlainRow = readonly (readonly number[])[];

/** What does one trip cost that may begin at `from`, and when is the vehicle back? Null where a limit is broken. */
export function walkedTrip(
  jobs: PlainTurns,
  trip: readonly number[],
  from: number,
): { cost: number; back: number } | null {
  const stops = jobs.demand.length;
  if (trip.reduce((sum, job) => sum + jobs.demand[job]!, 0) > jobs.capacity) return null;
  let clock = Math.max(from, jobs.opens[0]!, ...trip.map((job) => jobs.release[job]!)) + jobs.service[0]!;
  let cost = 0;
  let at = 0;
  for (const stop of [...trip, 0]) {
    cost += jobs.cost[at * stops + stop]!;
    clock += jobs.time[at * stops + stop]!;
    if (stop !== 0) clock = Math.max(clock, jobs.opens[stop]!);
    if (clock > jobs.closes[stop]! + 1e-9) return null;
    if (stop !== 0) clock += jobs.service[stop]!;
    at = stop;
  }
  return { cost, back: clock };
}

/** What do the rows cost? Null where a limit is broken, a job is in twice, or there are more rows than vehicles. */
export function walkedRows(jobs: PlainTurns, rows: readonly PlainRow[]): number | null {
  const all = rows.flat(2);
  if (rows.length > jobs.vehicles || new Set(all).size !== all.length) return null;
  let sum = 0;
  for (const row of rows) {
    let from = jobs.opens[0]!;
    for (const trip of row) {
      const walked = trip.length === 0 ? null : walkedTrip(jobs, trip, from);
      if (walked === null) return null;
      sum += walked.cost;
      from = walked.back;
    }
  }
  return sum;
}

/** The least that all jobs can cost, of every plan there is; Infinity where no plan serves all. For six jobs at most. */
export function leastOfTurns(jobs: PlainTurns): number {
  const count = jobs.demand.length - 1;
  const sets = 2 ** count;
  const one = Array.from({ length: sets }, (_, set) => leastRow(jobs, set, jobs.opens[0]!));
  let least = one;
  for (let vehicle = 1; vehicle < jobs.vehicles; vehicle++) {
    const fewer = least;
    least = one.map((alone, set) => {
      let best = Math.min(alone, fewer[set]!);
      for (let part = set; part > 0; part = (part - 1) & set) best = Math.min(best, one[part]! + fewer[set ^ part]!);
      return best;
    });
  }
  return least[sets - 1]!;
}

/** One vehicle that serves a set from a time on: every first trip, then the same of what is left. */
function leastRow(jobs: PlainTurns, set: number, from: number): number {
  if (set === 0) return 0;
  let best = Number.POSITIVE_INFINITY;
  const grow = (trip: readonly number[], left: number) => {
    if (trip.length > 0) {
      const walked = walkedTrip(jobs, trip, from);
      if (walked !== null) best = Math.min(best, walked.cost + leastRow(jobs, left, walked.back));
    }
    for (let job = 1; job < jobs.demand.length; job++)
      if (left & (1 << (job - 1))) grow([...trip, job], left & ~(1 << (job - 1)));
  };
  grow([], set);
  return best;
}
