import type { Problem } from '@eavewell/engine';
import { guardText, isDecimalComma, readCell, readRows, type Table, tableProblem } from '@eavewell/tables';
import { findSeparator } from './findSeparator.ts';
import { readCsvFile } from './readCsvFile.ts';
import { type Separator, splitCsv } from './splitCsv.ts';
import { withCells, withColumns } from './withCells.ts';

/** Values by column; null leaves a new row's cell empty. */
export type RowValues = Readonly<Record<string, string | number | null>>;

/** What is to change in a table. */
export interface TableEdit {
  readonly table: Table;
  /** Rows that are there, by their number, and the cells to write. */
  readonly rows: readonly { readonly row: number; readonly values: RowValues }[];
  /** Rows to add at the end. */
  readonly added: readonly RowValues[];
}

/** The table's bytes as they are to be, or why they cannot be. */
export type TableEdited = { readonly bytes: Uint8Array } | { readonly problem: Problem };

/** Decimals of positions that are kept: a hundredth of a metre. Ours. */
export const positionDecimals = 7;

/** A cell as it is written: numbers with a comma where the file has such, and then with all decimals, so that none reads as thousands. */
function cellText(value: string | number | null, hasCommas: boolean): string {
  if (typeof value !== 'number') return guardText(value ?? '');
  return hasCommas ? value.toFixed(positionDecimals).replace('.', ',') : String(value);
}

/** The text with rows added; each ends as the others do. */
function withRows(text: string, separator: Separator, header: readonly string[], rows: readonly RowValues[]): string {
  if (rows.length === 0) return text;
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const start = /[\r\n]$/.test(text) ? text : text + end;
  const hasCommas = separator !== ',' && /\d,\d/.test(text);
  const lines = rows.map((row) =>
    header
      .map((name) => cellText(row[name] ?? null, hasCommas))
      .map((cell) => (cell.includes(separator) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell))
      .join(separator),
  );
  return `${start}${lines.join(end)}${end}`;
}

/** Is every value to be found in the new bytes, as it was meant? */
function isKept(bytes: Uint8Array, { table, rows, added }: TableEdit): boolean {
  const csv = readCsvFile(bytes, { file: table.file, columns: Object.keys(table.columns), needed: true });
  const read = readRows(table, csv.header, csv.rows, { file: table.file, decimalComma: csv.decimalComma });
  const byRow = new Map(read.rows.map(({ row, values }) => [row, values as Readonly<Record<string, unknown>>]));
  // A text stands for what it is read as: a day, a yes, a number.
  const meant = (name: string, value: string | number | null) =>
    typeof value === 'string' ? readCell(table.columns[name]!, value, csv).value : value;
  const isSame = (values: Readonly<Record<string, unknown>> | undefined, wanted: RowValues) =>
    values !== undefined && Object.entries(wanted).every(([name, value]) => values[name] === meant(name, value));
  const last = [...byRow.values()].slice(-added.length);
  return (
    rows.every(({ row, values }) => isSame(byRow.get(row), values)) &&
    added.every((values, i) => isSame(last[i], values))
  );
}

/**
 * How are the bytes of a table with some cells written anew and rows added? All else stays byte for byte. The new table is read
 * again before it is given, and refused where it does not say what was meant.
 *
 * @param bytes - the table as it stands [byte]
 * @param edit - the table, cells and rows
 * @returns the bytes to write; or the problem, and then nothing is to be written
 * @problem positions.table_encoding - it is not in UTF-8, so that other cells could not stay as they are
 * @problem positions.table_broken - its quotes do not close, or it would not read as meant
 * @law read again, only the cells that were to change differ
 * @definition ours: docs/decisions/0076-points-and-rows.md
 */
export function editTable(bytes: Uint8Array, edit: TableEdit): TableEdited {
  const { file, columns } = edit.table;
  const broken = { problem: tableProblem('positions.table_broken', { file }, { value: file }) };
  let text: string | null;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return { problem: tableProblem('positions.table_encoding', { file }, { value: file }) };
  }
  const plain = text.replace(/^\uFEFF/, '');
  const separator = findSeparator(plain, Object.keys(columns));
  const split = splitCsv(plain, separator).rows;
  const header = split[0]!.cells.map((name) => name.trim());
  const hasCommas = separator !== ',' && split.some(({ cells }) => cells.some((cell) => isDecimalComma(cell.trim())));
  const named = new Set([...edit.rows.map(({ values }) => values), ...edit.added].flatMap(Object.keys));
  const missing = [...named].filter((name) => !header.includes(name));
  if (missing.length > 0) text = withColumns(text, separator, missing);
  const all = [...header, ...missing];
  const edits = edit.rows.flatMap(({ row, values }) =>
    Object.entries(values).map(([name, value]) => ({
      row,
      column: all.indexOf(name),
      value: cellText(value, hasCommas),
    })),
  );
  const changed = text === null ? null : withCells(text, separator, edits);
  if (changed === null) return broken;
  const made = new TextEncoder().encode(withRows(changed, separator, all, edit.added));
  return isKept(made, edit) ? { bytes: made } : broken;
}
