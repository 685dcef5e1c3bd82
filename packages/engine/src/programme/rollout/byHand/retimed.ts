import { crewsTogether } from '../crewsTogether.ts';
import { type CrewTrips, crewTripsOf } from '../crewTrips.ts';
import type { TimedPlan } from '../planChanges.ts';
import { brokenFound } from '../planOutcome.ts';
import type { Broken, PlannedTrip, RolloutPlan } from '../problem.ts';
import type { Retiming } from '../retiming.ts';

/** A changed plan, timed anew as far as the change can reach. */
export interface Retimed {
  /** 1 for crews that were timed anew: their times stand in the problem made ready. */
  readonly isNew: Uint8Array;
  /** What is broken in the trips of all crews; sites in no trip are not among it. */
  readonly broken: readonly Broken[];
}

/** `flat`: the trips of the plan before, or of the changed one. Times the crews whose trips differ and those that share stock, hauls or carriers with them; of the others what came of the plan before holds. */
export function retimed(ready: Retiming, before: TimedPlan, flat: readonly CrewTrips[], plan: RolloutPlan): Retimed {
  const { crews } = ready.problem;
  const isTouched = crews.map((_, crew) => !isSame(before.plan.trips[crew] ?? [], plan.trips[crew] ?? []));
  const groups = new Set([...crews.keys()].filter((crew) => isTouched[crew]).map((crew) => ready.groupOf[crew]!));
  const isNew = Uint8Array.from(crews, (_, crew) => (groups.has(ready.groupOf[crew]!) ? 1 : 0));
  const tripsOf = crews.map((_, crew) => (isTouched[crew] ? crewTripsOf(plan.trips[crew] ?? []) : flat[crew]!));
  crewsTogether(
    ready,
    [...crews.keys()].filter((crew) => isNew[crew] === 1),
    tripsOf,
  );
  const kept = before.outcome.broken.filter((one) => 'crew' in one && isNew[one.crew] === 0);
  return { isNew, broken: [...kept, ...brokenFound(ready)] };
}

/** The trips of a plan, flat, crew by crew. */
export function flatTrips({ problem }: Retiming, { trips }: RolloutPlan): readonly CrewTrips[] {
  return problem.crews.map((_, crew) => crewTripsOf(trips[crew] ?? []));
}

/** Are these the same sites in the same order, leaving no earlier than before? Locks change no day. */
function isSame(one: readonly PlannedTrip[], two: readonly PlannedTrip[]): boolean {
  if (one === two) return true;
  return (
    one.length === two.length &&
    one.every((trip, at) => {
      const other = two[at]!;
      if (trip === other) return true;
      return (
        trip.notBefore === other.notBefore &&
        trip.stops.length === other.stops.length &&
        trip.stops.every((job, place) => job === other.stops[place])
      );
    })
  );
}
