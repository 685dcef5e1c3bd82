import { readFile, stat } from 'node:fs/promises';
import { basename } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { tableProblem } from '@eavewell/tables';
import { largestMap_bytes, type MapRead, readMap } from './readMap.ts';

/**
 * Which points and lines stand in this map file? Never throws for what it finds there.
 *
 * @param path - the file, anywhere [text]
 * @returns what it is, its points and lines, and every problem
 * @problem positions.file_missing - there is no such file
 * @problem file.too_large - over 50 MB
 * @problem file.unreadable - the system will not open it
 * @definition ours
 */
export async function readMapFile(path: string): Promise<MapRead> {
  const file = basename(path);
  const nothing = (problem: Problem): MapRead => ({ kind: null, points: [], lines: [], problems: [problem] });
  try {
    const found = await stat(path);
    if (!found.isFile()) return nothing(tableProblem('file.not_a_file', { file }, { value: path, expected: 'a file' }));
    if (found.size > largestMap_bytes) {
      const sizes = { size_MB: Math.round(found.size / 1e6), largest_MB: largestMap_bytes / 1e6 };
      return nothing(tableProblem('file.too_large', { file }, { value: path, expected: '50 MB', ...sizes }));
    }
    return readMap(await readFile(path), file);
  } catch (error) {
    const reason = (error as NodeJS.ErrnoException).code ?? 'unknown';
    if (reason === 'ENOENT' || reason === 'ENOTDIR')
      return nothing(tableProblem('positions.file_missing', { file }, { value: path }));
    return nothing(tableProblem('file.unreadable', { file }, { value: path, expected: 'a file', reason }));
  }
}
