import { type ChangeRecord, type RowChange, recordName } from '@eavewell/records';
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
  const came = new Map<string, { readonly at: string; readonly version: number }>();
  for (const [place, { at, changes }] of records.entries())
    for (const { kind, table, key } of changes)
      if (kind === 'added' && table === 'plans') came.set(key, { at, version: place + 1 });
  const timed = [...facts.rowsAsEntered('plans')].flatMap(([planId, cells]) => {
    const timedAt = cells['timedAt'] ?? came.get(planId)?.at;
    const at_ms = timedAt === undefined ? Number.NaN : Date.parse(timedAt);
    return timedAt === undefined || Number.isNaN(at_ms) ? [] : [{ planId, timedAt, at_ms }];
  });
  const oldest_ms = timed.reduce((least, { at_ms }) => Math.min(least, at_ms), Number.POSITIVE_INFINITY);
  const later = records.flatMap((record) => {
    const at_ms = Date.parse(record.at);
    return at_ms > oldest_ms ? [{ at_ms, record }] : [];
  });
  return Object.fromEntries(
    timed.map(({ planId, timedAt, at_ms }) => {
      const since = later.flatMap((one) => (one.at_ms > at_ms ? [one.record] : []));
      const told = changesAmong(since, planId);
      // One that was searched for came in after its days were begun to be worked out.
      const version = Math.max(came.get(planId)?.version ?? 0, records.length - since.length);
      return [planId, { at: timedAt, version, ...told, takenOut: takenOut(since, planId) }];
    }),
  );
}

/** What records changed of what a plan is reckoned from: the newest first, a few, and how many there are. */
export function changesAmong(
  records: readonly ChangeRecord[],
  planId: string,
): Pick<ChangesSince, 'changes' | 'changes_count'> {
  const own = standing(records).flatMap((record) => changeOf(record, planId) ?? []);
  return { changes: own.slice(-mostTold_count).reverse(), changes_count: own.length };
}

/** Records that hold still: what was undone, and the undoing of it, are none of them. One that could be taken back in part alone is left. */
function standing(records: readonly ChangeRecord[]): readonly ChangeRecord[] {
  const known = new Map(records.map((record) => [recordName(record), record]));
  const back = new Set<string>();
  const left: ChangeRecord[] = [];
  for (const record of [...records].reverse()) {
    if (back.has(recordName(record))) continue;
    const taken = record.takesBack === null ? undefined : known.get(record.takesBack);
    if (taken?.changes.length === record.changes.length) back.add(recordName(taken));
    else left.push(record);
  }
  return left.reverse();
}

/** What a record changed of what a rollout is planned from, and what it says that trips of a plan did; null: nothing. */
function changeOf({ at, by, source, changes }: ChangeRecord, planId: string): ChangeSince | null {
  const own = changes.filter((change) => !beside.has(change.table) || saysOfTrip(change, planId));
  if (own.length === 0) return null;
  const counts = new Map<string, number>();
  for (const { table } of own) counts.set(table, (counts.get(table) ?? 0) + 1);
  const [{ kind }] = own as [RowChange];
  return {
    ...{ at, by, source, rows_count: own.length, only: own.length === 1 ? rowChanged(own[0]!) : null },
    tables: [...counts].map(([table, rows_count]) => ({ table, rows_count })),
    kind: own.every((change) => change.kind === kind) ? kind : 'edited',
  };
}

const saysOfTrip = (change: RowChange, planId: string): boolean =>
  change.table === 'planTrips' &&
  change.kind === 'edited' &&
  change.key.startsWith(`${planId}/`) &&
  ('leftOn' in change.after || 'backOn' in change.after);

/** Sites that were taken out of the trips of a plan and stand in none of them now, with the day they were to be handed over. */
function takenOut(records: readonly ChangeRecord[], planId: string): ChangesSince['takenOut'] {
  const taken = new Map<string, ChangesSince['takenOut'][number]>();
  for (const { changes } of records) {
    const backOn = new Map(
      changes.flatMap((change) =>
        change.kind === 'edited' && saysOfTrip(change, planId) ? [[change.key, change.after['backOn'] ?? null]] : [],
      ),
    );
    const stops = changes.filter(({ table, key }) => table === 'planStops' && key.startsWith(`${planId}/`));
    for (const change of stops) {
      if (change.kind !== 'removed') continue;
      const { siteId, tripId, handOver } = change.before;
      if (siteId === undefined) continue;
      // What is moved twice was to be handed over as it was worked out.
      const was = taken.get(siteId)?.was ?? handOver ?? null;
      taken.set(siteId, { siteId, was, backOn: backOn.get(`${planId}/${tripId}`) ?? null });
    }
    for (const { kind, key } of stops) if (kind === 'added') taken.delete(key.slice(planId.length + 1));
  }
  return [...taken.values()];
}

function rowChanged(change: RowChange): RowChanged {
  const { kind, table, key } = change;
  const columns = kind === 'edited' ? Object.keys(change.after) : [];
  const [column] = columns;
  const isOne = kind === 'edited' && column !== undefined && columns.length === 1;
  const cell = isOne ? { column, before: change.before[column] ?? null, after: change.after[column] ?? null } : null;
  return { kind, table, key, cell };
}
