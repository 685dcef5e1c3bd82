import { readdir } from 'node:fs/promises';
import { isAbsolute, join } from 'node:path';
import { datapackage, folderTableNames, folderTables, idForm, tableProblem } from '@eavewell/tables';
import { csvText } from './csvText.ts';
import { makeFolder } from './makeFolder.ts';
import type { ProgrammeTables, RainRow } from './programmeTables.ts';
import { columnsOf } from './tableColumns.ts';
import { writeFileWhole } from './writeFileWhole.ts';
import { WriteRefused } from './writeRefused.ts';

function rainText(rows: readonly RainRow[]): string {
  const extra = columnsOf(
    [],
    rows.flatMap((row) => (row.extra === undefined ? [] : [row.extra])),
  );
  if (extra.length === 0) return csvText(['date', 'rain_mm'], rows as readonly (RainRow & Record<string, never>)[]);
  const whole = rows.map(({ date, rain_mm, extra: others }) => ({ ...others, date, rain_mm }));
  return csvText(['date', 'rain_mm', ...extra], whole);
}

function safePath(path: string): string {
  const parts = path.split('/');
  if (isAbsolute(path) || path.includes('\\') || parts.some((part) => part === '' || part === '.' || part === '..'))
    throw new RangeError(`${path} does not stay inside the programme folder`);
  return path;
}

/**
 * Which files does a programme come to?
 *
 * @param programme - settings, tables of values and rain, written as given
 * @returns the text or bytes of every file, by its path within the folder, datapackage.json after the tables
 * @source Data Package standard v2.0; RFC 4180
 */
export function filesOfProgramme(programme: ProgrammeTables): ReadonlyMap<string, string | Uint8Array> {
  const files = new Map<string, string | Uint8Array>();
  const tables = folderTableNames.filter((name) => programme.tables[name] !== undefined);
  for (const name of tables) {
    const rows = programme.tables[name]!;
    files.set(folderTables[name].file, csvText(columnsOf(Object.keys(folderTables[name].columns), rows), rows));
  }
  for (const { gaugeId, rows } of programme.rain) {
    if (!idForm.test(gaugeId)) throw new RangeError(`${gaugeId} cannot name a rain file`);
    files.set(`rain/${gaugeId}.csv`, rainText(rows));
  }
  files.set('settings.json', `${JSON.stringify(programme.settings, null, 2)}\n`);
  const title = programme.settings['programme'];
  const descriptor = datapackage({
    title: typeof title === 'string' ? title : 'Programme without a name',
    tables,
    gaugeIds: programme.rain.map(({ gaugeId }) => gaugeId),
    hasSettings: true,
  });
  files.set('datapackage.json', `${JSON.stringify(descriptor, null, 2)}\n`);
  for (const { path, text, bytes } of programme.rawFiles ?? []) files.set(safePath(path), bytes ?? text);
  return files;
}

async function entriesOf(folder: string): Promise<readonly string[]> {
  try {
    return await readdir(folder);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT') return [];
    if (code === 'ENOTDIR')
      throw new WriteRefused(tableProblem('folder.not_a_folder', { file: folder }, { value: folder }));
    throw error;
  }
}

/**
 * Writes a programme as a folder of tables: CSV, settings.json and datapackage.json. Each file is whole or not there. With
 * `overwrite`, files of the same names are replaced and others are left alone.
 *
 * @param folder - where it is to stand; made if it is not there [text]
 * @param programme - settings, tables of values and rain, written as given
 * @param options - `overwrite`: may the folder hold files already?
 * @returns the paths written, within the folder [text]
 * @problem folder.not_empty - thrown as WriteRefused when the folder holds something and overwrite is not asked for
 * @problem folder.not_a_folder - thrown as WriteRefused when a file stands there
 * @source Data Package standard v2.0; RFC 4180
 */
export async function writeProgramme(
  folder: string,
  programme: ProgrammeTables,
  options: { readonly overwrite?: boolean } = {},
): Promise<{ files: string[] }> {
  const files = filesOfProgramme(programme);
  const entries = await entriesOf(folder);
  if (entries.length > 0 && options.overwrite !== true)
    throw new WriteRefused(
      tableProblem('folder.not_empty', { file: folder }, { value: folder, count: entries.length, expected: 'empty' }),
    );
  await makeFolder(folder);
  for (const [path, text] of files) await writeFileWhole(join(folder, path), text);
  return { files: [...files.keys()] };
}
