import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { folderTableNames, folderTables, tableProblem } from '@eavewell/tables';

/**
 * Which files of a folder would be read with a programme just written into it, and are not of it?
 *
 * @param folder - the folder [text]
 * @param written - the paths that were written, within it [text]
 * @returns a warning for each
 * @problem carried.older_file - it stood there before
 * @definition ours
 */
export async function olderFiles(folder: string, written: readonly string[]): Promise<readonly Problem[]> {
  const names = await readdir(folder);
  const rain = names.includes('rain') ? await readdir(join(folder, 'rain')) : [];
  const tables = folderTableNames.map((name): string => folderTables[name].file);
  const read = [...names.filter((name) => tables.includes(name)), ...rain.map((name) => `rain/${name}`)];
  return read
    .filter((file) => !written.includes(file))
    .map((file) => tableProblem('carried.older_file', { file }, { value: file, expected: '' }));
}
