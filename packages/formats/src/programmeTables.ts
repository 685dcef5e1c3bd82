import type { FolderTableName } from '@eavewell/tables';

/** What a cell to be written may be: true and false become yes and no, null an empty cell. */
export type CellValue = string | number | boolean | null;

/** A reading to be written: values or words, right or wrong, and what else stands in its row. */
export interface RainRow {
  readonly date: string;
  readonly rain_mm: number | null | string;
  /** Columns of its own, after the two known ones. */
  readonly extra?: Readonly<Record<string, CellValue>>;
}

/** A file to be written as it is, by its path within the folder. */
export interface RawFile {
  readonly path: string;
  readonly text: string;
  /** What is written in place of the text, where the file is none. */
  readonly bytes?: Uint8Array;
  /** Its rows as far as they can be told, for a form that holds no files; left out where there are none. */
  readonly inRows?:
    | { readonly table: FolderTableName; readonly rows: readonly Readonly<Record<string, CellValue>>[] }
    | { readonly gaugeId: string; readonly isStation: boolean; readonly rows: readonly RainRow[] }
    | undefined;
}

/** A programme as tables of values, before it is written. Values are written as given, right or wrong. */
export interface ProgrammeTables {
  readonly settings: Record<string, unknown>;
  readonly tables: Partial<Record<FolderTableName, readonly Readonly<Record<string, CellValue>>[]>>;
  readonly rain: readonly {
    readonly gaugeId: string;
    readonly rows: readonly RainRow[];
  }[];
  /** Files to be written as they are. */
  readonly rawFiles?: readonly RawFile[];
}
