import type { z } from 'zod';

/**
 * What a column holds. `quantity` and `fraction` are numbers; a date is a day index once read; `monthDay` is a day of the year, 1 to 365;
 * `months` are numbers from 1 to 12, `weekdays` from 0 (Sunday) to 6; `yesNo` is true or false.
 */
export type ColumnKind =
  | 'id'
  | 'text'
  | 'quantity'
  | 'whole'
  | 'fraction'
  | 'date'
  | 'time'
  | 'monthDay'
  | 'months'
  | 'weekdays'
  | 'choice'
  | 'yesNo';

/** The ends of a range, both included; with `above` the lower end itself is left out. */
export interface Limits {
  readonly low: number;
  readonly high: number;
  readonly above?: boolean;
}

/** Another unit a column is often filled in with: values up to `high` are taken for it, and not used. */
export interface OtherUnit {
  readonly unit: string;
  readonly high: number;
  /** Values of the column's own unit in one of it. */
  readonly factor: number;
}

/** One column of a table: how its cells are read, what they mean and which values are believed. */
export interface Column<T> {
  readonly kind: ColumnKind;
  /** Unit of the value, empty where it has none. */
  readonly unit: string;
  /** What the column says, in one sentence. */
  readonly about: string;
  readonly required: boolean;
  /** A value outside is not used. */
  readonly hard: Limits | null;
  /** A value outside is used, with a warning. */
  readonly usual: Limits | null;
  readonly otherUnit: OtherUnit | null;
  readonly choices: readonly string[];
  /** What an empty cell stands for, where that is not simply "not known". */
  readonly emptyMeans: string | null;
  /** Decides whether a value, once read, may be used. */
  readonly schema: z.ZodType<T>;
}

export type Columns = Readonly<Record<string, Column<unknown>>>;

/** The values of a row: null where a cell is empty or could not be used. */
export type CellsOf<C extends Columns> = {
  readonly [K in keyof C]: (C[K] extends Column<infer T> ? T : never) | null;
};

/** Columns of this table that name a row of another. */
export interface ForeignKey {
  readonly fields: readonly string[];
  readonly table: string;
  readonly tableFields: readonly string[];
}

/** A table of the programme folder. */
export interface Table<C extends Columns = Columns> {
  readonly name: string;
  /** The file it is kept in; `<gaugeId>` stands for the gauge's id. */
  readonly file: string;
  readonly about: string;
  readonly key: readonly string[];
  readonly foreignKeys: readonly ForeignKey[];
  /** Sections of the program that read it. */
  readonly usedBy: readonly string[];
  /** May the file be left out? */
  readonly optional: boolean;
  readonly columns: C;
}

/**
 * Writes down a table, once, for the reader, the writer, the published schema and the page of tables.
 *
 * @param table - name, key, foreign keys, columns; the file is `<name>.csv` where it is not given
 * @returns the table
 * @definition ours
 */
export function defineTable<const C extends Columns>(
  table: Omit<Table<C>, 'file' | 'foreignKeys' | 'optional'> &
    Partial<Pick<Table<C>, 'file' | 'foreignKeys' | 'optional'>>,
): Table<C> {
  return { file: `${table.name}.csv`, foreignKeys: [], optional: false, ...table };
}
