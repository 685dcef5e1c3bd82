import type { RolloutSheet } from '@eavewell/tables';
import type { RowChange } from '../../../api/client.ts';
import type { RowNow } from '../../../forms/draft.ts';

/** Tables in which plans are kept. */
export const planTables = ['plans', 'planTrips', 'planStops'] as const;

/** Is it the plan that is followed, as its row says? */
export const isFollowed = ({ cells }: RowNow): boolean => cells['isInForce'] === 'yes';

/**
 * A change of some cells of a row; null where they stand so already.
 *
 * @param row - as it stands
 * @param after - the cells wanted; null empties one
 */
export function edited(row: RowNow, after: Readonly<Record<string, string | null>>): RowChange | null {
  const moved = Object.entries(after).filter(([column, cell]) => (row.cells[column] ?? null) !== cell);
  if (moved.length === 0) return null;
  return {
    ...{ kind: 'edited', table: row.table, key: row.key, after: Object.fromEntries(moved) },
    before: Object.fromEntries(moved.map(([column]) => [column, row.cells[column] ?? null])),
  };
}

const made = (changes: readonly (RowChange | null)[]): readonly RowChange[] =>
  changes.filter((change) => change !== null);

/** One plan is followed and no other: one record, so that one undo brings the one before back. */
export function inForceChanges(rows: readonly RowNow[], planId: string): readonly RowChange[] {
  return made(
    rows
      .filter(({ table }) => table === 'plans')
      .map((row) => {
        const isWanted = row.cells['planId'] === planId;
        return isFollowed(row) === isWanted ? null : edited(row, { isInForce: isWanted ? 'yes' : 'no' });
      }),
  );
}

/** A plan with its trips and stops goes; undo brings all of it back. */
export function removedPlan(rows: readonly RowNow[], planId: string): readonly RowChange[] {
  const own = rows.filter(({ cells }) => cells['planId'] === planId);
  // What names another row goes before it.
  return [...planTables]
    .reverse()
    .flatMap((table) => own.filter((row) => row.table === table))
    .map(({ table, key, cells }) => ({ kind: 'removed', table, key, before: { ...cells } }));
}

/** What is kept of a plan's days, and what the sheet works out now. */
export interface Retimed {
  readonly sheet: Pick<RolloutSheet, 'planId' | 'crews'>;
  readonly rows: readonly RowNow[];
  /** Of when the days of the sheet are [ISO 8601]. */
  readonly at: string;
}

/**
 * The days of a plan are kept as they are worked out now. Of trips that left nothing is touched: what happened does not move. Of one that
 * should have left, and nobody has said whether it did, the day it was to leave stays: it is still asked.
 *
 * @returns the changes; of a plan that is not there none
 */
export function retimedChanges({ sheet, rows, at }: Retimed): readonly RowChange[] {
  const own = rows.filter(({ cells }) => cells['planId'] === sheet.planId);
  const find = (table: string, column: string) =>
    new Map(own.filter((row) => row.table === table).map((row) => [row.cells[column], row]));
  const [trips, stops] = [find('planTrips', 'tripId'), find('planStops', 'siteId')];
  const plan = own.find(({ table }) => table === 'plans');
  if (plan === undefined) return [];
  const planned = sheet.crews.flatMap((crew) => crew.trips).filter(({ state }) => state === 'planned');
  return made([
    ...planned.map(({ tripId, leaves, back, isOverdue }) => {
      const row = trips.get(tripId);
      return row === undefined || isOverdue ? null : edited(row, { leaves, back });
    }),
    ...planned
      .flatMap((trip) => trip.stops)
      .map(({ siteId, handOver }) => {
        const row = stops.get(siteId);
        return row === undefined ? null : edited(row, { handOver });
      }),
    edited(plan, { timedAt: at }),
  ]);
}
