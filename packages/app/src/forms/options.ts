import type { RowNow } from './draft.ts';
import type { FormTable } from './formTables.ts';

/** A row that a cell may name. */
export interface Option {
  readonly id: string;
  readonly name: string | null;
  /** Its id stands in no table: it is not shown. */
  readonly isBare?: boolean;
}

/**
 * What may a cell that names another row say?
 *
 * @param table - the table of the cell
 * @param column - its column
 * @param rows - rows of the programme and of the form [rows]
 * @param siteId - the site of the row, where it belongs to one
 * @returns the rows it may name, each once; null where it names none
 */
export function optionsOf(
  table: FormTable,
  column: string,
  rows: readonly RowNow[],
  siteId: string | null,
): readonly Option[] | null {
  const link = table.links[column];
  if (link === undefined || link.table === 'sites') return null;
  const found = new Map<string, string | null>();
  for (const row of rows) {
    if (row.table !== link.table || (link.ofSite && row.cells['siteId'] !== siteId)) continue;
    const id = row.cells[link.column];
    if (id !== undefined && id !== '' && !found.has(id)) found.set(id, row.cells['name'] ?? null);
  }
  return [...found].map(([id, name]) => ({ id, name }));
}

/** An id for a new row of a table: the next number behind the letters that its rows begin with. */
export function nextId(ids: readonly string[], letters: string): string {
  const numbered = ids.flatMap((id) => {
    const found = /^(.*?)(\d+)$/.exec(id);
    return found ? [{ before: found[1]!, number: Number(found[2]), width: found[2]!.length }] : [];
  });
  const last = numbered.reduce<(typeof numbered)[number] | null>(
    (most, one) => (most === null || one.number > most.number ? one : most),
    null,
  );
  if (last === null) return `${letters}1`;
  return `${last.before}${String(last.number + 1).padStart(last.width, '0')}`;
}
