import type { DayIndex } from '@eavewell/engine';
import type { RolloutSheet, SheetCrew, SheetStop, SheetTrip } from '@eavewell/tables';
import { dateOf, dayAt, dayOf, mondayOf, type WeekAxis, xOf } from './axis.ts';

/** Heights of a crew's row: people above the hull, nights below it. */
export const crewRow = { height_px: 52, hullTop_px: 20, hull_px: 17 } as const;

/** One site of a trip: a cell of its hull. */
export interface CellBox {
  readonly tripId: string;
  readonly siteId: string;
  /** Its place among the stops, from 0. */
  readonly position: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A trip: pointed out at its left, pointed back at its right. */
export interface HullBox {
  readonly tripId: string;
  readonly crewId: string;
  /** Its crew's row, from 0. */
  readonly row: number;
  /** Its place among the crew's trips, from 0. */
  readonly index: number;
  readonly state: SheetTrip['state'];
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** How long each of its points is. */
  readonly tip: number;
  readonly cells: readonly CellBox[];
}

/** A crew's row. */
export interface RowBox {
  readonly crewId: string;
  readonly y: number;
  readonly height: number;
  readonly hulls: readonly HullBox[];
}

/** All hulls on an axis. Places are in px from the left of the axis and the top of the first crew's row. */
export interface HullsLaid {
  readonly axis: WeekAxis;
  readonly rows: readonly RowBox[];
  readonly height: number;
  readonly hullOf: ReadonlyMap<string, HullBox>;
}

/** What stands at a place of the crews' band. */
export interface PlaceOnBands {
  readonly crewId: string;
  /** The trip whose hull is there; null: between two. */
  readonly tripId: string | null;
  /** The place of that trip among the crew's; between two, the place a new one would take. */
  readonly index: number;
  /** Before which stop of the trip it is; as many as there are stops: after the last. 0 between two trips. */
  readonly position: number;
  /** The site whose cell is there. */
  readonly siteId: string | null;
  readonly day: string;
  /** The Monday of its week. */
  readonly week: string;
}

/**
 * Bounds that are as near to those wanted as can be, each at least so far from the next.
 *
 * @param wanted - one more than there are cells
 * @param low - none is left of it
 * @param high - none is right of it
 * @param least - how wide a cell is at least, where there is room for it
 */
export function boundsOf(wanted: readonly number[], low: number, high: number, least: number): readonly number[] {
  const cells = wanted.length - 1;
  if (cells < 1) return [];
  const each = Math.min(least, (high - low) / cells);
  const bounds = wanted.map((at) => Math.min(high, Math.max(low, at)));
  for (let i = 0; i <= cells; i++) bounds[i] = Math.max(bounds[i]!, i === 0 ? low : bounds[i - 1]! + each);
  bounds[cells] = Math.min(bounds[cells]!, high);
  for (let i = cells - 1; i >= 0; i--) bounds[i] = Math.min(bounds[i]!, bounds[i + 1]! - each);
  return bounds;
}

/** The days at which a trip's cells begin, and the end of the last; null where it is not known of every stop. */
function cellDays(stops: readonly SheetStop[]): readonly number[] | null {
  const days: number[] = [];
  for (const { arrives, handOver } of stops) {
    const [begin, end] = [dayOf(arrives), dayOf(handOver)];
    if (begin === null || end === null) return null;
    days.push(begin);
    if (days.length === stops.length) days.push(end + 1);
  }
  return days;
}

/** The box of a trip on its crew's row; null where its days cannot be read. */
function hullOf(
  { tripId, state, leaves, back, stops }: SheetTrip,
  axis: WeekAxis,
  { crewId, row, index }: Pick<HullBox, 'crewId' | 'row' | 'index'>,
): HullBox | null {
  const [out, home] = [dayOf(leaves), dayOf(back)];
  if (out === null || home === null) return null;
  const x = xOf(axis, out);
  const width = Math.max(xOf(axis, Math.max(out, home) + 1) - x, 3);
  const y = row * crewRow.height_px + crewRow.hullTop_px;
  const height = crewRow.hull_px;
  const tip = Math.min(height / 2, width / 4);
  const [low, high] = [x + tip, x + width - tip];
  const even = Array.from({ length: stops.length + 1 }, (_, i) => low + ((high - low) * i) / Math.max(1, stops.length));
  const wanted = cellDays(stops)?.map((day) => xOf(axis, day)) ?? even;
  const bounds = boundsOf(stops.length === 0 ? [] : wanted, low, high, 4);
  const cells = stops.map(
    ({ siteId }, position): CellBox => ({
      ...{ tripId, siteId, position, y, height },
      ...{ x: bounds[position]!, width: bounds[position + 1]! - bounds[position]! },
    }),
  );
  return { tripId, crewId, row, index, state, x, y, width, height, tip, cells };
}

function rowOf(crew: SheetCrew, axis: WeekAxis, row: number): RowBox {
  const hulls = crew.trips
    .map((trip, index) => hullOf(trip, axis, { crewId: crew.crewId, row, index }))
    .filter((hull) => hull !== null);
  return { crewId: crew.crewId, y: row * crewRow.height_px, height: crewRow.height_px, hulls };
}

/**
 * Where every trip is drawn.
 *
 * @param sheet - the crews with their trips
 * @param axis - its days
 */
export function hullsOf({ crews }: Pick<RolloutSheet, 'crews'>, axis: WeekAxis): HullsLaid {
  const rows = crews.map((crew, row) => rowOf(crew, axis, row));
  const all = rows.flatMap(({ hulls }) => hulls);
  return {
    ...{ axis, rows, height: rows.length * crewRow.height_px },
    hullOf: new Map(all.map((hull) => [hull.tripId, hull])),
  };
}

/** What is at a place: of which crew, in which trip before which stop, in which week. Null above the first and below the last row. */
export function placeAt({ axis, rows }: HullsLaid, x: number, y: number): PlaceOnBands | null {
  const row = rows[Math.floor(y / crewRow.height_px)];
  if (row === undefined) return null;
  const day: DayIndex = dayAt(axis, x);
  const at = { crewId: row.crewId, day: dateOf(day), week: dateOf(mondayOf(day)) };
  const hull = row.hulls.find((one) => x >= one.x && x < one.x + one.width);
  if (hull === undefined) {
    const next = row.hulls.find((one) => one.x > x);
    const index = next?.index ?? (row.hulls.at(-1)?.index ?? -1) + 1;
    return { ...at, tripId: null, index, position: 0, siteId: null };
  }
  const position = hull.cells.filter((cell) => cell.x + cell.width / 2 <= x).length;
  const cell = hull.cells.find((one) => x >= one.x && x < one.x + one.width);
  return { ...at, tripId: hull.tripId, index: hull.index, position, siteId: cell?.siteId ?? null };
}

/** The outline of a hull, as a path. */
export function outlineOf({ x, y, width, height, tip }: HullBox): string {
  const [middle, right] = [y + height / 2, x + width];
  const points = [
    [x, middle],
    [x + tip, y],
    [right - tip, y],
    [right, middle],
    [right - tip, y + height],
    [x + tip, y + height],
  ];
  return `M${points.map(([px, py]) => `${inTenths(px!)} ${inTenths(py!)}`).join('L')}Z`;
}

/** The lines between a hull's cells, as a path; also where its points begin. */
export function cellLinesOf({ cells, y, height }: HullBox): string {
  const last = cells.at(-1);
  if (last === undefined) return '';
  return [...cells.map(({ x }) => x), last.x + last.width]
    .map((x) => `M${inTenths(x)} ${inTenths(y)}V${inTenths(y + height)}`)
    .join('');
}

const inTenths = (value: number) => String(Math.round(value * 10) / 10);
