import { type Cells, rowKey } from '@eavewell/records';
import { type FolderTableName, folderTableNames, folderTables, wayLinesFile } from '@eavewell/tables';
import { cellAsText } from './cellAsText.ts';
import type { CellValue, ProgrammeTables, RainRow } from './programmeTables.ts';
import { rainMonths, rainRowsOf } from './rainMonths.ts';
import { joinedWayLines, wayLineRows } from './wayLineRows.ts';

/** The rows of every table as records keep them: by table, then key; the cells are text. */
export type RowsByTable = ReadonlyMap<string, ReadonlyMap<string, Cells>>;

/** Where rows are read from, such as the facts of records: the rows of a table, in the order of their file. */
export interface RowsRead {
  rowsAsEntered(table: string): Iterable<readonly [key: string, cells: Cells]>;
}

/** Longest key a record takes, with some room for a number behind it. */
const longestKey = 900;

type Row = Readonly<Record<string, CellValue>>;

/** A key that no row has yet: rows of one key, or of none, are told apart by a number. */
function freeKey(taken: ReadonlyMap<string, unknown>, wanted: string, counts: Map<string, number>): string {
  const key = wanted.slice(0, longestKey);
  let count = counts.get(key) ?? 0;
  let free = key;
  do {
    count++;
    free = count === 1 ? key : `${key}#${count}`;
  } while (taken.has(free));
  counts.set(key, count);
  return free;
}

function tableRows(name: FolderTableName, rows: readonly Row[]): ReadonlyMap<string, Cells> {
  const found = new Map<string, Cells>();
  const counts = new Map<string, number>();
  for (const row of rows) {
    const cells: Record<string, string> = {};
    for (const [column, value] of Object.entries(row)) {
      const text = cellAsText(value);
      if (text !== null) cells[column] = text;
    }
    const wanted = rowKey(folderTables[name].key.map((column) => cells[column] ?? ''));
    found.set(freeKey(found, wanted, counts), cells);
  }
  return found;
}

/** The columns of rows that are none of the contract's, in the order of the file. */
function ownColumns(known: readonly string[], rows: readonly Row[]): readonly string[] {
  const names = new Set<string>();
  for (const row of rows) for (const name of Object.keys(row)) names.add(name);
  for (const name of known) names.delete(name);
  return [...names];
}

const headerCells = (columns: readonly string[]): Cells => ({ columns: JSON.stringify(columns) });

/** Bytes in text that any record can hold, and back. */
const inText = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');
const inBytes = (text: string) => new Uint8Array(Buffer.from(text, 'base64'));

/**
 * How is a programme kept as rows of records? The tables as they are; `rain` by the month of a gauge; `settings` a row a field;
 * `wayLines` a row a way; `headers` says which tables there are and which columns of their own they have; `files` holds those
 * that are kept letter for letter. Cells are text, right or wrong: reading them names what is wrong.
 *
 * @param programme - settings, tables and rain, as tablesAsRead gives them
 * @returns the rows by table and key [text]
 * @law programmeOfRows gives the programme back
 * @definition ours: docs/decisions/0103-tables-as-records.md
 */
