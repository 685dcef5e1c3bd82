import { type ChangeRecord, compareRecords, type RowChange } from './changeRecord.ts';

/** One time at which a cell was set, emptied, or went with its row. */
export interface CellHistory {
  readonly record: ChangeRecord;
  readonly before: string | null;
  readonly after: string | null;
}

/**
 * What stood in this cell, since when, and who put it there?
 *
 * @param records - all records, in any order
 * @param table - the table [text]
 * @param key - the row's key [text]
 * @param column - the column [text]
 * @returns every record that touched the cell, oldest first, with what it saw there and what it left
 * @law every value the cell ever had is in its history
 * @definition ours: docs/decisions/0100-change-records.md
 */
export function historyOf(
  records: Iterable<ChangeRecord>,
  table: string,
  key: string,
  column: string,
): readonly CellHistory[] {
  const found: CellHistory[] = [];
  for (const record of [...records].sort(compareRecords)) {
    for (const change of record.changes) {
      if (change.table !== table || change.key !== key || !touches(change, column)) continue;
      const before = change.kind === 'added' ? null : (change.before[column] ?? null);
      const after = change.kind === 'removed' ? null : (change.after[column] ?? null);
      found.push({ record, before, after });
    }
  }
  return found;
}

function touches(change: RowChange, column: string): boolean {
  return Object.hasOwn(change.kind === 'removed' ? change.before : change.after, column);
}
