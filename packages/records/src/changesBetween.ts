import type { Cells, RowChange } from './changeRecord.ts';
import type { Facts } from './foldRecords.ts';

/** Rows of one table as they are wanted, by key. */
export type WantedRows = ReadonlyMap<string, Cells>;

/** What is to become of rows that are there and not among those wanted. */
export type Absent = 'stay' | 'go';

/**
 * What would change if a table stood like this? Rows and cells that are the same are no change: the same file a second time
 * changes nothing.
 *
 * @param facts - the present facts
 * @param table - the table [text]
 * @param wanted - its rows by key, as they are to stand
 * @param absent - whether rows that are not wanted stay or go
 * @returns the changes, in the order of the rows wanted; none where it stands like this already
 * @law once the changes are made, the rows wanted stand as they are wanted
 * @definition ours: docs/decisions/0100-change-records.md
 */
export function changesBetween(facts: Facts, table: string, wanted: WantedRows, absent: Absent): readonly RowChange[] {
  const changes: RowChange[] = [];
  for (const [key, after] of wanted) {
    const present = facts.row(table, key);
    if (!present) changes.push({ kind: 'added', table, key, after });
    else changes.push(...editOf(table, key, present, after));
  }
  if (absent === 'stay') return changes;
  for (const [key, before] of facts.rows(table))
    if (!wanted.has(key)) changes.push({ kind: 'removed', table, key, before });
  return changes;
}

function editOf(table: string, key: string, present: Cells, wanted: Cells): readonly RowChange[] {
  const before: Record<string, string | null> = {};
  const after: Record<string, string | null> = {};
  for (const column of new Set([...Object.keys(present), ...Object.keys(wanted)])) {
    const [was, is] = [present[column] ?? null, wanted[column] ?? null];
    if (was !== is) [before[column], after[column]] = [was, is];
  }
  return Object.keys(after).length === 0 ? [] : [{ kind: 'edited', table, key, before, after }];
}
