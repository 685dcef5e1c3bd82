import type { TimedPlan } from '../planChanges.ts';
import type { Retiming } from '../retiming.ts';
import { detour_h } from './detour.ts';
import type { SitePlace } from './places.ts';

/** A week. */
const week_days = 7;

/** Positions looked at in each other trip [count]: those with the least way round. Ours. */
const positions_count = 2;

/** Another crew in the same week is as near as the same crew so many weeks off [count]. Ours. */
const otherCrew_weeks = 2;

/**
 * Places of a plan from the nearest to a wanted one on: other positions of the same trip by how far they are from it; then trips, and new trips between them, of the
 * same crew and of others by how many weeks apart they leave.
 */
export function* nearPlaces(ready: Retiming, before: TimedPlan, job: number, wanted: SitePlace): Iterable<SitePlace> {
  const { trips } = before.plan;
  const leftOn = dayOf(ready, before, wanted);
  if ('trip' in wanted) yield* sameTrip(before, job, wanted);
  else yield wanted;
  const rows: { readonly apart: number; readonly crew: number; readonly trip: number; readonly isNew: boolean }[] = [];
  for (const [crew, own] of trips.entries())
    for (let trip = 0; trip <= own.length; trip++) {
      const place = { crew, newTripAt: trip };
      const day = dayOf(ready, before, place);
      const weeks = Math.floor(Math.abs(day - leftOn) / week_days);
      const apart = crew === wanted.crew ? Math.max(1, weeks) : otherCrew_weeks + weeks;
      const isWanted = crew === wanted.crew && 'trip' in wanted && trip === wanted.trip;
      if (trip < own.length && !isWanted) rows.push({ apart, crew, trip, isNew: false });
      if (crew !== wanted.crew || 'trip' in wanted || trip !== wanted.newTripAt)
        rows.push({ apart, crew, trip, isNew: true });
    }
  // A sort that keeps the order of equals: crews and trips in order, a trip there is before a new one.
  rows.sort((a, b) => a.apart - b.apart || Number(a.isNew) - Number(b.isNew));
  for (const { crew, trip, isNew } of rows) {
    if (isNew) yield { crew, newTripAt: trip };
    else yield* otherTrip(ready, before, job, crew, trip);
  }
}

/** New trips at the end of what each crew does, those nearest to the wanted place first. */
export function endPlaces(ready: Retiming, before: TimedPlan, wanted: SitePlace): readonly SitePlace[] {
  const leftOn = dayOf(ready, before, wanted);
  const apart = (place: SitePlace) => Math.abs(dayOf(ready, before, place) - leftOn);
  const places = before.plan.trips.map((own, crew) => ({ crew, newTripAt: own.length }));
  return places.sort((a, b) => apart(a) - apart(b) || a.crew - b.crew);
}

/** The day on which a trip leaves; of a new trip the one before whose it goes, or the day the last is back. */
function dayOf({ problem }: Retiming, { outcome }: TimedPlan, place: SitePlace): number {
  const own = outcome.trips[place.crew] ?? [];
  const trip = 'trip' in place ? place.trip : place.newTripAt;
  return own[trip]?.leaves ?? own.at(-1)?.back ?? problem.crews[place.crew]?.freeFrom ?? 0;
}

function* sameTrip(
  { plan }: TimedPlan,
  job: number,
  { crew, trip, at }: Extract<SitePlace, { trip: number }>,
): Iterable<SitePlace> {
  const stops = plan.trips[crew]?.[trip]?.stops;
  if (stops === undefined) return;
  const others_count = stops.filter((stop) => stop !== job).length;
  for (let off = 0; off <= others_count; off++)
    for (const place of off === 0 ? [at] : [at - off, at + off])
      if (place >= 0 && place <= others_count) yield { crew, trip, at: place };
}

function* otherTrip(
  ready: Retiming,
  { plan, outcome }: TimedPlan,
  job: number,
  crew: number,
  trip: number,
): Iterable<SitePlace> {
  const stops = plan.trips[crew]![trip]!.stops.filter((stop) => stop !== job);
  const day = outcome.trips[crew]?.[trip]?.leaves ?? 0;
  const places = Array.from({ length: stops.length + 1 }, (_, at) => ({
    at,
    by_h: detour_h(ready, crew, stops[at - 1] ?? null, job, stops[at] ?? null, day),
  }));
  places.sort((a, b) => (a.by_h === b.by_h ? a.at - b.at : a.by_h - b.by_h));
  for (const { at } of places.slice(0, positions_count)) yield { crew, trip, at };
}
