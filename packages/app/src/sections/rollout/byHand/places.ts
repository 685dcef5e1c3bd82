import { isoDay, readIsoDay } from '@eavewell/engine';
import type { RolloutSheet, SheetCrew, SheetTrip } from '@eavewell/tables';

/** What a hand may take up: a site out of a trip or out of none, or a whole trip. */
export type Held =
  | { readonly kind: 'site'; readonly siteId: string }
  | { readonly kind: 'trip'; readonly tripId: string };

/** A place at which what is held may be laid down. What is in hand is never counted in it. */
export type Place =
  /** In a trip, after so many of its other sites. */
  | { readonly kind: 'inTrip'; readonly tripId: string; readonly position: number }
  /** In a trip of its own, after so many trips of the crew that are planned. */
  | { readonly kind: 'newTrip'; readonly crewId: string; readonly index: number }
  /** In no trip. */
  | { readonly kind: 'tray' }
  /** Of a trip: after so many other planned trips of the crew, and no earlier than a day (null: as soon as it can). */
  | { readonly kind: 'amongTrips'; readonly crewId: string; readonly index: number; readonly notBefore: string | null };

/** The part of the sheet that says where what is. */
export type PlanShown = Pick<RolloutSheet, 'crews' | 'candidates' | 'from'>;

/** Which way what is held is moved by a key. `earlierFar` and `laterFar`: a trip on, and of a trip a week. */
export type Step = 'earlier' | 'later' | 'earlierFar' | 'laterFar' | 'crewAbove' | 'crewBelow';

/** Trips that are not begun: what has left never moves. */
export const plannedOf = ({ trips }: SheetCrew): readonly SheetTrip[] =>
  trips.filter(({ state }) => state === 'planned');

/** A trip and its crew; null where there is no such trip. */
export function tripOf(plan: PlanShown, tripId: string): { readonly crew: SheetCrew; readonly trip: SheetTrip } | null {
  for (const crew of plan.crews) {
    const trip = crew.trips.find((one) => one.tripId === tripId);
    if (trip !== undefined) return { crew, trip };
  }
  return null;
}

/** The trip a site is in; null: in none. */
export function tripOfSite(plan: PlanShown, siteId: string): SheetTrip | null {
  for (const { trips } of plan.crews)
    for (const trip of trips) if (trip.stops.some((stop) => stop.siteId === siteId)) return trip;
  return null;
}

/** Where what is held lies now; null where the plan does not know it. */
export function homeOf(plan: PlanShown, held: Held): Place | null {
  if (held.kind === 'trip') {
    const found = tripOf(plan, held.tripId);
    if (found === null) return null;
    const { crew, trip } = found;
    const index = plannedOf(crew).findIndex(({ tripId }) => tripId === held.tripId);
    return { kind: 'amongTrips', crewId: crew.crewId, index: Math.max(0, index), notBefore: trip.notBefore };
  }
  const trip = tripOfSite(plan, held.siteId);
  if (trip !== null)
    return {
      kind: 'inTrip',
      tripId: trip.tripId,
      position: trip.stops.findIndex(({ siteId }) => siteId === held.siteId),
    };
  return plan.candidates.some(({ siteId }) => siteId === held.siteId) ? { kind: 'tray' } : null;
}

/** Are two places one? */
export function isSamePlace(a: Place, b: Place): boolean {
  if (a.kind === 'inTrip') return b.kind === 'inTrip' && a.tripId === b.tripId && a.position === b.position;
  if (a.kind === 'newTrip') return b.kind === 'newTrip' && a.crewId === b.crewId && a.index === b.index;
  if (a.kind === 'tray') return b.kind === 'tray';
  return b.kind === 'amongTrips' && a.crewId === b.crewId && a.index === b.index && a.notBefore === b.notBefore;
}

/** The trips of a crew among which a trip in hand may go. */
const othersOf = (crew: SheetCrew, held: Held): readonly SheetTrip[] =>
  plannedOf(crew).filter(({ tripId }) => held.kind !== 'trip' || tripId !== held.tripId);

interface Slot {
  readonly place: Place;
  /** When it is, for the nearest one of another crew. */
  readonly day: number;
}

const dayOr = (otherwise: number, ...texts: readonly (string | null | undefined)[]): number => {
  for (const text of texts) {
    const day = text === null || text === undefined ? null : readIsoDay(text);
    if (day !== null) return day;
  }
  return otherwise;
};

/** Every place of one crew at which a site may be laid, in the order of days. */
function siteSlots(plan: PlanShown, crew: SheetCrew, siteId: string): readonly Slot[] {
  const start = dayOr(0, plan.from);
  const trips = plannedOf(crew);
  const slots: Slot[] = [];
  for (const [index, trip] of trips.entries()) {
    const leaves = dayOr(start, trip.leaves);
    slots.push({ place: { kind: 'newTrip', crewId: crew.crewId, index }, day: leaves });
    if (trip.isLocked) continue;
    const others = trip.stops.filter((stop) => stop.siteId !== siteId);
    for (let position = 0; position <= others.length; position++) {
      const next = others[position];
      const day = next === undefined ? dayOr(leaves, trip.back) : dayOr(leaves, next.arrives, next.handOver);
      slots.push({ place: { kind: 'inTrip', tripId: trip.tripId, position }, day });
    }
  }
  const last = dayOr(dayOr(start, crew.from), trips.at(-1)?.back);
  slots.push({ place: { kind: 'newTrip', crewId: crew.crewId, index: trips.length }, day: last });
  return slots;
}

