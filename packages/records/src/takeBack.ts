import { type ChangeRecord, compareRecords, type RowChange, recordName } from './changeRecord.ts';
import type { Facts } from './foldRecords.ts';

/** A cell, or a whole row, that stays as it is because it was changed since. */
export interface ChangedSince {
  readonly table: string;
  readonly key: string;
  /** Null: the row as a whole. */
  readonly column: string | null;
}

/** The changes that take a record back, and what they leave alone. */
export interface TakenBack {
  readonly changes: readonly RowChange[];
  readonly changedSince: readonly ChangedSince[];
}

/**
 * Which changes take this record back? Each cell to what it was, where it still stands as the record left it; what was changed
 * since stays and is named.
 *
 * @param record - the record to be taken back
 * @param facts - the present facts
 * @returns changes for a new record, none where all was changed since; and what stays
 * @law taking back at once leaves the facts as they were before the record
 * @definition ours: docs/decisions/0100-change-records.md
 */
export function takeBack(record: ChangeRecord, facts: Facts): TakenBack {
  const changes: RowChange[] = [];
  const changedSince: ChangedSince[] = [];
  for (const change of [...record.changes].reverse()) {
    const { table, key } = change;
    const present = facts.row(table, key);
    if (change.kind === 'removed') {
      if (present) changedSince.push({ table, key, column: null });
      else changes.push({ kind: 'added', table, key, after: change.before });
      continue;
    }
    if (!present) {
      changedSince.push({ table, key, column: null });
      continue;
    }
    if (change.kind === 'added') {
      const columns = new Set([...Object.keys(present), ...Object.keys(change.after)]);
      const other = [...columns].filter((column) => present[column] !== change.after[column]);
      if (other.length === 0) changes.push({ kind: 'removed', table, key, before: present });
      else changedSince.push(...other.map((column) => ({ table, key, column })));
      continue;
    }
    const [before, after]: [Record<string, string | null>, Record<string, string | null>] = [{}, {}];
    for (const [column, was] of Object.entries(change.before)) {
      if ((present[column] ?? null) !== (change.after[column] ?? null)) changedSince.push({ table, key, column });
      else [before[column], after[column]] = [change.after[column] ?? null, was];
    }
    if (Object.keys(after).length > 0) changes.push({ kind: 'edited', table, key, before, after });
  }
  return { changes, changedSince };
}

/** The last record a person may undo, and the last undo they may redo. */
export interface Steps {
  readonly undo: ChangeRecord | null;
  readonly redo: ChangeRecord | null;
}

/**
 * Which record would undo take back on this device, and which would redo? Only what was made on it: nobody undoes another's
 * work by pressing a key. After a new change there is nothing to redo.
 *
 * @param records - all records
 * @param device - the device that asks [text]
 * @returns the record to undo and the undo to redo; null where there is none
 * @law undo as often as there are records, then redo as often, and the facts stand as before
 * @definition ours: docs/decisions/0100-change-records.md
 */
export function nextSteps(records: readonly ChangeRecord[], device: string): Steps {
  const done: ChangeRecord[] = [];
  const undone: ChangeRecord[] = [];
  for (const record of records.filter((one) => one.device === device).sort(compareRecords)) {
    if (record.source.kind === 'undo') {
      const at = done.findLastIndex((one) => recordName(one) === record.takesBack);
      if (at >= 0) done.splice(at, 1);
      undone.push(record);
    } else if (record.source.kind === 'redo') {
      const at = undone.findLastIndex((one) => recordName(one) === record.takesBack);
      if (at >= 0) undone.splice(at, 1);
      done.push(record);
    } else {
      done.push(record);
      undone.length = 0;
    }
  }
  return { undo: done.at(-1) ?? null, redo: undone.at(-1) ?? null };
}
