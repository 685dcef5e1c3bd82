import type { RowChange } from '../../../api/client.ts';
import type { CrewAsMoved, TripAsMoved } from './moveAnswer.ts';
import { ordersOf } from './orders.ts';

/** A row as the program has it. */
export interface RowRead {
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

/** The plan as its tables have it, and what of it the hand may change. */
export interface PlanRead {
  readonly planId: string;
  readonly plans: readonly RowRead[];
  readonly planTrips: readonly RowRead[];
  readonly planStops: readonly RowRead[];
  /** Trips that are planned and their sites, as the sheet had them before: all else is left as it is. */
  readonly before: readonly { readonly tripId: string; readonly siteIds: readonly string[] }[];
}

/** How the days that follow are kept. */
export interface DaysKept {
  /** When they were worked out. */
  readonly at: string;
  /** Trips whose days are kept; null: of all. Where tables changed since, the others still tell what that moved. */
  readonly onlyTrips: ReadonlySet<string> | null;
  /**
   * Trips that should have left, and nobody has said whether they did: the day each was to leave stays, so that it is still asked, but
   * for one that goes with another crew now, or to other sites or in another order.
   */
  readonly unanswered: ReadonlySet<string>;
}

type Cells = Readonly<Record<string, string | null>>;

/**
 * The changes of rows that make a plan of its tables another: one step, to be taken back as one.
 *
 * @param read - the rows there are, and what of them was planned
 * @param after - the planned trips of all crews, as they are to be
 * @param days - how the days that follow are kept
 * @returns changes of `plans`, `planTrips` and `planStops`; none where all is as it was
 * @law rows that are as they are to be are not touched
 */
export function changesOfPlan(read: PlanRead, after: readonly CrewAsMoved[], days: DaysKept): readonly RowChange[] {
  const rows = rowsOf(read);
  const named = withNames(rows, after);
  const changes: RowChange[] = [];
  const sitesWere = new Map(read.before.map(({ tripId, siteIds }) => [tripId, siteIds]));
  const isAsItWas = ({ tripId, stops }: NamedTrip, crewId: string) =>
    rows.trips.get(tripId)?.cells['crewId'] === crewId &&
    JSON.stringify(sitesWere.get(tripId)) === JSON.stringify(stops.map(({ siteId }) => siteId));
  const isKept = (tripId: string) => days.onlyTrips === null || days.onlyTrips.has(tripId) || !rows.trips.has(tripId);
  for (const { crewId, trips } of named) {
    const orders = ordersOf(trips.map(({ tripId }) => orderIn(rows.trips.get(tripId), 'crewId', crewId)));
    for (const [at, trip] of trips.entries()) {
      const cells = { crewId, order: textOf(orders[at]!), notBefore: trip.notBefore };
      const row = rows.trips.get(trip.tripId);
      // From which day on it may leave is an answer too.
      const isAsked =
        days.unanswered.has(trip.tripId) &&
        trip.notBefore === (row?.cells['notBefore'] ?? null) &&
        isAsItWas(trip, crewId);
      const known = isKept(trip.tripId) && !isAsked ? { leaves: trip.leaves, back: trip.back } : {};
      changes.push(...put('planTrips', row, [read.planId, 'tripId', trip.tripId], { ...cells, ...known }));
    }
  }
  for (const trip of named.flatMap(({ trips }) => trips)) {
    const orders = ordersOf(trip.stops.map(({ siteId }) => orderIn(rows.stops.get(siteId), 'tripId', trip.tripId)));
    for (const [at, { siteId, handOver }] of trip.stops.entries()) {
      const cells = { tripId: trip.tripId, order: textOf(orders[at]!) };
      const known = isKept(trip.tripId) ? { handOver } : {};
      changes.push(
        ...put('planStops', rows.stops.get(siteId), [read.planId, 'siteId', siteId], { ...cells, ...known }),
      );
    }
  }
  changes.push(...goneOf(read, rows, named));
  if (changes.length > 0 && days.onlyTrips === null) changes.push(...put('plans', rows.plan, [], { timedAt: days.at }));
  return changes;
}

interface Rows {
  readonly plan: RowRead | undefined;
  readonly trips: ReadonlyMap<string, RowRead>;
  readonly stops: ReadonlyMap<string, RowRead>;
}

function rowsOf({ planId, plans, planTrips, planStops }: PlanRead): Rows {
  const own = (rows: readonly RowRead[], id: string) =>
    new Map(rows.filter(({ cells }) => cells['planId'] === planId).map((row) => [row.cells[id]!, row]));
  return {
    plan: plans.find(({ cells }) => cells['planId'] === planId),
    trips: own(planTrips, 'tripId'),
    stops: own(planStops, 'siteId'),
  };
}

type NamedTrip = TripAsMoved & { readonly tripId: string };

/** Trips that are new get names nobody has. */
function withNames(
  { trips: known }: Rows,
  after: readonly CrewAsMoved[],
): readonly { readonly crewId: string; readonly trips: readonly NamedTrip[] }[] {
  const taken = new Set(known.keys());
  let number = taken.size;
  const fresh = (): string => {
    do number++;
    while (taken.has(`T${number}`));
    return `T${number}`;
  };
  return after.map(({ crewId, trips }) => ({
    crewId,
    trips: trips.map((trip) => ({ ...trip, tripId: trip.tripId ?? fresh() })),
  }));
}

/** The order a row has, where it stays in the same list. */
function orderIn(row: RowRead | undefined, column: string, list: string): number | null {
  if (row === undefined || row.cells[column] !== list) return null;
  const order = Number(row.cells['order']);
  return row.cells['order'] === undefined || !Number.isFinite(order) ? null : order;
}

const textOf = (order: number) => String(order);

/** A row with these cells: added where there is none, else what of it differs. */
function put(
  table: string,
  row: RowRead | undefined,
  [planId, idColumn, id]: readonly string[],
  cells: Cells,
): readonly RowChange[] {
  if (row === undefined) {
    if (planId === undefined || idColumn === undefined || id === undefined) return [];
    const filled = Object.entries({ planId, [idColumn]: id, ...cells }).filter(
      (one): one is [string, string] => one[1] !== null,
    );
    return [{ kind: 'added', table, key: `${planId}/${id}`, after: Object.fromEntries(filled) }];
  }
  const differing = Object.entries(cells).filter(
    ([column, value]) => !isSame(column, row.cells[column] ?? null, value),
  );
  if (differing.length === 0) return [];
  const before = Object.fromEntries(differing.map(([column]) => [column, row.cells[column] ?? null]));
  return [{ kind: 'edited', table, key: row.key, before, after: Object.fromEntries(differing) }];
}

/** Two ways of writing one number are one order. */
const isSame = (column: string, now: string | null, wanted: string | null): boolean =>
  now === wanted || (column === 'order' && now !== null && wanted !== null && Number(now) === Number(wanted));

/** Stops that are in no trip any more, and trips that have none left. */
function goneOf(
  { before }: PlanRead,
  { trips, stops }: Rows,
  after: readonly { readonly trips: readonly NamedTrip[] }[],
): readonly RowChange[] {
  const there = after.flatMap((crew) => crew.trips);
  const tripsThere = new Set(there.map(({ tripId }) => tripId));
  const sitesThere = new Set(there.flatMap((trip) => trip.stops.map(({ siteId }) => siteId)));
  const left = before.flatMap(({ siteIds }) => siteIds).filter((siteId) => !sitesThere.has(siteId));
  const gone = new Set(left);
  const removed = left.flatMap((siteId) => removedRow('planStops', stops.get(siteId)));
  const emptied = before.filter(
    ({ tripId }) =>
      !tripsThere.has(tripId) &&
      ![...stops].some(
        ([siteId, { cells }]) => cells['tripId'] === tripId && !sitesThere.has(siteId) && !gone.has(siteId),
      ),
  );
  return [...removed, ...emptied.flatMap(({ tripId }) => removedRow('planTrips', trips.get(tripId)))];
}

const removedRow = (table: string, row: RowRead | undefined): readonly RowChange[] =>
  row === undefined ? [] : [{ kind: 'removed', table, key: row.key, before: row.cells }];
