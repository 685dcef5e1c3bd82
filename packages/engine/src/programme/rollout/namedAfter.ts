import type { RolloutPlan } from './problem.ts';

/** A plan with what its trips are called, by crew and trip. */
export interface NamedPlan {
  readonly plan: RolloutPlan;
  readonly tripIds: readonly (readonly string[])[];
}

/**
 * What are the trips of a new plan called? Each as the trip there was that shares the most sites with it, its own crew's first; a trip
 * that shares none is new. A trip that was locked for the search alone is as it was.
 *
 * @param plan - the new plan
 * @param before - the plan there was, with the ids of its trips
 * @returns the plan with the locks of its trips as they were, and ids of its trips; null: a trip is new
 * @law a plan named after itself keeps its ids
 * @definition ours: docs/decisions/0356-a-search-is-one-step.md
 */
export function namedAfter(
  plan: RolloutPlan,
  before: NamedPlan,
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
