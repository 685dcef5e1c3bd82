/** Jobs for the plain planner: costs and times from stop to stop (i × stops + j), base first. */
export interface PlainJobs {
  readonly cost: Float64Array;
  readonly demand: readonly number[];
  readonly capacity: number;
  readonly windows: {
    readonly opens: readonly number[];
    readonly closes: readonly number[];
    readonly service: readonly number[];
  } | null;
}

/**
 * What do trips cost, leg by leg, and is any limit broken? Null where a load or a window is not kept, where a job is in no trip or twice.
 */
export function plainCost(jobs: PlainJobs, trips: readonly (readonly number[])[]): number | null {
  const stops = jobs.demand.length;
  const all = trips.flat();
  if (all.length !== stops - 1 || new Set(all).size !== all.length) return null;
  const costs = trips.map((trip) => tripCost(jobs, trip));
  return costs.every((cost) => cost !== null) ? costs.reduce<number>((sum, cost) => sum + cost!, 0) : null;
}

/** The least that all jobs can cost: every order of every set of jobs, then every way to part the jobs into sets. For eight jobs at most. */
export function leastCost(jobs: PlainJobs): number {
  const count = jobs.demand.length - 1;
  const sets = 2 ** count;
  const alone = Array.from({ length: sets }, (_, set) => bestOrder(jobs, members(set, count)));
  const least = [0];
  for (let set = 1; set < sets; set++) {
    let best = Number.POSITIVE_INFINITY;
    for (let part = set; part > 0; part = (part - 1) & set) best = Math.min(best, alone[part]! + least[set ^ part]!);
    least.push(best);
  }
  return least[sets - 1]!;
}

function members(set: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => index + 1).filter((job) => set & (1 << (job - 1)));
}

function bestOrder(jobs: PlainJobs, those: readonly number[], begun: readonly number[] = []): number {
  if (those.length === 0) return tripCost(jobs, begun) ?? Number.POSITIVE_INFINITY;
  if (begun.length === 0 && those.reduce((sum, job) => sum + jobs.demand[job]!, 0) > jobs.capacity)
    return Number.POSITIVE_INFINITY;
  return Math.min(
    ...those.map((job) =>
      bestOrder(
        jobs,
        those.filter((other) => other !== job),
        [...begun, job],
      ),
    ),
  );
}

function tripCost({ cost, demand, capacity, windows }: PlainJobs, trip: readonly number[]): number | null {
  const stops = demand.length;
  let sum = 0;
  let load = 0;
  let from = 0;
  let left = windows === null ? 0 : windows.opens[0]!;
  for (const stop of [...trip, 0]) {
    const leg = cost[from * stops + stop]!;
    sum += leg;
    load += demand[stop]!;
    if (windows !== null) {
      const begun = Math.max(left + leg, windows.opens[stop]!);
      if (begun > windows.closes[stop]!) return null;
      left = begun + windows.service[stop]!;
    }
    from = stop;
  }
  return load > capacity ? null : sum;
}
