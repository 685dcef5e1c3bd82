import type { NamedPlan } from './namedAfter.ts';
import type { TimedPlan } from './planChanges.ts';

/** A trip that is otherwise than before. Null: it is not made under that plan. */
export interface ChangedTrip {
  readonly tripId: string;
  readonly crewBefore: number | null;
  readonly crewAfter: number | null;
  readonly leavesBefore: number | null;
  readonly leavesAfter: number | null;
  /** Does it go to other sites, or to the same ones in another order? */
  readonly hasOtherStops: boolean;
}

/** A plan with what came of it and what its trips are called. */
type NamedTimed = TimedPlan & NamedPlan;

/**
 * Which trips move from one plan to another: to another day, another crew, other sites?
 *
 * @param before - the plan there was, with its outcome and the ids of its trips
 * @param after - the plan there is now; a trip of the same id is the same trip
 * @returns trips that are new, gone, or otherwise [day], in the order of the crews
 * @law a plan compared with itself changes no trip
 * @definition ours: docs/methods/rollout.md, Kept plans, and what has happened
 */
export function tripChanges(before: NamedTimed, after: NamedTimed): readonly ChangedTrip[] {
  const [was, is] = [tripsOf(before), tripsOf(after)];
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((tripId): readonly ChangedTrip[] => {
    const [old, now] = [was.get(tripId), is.get(tripId)];
    const hasOtherStops = old === undefined || now === undefined || old.stops.join() !== now.stops.join();
    if (!hasOtherStops && old.crew === now.crew && old.leaves === now.leaves) return [];
    return [
      {
        ...{ tripId, crewBefore: old?.crew ?? null, crewAfter: now?.crew ?? null },
        ...{ leavesBefore: old?.leaves ?? null, leavesAfter: now?.leaves ?? null, hasOtherStops },
      },
    ];
  });
}

function tripsOf({ plan, outcome, tripIds }: NamedTimed) {
  return new Map(
    plan.trips.flatMap((trips, crew) =>
      trips.map(({ stops }, at) => {
        const { leaves } = outcome.trips[crew]![at]!;
        return [tripIds[crew]![at]!, { crew, stops, leaves }] as const;
      }),
    ),
  );
}
