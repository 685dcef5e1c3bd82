import { type Separator, splitCsv } from './splitCsv.ts';

/** A cell to be written anew. */
export interface CellEdit {
  /** The header is row 1. */
  readonly row: number;
  /** Counted from 0. */
  readonly column: number;
  readonly value: string;
}

/** Where a cell stands in the text, its quotes with it. */
interface Extent {
  readonly from: number;
  readonly to: number;
}

const byteOrderMark = '\uFEFF';

/** Where the quoted cell that begins here ends: behind the quote that is not doubled. */
function quotedEnd(text: string, from: number): number {
  let at = text.indexOf('"', from + 1);
  while (at !== -1 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at === -1 ? text.length : at + 1;
}

/** The cells of each row, by where they stand. */
function extents(text: string, separator: Separator): readonly (readonly Extent[])[] {
  const rows: Extent[][] = [];
  let row: Extent[] = [];
  let at = text.startsWith(byteOrderMark) ? 1 : 0;
  while (at < text.length) {
    const from = at;
    if (text[at] === '"') at = quotedEnd(text, at);
    while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r') at++;
    row.push({ from, to: at });
    const mark = text[at];
    if (mark === separator && at + 1 < text.length) at++;
    else {
      if (mark === separator) row.push({ from: at + 1, to: at + 1 });
      rows.push(row);
      row = [];
      at += mark === '\r' && text[at + 1] === '\n' ? 2 : 1;
    }
  }
  return rows;
}

const quoted = (value: string, separator: Separator) =>
  value.includes(separator) || /["\r\n]/.test(value) ? `"${value.replaceAll('"', '""')}"` : value;

const withoutMark = (text: string) => (text.startsWith(byteOrderMark) ? text.slice(1) : text);

/** The rows as cells; null where quotes do not close, for then nobody can tell where a cell stands. */
function cellsOf(text: string, separator: Separator): readonly (readonly string[])[] | null {
  const { rows } = splitCsv(withoutMark(text), separator);
  return rows.some(({ broken }) => broken === true) ? null : rows.map(({ cells }) => cells);
}

/** Are the two tables the same, but for the cells that were to change? Cells that were not there count as empty. */
function isOnly(before: string, after: string, separator: Separator, edits: readonly CellEdit[]): boolean {
  const [old, fresh] = [cellsOf(before, separator), cellsOf(after, separator)];
  if (old === null || fresh === null || old.length !== fresh.length) return false;
  const wanted = new Map(edits.map(({ row, column, value }) => [`${row} ${column}`, value]));
  return fresh.every((cells, i) => {
    const width = Math.max(cells.length, old[i]!.length);
    for (let column = 0; column < width; column++) {
      const expected = wanted.get(`${i + 1} ${column}`) ?? old[i]![column] ?? '';
      if ((cells[column] ?? '') !== expected) return false;
    }
    return true;
  });
}

/**
 * How is this CSV text with some cells changed? All else stays letter for letter: order, quotes, line ends, columns nobody knows,
 * the byte order mark. A row too short for a cell gets the separators it lacks.
 *
 * @param text - the text, with its byte order mark where it has one [text]
 * @param separator - what stands between its cells
 * @param edits - the cells, each once, in rows that are there
 * @returns the new text; null where it cannot be done surely, as with quotes that do not close [text]
 * @law read again, only those cells differ
 * @source RFC 4180, section 2
 * @example
 * withCells('a,b\n1,"x"\n', ',', [{ row: 2, column: 0, value: '7' }]) // → 'a,b\n7,"x"\n'
 */
export function withCells(text: string, separator: Separator, edits: readonly CellEdit[]): string | null {
  if (cellsOf(text, separator) === null) return null;
  const rows = extents(text, separator);
  const changes: (Extent & { readonly value: string })[] = [];
  const lengthened = new Map<number, number>();
  for (const { row, column, value } of edits.toSorted((a, b) => a.row - b.row || a.column - b.column)) {
    const cells = rows[row - 1];
    if (cells === undefined) return null;
    const cell = cells[column];
    if (cell) changes.push({ ...cell, value: quoted(value, separator) });
    else {
      const width = lengthened.get(row) ?? cells.length;
      const end = cells.at(-1)!.to;
      changes.push({ from: end, to: end, value: separator.repeat(column + 1 - width) + quoted(value, separator) });
      lengthened.set(row, column + 1);
    }
  }
  let [changed, at] = ['', 0];
  for (const { from, to, value } of changes) {
    changed += text.slice(at, from) + value;
    at = to;
  }
  changed += text.slice(at);
  return isOnly(text, changed, separator, edits) ? changed : null;
}

/**
 * How is this CSV text with columns added at its right? The header gets their names, each filled row the separators.
 *
 * @param text - the text, with its byte order mark where it has one [text]
 * @param separator - what stands between its cells
 * @param names - the names of the columns [text]
 * @returns the new text; null where quotes do not close [text]
 * @law every cell that was there stays, letter for letter
 * @source RFC 4180, section 2
 * @example
 * withColumns('a\n1\n', ',', ['b']) // → 'a,b\n1,\n'
 */
export function withColumns(text: string, separator: Separator, names: readonly string[]): string | null {
  const header = cellsOf(text, separator)?.[0];
  if (header === undefined) return null;
  const width = header.length + names.length;
  const rows = extents(text, separator);
  const edits = rows.flatMap((cells, i): readonly CellEdit[] => {
    if (i === 0) return names.map((value, n) => ({ row: 1, column: header.length + n, value }));
    const isBlank = cells.every(({ from, to }) => text.slice(from, to).trim() === '');
    return isBlank || cells.length >= width ? [] : [{ row: i + 1, column: width - 1, value: '' }];
  });
  return withCells(text, separator, edits);
}
