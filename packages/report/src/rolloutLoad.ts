import { type FreeboardWithLoad, freeboardWith } from '@eavewell/engine';
import type { RolloutTripAnswer } from '@eavewell/tables';
import { mayBeAfloat } from './rolloutCautions.ts';

export type AboardLine = RolloutTripAnswer['aboard'][number];
type Carrier = RolloutTripAnswer['carriers'][number];

/** What of a trip its load is reckoned from. */
export type TripLoaded = Pick<
  RolloutTripAnswer,
  'trip' | 'legs' | 'aboard' | 'carriers' | 'crew_kg' | 'fuel_kg' | 'places'
>;

/** What is aboard for one stop. */
export interface StopLoad {
  readonly siteId: string;
  readonly name: string;
  readonly people: number | null;
  /** 1 for the stop that is come to first. */
  readonly nth: number;
  readonly lines: readonly AboardLine[];
  /** Of what has a mass. */
  readonly mass_kg: number;
  /** Lines without a mass. */
  readonly unweighed_count: number;
  /** Something of its kit could not be counted, and is not in the lines. */
  readonly isKitInPart: boolean;
}

/** Where a limit comes from: what a carrier may carry, what a way states, what porters carry on it. */
export interface LimitBy {
  readonly kind: 'carrier' | 'way' | 'porters';
  /** Of the carrier, or of the way. */
  readonly name: string;
}

/** A trip as it is loaded. */
export interface TripLoad {
  /** It goes on a river, or may. */
  readonly isAfloat: boolean;
  /** In the order they are put in: the last stop first. */
  readonly stops: readonly StopLoad[];
  readonly parts_kg: number;
  readonly fuel_kg: number | null;
  /** Parts and fuel, what is known of them: what is held against the limit, which is beside the crew. */
  readonly loaded_kg: number;
  readonly unweighed_count: number;
  /** Something of some kit could not be counted. */
  readonly isKitInPart: boolean;
  /** Lines that nobody states a stock of. */
  readonly presumed_count: number;
  /** The least of what the carrier and the ways let pass; null: none is stated. */
  readonly limit_kg: number | null;
  /** Where it comes from; null: no limit, or nobody knows. */
  readonly limitBy: LimitBy | null;
  /** Below 0: over the limit; null: no limit. */
  readonly left_kg: number | null;
  /** The boat, or what else carries it; null: on foot alone, or not known. */
  readonly carrier: Carrier | null;
  readonly longest: { readonly name: string; readonly length_m: number } | null;
  /** With this load; null where it is not stated, something aboard has no mass, or not all of it is counted. */
  readonly freeboard: FreeboardWithLoad | null;
  /** Chlorine, and fuel: as a part or to be burnt on the way. */
  readonly hasBothDangers: boolean;
}

/**
 * What does a trip carry, stop by stop, and how does it stand against what may be carried?
 *
 * @param answer - the trip
 * @returns loads of stops, the last first, and sums [kg, m, cm]; what has no mass is counted, and left out of sums
 * @definition ours: docs/decisions/0368-paper-of-a-trip.md
 */
export function loadOfTrip({ trip, legs, aboard, carriers, fuel_kg, places }: TripLoaded): TripLoad {
  const stops = stopLoads({ trip, aboard, places });
  const parts_kg = stops.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const unweighed_count = stops.reduce((sum, stop) => sum + stop.unweighed_count, 0);
  const isAfloat = mayBeAfloat(legs);
  const carrier = carrierOf(carriers, isAfloat);
  const limit = leastLimit(legs, carriers, carrier);
  const limit_kg = limit?.kg ?? null;
  const { loaded_kg, left_kg } = againstLimit(parts_kg, fuel_kg, limit_kg);
  const dangers = new Set(aboard.map(({ danger }) => danger));
  const isKitInPart = stops.some((stop) => stop.isKitInPart);
  const isAllKnown = unweighed_count === 0 && fuel_kg !== null && !isKitInPart;
  return {
    ...{ isAfloat, stops, parts_kg, fuel_kg, loaded_kg, unweighed_count, limit_kg, carrier },
    ...{ isKitInPart, presumed_count: aboard.filter(({ isPresumed }) => isPresumed).length },
    limitBy: limit?.by ?? null,
    left_kg,
    longest: longestOf(aboard),
    freeboard: isAfloat && isAllKnown && carrier !== null ? freeboardOf(carrier, loaded_kg) : null,
    hasBothDangers: dangers.has('chlorine') && (dangers.has('fuel') || (trip.fuel_L ?? 0) > 0),
  };
}

