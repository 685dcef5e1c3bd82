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

/** A programme as tables of values, before it is written. Values are written as given, right or wrong. */
export interface ProgrammeTables {
  readonly settings: Record<string, unknown>;
  readonly tables: Partial<Record<FolderTableName, readonly Readonly<Record<string, CellValue>>[]>>;
  readonly rain: readonly {
    readonly gaugeId: string;
    readonly rows: readonly RainRow[];
  }[];
  /** Files to be written as they are, by their path within the folder: the text, or the bytes where they are no text. */
  readonly rawFiles?: readonly { readonly path: string; readonly text: string; readonly bytes?: Uint8Array }[];
}
