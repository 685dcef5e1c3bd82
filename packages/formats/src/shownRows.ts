import { bare, folderTableNames, folderTables, type Matchings, matchingOf, rain } from '@eavewell/tables';
import { readCsvFile } from './readCsvFile.ts';
import { readFileBytes } from './readFileBytes.ts';

/** A column of a file: its header, and the column of ours it is read as. */
export interface ShownColumn {
  readonly header: string;
  readonly column: string | null;
}

/** Rows of a file as they stand, with their header. */
export interface ShownRows {
  readonly file: string;
  readonly columns: readonly ShownColumn[];
  /** The header is row 1. */
  readonly rows: readonly { readonly row: number; readonly cells: readonly string[] }[];
}

/**
 * How do some rows of a table stand in their file? So that a cell that is wrong can be seen among its neighbours.
 *
 * @param folder - the programme folder [text]
 * @param file - the table's path in it [text]
 * @param rows - their numbers, as problems have them
 * @param matchings - what was accepted for the headers
 * @returns header and cells [text]; null where the file is no table that can be taken apart
 * @definition ours
 */
export async function shownRows(
  folder: string,
  file: string,
  rows: ReadonlySet<number>,
  matchings: Matchings,
): Promise<ShownRows | null> {
  const { bytes } = await readFileBytes(folder, file);
  if (bytes === null || !file.endsWith('.csv')) return null;
  const name = folderTableNames.find((one) => folderTables[one].file === file);
  const known = Object.keys(name === undefined ? rain.columns : folderTables[name].columns);
  const matched = matchingOf(matchings, file)?.columns;
  const csv = readCsvFile(bytes, { file, columns: [...known, ...(matched?.keys() ?? [])], needed: false });
  if (csv.header.length === 0) return null;
  const columns = csv.header.map((text) => {
    const header = bare(text);
    const column = known.includes(header) ? header : (matched?.get(header)?.column ?? null);
    return { header, column };
  });
  const all = [...csv.rows, ...csv.notUsed.map(({ row, cells }) => ({ row, cells }))];
  const wanted = new Map(all.filter(({ row }) => rows.has(row)).map(({ row, cells }) => [row, cells]));
  const found = [...wanted].sort(([a], [b]) => a - b).map(([row, cells]) => ({ row, cells: [...cells] }));
  return { file, columns, rows: found };
}
