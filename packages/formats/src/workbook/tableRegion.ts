import { type Column, type FileMatching, mayStandFor, type Table } from '@eavewell/tables';
import type { CellRange, SheetCell, SheetCells, SheetRow } from './sheetCells.ts';
import { overLimit, workbookLimits } from './workbookLimits.ts';

/** Where a table stands in a sheet. */
export interface TableRegion {
  readonly headerRow: number;
  /** Rows with anything in them above the header. */
  readonly above: readonly SheetRow[];
  readonly header: readonly string[];
  /** The column of the sheet that each of the table's stands in, counted from 0; unnamed ones only where a cell of them is filled. */
  readonly columns: readonly number[];
  /** The last column of the table. */
  readonly lastColumn: number;
  readonly body: readonly SheetRow[];
}

/** How many filled rows are looked through for the header. Ours. */
const lookedThrough = 50;
/** A longer text is no header to be matched [character]. Ours. */
const longestHeader = 60;

function textOf(cell: SheetCell | undefined): string {
  if (cell === undefined) return '';
  return String(typeof cell === 'object' ? cell.value : cell).trim();
}

const folded = (text: string) => text.toLowerCase().replace(/[\s_.-]/g, '');

/** How much a row looks like the header: two for each name as it should be, one for each that differs by capitals or spaces. */
function likeness(row: SheetRow, known: ReadonlySet<string>, nearly: ReadonlySet<string>): number {
  let score = 0;
  for (const cell of row.cells) {
    const text = textOf(cell);
    if (known.has(text)) score += 2;
    else if (nearly.has(folded(text))) score += 1;
  }
  return score;
}

function headerIndex(rows: readonly SheetRow[], names: readonly string[], columns: Table['columns']): number {
  const [known, nearly] = [new Set(names), new Set(names.map(folded))];
  let best = 0;
  let most = 0;
  rows.slice(0, lookedThrough).forEach((row, i) => {
    const score = likeness(row, known, nearly);
    if (score > most) [best, most] = [i, score];
  });
  if (most > 0) return best;
  // No name of ours: the row with most names that may stand for one.
  rows.slice(0, lookedThrough).forEach(({ cells }, i) => {
    const score = cells.filter((cell) => isHeader(cell, columns)).length;
    if (score > most) [best, most] = [i, score];
  });
  return best;
}

function isHeader(cell: SheetCell, columns: Table['columns']): boolean {
  const text = typeof cell === 'string' ? cell.trim() : '';
  return text.length > 0 && text.length <= longestHeader && mayStandFor(text, { columns });
}

/** The table ends with its last known name, and with those that follow it without a gap. */
function lastNamed(header: SheetRow, names: ReadonlySet<string>): number {
  let last = -1;
  header.columns.forEach((column, i) => {
    const text = textOf(header.cells[i]);
    if (text !== '' && (names.has(text) || last < 0 || column === last + 1)) last = column;
  });
  return last;
}

/**
 * Where in this sheet does the table stand? Its header is the row most like it among the first fifty; it reaches to its last known
 * name and on to those beside it without a gap.
 *
 * @param cells - the filled rows of the sheet
 * @param table - the table the sheet is to hold
 * @param matching - what was accepted for its headers; null where nothing was
 * @returns header, columns and rows under it; null where the sheet is empty
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function tableRegion(
  { rows }: SheetCells,
  columns: Table['columns'],
  matching: FileMatching | null = null,
): TableRegion | null {
  const known = [...Object.keys(columns), ...(matching?.columns.keys() ?? [])];
  const index = headerIndex(rows, known, columns);
  const headerCells = rows[index];
  if (headerCells === undefined) return null;
  const lastColumn = lastNamed(headerCells, new Set(known));
  const names = new Map<number, string>();
  for (const [i, column] of headerCells.columns.entries()) names.set(column, textOf(headerCells.cells[i]));
  const body = rows.slice(index + 1);
  const filled = new Set([...names].filter(([, name]) => name !== '').map(([column]) => column));
  for (const row of body) for (const column of row.columns) if (column < lastColumn) filled.add(column);
  const used = [...filled].filter((column) => column <= lastColumn).sort((a, b) => a - b);
  if (used.length > workbookLimits.columns) throw overLimit('columns', used.length);
  if (used.length * body.length > workbookLimits.cells) throw overLimit('cells', used.length * body.length);
  return {
    headerRow: headerCells.row,
    above: rows.slice(0, index),
    header: used.map((column) => names.get(column) ?? ''),
    columns: used,
    lastColumn,
    body,
  };
}

/** The columns of the table under their own names or those accepted, each with where it stands. A name that stands twice is not used. */
export function columnsOf(
  region: TableRegion,
  columns: Table['columns'],
  matching: FileMatching | null,
): readonly { readonly name: string; readonly column: Column<unknown>; readonly at: number }[] {
  return region.header.flatMap((header, at) => {
    const match = matching?.columns.get(header);
    const name = match === undefined ? header : (match?.column ?? '');
    const column = Object.hasOwn(columns, name) ? columns[name] : undefined;
    return column === undefined ? [] : [{ name, column, at }];
  });
}

/** Merged ranges that touch the table, its header among it. */
export function mergedIn({ merged }: SheetCells, region: TableRegion): readonly CellRange[] {
  const first = region.columns[0] ?? 0;
  return merged.filter(
    ({ toRow, fromColumn, toColumn }) =>
      toRow >= region.headerRow && fromColumn <= region.lastColumn && toColumn >= first,
  );
}
