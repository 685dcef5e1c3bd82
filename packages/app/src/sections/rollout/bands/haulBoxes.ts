import type { RolloutSheet } from '@eavewell/tables';
import { dayOf, type WeekAxis, xOf } from './axis.ts';
import { type CellBox, crewRow, type HullBox, type HullsLaid, type RowBox } from './hulls.ts';
import type { SheetHaul } from './tripWords.ts';

/** What is brought for a trip, drawn: a cell a run, of which the part is filled in which it is loaded. */
export interface HaulBox extends HullBox {
  readonly haul: SheetHaul;
  readonly loaded: readonly { readonly x: number; readonly width: number }[];
  /** Where all of it is there. */
  readonly there_px: number;
}

/** A store that is filled from another, and what is brought to it. */
export interface HaulRow extends RowBox {
  readonly hulls: readonly HaulBox[];
  readonly storeId: string;
  /** What brings it, from where; of several the first. */
  readonly first: SheetHaul;
}

/** All that is brought, on an axis. Keys lead from one to the next as from trip to trip. */
export interface HaulsLaid extends HullsLaid {
  readonly rows: readonly HaulRow[];
}

/** The days of a run, the last included; of one that does not come back the day it is there. */
const runDays = ({ leaves, arrives, back }: SheetHaul['runs'][number]) => {
  const [out, there] = [dayOf(leaves), dayOf(arrives)];
  return out === null || there === null ? null : { out, there, home: back === null ? there : (dayOf(back) ?? there) };
};

/** The box of what is brought for a trip; null where its days cannot be read. */
function boxOf(haul: SheetHaul, axis: WeekAxis, row: number, index: number): HaulBox | null {
  const days = haul.runs.map(runDays);
  const known = days.filter((one) => one !== null);
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined || known.length < days.length) return null;
  const [y, height] = [row * crewRow.height_px + crewRow.hullTop_px, crewRow.hull_px];
  const x = xOf(axis, first.out);
  const width = Math.max(xOf(axis, last.home + 1) - x, 3);
  const span = (from: number, until: number) => ({ x: xOf(axis, from), width: xOf(axis, until + 1) - xOf(axis, from) });
  const cells = known.map(({ out, home }, position): CellBox => {
    const of = { tripId: haul.haulId, siteId: String(position), position, y, height };
    return { ...of, ...span(out, home) };
  });
  return {
    ...{ tripId: haul.haulId, crewId: haul.store, row, index, state: 'planned', x, y, width, height, tip: 0, cells },
    ...{ haul, there_px: xOf(axis, last.there + 1), loaded: known.map(({ out, there }) => span(out, there)) },
  };
}

/** Where all that is brought is drawn: a row for each store that is filled, by the name of its place. */
export function haulsLaid({ hauls, places }: Pick<RolloutSheet, 'hauls' | 'places'>, axis: WeekAxis): HaulsLaid {
  const nameOf = (id: string) => places.find(({ placeId }) => placeId === id)?.name ?? id;
  const stores = [...new Set(hauls.map(({ store }) => store))].sort((a, b) => (nameOf(a) < nameOf(b) ? -1 : 1));
  const rows = stores.map((storeId, row): HaulRow => {
    const own = hauls.filter(({ store }) => store === storeId);
    const hulls = own.map((haul, index) => boxOf(haul, axis, row, index)).filter((box) => box !== null);
    return { crewId: storeId, storeId, first: own[0]!, y: row * crewRow.height_px, height: crewRow.height_px, hulls };
  });
  const all = rows.flatMap(({ hulls }) => hulls);
  return {
    ...{ axis, rows, height: rows.length * crewRow.height_px },
    hullOf: new Map(all.map((box) => [box.tripId, box])),
  };
}

/**
 * The lines from what is brought to the trips that wait for it, as one path: up to the foot of the crew's row from where all of it is there, on to
 * the day its trip leaves, and to its bow.
 *
 * @param hauls - rows under those of the crews
 * @param trips - the crews' rows
 */
export function tiesOf({ rows }: HaulsLaid, { hullOf, height: above }: HullsLaid): string {
  const boxes = rows.flatMap(({ hulls }) => hulls);
  return boxes
    .flatMap((box) => {
      const trip = hullOf.get(box.haul.forTrip);
      if (trip === undefined) return [];
      const [foot, middle] = [(trip.row + 1) * crewRow.height_px, trip.y + trip.height / 2];
      return [`M${inTenths(box.there_px)} ${inTenths(above + box.y)}V${foot}H${inTenths(trip.x)}V${inTenths(middle)}`];
    })
    .join('');
}

const inTenths = (value: number) => String(Math.round(value * 10) / 10);
