import type { PlannedTrip, RolloutPlan } from '../problem.ts';
import { type Moved, type MoveRefusal, refused, type SitePlace, standsAt } from './places.ts';

/**
 * Moves a site to another place of the plan. A trip that loses its last site vanishes.
 *
 * @param plan - the plan there is
 * @param job - which site [index]
 * @param to - where it is to stand: crew, trip and new trip as in the plan there is, `at` among the other stops of that trip [count]
 * @returns the plan with the change, or why it is not made
 * @law all other sites keep their order; the plan that is given stays as it is
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function moveSite(plan: RolloutPlan, job: number, to: SitePlace): Moved {
  const from = standsAt(plan, job);
  if (from === null) return refused('notInPlan');
  if (plan.trips[from.crew]![from.trip]!.isLocked) return refused('locked');
  return placed(plan, job, to);
}

/**
 * Takes a site out of the plan.
 *
 * @param plan - the plan there is
 * @param job - which site [index]
 * @returns the plan without it, or why it stays
 * @law `putSiteIn` at the place it had gives the plan there was, unless it stood alone in its trip
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function takeSiteOut(plan: RolloutPlan, job: number): Moved {
  const from = standsAt(plan, job);
  if (from === null) return refused('notInPlan');
  if (plan.trips[from.crew]![from.trip]!.isLocked) return refused('locked');
  return { plan: withoutEmpty(without(plan.trips, job)), reason: null };
}

/**
 * Puts a site that is in no trip into the plan.
 *
 * @param plan - the plan there is
 * @param job - which site [index]
 * @param to - where it is to stand [count]
 * @returns the plan with it, or why it is not put there
 * @law `takeSiteOut` after it gives the plan there was
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function putSiteIn(plan: RolloutPlan, job: number, to: SitePlace): Moved {
  if (!Number.isInteger(job) || job < 0) return refused('noSuchSite');
  return standsAt(plan, job) === null ? placed(plan, job, to) : refused('inPlanAlready');
}

type Trips = readonly (readonly PlannedTrip[])[];

function placed({ trips }: RolloutPlan, job: number, to: SitePlace): Moved {
  const reason = whyNot(trips, job, to);
  if (reason !== null) return refused(reason);
  const left = without(trips, job);
  const own = left[to.crew]!;
  const changed =
    'trip' in to
      ? own.map((trip, at) => (at === to.trip ? { ...trip, stops: trip.stops.toSpliced(to.at, 0, job) } : trip))
      : own.toSpliced(to.newTripAt, 0, { stops: [job], notBefore: 0, isLocked: false });
  return { plan: withoutEmpty(left.with(to.crew, changed)), reason: null };
}

function whyNot(trips: Trips, job: number, to: SitePlace): MoveRefusal | null {
  const own = trips[to.crew];
  if (own === undefined) return 'noSuchCrew';
  if (!('trip' in to)) return isPlace(to.newTripAt, own.length) ? null : 'noSuchPlace';
  const trip = own[to.trip];
  if (trip === undefined) return 'noSuchTrip';
  if (trip.isLocked) return 'locked';
  const others_count = trip.stops.length - (trip.stops.includes(job) ? 1 : 0);
  return isPlace(to.at, others_count) ? null : 'noSuchPlace';
}

function isPlace(at: number, most: number): boolean {
  return Number.isInteger(at) && at >= 0 && at <= most;
}

/** All trips, that of the job without it, perhaps with no stop left. */
function without(trips: Trips, job: number): Trips {
  return trips.map((own) =>
    own.some(({ stops }) => stops.includes(job))
      ? own.map((trip) =>
          trip.stops.includes(job) ? { ...trip, stops: trip.stops.filter((stop) => stop !== job) } : trip,
        )
      : own,
  );
}

/** Trips with no stop vanish, unless they are locked. */
export function withoutEmpty(trips: Trips): RolloutPlan {
  const isKept = ({ stops, isLocked }: PlannedTrip) => stops.length > 0 || isLocked;
  return { trips: trips.map((own) => (own.every(isKept) ? own : own.filter(isKept))) };
}
