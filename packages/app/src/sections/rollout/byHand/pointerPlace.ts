import { readIsoDay } from '@eavewell/engine';
import type { RolloutSheet } from '@eavewell/tables';
import { dayAt, mondayOf } from '../bands/axis.ts';
import { type HullsLaid, type PlaceOnBands, placeAt } from '../bands/hulls.ts';
import { type Held, homeOf, notBeforeOf, type Place, plannedOf, tripOf } from './places.ts';

type Sheet = Pick<RolloutSheet, 'crews' | 'candidates' | 'from'>;

/** What a pointer takes up where it goes down: the site of a cell, or at a hull's points, its people or its nights the whole trip. Null: nothing. */
export function heldAt(laid: HullsLaid, at: PlaceOnBands, y: number, isTripWanted: boolean): Held | null {
  if (at.tripId === null) return null;
  const hull = laid.hullOf.get(at.tripId);
  if (hull === undefined) return null;
  const isOnCell = at.siteId !== null && y >= hull.y && y < hull.y + hull.height;
  return isOnCell && !isTripWanted ? { kind: 'site', siteId: at.siteId! } : { kind: 'trip', tripId: at.tripId };
}

/**
 * Where a pointer holds what is in hand.
 *
 * @param sheet - as it is drawn
 * @param laid - where its hulls are drawn
 * @param held - what is in hand
 * @param x - from the left of the axis [px]
 * @param y - from the top of the first crew's row [px]
 * @param grabbed_px - how far right of its trip's left end it was taken up
 * @returns the place; null where there is none (above the crews, or a trip below them)
 */
export function pointerPlace(
  sheet: Sheet,
  laid: HullsLaid,
  held: Held,
  x: number,
  y: number,
  grabbed_px: number,
): Place | null {
  const at = placeAt(laid, x, y);
  if (at === null) return y >= laid.height && held.kind === 'site' ? { kind: 'tray' } : null;
  return held.kind === 'site' ? sitePlace(sheet, held.siteId, at) : tripPlace(sheet, laid, held, at, x, grabbed_px);
}

function sitePlace(sheet: Sheet, siteId: string, { crewId, tripId, index, position }: PlaceOnBands): Place | null {
  const crew = sheet.crews.find((one) => one.crewId === crewId);
  if (crew === undefined) return null;
  if (tripId === null) {
    const planned_count = crew.trips.slice(0, index).filter(({ state }) => state === 'planned').length;
    return { kind: 'newTrip', crewId, index: planned_count };
  }
  const own = crew.trips.find((one) => one.tripId === tripId)?.stops.findIndex((stop) => stop.siteId === siteId) ?? -1;
  return { kind: 'inTrip', tripId, position: own >= 0 && own < position ? position - 1 : position };
}

/** After the trips whose middle is left of the pointer; kept back to a week where it stays in its order and is held later or earlier. */
function tripPlace(
  sheet: Sheet,
  laid: HullsLaid,
  held: Held & { readonly kind: 'trip' },
  { crewId }: PlaceOnBands,
  x: number,
  grabbed_px: number,
): Place | null {
  const home = homeOf(sheet, held);
  const crew = sheet.crews.find((one) => one.crewId === crewId);
  if (crew === undefined || home?.kind !== 'amongTrips') return null;
  const index = plannedOf(crew).filter(({ tripId }) => {
    const hull = laid.hullOf.get(tripId);
    return tripId !== held.tripId && hull !== undefined && hull.x + hull.width / 2 < x;
  }).length;
  const monday = mondayOf(dayAt(laid.axis, x - grabbed_px));
  const leaves = readIsoDay(tripOf(sheet, held.tripId)?.trip.leaves ?? '');
  const isSameWeek = leaves !== null && monday === mondayOf(leaves);
  const isMoved = crewId !== home.crewId || index !== home.index;
  const isKept = isMoved ? home.notBefore === null : isSameWeek;
  return { kind: 'amongTrips', crewId, index, notBefore: isKept ? home.notBefore : notBeforeOf(sheet, monday) };
}
