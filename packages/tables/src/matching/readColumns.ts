import { type Facts, type Problem, unitsWritten } from '@eavewell/engine';
import { allTables } from '../contract/allTables.ts';
import type { Table } from '../contract/table.ts';
import { bare } from '../reading/hiddenCharacters.ts';
import { nearest } from '../reading/nearest.ts';
import { shown } from '../reading/readCell.ts';
import { type DateOrder, dateOrders } from '../reading/readDate.ts';
import { type TableProblemCode, tableProblem } from '../reading/tableProblems.ts';
import { headerWords, isOtherUnit } from './headerWords.ts';
import { sheetNames, tableOfSheet } from './tableOfSheet.ts';

/** The name under which accepted matchings are kept in a folder. */
export const columnsFile = 'columns.json';
/** The entry that stands for every rain file without one of its own. */
export const everyRainFile = 'rain/*.csv';

/** The column of ours that a header stands for, and how its cells are written. */
export interface ColumnMatch {
  readonly column: string;
  /** The unit the numbers are written in; null where it is the column's own. */
  readonly unit: string | null;
  readonly dateOrder: DateOrder | null;
}

/** What was accepted for one file: by header, the column it stands for; null for one that is kept and not read. */
export interface FileMatching {
  readonly columns: ReadonlyMap<string, ColumnMatch | null>;
  /** Is it for many files? Then a header may be absent from one of them. */
  readonly isShared: boolean;
}

/** All that was accepted, by file. */
export type Matchings = ReadonlyMap<string, FileMatching>;

/** The name in the saved matchings of a workbook under which sheets are given to tables. */
export const sheetsEntry = 'sheets';

/** Which saved matchings are read: those of a folder, or those that stand beside a workbook. */
export interface SavedWhere {
  /** The name of the file they are kept in [text]. */
  readonly file: string;
  readonly isWorkbook: boolean;
}

/** What columns.json came to. */
export interface ColumnsRead {
  readonly matchings: Matchings;
  /** Of a workbook: the sheet of ours that a sheet of another name stands for; null for one that is left alone. */
  readonly sheets: ReadonlyMap<string, string | null>;
  readonly problems: readonly Problem[];
}

/** Where a header names a gallon without its country, one of these must be said. */
const gallons = ['usgal', 'impgal'] as const;

/** The form of an entry, as it is told. */
const entryForm = '"our column", or { "column": "…", "unit": "…" }, or { "column": "…", "dateOrder": "dmy" }';

/**
 * Which table is kept in a file of this name?
 *
 * @param file - the path within the folder, or `rain/*.csv` [text]
 * @returns the table; null where it is none of them
 * @definition ours: docs/tables.md
 */
export function tableOfFile(file: string): Table | null {
  const isRain = /^rain\/(?:[A-Za-z0-9_-]{1,64}|\*)\.csv$/.test(file);
  return allTables.find((table) => (table.name === 'rain' ? isRain : table.file === file)) ?? null;
}

/**
 * What was accepted for a file?
 *
 * @param matchings - all that was accepted
 * @param file - the path within the folder [text]
 * @returns its own entry, or for a rain file that of all rain files; null where there is none
 * @definition ours
 */
