import type { RolloutPlan } from '../problem.ts';

/** Where a site is to stand: among the other stops of a trip, or in a trip of its own before the crew's trip `newTripAt` (or after the last). */
export type SitePlace =
  | { readonly crew: number; readonly trip: number; readonly at: number }
  | { readonly crew: number; readonly newTripAt: number };

/** Why a change by hand is not made. */
export const moveRefusals = [
  'locked',
  'noSuchCrew',
  'noSuchTrip',
  'noSuchSite',
  'noSuchPlace',
  'notInPlan',
  'inPlanAlready',
  'sameTrip',
  'noDay',
] as const;
export type MoveRefusal = (typeof moveRefusals)[number];

/** A plan with a change made by hand, or why it is not made. Fields of a trip beyond those of a plan stay with it; a new trip has none. */
export type Moved =
  | { readonly plan: RolloutPlan; readonly reason: null }
  | { readonly plan: null; readonly reason: MoveRefusal };

/**
 * Where does a site stand in a plan?
 *
 * @param plan - the plan
 * @param job - which site [index]
 * @returns its crew, its trip and its place among the stops [index]; null: it is in no trip
 * @definition ours
 */
export function standsAt(plan: RolloutPlan, job: number): { crew: number; trip: number; at: number } | null {
  for (const [crew, own] of plan.trips.entries())
    for (const [trip, { stops }] of own.entries()) {
      const at = stops.indexOf(job);
      if (at >= 0) return { crew, trip, at };
    }
  return null;
}

export function refused(reason: MoveRefusal): Moved {
  return { plan: null, reason };
}
