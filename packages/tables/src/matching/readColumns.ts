import { type Facts, type Problem, unitsWritten } from '@eavewell/engine';
import { allTables } from '../contract/allTables.ts';
import type { Table } from '../contract/table.ts';
import { bare } from '../reading/hiddenCharacters.ts';
import { nearest } from '../reading/nearest.ts';
import { shown } from '../reading/readCell.ts';
import { type DateOrder, dateOrders } from '../reading/readDate.ts';
import { type TableProblemCode, tableProblem } from '../reading/tableProblems.ts';

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

/** What columns.json came to. */
export interface ColumnsRead {
  readonly matchings: Matchings;
  readonly problems: readonly Problem[];
}

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

class ColumnsReader {
  readonly problems: Problem[] = [];

  add(code: TableProblemCode, facts: Facts): void {
    this.problems.push(tableProblem(code, { file: columnsFile }, facts));
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
 * @returns the matchings by file, and what is wrong in it
 * @problem columns.wrong_entry - not of the form of an entry
 * @problem columns.unknown_file - a file that is none of the tables; a warning
 * @problem columns.unknown_column - a column the table does not have
 * @problem columns.unknown_unit - a unit there is no conversion from
 * @law an entry that cannot be used is a problem and matches nothing
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function readColumns(given: unknown): ColumnsRead {
  const reader = new ColumnsReader();
  const matchings = new Map<string, FileMatching>();
  const expected = '{ "file": { "header": "our column" } }';
  if (!isObject(given)) {
    reader.add('columns.wrong_entry', { file: '', header: '', value: written(given), expected });
    return { matchings, problems: reader.problems };
  }
  for (const [file, entries] of Object.entries(given)) {
    const table = tableOfFile(file);
    if (table === null) {
      const files = allTables.map((one) => (one.name === 'rain' ? everyRainFile : one.file));
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
  return { matchings, problems: reader.problems };
}

/**
 * How are accepted matchings kept in columns.json?
 *
 * @param matchings - by file, by header
 * @returns what is to be written as JSON
 * @law readColumns gives back what it was given
 * @definition ours: docs/decisions/0080-columns-saved.md
 */
export function columnsToSave(matchings: Matchings): Readonly<Record<string, Readonly<Record<string, unknown>>>> {
  const entry = (match: ColumnMatch | null) => {
    if (match === null) return null;
    const { column, unit, dateOrder } = match;
    if (unit === null && dateOrder === null) return column;
    return { column, ...(unit === null ? {} : { unit }), ...(dateOrder === null ? {} : { dateOrder }) };
  };
  const entries = [...matchings].map(([file, { columns }]) => {
    const own = [...columns].map(([header, match]) => [header, entry(match)] as const);
    return [file, Object.fromEntries(own)] as const;
  });
  return Object.fromEntries(entries.filter(([, columns]) => Object.keys(columns).length > 0));
}

/** A matching as it is told: `Roof length → length_m (ft)`. */
export function matchShown(header: string, match: ColumnMatch | null): string {
  if (match === null) return `${shown(header)} → -`;
  const how = [match.unit, match.dateOrder].filter((one) => one !== null);
  return `${shown(header)} → ${match.column}${how.length > 0 ? ` (${how.join(', ')})` : ''}`;
}
