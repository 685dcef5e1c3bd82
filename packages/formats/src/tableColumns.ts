import type { CellValue } from './programmeTables.ts';

/** The columns of a table to be written: the known ones in their order, then all others that a row has. */
export function columnsOf(
  known: readonly string[],
  rows: readonly Readonly<Record<string, CellValue>>[],
): readonly string[] {
  const columns = new Set(known);
  for (const row of rows) for (const name of Object.keys(row)) columns.add(name);
  return [...columns];
}
