import type { RowRead } from './planRows.ts';

/** The tables of plans as they were read, and of which version of the programme. */
export interface RowsSeen {
  readonly version: number;
  readonly plans: readonly RowRead[];
  readonly planTrips: readonly RowRead[];
  readonly planStops: readonly RowRead[];
}

/**
 * May a move that was worked out on one version of a programme be laid on the rows as they are now?
 *
 * @param planId - the plan
 * @param version - of the sheet it was worked out on
 * @param seen - rows as they were when it was taken up; null: not known
 * @param now - rows as they are
 * @returns `yes`; `onlyTouched`: nothing of the plan is otherwise, but something beside it; `no`: somebody changed the plan, or may have
 * @law what another did to the plan meanwhile is never written over
 */
export function mayLay(
  planId: string,
  version: number,
  seen: RowsSeen | null,
  now: RowsSeen,
): 'yes' | 'onlyTouched' | 'no' {
  if (now.version === version) return 'yes';
  if (seen?.version !== version) return 'no';
  return textOf(planId, seen) === textOf(planId, now) ? 'onlyTouched' : 'no';
}

function textOf(planId: string, { plans, planTrips, planStops }: RowsSeen): string {
  const own = [plans, planTrips, planStops].map((rows) => rows.filter(({ cells }) => cells['planId'] === planId));
  return JSON.stringify(
    own.map((rows) => rows.map(({ key, cells }) => [key, Object.entries(cells).toSorted()] as const).toSorted()),
  );
}
