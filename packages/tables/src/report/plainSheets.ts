/** What stands in a column of a sheet: text as it is, numbers as numbers, days as dates. */
export type SheetColumnKind = 'text' | 'number' | 'day';

/** A column of a sheet: its head in the language asked for. */
export interface PlainSheetColumn {
  readonly head: string;
  readonly kind: SheetColumnKind;
}

/** A sheet of a workbook that people read: no programme is read from it. Days are texts, YYYY-MM-DD; null is an empty cell. */
export interface PlainSheet {
  readonly name: string;
  readonly columns: readonly PlainSheetColumn[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}
