import type { RolloutSheet, SheetCandidate, SheetCrew, SheetStop, SheetTrip } from '@eavewell/tables';
import type { Overview } from '../../sites/index.ts';

/** A village by its site, as it is looked for. */
export interface Village {
  readonly siteId: string;
  readonly name: string;
  readonly area: string | null;
  readonly people: number | null;
}

/** The trip that comes to a village. */
export interface Coming {
  readonly crew: SheetCrew;
  readonly trip: SheetTrip;
  readonly stop: SheetStop;
}

/** How a village stands in a plan. */
export type VillageFound =
  | { readonly kind: 'handedOver'; readonly village: Village; readonly coming: Coming | null }
  | { readonly kind: 'coming'; readonly village: Village; readonly coming: Coming }
  | { readonly kind: 'notPlanned'; readonly village: Village; readonly candidate: SheetCandidate };

/** The trip of a plan that goes to a site; null where none does. */
export function comingTo(sheet: RolloutSheet, siteId: string): Coming | null {
  for (const crew of sheet.crews)
    for (const trip of crew.trips) {
      const stop = trip.stops.find((one) => one.siteId === siteId);
      if (stop) return { crew, trip, stop };
    }
  return null;
}

/** The day a crew comes to a site; null where none does. */
export function comingDay(sheet: RolloutSheet, siteId: string): string | null {
  const coming = comingTo(sheet, siteId);
  return coming && dayOfComing(coming);
}

/** The day work begins there, or the crew arrives, or leaves at the least. */
export const dayOfComing = ({ stop, trip }: Coming): string => stop.starts ?? stop.arrives ?? trip.leaves;

/**
 * How a village stands: it drinks, a crew comes, or no trip goes there.
 *
 * @param sheet - the plan that is shown
 * @param siteId - the site
 * @param known - all sites of the programme that are known here, for those that are handed over
 * @returns null where no such site is known
 */
export function villageFound(
  sheet: RolloutSheet,
  siteId: string,
  known: Pick<ReadonlyMap<string, Village>, 'get'>,
): VillageFound | null {
  const candidate = sheet.candidates.find((one) => one.siteId === siteId);
  const coming = comingTo(sheet, siteId);
  if (coming?.stop.isHandedOver) return { kind: 'handedOver', village: candidate ?? villageOf(coming.stop), coming };
  if (coming?.stop.isWayUp && coming.trip.state !== 'done')
    return { kind: 'coming', village: candidate ?? villageOf(coming.stop), coming };
  if (candidate) return { kind: 'notPlanned', village: candidate, candidate };
  const village = known.get(siteId) ?? (coming && villageOf(coming.stop));
  return village ? { kind: 'handedOver', village, coming: null } : null;
}

const villageOf = ({ siteId, name, people }: SheetStop): Village => ({ siteId, name, people, area: null });

/** A village of the list of all sites; undefined where there is none at a place. */
export function villageAt({ count, numbers, map }: Overview, place: number): Village | undefined {
  if (!(place >= 0 && place < count)) return undefined;
  const people = numbers.people[place]!;
  return {
    ...{ siteId: map.keyAt(place), name: map.nameAt(place), people: Number.isNaN(people) ? null : people },
    area: numbers.areas[numbers.areaRank[place]!]?.[0] ?? null,
  };
}

/** Villages one may ask for. Those of the list of all sites are made when they are looked at. */
export interface Villages {
  readonly count: number;
  at(i: number): Village;
}

/**
 * Every village that may be asked for, each once: those of the plan, then all others that are known.
 *
 * @param all - all sites of the programme; null where they are not known here
 */
export function villagesOf(sheet: RolloutSheet, all: Overview | null): Villages {
  const found = new Map<string, Village>();
  for (const candidate of sheet.candidates) found.set(candidate.siteId, candidate);
  for (const { trips } of sheet.crews)
    for (const { stops } of trips)
      for (const stop of stops) if (!found.has(stop.siteId)) found.set(stop.siteId, villageOf(stop));
  const own = [...found.values()];
  const places = Uint32Array.from({ length: all?.count ?? 0 }, (_, place) => place);
  const others = places.filter((place) => {
    const [key, siteId] = [all!.keyAt(place), all!.siteIdAt(place)];
    // A second row with the number of another is no village of its own.
    return !found.has(key) && (siteId === '' || siteId === key);
  });
  return { count: own.length + others.length, at: (i) => own[i] ?? villageAt(all!, others[i - own.length]!)! };
}
