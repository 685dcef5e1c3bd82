import { readFile, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { tableProblem } from '@eavewell/tables';

/** Largest file that is read whole [byte]; rain tables beyond it are streamed. Ours. */
export const largestFile_bytes = 500e6;

/** The bytes of a file; null where it is not there; or the problem. */
export type FileBytes = { readonly bytes: Uint8Array } | { readonly bytes: null; readonly problem: Problem | null };

/** How large a file is; null where it is not there; or the problem. */
export type FileSize =
  | { readonly size_bytes: number }
  | { readonly size_bytes: null; readonly problem: Problem | null };

/** What the system said, as a problem; none where the file is simply not there. */
function refusal(file: string, error: unknown): Problem | null {
  const reason = (error as NodeJS.ErrnoException).code ?? 'unknown';
  if (reason === 'ENOENT' || reason === 'ENOTDIR') return null;
  const facts = { value: file, expected: 'a file that can be read', reason };
  return tableProblem('file.unreadable', { file }, facts);
}

/**
 * Is there such a file in the folder, and how large is it? Never throws for what it finds there.
 *
 * @param folder - the programme folder [text]
 * @param file - the file's path within it, made of known names only [text]
 * @returns its size [byte]; null without a problem where it is not there; null with the problem otherwise
 * @problem file.not_a_file - a folder of that name
 * @problem file.outside - a link that leads out of the folder
 * @problem file.unreadable - the system will not open it
 * @definition ours
 */
export async function fileSize(folder: string, file: string): Promise<FileSize> {
  const path = join(folder, file);
  try {
    const found = await stat(path);
    const expected = 'a file';
    if (!(await realpath(path)).startsWith((await realpath(folder)) + sep))
      return { size_bytes: null, problem: tableProblem('file.outside', { file }, { value: file, expected }) };
    if (!found.isFile())
      return { size_bytes: null, problem: tableProblem('file.not_a_file', { file }, { value: file, expected }) };
    return { size_bytes: found.size };
  } catch (error) {
    return { size_bytes: null, problem: refusal(file, error) };
  }
}

/**
 * What stands in a file of the folder? Never throws for what it finds there.
 *
 * @param folder - the programme folder [text]
 * @param file - the file's path within it, made of known names only [text]
 * @returns the bytes; null without a problem where the file is not there; null with the problem otherwise
 * @problem file.too_large - over 500 MB
 * @problem file.unreadable - the system will not open it; and the other problems of fileSize
 * @definition ours
 */
export async function readFileBytes(folder: string, file: string): Promise<FileBytes> {
  const found = await fileSize(folder, file);
  if (found.size_bytes === null) return { bytes: null, problem: found.problem };
  if (found.size_bytes > largestFile_bytes) {
    const sizes = { size_MB: Math.round(found.size_bytes / 1e6), largest_MB: largestFile_bytes / 1e6 };
    const facts = { value: file, expected: '500 MB', ...sizes };
    return { bytes: null, problem: tableProblem('file.too_large', { file }, facts) };
  }
  try {
    return { bytes: await readFile(join(folder, file)) };
  } catch (error) {
    return { bytes: null, problem: refusal(file, error) };
  }
}
