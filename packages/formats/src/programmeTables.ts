import type { FolderTableName } from '@eavewell/tables';

/** What a cell to be written may be: true and false become yes and no, null an empty cell. */
export type CellValue = string | number | boolean | null;

/** A programme as tables of values, before it is written. Values are written as given, right or wrong. */
export interface ProgrammeTables {
  readonly settings: Record<string, unknown>;
  readonly tables: Partial<Record<FolderTableName, readonly Readonly<Record<string, CellValue>>[]>>;
  readonly rain: readonly {
    readonly gaugeId: string;
    readonly rows: readonly { readonly date: string; readonly rain_mm: number | null | string }[];
  }[];
  /** Files to be written as they are, by their path within the folder. */
  readonly rawFiles?: readonly { readonly path: string; readonly text: string }[];
}
