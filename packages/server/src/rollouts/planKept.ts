import type { PlanCells } from '@eavewell/engine';
import { changesBetween, type Facts, type RowChange, rowKey } from '@eavewell/records';

/** A plan as it is to be kept. */
export interface PlanToKeep {
  readonly planId: string;
  /** Cells of its row in plans; null: that of the plan that is there stays, but for when its days were worked out. */
  readonly head: { readonly name: string; readonly from: string; readonly isInForce?: 'yes' } | null;
  readonly timedAt: string;
  readonly planTrips: readonly PlanCells[];
  readonly planStops: readonly PlanCells[];
}

/** The first id of the form P1 that no plan has. */
export function freePlanId(facts: Facts): string {
  for (let number = 1; ; number++) if (facts.row('plans', `P${number}`) === null) return `P${number}`;
}

/**
 * The changes that keep a plan: its row, and its trips and stops in place of those it had.
 *
 * @param facts - the present facts
 * @param wanted - the plan
 * @returns changes of plans, planTrips and planStops; rows that stand as they are to are not touched
 * @law made and read back, the plan is the one that was to be kept
 */
export function changesToKeep(facts: Facts, wanted: PlanToKeep): readonly RowChange[] {
  const { planId, head, timedAt } = wanted;
  const row = { ...(head === null ? facts.row('plans', planId) : { planId, ...head }), timedAt };
  const trips = new Map(
    wanted.planTrips.map((cells) => [rowKey([planId, cells['tripId']!]), { ...cells, planId }] as const),
  );
  const stops = new Map(
    wanted.planStops.map((cells) => [rowKey([planId, cells['siteId']!]), { ...cells, planId }] as const),
  );
  return [
    ...changesBetween(facts, 'plans', new Map([[planId, row]]), 'stay'),
    ...changesBetween(facts, 'planTrips', trips, 'stay'),
    ...changesBetween(facts, 'planStops', stops, 'stay'),
    ...goneOf(facts, 'planStops', planId, stops),
    ...goneOf(facts, 'planTrips', planId, trips),
  ];
}

function goneOf(
  facts: Facts,
  table: string,
  planId: string,
  wanted: ReadonlyMap<string, unknown>,
): readonly RowChange[] {
  return [...facts.rows(table)].flatMap(([key, before]): readonly RowChange[] =>
    before['planId'] === planId && !wanted.has(key) ? [{ kind: 'removed', table, key, before }] : [],
  );
}
