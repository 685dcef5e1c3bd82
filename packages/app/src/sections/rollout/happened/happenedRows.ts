import type { RolloutSheet } from '@eavewell/tables';
import type { TableName } from '../../../api/queries.ts';
import type { RowNow } from '../../../forms/draft.ts';
import type { StopRows } from './happenedChanges.ts';

/** Tables into which what happened is written, and those that they name. */
export const happenedTables = [
  ...(['planTrips', 'planStops', 'sites', 'carriers', 'carriersAway', 'arrivals', 'parts', 'places'] as const),
  ...(['ways', 'closures', 'crews', 'workCalendars'] as const),
] as const satisfies readonly TableName[];

type SheetTrip = RolloutSheet['crews'][number]['trips'][number];

/** A trip with its crew and its rows. */
export interface TripRows {
  readonly crew: RolloutSheet['crews'][number];
  readonly trip: SheetTrip;
  readonly row: RowNow;
  readonly stops: readonly StopRows[];
  /** It cannot have left before the plan begins, nor before the crew's trip before it was back; null: nothing is known against any day. */
  readonly leftFrom: string | null;
}

/** The trips of the plan that is shown, with their rows, crew by crew in the order they go. */
export function tripsWithRows(sheet: RolloutSheet, rows: readonly RowNow[]): readonly TripRows[] {
  const of = (table: string) => rows.filter((row) => row.table === table);
  const sites = new Map(of('sites').map((row) => [row.key, row]));
  const own = (row: RowNow) => row.cells['planId'] === sheet.planId;
  const trips = new Map(
    of('planTrips')
      .filter(own)
      .map((row) => [row.cells['tripId'], row]),
  );
  const stops = of('planStops').filter(own);
  const begins = sheet.plans.find(({ planId }) => planId === sheet.planId)?.from ?? null;
  return sheet.crews.flatMap((crew) =>
    crew.trips.flatMap((trip, nth): readonly TripRows[] => {
      const row = trips.get(trip.tripId);
      if (row === undefined) return [];
      const found = stops
        .filter(({ cells }) => cells['tripId'] === trip.tripId)
        .sort((a, b) => Number(a.cells['order']) - Number(b.cells['order']))
        .flatMap((stop) => {
          const site = sites.get(stop.cells['siteId'] ?? '');
          return site === undefined ? [] : [{ stop, site }];
        });
      const before = crew.trips[nth - 1];
      const leftFrom = before === undefined || before.state === 'planned' ? begins : before.back;
      return [{ crew, trip, row, stops: found, leftFrom }];
    }),
  );
}

/** Trips to be told of first: those that should have left or be back, the longest ago first. */
export function overdueTrips(trips: readonly TripRows[]): readonly TripRows[] {
  const due = ({ trip }: TripRows) => dueDay(trip);
  return trips.filter(({ trip }) => trip.isOverdue).sort((a, b) => (due(a) < due(b) ? -1 : 1));
}

/** The day a trip was to leave, or to be back. */
function dueDay({ state, leaves, back }: SheetTrip): string {
  return state === 'underWay' ? back : leaves;
}

/** What is next of each crew: the trip that is under way, else the first that is planned. */
export function nextTrips(trips: readonly TripRows[]): readonly TripRows[] {
  const seen = new Set<string>();
  return trips.filter(({ crew, trip }) => {
    if (trip.state === 'done' || seen.has(crew.crewId)) return false;
    seen.add(crew.crewId);
    return true;
  });
}

/** The day a trip was to leave or be back as it was kept before today moved it; null: never worked out. */
export const keptDay = ({ row, trip }: TripRows): string | null =>
  row.cells[trip.state === 'underWay' ? 'back' : 'leaves'] ?? null;

/** Rows that still hold on a day or later, the soonest first. */
export function stillAway(rows: readonly RowNow[], table: string, today: string): readonly RowNow[] {
  return rows
    .filter((row) => row.table === table && (row.cells['to'] === undefined || row.cells['to'] >= today))
    .filter(({ cells }) => cells['from'] !== undefined)
    .sort((a, b) => (a.cells['from']! < b.cells['from']! ? -1 : 1));
}

/**
 * Arrivals of which something may be told: those still to come, and those that may be late though their day is past. One whose
 * lateness was taken off came as its row says.
 */
export function openArrivals(rows: readonly RowNow[], today: string): readonly RowNow[] {
  const mayBeLate = ({ cells }: RowNow) =>
    ['slipLow_days', 'slipLikely_days', 'slipHigh_days'].some((column) => Number(cells[column] ?? '0') > 0);
  return rows
    .filter((row) => row.table === 'arrivals' && row.cells['dueOn'] !== undefined)
    .filter((row) => row.cells['dueOn']! >= today || mayBeLate(row))
    .sort((a, b) => (a.cells['dueOn']! < b.cells['dueOn']! ? -1 : 1));
}
