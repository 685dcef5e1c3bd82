import type { ChangeRecord, RowChange } from '@eavewell/records';
import type { ChangeSince, ChangesSince, RowChanged } from '@eavewell/report';
import type { OpenProgramme } from '../openProgramme.ts';
import { planTables } from './rolloutAt.ts';

/** So many of the changes are told. Ours. */
const mostTold_count = 12;

/** Tables that nothing of a rollout is reckoned from: kept plans, and how files are written. */
const beside: ReadonlySet<string> = new Set([...planTables, 'headers', 'files']);

/** What changed since the days of each plan were worked out, by its id; where nobody says when they were, since the plan came in. */
export function changesSince({
  records,
  facts,
}: Pick<OpenProgramme, 'records' | 'facts'>): Readonly<Record<string, ChangesSince>> {
  const cameAt = new Map<string, string>();
  for (const { at, changes } of records)
    for (const { kind, table, key } of changes) if (kind === 'added' && table === 'plans') cameAt.set(key, at);
  const timed = [...facts.rowsAsEntered('plans')].flatMap(([planId, cells]) => {
    const timedAt = cells['timedAt'] ?? cameAt.get(planId);
    const at_ms = timedAt === undefined ? Number.NaN : Date.parse(timedAt);
    return timedAt === undefined || Number.isNaN(at_ms) ? [] : [{ planId, timedAt, at_ms }];
  });
  const oldest_ms = timed.reduce((least, { at_ms }) => Math.min(least, at_ms), Number.POSITIVE_INFINITY);
  const later = records.flatMap((record) => {
    const at_ms = Date.parse(record.at);
    const change = at_ms > oldest_ms ? changeOf(record) : null;
    return change === null ? [] : [{ at_ms, change }];
  });
  return Object.fromEntries(
    timed.map(({ planId, timedAt, at_ms }) => {
      const own = later.filter((one) => one.at_ms > at_ms).map(({ change }) => change);
      return [planId, { at: timedAt, changes: own.slice(-mostTold_count).reverse(), changes_count: own.length }];
    }),
  );
}

/** What a record changed of what a rollout is planned from; null: nothing. */
function changeOf({ at, by, source, changes }: ChangeRecord): ChangeSince | null {
  const own = changes.filter(({ table }) => !beside.has(table));
  if (own.length === 0) return null;
  return { at, by, source, rows_count: own.length, only: own.length === 1 ? rowChanged(own[0]!) : null };
}

function rowChanged(change: RowChange): RowChanged {
  const { kind, table, key } = change;
  const columns = kind === 'edited' ? Object.keys(change.after) : [];
  const [column] = columns;
  const isOne = kind === 'edited' && column !== undefined && columns.length === 1;
  const cell = isOne ? { column, before: change.before[column] ?? null, after: change.after[column] ?? null } : null;
  return { kind, table, key, cell };
}
