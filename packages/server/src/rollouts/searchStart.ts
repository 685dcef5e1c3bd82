import type { RolloutPlan, RolloutProblem } from '@eavewell/engine';

/** A plan to go on from; where only some crews may change, the trips of all others are locked, and so are those that are to be kept. */
export function startOf(
  { crews }: RolloutProblem,
  { trips }: RolloutPlan,
  onlyCrews: readonly string[] | null,
  isKept: (crew: number, trip: number) => boolean = () => false,
): RolloutPlan {
  const mayChange = (crew: number) => onlyCrews === null || onlyCrews.includes(crews[crew]!.crewId);
  return {
    trips: trips.map((own, crew) =>
      own.map((trip, at) => (mayChange(crew) && !isKept(crew, at) ? trip : { ...trip, isLocked: true })),
    ),
  };
}

/**
 * What the trips of a new plan are called: each as the trip there was that shares the most sites with it, its own crew's first; a trip
 * that shares none is new. A trip that was locked for the search alone is as it was.
 */
export function namedAfter(
  plan: RolloutPlan,
  before: { readonly plan: RolloutPlan; readonly tripIds: readonly (readonly string[])[] },
): { readonly plan: RolloutPlan; readonly tripIds: readonly (readonly (string | null)[])[] } {
  const old = before.plan.trips.flatMap((trips, crew) =>
    trips.map((trip, at) => ({ crew, trip, id: before.tripIds[crew]?.[at] ?? null })),
  );
  const oldOf = new Map(old.flatMap((one, at) => one.trip.stops.map((job) => [job, at] as const)));
  const pairs = plan.trips.flatMap((trips, crew) =>
    trips.flatMap(({ stops }, at) => {
      const shared = new Map<number, number>();
      for (const job of stops) {
        const from = oldOf.get(job);
        if (from !== undefined) shared.set(from, (shared.get(from) ?? 0) + 1);
      }
      return [...shared].map(([from, count]) => ({
        crew,
        at,
        from,
        score: 2 * count + (old[from]!.crew === crew ? 1 : 0),
      }));
    }),
  );
  pairs.sort((a, b) => b.score - a.score || a.from - b.from || a.crew - b.crew || a.at - b.at);
  const taken = new Set<number>();
  const named = plan.trips.map((trips) => trips.map((): (typeof old)[number] | null => null));
  for (const { crew, at, from } of pairs) {
    if (taken.has(from) || named[crew]![at] !== null) continue;
    taken.add(from);
    named[crew]![at] = old[from]!;
  }
  return {
    plan: {
      trips: plan.trips.map((trips, crew) =>
        trips.map((trip, at) => ({ ...trip, isLocked: trip.isLocked && (named[crew]![at]?.trip.isLocked ?? true) })),
      ),
    },
    tripIds: named.map((trips) => trips.map((one) => one?.id ?? null)),
  };
}
