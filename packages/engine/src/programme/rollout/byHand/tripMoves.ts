import type { PlannedTrip, RolloutPlan } from '../problem.ts';
import { type Moved, type MoveRefusal, refused } from './places.ts';
import { withoutEmpty } from './siteMoves.ts';

/** One trip of a plan. */
export interface TripPlace {
  readonly crew: number;
  readonly trip: number;
}

/**
 * Moves a whole trip to another place among the trips of its crew or of another.
 *
 * @param plan - the plan there is
 * @param from - which trip [index]
 * @param to - whose it is to be, and before which of the crew's other trips it goes (or after the last) [index]
 * @returns the plan with the change, or why it is not made
 * @law its stops, their order and its first day stay
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function moveTrip(
  plan: RolloutPlan,
  from: TripPlace,
  to: { readonly crew: number; readonly at: number },
): Moved {
  const reason = whyNot(plan, from);
  if (reason !== null) return refused(reason);
  if (plan.trips[to.crew] === undefined) return refused('noSuchCrew');
  const trip = plan.trips[from.crew]![from.trip]!;
  const left = plan.trips.with(from.crew, plan.trips[from.crew]!.toSpliced(from.trip, 1));
  const own = left[to.crew]!;
  if (!Number.isInteger(to.at) || to.at < 0 || to.at > own.length) return refused('noSuchPlace');
  return { plan: withoutEmpty(left.with(to.crew, own.toSpliced(to.at, 0, trip))), reason: null };
}

/**
 * Makes one trip of two: the stops of the second follow those of the first, where the first stood.
 *
 * @param plan - the plan there is
 * @param first - the trip that stays [index]
 * @param second - the trip that goes into it [index]
 * @returns the plan with the change, or why it is not made
 * @law `splitTrip` behind the first's stops gives two trips with the stops there were
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function joinTrips(plan: RolloutPlan, first: TripPlace, second: TripPlace): Moved {
  const reason = whyNot(plan, first) ?? whyNot(plan, second);
  if (reason !== null) return refused(reason);
  if (first.crew === second.crew && first.trip === second.trip) return refused('sameTrip');
  const { stops } = plan.trips[second.crew]![second.trip]!;
  const joined = changed(plan, first, (trip) => ({ ...trip, stops: [...trip.stops, ...stops] }));
  return { plan: withoutEmpty(changed(joined, second, (trip) => ({ ...trip, stops: [] })).trips), reason: null };
}

/**
 * Makes two trips of one, one after the other.
 *
 * @param plan - the plan there is
 * @param place - which trip [index]
 * @param at - the stop with which the second begins [index]
 * @returns the plan with the change, or why it is not made
 * @law the stops keep their order
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function splitTrip(plan: RolloutPlan, place: TripPlace, at: number): Moved {
  const reason = whyNot(plan, place);
  if (reason !== null) return refused(reason);
  const own = plan.trips[place.crew]!;
  const trip = own[place.trip]!;
  if (!Number.isInteger(at) || at < 1 || at >= trip.stops.length) return refused('noSuchPlace');
  const first = { ...trip, stops: trip.stops.slice(0, at) };
  const second: PlannedTrip = { stops: trip.stops.slice(at), notBefore: 0, isLocked: false };
  const parted = own.toSpliced(place.trip, 1, first, second);
  return { plan: withoutEmpty(plan.trips.with(place.crew, parted)), reason: null };
}

/**
 * Says that a trip does not leave before a day.
 *
 * @param plan - the plan there is
 * @param place - which trip [index]
 * @param day - the day, counted from the first day of the rollout; 0: as soon as it can [day]
 * @returns the plan with the change, or why it is not made
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function tripNotBefore(plan: RolloutPlan, place: TripPlace, day: number): Moved {
  const reason = whyNot(plan, place);
  if (reason !== null) return refused(reason);
  if (!Number.isFinite(day) || day < 0) return refused('noDay');
  return { plan: changed(plan, place, (trip) => ({ ...trip, notBefore: day })), reason: null };
}

/**
 * Says whether a trip is to stay as it is.
 *
 * @param plan - the plan there is
 * @param place - which trip [index]
 * @param isLocked - true: nothing changes it until it is unlocked
 * @returns the plan with the change, or why it is not made
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function lockTrip(plan: RolloutPlan, place: TripPlace, isLocked: boolean): Moved {
  const reason = whyNot(plan, place);
  if (reason !== null && reason !== 'locked') return refused(reason);
  return { plan: changed(plan, place, (trip) => ({ ...trip, isLocked })), reason: null };
}

function whyNot({ trips }: RolloutPlan, { crew, trip }: TripPlace): MoveRefusal | null {
  const own = trips[crew];
  if (own === undefined) return 'noSuchCrew';
  const found = own[trip];
  if (found === undefined) return 'noSuchTrip';
  return found.isLocked ? 'locked' : null;
}

function changed({ trips }: RolloutPlan, place: TripPlace, change: (trip: PlannedTrip) => PlannedTrip): RolloutPlan {
  const own = trips[place.crew]!;
  return { trips: trips.with(place.crew, own.with(place.trip, change(own[place.trip]!))) };
}
