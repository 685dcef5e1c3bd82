import type { RowChange, RowNow } from './draft.ts';

/** So many rows may be changed by one record; the program refuses more. */
export const mostOfOneRecord = 5000;

/**
 * One cell set alike in many rows. Rows that have it already are left out, and more than one record may hold are parted.
 *
 * @param rows - the rows as they stand
 * @param column - the column
 * @param cell - what is to stand there; null is empty
 * @returns the changes, a list for each record
 */
export function settingAlike(
  rows: readonly RowNow[],
  column: string,
  cell: string | null,
): readonly (readonly RowChange[])[] {
  const changes = rows.flatMap((row): readonly RowChange[] => {
    const present = row.cells[column] ?? null;
    if (present === cell) return [];
    const { table, key } = row;
    return [{ kind: 'edited', table, key, before: { [column]: present }, after: { [column]: cell } }];
  });
  const parts = Math.ceil(changes.length / mostOfOneRecord);
  return Array.from({ length: parts }, (_, i) => changes.slice(i * mostOfOneRecord, (i + 1) * mostOfOneRecord));
}