/** Every place of one crew at which a trip may go, in order. */
function tripSlots(plan: PlanShown, crew: SheetCrew, held: Held, notBefore: string | null): readonly Slot[] {
  const others = othersOf(crew, held);
  const start = dayOr(dayOr(0, plan.from), crew.from);
  return Array.from({ length: others.length + 1 }, (_, index) => ({
    place: { kind: 'amongTrips', crewId: crew.crewId, index, notBefore } as const,
    day: dayOr(start, others[index]?.leaves, others.at(-1)?.back),
  }));
}

const slotsOf = (plan: PlanShown, crew: SheetCrew, held: Held, at: Place): readonly Slot[] =>
  held.kind === 'site'
    ? siteSlots(plan, crew, held.siteId)
    : tripSlots(plan, crew, held, at.kind === 'amongTrips' ? at.notBefore : null);

/** Of which crew a place is; null: of none. */
export function crewOfPlace(plan: PlanShown, place: Place): string | null {
  if (place.kind === 'tray') return null;
  return place.kind === 'inTrip' ? (tripOf(plan, place.tripId)?.crew.crewId ?? null) : place.crewId;
}

/** The nearest by day; a place in a trip before one in a trip of its own. */
function nearestSlot(slots: readonly Slot[], day: number): Place | null {
  let best: Slot | null = null;
  const far = (slot: Slot) => Math.abs(slot.day - day) + (slot.place.kind === 'newTrip' ? 1.5 : 0);
  for (const slot of slots) if (best === null || far(slot) < far(best)) best = slot;
  return best?.place ?? null;
}

/**
 * Where what is held goes by one step.
 *
 * @param plan - the plan as it is shown, what is held still at its home
 * @param held - what is in hand
 * @param at - where it is now
 * @param step - which way
 * @returns the next place; the same one where there is none that way
 */
export function stepped(plan: PlanShown, held: Held, at: Place, step: Step): Place {
  if (step === 'crewAbove' || step === 'crewBelow') return toOtherCrew(plan, held, at, step === 'crewAbove' ? -1 : 1);
  const onward = step === 'later' || step === 'laterFar' ? 1 : -1;
  const isFar = step === 'earlierFar' || step === 'laterFar';
  if (held.kind === 'trip' && isFar) return aWeekOn(plan, held, at, onward);
  const crew = plan.crews.find(({ crewId }) => crewId === crewOfPlace(plan, at));
  if (crew === undefined) return at;
  const slots = slotsOf(plan, crew, held, at).map(({ place }) => place);
  const now = slots.findIndex((place) => isSamePlace(place, at));
  if (now < 0) return slots[onward > 0 ? 0 : slots.length - 1] ?? at;
  if (!isFar) return slots[now + onward] ?? at;
  const isBegun = (place: Place) => place.kind === 'inTrip' && place.position === 0 && !isSameTrip(place, at);
  const ahead = onward > 0 ? slots.slice(now + 1) : slots.slice(0, now).reverse();
  return ahead.find(isBegun) ?? ahead.at(-1) ?? at;
}

const isSameTrip = (a: Place, b: Place) => a.kind === 'inTrip' && b.kind === 'inTrip' && a.tripId === b.tripId;

/** Above the first crew there is nothing; below the last lies what is in no trip. */
function toOtherCrew(plan: PlanShown, held: Held, at: Place, onward: 1 | -1): Place {
  const count = plan.crews.length;
  const own = crewOfPlace(plan, at);
  const row = own === null ? count : plan.crews.findIndex(({ crewId }) => crewId === own);
  const crew = plan.crews[row + onward];
  if (crew === undefined) return onward > 0 && held.kind === 'site' ? { kind: 'tray' } : at;
  const before = plan.crews[row];
  const day =
    before === undefined
      ? dayOr(0, plan.from)
      : (slotsOf(plan, before, held, at).find(({ place }) => isSamePlace(place, at))?.day ?? dayOr(0, plan.from));
  return nearestSlot(slotsOf(plan, crew, held, at), day) ?? at;
}

const week_days = 7;

/** The Monday of a day's week: 1970-01-01 was a Thursday. */
const mondayOf = (day: number) => day - ((((day + 3) % week_days) + week_days) % week_days);

/** A trip leaves a week later or earlier; earlier than the plan begins means as soon as it can. */
function aWeekOn(plan: PlanShown, held: Held & { readonly kind: 'trip' }, at: Place, onward: 1 | -1): Place {
  if (at.kind !== 'amongTrips' || (at.notBefore === null && onward < 0)) return at;
  const leaves = tripOf(plan, held.tripId)?.trip.leaves;
  const now = dayOr(dayOr(0, plan.from), at.notBefore, leaves);
  return { ...at, notBefore: notBeforeOf(plan, mondayOf(now) + onward * week_days) };
}

/** A day before which a trip does not leave; null where that asks nothing. */
export function notBeforeOf(plan: PlanShown, day: number): string | null {
  if (day <= dayOr(0, plan.from)) return null;
  return isoDay(day);
}