/** Petrol [kg/L]. Common practice, no source; diesel is a little heavier. */
const fuel_kg_per_L = 0.75;

/** What fuel weighs [kg]. */
export const fuelOf_kg = (fuel_L: number): number => fuel_L * fuel_kg_per_L;

/** Parts with fuel, what is known of them, and what is left of a limit, which is beside the people: null where there is none. */
export function againstLimit(
  parts_kg: number,
  fuel_kg: number | null,
  limit_kg: number | null,
): { loaded_kg: number; left_kg: number | null } {
  const loaded_kg = parts_kg + (fuel_kg ?? 0);
  return { loaded_kg, left_kg: limit_kg === null ? null : limit_kg - loaded_kg };
}

function stopLoads({ trip, aboard, places }: Pick<TripLoaded, 'trip' | 'aboard' | 'places'>): readonly StopLoad[] {
  const names = new Map(places.map(({ placeId, name }) => [placeId, name] as const));
  const known = trip.stops.map(({ siteId, name, people, isKitInPart }, at) => {
    return { siteId, name, people, nth: at + 1, isKitInPart };
  });
  const ids = new Set(known.map(({ siteId }) => siteId));
  // What is aboard for a site that is no stop of the trip is told all the same.
  const others = [...new Set(aboard.map(({ siteId }) => siteId))].filter((siteId) => !ids.has(siteId));
  const more = others.map((siteId, at) => ({
    ...{ siteId, name: names.get(siteId) ?? siteId, people: null, nth: known.length + at + 1 },
    isKitInPart: false,
  }));
  return [...known, ...more].reverse().map((stop) => {
    const lines = aboard.filter(({ siteId }) => siteId === stop.siteId);
    const masses = lines.flatMap(({ mass_kg }) => mass_kg ?? []);
    return {
      ...{ ...stop, lines, unweighed_count: lines.length - masses.length },
      mass_kg: masses.reduce((sum, one) => sum + one, 0),
    };
  });
}

/** What carries the load: on a river the boat that may carry least. */
function carrierOf(carriers: readonly Carrier[], isAfloat: boolean): Carrier | null {
  const boats = carriers.filter(({ mode }) => (mode === 'boat') === isAfloat);
  const least = (one: Carrier) => one.limit_kg ?? Number.POSITIVE_INFINITY;
  return boats.toSorted((a, b) => least(a) - least(b))[0] ?? carriers[0] ?? null;
}

interface Limit {
  readonly kg: number;
  readonly by: LimitBy | null;
}

/** The least of what the carrier and the ways let pass; of equal ones that of the carrier, whose limit it is everywhere. */
function leastLimit(legs: TripLoaded['legs'], carriers: readonly Carrier[], carrier: Carrier | null): Limit | null {
  const ofCarrier = (one: Carrier): LimitBy => ({ kind: 'carrier', name: one.name });
  const byOf = (by: TripLoaded['legs'][number]['limitBy']): LimitBy | null => {
    if (by === null) return null;
    if (by.isOfWay) return { kind: 'way', name: by.way };
    const own = carriers.find(({ carrierId }) => carrierId === by.carrierId);
    return own === undefined || by.mode === 'foot' ? { kind: 'porters', name: by.way } : ofCarrier(own);
  };
  const own = carrier === null || carrier.limit_kg === null ? [] : [{ kg: carrier.limit_kg, by: ofCarrier(carrier) }];
  const all: readonly Limit[] = [
    ...own,
    ...legs.flatMap(({ limit_kg, limitBy }) => (limit_kg === null ? [] : [{ kg: limit_kg, by: byOf(limitBy) }])),
  ];
  return all.reduce<Limit | null>((least, one) => (least === null || one.kg < least.kg ? one : least), null);
}

function freeboardOf({ freeboard_m, freeboardEmpty_m, limit_kg }: Carrier, load_kg: number): FreeboardWithLoad | null {
  const cm = (value_m: number | null) => (value_m === null ? null : value_m * 100);
  return freeboardWith({ freeboard_cm: cm(freeboard_m), freeboardEmpty_cm: cm(freeboardEmpty_m), limit_kg }, load_kg);
}

function longestOf(aboard: readonly AboardLine[]): TripLoad['longest'] {
  let longest: TripLoad['longest'] = null;
  for (const { name, longest_m } of aboard)
    if (longest_m !== null && longest_m > (longest?.length_m ?? 0)) longest = { name, length_m: longest_m };
  return longest;
}