export function rowsOfProgramme(programme: ProgrammeTables): RowsByTable {
  const tables = new Map<string, ReadonlyMap<string, Cells>>();
  const headers = new Map<string, Cells>();
  const settings = new Map<string, Cells>();
  for (const [key, value] of Object.entries(programme.settings)) settings.set(key, { value: JSON.stringify(value) });
  tables.set('settings', settings);
  for (const name of folderTableNames) {
    const rows = programme.tables[name];
    if (rows === undefined) continue;
    tables.set(name, tableRows(name, rows));
    headers.set(name, headerCells(ownColumns(Object.keys(folderTables[name].columns), rows)));
  }
  const rain = new Map<string, Cells>();
  for (const { gaugeId, rows } of programme.rain) {
    const extras = rows.flatMap(({ extra }) => (extra === undefined ? [] : [extra]));
    headers.set(rowKey(['rain', gaugeId]), headerCells(ownColumns([], extras)));
    for (const [key, cells] of rainMonths(gaugeId, rows)) rain.set(key, cells);
  }
  tables.set('rain', rain);
  const files = new Map<string, Cells>();
  for (const { path, text, bytes } of programme.rawFiles ?? []) {
    const lines = path === wayLinesFile && bytes === undefined ? wayLineRows(text) : null;
    if (lines !== null) tables.set('wayLines', lines);
    else if (bytes !== undefined) files.set(path, { base64: inText(bytes) });
    else files.set(path, text === '' ? {} : { text });
  }
  return tables.set('headers', headers).set('files', files);
}

function columnsSaid(cells: Cells | undefined): readonly string[] {
  try {
    const columns: unknown = JSON.parse(cells?.['columns'] ?? '[]');
    return Array.isArray(columns) ? columns.filter((name) => typeof name === 'string') : [];
  } catch {
    return [];
  }
}

function rowsOfTable(name: FolderTableName, rows: readonly Cells[], said: readonly string[]): readonly Row[] {
  const known = Object.keys(folderTables[name].columns);
  const columns = [...new Set([...known, ...said, ...ownColumns(known, rows)])];
  return rows.map((cells) => Object.fromEntries(columns.map((column) => [column, cells[column] ?? null])));
}

/** A setting as it was written; what is no JSON is the text itself, and reading it names it. */
function settingOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

function rainOf(from: RowsRead, headers: ReadonlyMap<string, Cells>): ProgrammeTables['rain'] {
  const byGauge = new Map<string, [string, Cells][]>();
  for (const key of headers.keys()) if (key.startsWith('rain/')) byGauge.set(key.slice('rain/'.length), []);
  for (const [key, cells] of from.rowsAsEntered('rain')) {
    const at = key.indexOf('/');
    const gaugeId = key.slice(0, at);
    const rows = byGauge.get(gaugeId) ?? [];
    byGauge.set(gaugeId, rows);
    rows.push([key.slice(at + 1), cells]);
  }
  return [...byGauge].map(([gaugeId, rows]): { gaugeId: string; rows: readonly RainRow[] } => {
    return { gaugeId, rows: rainRowsOf(rows, columnsSaid(headers.get(rowKey(['rain', gaugeId])))) };
  });
}

/**
 * Which programme do rows of records come to?
 *
 * @param from - the rows by table, such as the facts folded from records
 * @returns settings, tables and rain, for writeProgramme
 * @law a folder written from it reads as the one the rows came from: facts, problems and what was not used
 * @definition ours: docs/decisions/0103-tables-as-records.md
 */
export function programmeOfRows(from: RowsRead): ProgrammeTables {
  const headers = new Map(from.rowsAsEntered('headers'));
  const settings = [...from.rowsAsEntered('settings')].flatMap(([key, { value }]) =>
    value === undefined ? [] : [[key, settingOf(value)] as const],
  );
  const tables: Partial<Record<FolderTableName, readonly Row[]>> = {};
  for (const name of folderTableNames) {
    const rows = [...from.rowsAsEntered(name)].map(([, cells]) => cells);
    if (rows.length > 0 || headers.has(name)) tables[name] = rowsOfTable(name, rows, columnsSaid(headers.get(name)));
  }
  const rawFiles = [...from.rowsAsEntered('files')].map(([path, { text, base64 }]) =>
    base64 === undefined ? { path, text: text ?? '' } : { path, text: '', bytes: inBytes(base64) },
  );
  const lines = joinedWayLines(from.rowsAsEntered('wayLines'));
  if (lines !== null) rawFiles.push({ path: wayLinesFile, text: lines });
  return { settings: Object.fromEntries(settings), tables, rain: rainOf(from, headers), rawFiles };
}
