import { readFile, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { tableProblem } from '@eavewell/tables';

/** Largest file that is opened [byte]: a country's rain for a century is far smaller. Ours. */
export const largestFile_bytes = 500e6;

/** The bytes of a file; null where it is not there; or the problem. */
export type FileBytes = { readonly bytes: Uint8Array } | { readonly bytes: null; readonly problem: Problem | null };

/**
 * What stands in a file of the folder? Never throws for what it finds there.
 *
 * @param folder - the programme folder [text]
 * @param file - the file's path within it, made of known names only [text]
 * @returns the bytes; null without a problem where the file is not there; null with the problem otherwise
 * @problem file.not_a_file - a folder of that name
 * @problem file.too_large - over 500 MB
 * @problem file.outside - a link that leads out of the folder
 * @problem file.unreadable - the system will not open it
 * @definition ours
 */
export async function readFileBytes(folder: string, file: string): Promise<FileBytes> {
  const path = join(folder, file);
  try {
    const found = await stat(path);
    if (!(await realpath(path)).startsWith((await realpath(folder)) + sep))
      return { bytes: null, problem: tableProblem('file.outside', { file }, { value: file, expected: 'a file' }) };
    if (!found.isFile())
      return { bytes: null, problem: tableProblem('file.not_a_file', { file }, { value: file, expected: 'a file' }) };
    if (found.size > largestFile_bytes) {
      const sizes = { size_MB: Math.round(found.size / 1e6), largest_MB: largestFile_bytes / 1e6 };
      return {
        bytes: null,
        problem: tableProblem('file.too_large', { file }, { value: file, expected: '500 MB', ...sizes }),
      };
    }
    return { bytes: await readFile(path) };
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code ?? 'unknown';
    if (reason === 'ENOENT' || reason === 'ENOTDIR') return { bytes: null, problem: null };
    const facts = { value: file, expected: 'a file that can be read', reason };
    return { bytes: null, problem: tableProblem('file.unreadable', { file }, facts) };
  }
}
