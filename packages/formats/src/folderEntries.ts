import { readdir, stat } from 'node:fs/promises';
import type { Problem } from '@eavewell/engine';
import { tableProblem } from '@eavewell/tables';

/**
 * Which names stand in a folder?
 *
 * @param folder - the folder [text]
 * @returns the names in order; or why it cannot be read
 * @problem folder.missing - there is no such folder
 * @definition ours
 */
export async function entriesOf(folder: string): Promise<readonly string[] | Problem> {
  const place = { file: folder };
  const facts = { value: folder, expected: 'a folder of tables' };
  try {
    if (!(await stat(folder)).isDirectory()) return tableProblem('folder.not_a_folder', place, facts);
    return (await readdir(folder)).sort();
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code ?? 'unknown';
    if (reason === 'ENOENT' || reason === 'ENOTDIR') return tableProblem('folder.missing', place, facts);
    return tableProblem('folder.unreadable', place, { ...facts, reason });
  }
}
