import { lstat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { shown, tableProblem } from '@eavewell/tables';
import { decodeText } from './decodeText.ts';
import { readFileBytes } from './readFileBytes.ts';

const file = 'datapackage.json';

/**
 * May this path of a descriptor be looked for inside the folder? Not where it is absolute, an address, or climbs out.
 *
 * @param path - the path as written [text]
 * @returns true or false
 * @source Data Package standard v2.0, Data Resource, path: no absolute paths and no parent folders
 * @example
 * isInside('rain/G1.csv') // → true
 * isInside('../x.csv') // → false
 */
export function isInside(path: string): boolean {
  if (path === '' || path.startsWith('/') || path.startsWith('~')) return false;
  return !['\\', ':', '\0'].some((mark) => path.includes(mark)) && !path.split('/').includes('..');
}

function resourcePaths(text: string): readonly string[] {
  const descriptor: unknown = JSON.parse(text);
  const resources = (descriptor as { resources?: unknown } | null)?.resources;
  if (!Array.isArray(resources)) throw new SyntaxError('resources: a list is expected');
  const paths = resources.flatMap((resource: unknown) => (resource as { path?: unknown } | null)?.path);
  return paths.filter((path) => typeof path === 'string');
}

async function isThere(path: string): Promise<boolean> {
  try {
    return (await lstat(path)).isFile();
  } catch {
    return false;
  }
}

/**
 * Is the folder's datapackage.json sound? The tables are read by their own names, so nothing it names is opened for it.
 *
 * @param folder - the programme folder [text]
 * @returns the problems; none where there is no datapackage.json
 * @problem package.not_json - it cannot be read
 * @problem package.path_unsafe - a path leads out of the folder
 * @problem package.file_absent - a file it names is not there
 * @source Data Package standard v2.0
 */
export async function checkDatapackage(folder: string): Promise<readonly Problem[]> {
  const found = await readFileBytes(folder, file);
  if (found.bytes === null) return found.problem ? [found.problem] : [];
  const decoded = decodeText(found.bytes);
  let paths: readonly string[];
  try {
    paths = resourcePaths('text' in decoded ? decoded.text : '');
  } catch (error) {
    const facts = { value: file, expected: 'JSON with a list of resources', reason: (error as Error).message };
    return [tableProblem('package.not_json', { file }, facts)];
  }
  const problems: Problem[] = [];
  for (const path of paths) {
    const facts = { value: shown(path), expected: 'a path inside the folder' };
    if (!isInside(path)) problems.push(tableProblem('package.path_unsafe', { file }, facts));
    else if (!(await isThere(join(folder, path))))
      problems.push(tableProblem('package.file_absent', { file }, { ...facts, expected: 'a file that is there' }));
  }
  return problems;
}