export function matchingOf(matchings: Matchings, file: string): FileMatching | null {
  const own = matchings.get(file);
  if (own) return own;
  return (file.startsWith('rain/') ? matchings.get(everyRainFile) : undefined) ?? null;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function written(value: unknown): string {
  try {
    return shown(JSON.stringify(value) ?? String(value));
  } catch {
    return '{…}';
  }
}

const ofFolder: SavedWhere = { file: columnsFile, isWorkbook: false };

class ColumnsReader {
  readonly problems: Problem[] = [];
  readonly sheets = new Map<string, string | null>();
  private readonly where: SavedWhere;

  constructor(where: SavedWhere) {
    this.where = where;
  }

  add(code: TableProblemCode, facts: Facts): void {
    this.problems.push(tableProblem(code, { file: this.where.file }, facts));
  }

  /** Sheets that stand for ours under other names. */
  readSheets(entries: unknown): void {
    const expected = [...sheetNames, 'rain <gaugeId>'];
    const wrong = (header: string, value: unknown) =>
      this.add('columns.wrong_entry', { file: sheetsEntry, header: shown(header), value: written(value), expected });
    if (!isObject(entries)) {
      wrong('', entries);
      return;
    }
    for (const [sheet, value] of Object.entries(entries)) {
      const isSheet = value === null || (typeof value === 'string' && tableOfSheet(value) !== null);
      if (isSheet) this.sheets.set(sheet, value as string | null);
      else wrong(sheet, value);
    }
  }

  /** The table of a file of the folder, or of a sheet of the workbook. */
  tableOf(file: string): Table | null {
    if (!this.where.isWorkbook) return tableOfFile(file);
    const sheet = this.sheets.get(file);
    return sheet === null ? null : tableOfSheet(sheet ?? file);
  }

  /** The names there may be, for one that is none of them. */
  names(): readonly string[] {
    if (this.where.isWorkbook) return [...this.sheets.keys(), ...sheetNames];
    return allTables.map((one) => (one.name === 'rain' ? everyRainFile : one.file));
  }

  /** One entry; undefined where it cannot be used. */
  entry(table: Table, file: string, header: string, value: unknown): ColumnMatch | null | undefined {
    if (value === null) return null;
    const given = typeof value === 'string' ? { column: value } : value;
    const about = { file, header: shown(header) };
    const wrong = () => this.add('columns.wrong_entry', { ...about, value: written(value), expected: entryForm });
    if (!isObject(given) || typeof given['column'] !== 'string') {
      wrong();
      return undefined;
    }
    if (Object.keys(given).some((key) => !['column', 'unit', 'dateOrder'].includes(key))) {
      wrong();
      return undefined;
    }
    const { column: name, unit = null, dateOrder = null } = given as Readonly<Record<string, unknown>>;
    const known = Object.keys(table.columns);
    if (!known.includes(name as string)) {
      const likely = nearest(name as string, known) ?? '';
      this.add('columns.unknown_column', { ...about, value: shown(name as string), expected: known, likely });
      return undefined;
    }
    const column = table.columns[name as string]!;
    const units = unitsWritten(column.unit);
    const isOwn = unit === column.unit && column.unit !== '';
    if (unit !== null && !isOwn && !(typeof unit === 'string' && units.includes(unit))) {
      const facts = { value: written(unit), column: name as string, unit: column.unit, units };
      this.add('columns.unknown_unit', { ...about, ...facts, expected: [column.unit, ...units] });
      return undefined;
    }
    if (unit === null && isOtherUnit(header, column)) {
      const named = headerWords(header).unit!;
      const ways = units.includes(named) ? [named] : [...(named === 'gal' ? gallons : []), column.unit];
      const facts = { value: name as string, found: named, unit: column.unit, units: ways, expected: ways };
      this.add('columns.unit_in_header', { ...about, ...facts });
      return undefined;
    }
    const isOrder = column.kind === 'date' && (dateOrders as readonly unknown[]).includes(dateOrder);
    if (dateOrder !== null && !isOrder) {
      wrong();
      return undefined;
    }
    const order = dateOrder as DateOrder | null;
    return { column: name as string, unit: isOwn ? null : (unit as string | null), dateOrder: order };
  }
}

/**
 * Which matchings of headers to columns were accepted for a folder?
 *
 * @param given - what columns.json holds, already parsed
 * @param where - the folder's own columns.json, where nothing else is said; or that beside a workbook, by sheet and with `sheets`
 * @returns the matchings by file or sheet, and what is wrong in it
 * @problem columns.wrong_entry - not of the form of an entry
 * @problem columns.unknown_file - a file that is none of the tables; a warning
 * @problem columns.unknown_column - a column the table does not have
 * @problem columns.unknown_unit - a unit there is no conversion from
 * @problem columns.unit_in_header - the header names another unit than the column's, and none is said
 * @law an entry that cannot be used is a problem and matches nothing
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function readColumns(given: unknown, where: SavedWhere = ofFolder): ColumnsRead {
  const reader = new ColumnsReader(where);
  const matchings = new Map<string, FileMatching>();
  const expected = '{ "file": { "header": "our column" } }';
  if (!isObject(given)) {
    reader.add('columns.wrong_entry', { file: '', header: '', value: written(given), expected });
    return { matchings, sheets: reader.sheets, problems: reader.problems };
  }
  if (where.isWorkbook && Object.hasOwn(given, sheetsEntry)) reader.readSheets(given[sheetsEntry]);
  for (const [file, entries] of Object.entries(given)) {
    if (where.isWorkbook && file === sheetsEntry) continue;
    const table = reader.tableOf(file);
    if (table === null) {
      const files = reader.names();
      const likely = nearest(file, files) ?? '';
      reader.add('columns.unknown_file', { value: shown(file), expected: files, likely });
      continue;
    }
    if (!isObject(entries)) {
      reader.add('columns.wrong_entry', { file, header: '', value: written(entries), expected });
      continue;
    }
    const columns = new Map<string, ColumnMatch | null>();
    for (const [header, value] of Object.entries(entries)) {
      const match = reader.entry(table, file, header, value);
      if (match !== undefined) columns.set(bare(header), match);
    }
    matchings.set(file, { columns, isShared: file === everyRainFile });
  }
  return { matchings, sheets: reader.sheets, problems: reader.problems };
}

/** The unit of a column where its header names another; null where it does not. Columns of one name have one unit in all tables. */
function unitToSay(header: string, name: string): string | null {
  const column = allTables.map(({ columns }) => (columns as Table['columns'])[name]).find((one) => one !== undefined);
  return column !== undefined && isOtherUnit(header, column) ? column.unit : null;
}

/**
 * How are accepted matchings kept in columns.json?
 *
 * @param matchings - by file or sheet, by header
 * @param sheets - sheets of other names, and the sheet of ours each stands for
 * @returns what is to be written as JSON
 * @law readColumns gives back what it was given
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function columnsToSave(
  matchings: Matchings,
  sheets: ReadonlyMap<string, string | null> = new Map(),
): Readonly<Record<string, Readonly<Record<string, unknown>>>> {
  const entry = (header: string, match: ColumnMatch | null) => {
    if (match === null) return null;
    const { column, dateOrder } = match;
    // A header that names another unit than the values are in: that they are in the column's own must be said.
    const unit = match.unit ?? unitToSay(header, column);
    if (unit === null && dateOrder === null) return column;
    return { column, ...(unit === null ? {} : { unit }), ...(dateOrder === null ? {} : { dateOrder }) };
  };
  const entries = [...matchings].map(([file, { columns }]) => {
    const own = [...columns].map(([header, match]) => [header, entry(header, match)] as const);
    return [file, Object.fromEntries(own)] as const;
  });
  const filled = entries.filter(([, columns]) => Object.keys(columns).length > 0);
  const named = sheets.size === 0 ? [] : [[sheetsEntry, Object.fromEntries(sheets)] as const];
  return Object.fromEntries([...named, ...filled]);
}

/** A matching as it is told: `Roof length → length_m (ft)`. */
export function matchShown(header: string, match: ColumnMatch | null): string {
  if (match === null) return `${shown(header)} → -`;
  const how = [match.unit, match.dateOrder].filter((one) => one !== null);
  return `${shown(header)} → ${match.column}${how.length > 0 ? ` (${how.join(', ')})` : ''}`;
}
