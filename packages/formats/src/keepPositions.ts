import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import {
  folderTables,
  type PositionMatch,
  type PositionTable,
  type TablesRead,
  tableProblem,
  type WayOfLine,
  wayLinesFile,
} from '@eavewell/tables';
import { csvText } from './csvText.ts';
import { editTable, positionDecimals, type RowValues, type TableEdit } from './editTable.ts';
import { readFileBytes } from './readFileBytes.ts';
import { withWayLines } from './wayLines.ts';
import { writeFileWhole } from './writeFileWhole.ts';

/** The files to write, whole; or why nothing is written. */
export type FilesToKeep = { readonly files: ReadonlyMap<string, Uint8Array | string> } | { readonly problem: Problem };

const rounded = (value: number) => Number(value.toFixed(positionDecimals));
const tables: readonly PositionTable[] = ['sites', 'gauges', 'places'];

/** A table of the folder as it is to be, or why it cannot be. */
export async function edited(folder: string, edit: TableEdit): Promise<Uint8Array | Problem> {
  const { file } = edit.table;
  const found = await readFileBytes(folder, file);
  if (found.bytes === null) return found.problem ?? tableProblem('positions.table_missing', { file }, { value: file });
  const made = editTable(found.bytes, edit);
  return 'bytes' in made ? made.bytes : made.problem;
}

/**
 * Which files would these positions change, and how? Only latitude and longitude of the rows named; nothing is written yet.
 *
 * @param folder - the programme folder [text]
 * @param matches - the rows and the points they get their position from
 * @returns the files by name; or the problem, and then none is to be written
 * @problem positions.table_encoding - a table is not in UTF-8
 * @definition ours: docs/decisions/0076-points-and-rows.md
 */
export async function withPositions(folder: string, matches: readonly PositionMatch[]): Promise<FilesToKeep> {
  const files = new Map<string, Uint8Array>();
  for (const name of tables) {
    const rows = matches
      .filter(({ target }) => target.table === name)
      .map(({ target, point: { position } }) => ({
        row: target.row,
        values: { latitude_deg: rounded(position.latitude_deg), longitude_deg: rounded(position.longitude_deg) },
      }));
    if (rows.length === 0) continue;
    const made = await edited(folder, { table: folderTables[name], rows, added: [] });
    if ('code' in made) return { problem: made };
    files.set(folderTables[name].file, made);
  }
  return { files };
}

function wayRow({ wayId, name, from, to, mode, length_km }: WayOfLine): RowValues {
  return { wayId, name, from, to, mode, length_km: Number(length_km.toFixed(3)) || 0.001 };
}

/** What a line changes in the row of a way that is there: its length, and what was empty. */
function changedCells(way: WayOfLine, tablesRead: TablesRead): RowValues {
  const values = tablesRead.ways?.rows.find(({ row }) => row === way.row)?.values;
  const all = wayRow(way);
  const names = ['from', 'to', 'mode'] as const;
  const filled = names.flatMap((name) =>
    values?.[name] === null && all[name] !== null ? [[name, all[name]] as const] : [],
  );
  return { ...Object.fromEntries(filled), length_km: all['length_km']! };
}

/**
 * Which files would these ways change, and how? Their rows in ways.csv and their lines in ways.geojson; nothing is written yet.
 *
 * @param folder - the programme folder [text]
 * @param ways - the ways
 * @param tablesRead - the tables as they were read
 * @returns the files by name; or the problem, and then none is to be written
 * @problem positions.table_broken - a file that is there cannot be changed surely
 * @definition ours: docs/decisions/0077-what-a-way-is.md
 */
export async function withWays(
  folder: string,
  ways: readonly WayOfLine[],
  tablesRead: TablesRead,
): Promise<FilesToKeep> {
  const table = folderTables.ways;
  const added = ways.filter(({ row }) => row === null).map(wayRow);
  const rows = ways.flatMap((way) =>
    way.row === null ? [] : [{ row: way.row, values: changedCells(way, tablesRead) }],
  );
  const present = await readFileBytes(folder, table.file);
  if (present.bytes === null && present.problem) return present as { problem: Problem };
  const made =
    present.bytes === null ? csvText(Object.keys(table.columns), added) : await edited(folder, { table, rows, added });
  if (typeof made === 'object' && 'code' in made) return { problem: made };
  const lines = await readFileBytes(folder, wayLinesFile);
  if (lines.bytes === null && lines.problem) return { problem: lines.problem };
  const kept = withWayLines(lines.bytes, ways);
  if ('problem' in kept) return kept;
  return {
    files: new Map<string, Uint8Array | string>([
      [wayLinesFile, kept.text],
      [table.file, made],
    ]),
  };
}

/**
 * Writes files of a folder, each whole or not at all.
 *
 * @param folder - the programme folder [text]
 * @param files - their contents by name
 * @returns their paths [text]
 * @definition ours
 */
export async function replaceFiles(
  folder: string,
  files: ReadonlyMap<string, Uint8Array | string>,
): Promise<readonly string[]> {
  const paths: string[] = [];
  for (const [file, content] of files) {
    const path = join(folder, file);
    await writeFileWhole(path, content);
    paths.push(path);
  }
  return paths;
}
