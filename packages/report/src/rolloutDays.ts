import type { RolloutLegReport, RolloutTripAnswer } from '@eavewell/tables';
import { mayBeAfloat } from './rolloutCautions.ts';

/** What of a trip its days are told from. */
export type TripDated = Pick<RolloutTripAnswer, 'trip' | 'legs' | 'aboard' | 'days'>;

type Stop = RolloutTripAnswer['trip']['stops'][number];

/** Something a crew does. */
export type TripEvent =
  | { readonly kind: 'load'; readonly placeId: string }
  | { readonly kind: 'go'; readonly leg: RolloutLegReport }
  | { readonly kind: 'work'; readonly stop: Stop }
  /** `aboard_kg`: what is left aboard, of what has a mass, for the stops of `isAboardFor`. */
  | {
      readonly kind: 'handOver';
      readonly stop: Stop;
      readonly aboard_kg: number;
      readonly isAboardFor: readonly Stop[];
    }
  | { readonly kind: 'home'; readonly placeId: string };

/** One day of a trip. */
export interface TripDay {
  readonly day: string;
  /** In the order they happen. */
  readonly events: readonly TripEvent[];
  /** Where the crew sleeps; null: at its base, or not told. */
  readonly sleeps: string | null;
  /** What is said of a night that is spent at no place; null: it is at one. */
  readonly night: string | null;
  readonly isOnRiver: boolean;
  /** Does the crew rest, as its days of work say? */
  readonly isRest: boolean;
}

/**
 * What does a crew do on a trip, day by day?
 *
 * @param dated - the trip with its legs
 * @param store - where it loads, where the first leg does not say so
 * @returns days on which something is begun or ended, the first of rest, of another night and of a leg by river between, in order; other days between are spent at the work that was begun
 * @law every leg and every stop stands once
 * @definition ours: docs/decisions/0368-paper-of-a-trip.md
 */
export function daysOfTrip({ trip, legs, aboard, days }: TripDated, store: string): readonly TripDay[] {
  const events: { readonly day: string; readonly event: TripEvent }[] = [];
  const sites = new Set(trip.stops.map(({ siteId }) => siteId));
  const onRiver: (readonly [string, string])[] = [];
  let day = trip.leaves;
  let isLoaded = false;
  const left = new Map(trip.stops.map(({ siteId }) => [siteId, massFor(aboard, siteId)] as const));
  const load = (placeId: string) => {
    if (aboard.length > 0 && !isLoaded) events.push({ day, event: { kind: 'load', placeId } });
    isLoaded = true;
  };
  for (const leg of legs) {
    day = later(day, leg.leaves);
    // It is loaded where it starts, unless its store lies on the way.
    if (leg.from === store || sites.has(leg.to) || legs[0]?.from === store) load(leg.from);
    events.push({ day, event: { kind: 'go', leg } });
    const begins = day;
    day = later(day, leg.arrives);
    if (mayBeAfloat([leg])) onRiver.push([begins, day]);
    const stop = trip.stops.find(({ siteId }) => siteId === leg.to);
    if (stop === undefined) continue;
    left.delete(stop.siteId);
    const aboard_kg = [...left.values()].reduce((sum, one) => sum + one, 0);
    day = later(day, stop.starts);
    events.push({ day, event: { kind: 'work', stop } });
    day = later(day, stop.handOver);
    const isAboardFor = trip.stops.filter(({ siteId }) => left.has(siteId));
    events.push({ day, event: { kind: 'handOver', stop, aboard_kg, isAboardFor } });
  }
  const last = legs.at(-1);
  if (last !== undefined) events.push({ day: later(day, trip.back), event: { kind: 'home', placeId: last.to } });
  const told = new Map(days.map((one) => [one.day, one] as const));
  const between = days
    .filter((one, nth) => {
      const [before, last] = [days[nth - 1], nth === days.length - 1];
      const isOtherNight = before !== undefined && !last && nightOf(before) !== nightOf(one);
      const isOtherRest = one.isRest === true && before?.isRest !== true;
      return isOtherRest || isOtherNight || onRiver.some(([from, to]) => from < one.day && one.day < to);
    })
    .map((one) => one.day);
  return [...new Set([...events.map((one) => one.day), ...between])].sort().map((one) => {
    const own = events.filter((event) => event.day === one).map(({ event }) => event);
    // Where nobody knows on which of them a boat is out, all days of the leg are days on a river.
    const isOnRiver = told.get(one)?.isAfloat ?? onRiver.some(([from, to]) => from <= one && one <= to);
    const { sleeps = null, night = null, isRest = false } = told.get(one) ?? {};
    return { day: one, events: own, sleeps, night, isOnRiver, isRest };
  });
}

const nightOf = ({ sleeps, night }: TripDated['days'][number]) => sleeps ?? night ?? null;

const later = (day: string, perhaps: string | null): string => (perhaps !== null && perhaps > day ? perhaps : day);

const massFor = (aboard: RolloutTripAnswer['aboard'], site: string): number =>
  aboard.filter(({ siteId }) => siteId === site).reduce((sum, { mass_kg }) => sum + (mass_kg ?? 0), 0);
