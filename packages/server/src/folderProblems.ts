import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Database } from '@eavewell/database';
import type { Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import { commandFor, entryIn, exportsFolder, keptIn, lastExports } from './exportFolder.ts';

/** Problems of a data folder whose answer is its last good export. */
const answered = /^database\.(damaged|missing|behind)$/;

/**
 * Adds to what is wrong with a data folder which exports of it can be read, and what to type to open them in a new one.
 *
 * @param folder - the data folder [text]
 * @param problems - what is wrong with it
 * @returns the same, with the exports
 * @definition ours: docs/decisions/0119-last-good-export.md
 */
export async function withLastExports(folder: string, problems: readonly Problem[]): Promise<readonly Problem[]> {
  if (!problems.some(({ code }) => answered.test(code))) return problems;
  const last = await lastExports(join(folder, exportsFolder));
  if (last.length === 0) return problems;
  const facts = {
    programmes: last.map(({ entry }) => entry.name),
    exportsAt: last.map(({ kept }) => kept.at),
    exports: [join(folder, exportsFolder)],
    command: [await commandFor(folder)],
  };
  return problems.map((one) => (answered.test(one.code) ? { ...one, facts: { ...one.facts, ...facts } } : one));
}

/**
 * Does the data file hold less than was exported from it? Then part of it was lost without a trace: cut off, or an older copy was put there.
 *
 * @param database - the data file
 * @param folder - its data folder [text]
 * @returns a problem for each programme that is behind its exports
 * @problem database.behind - it has fewer records than its last export
 */
export async function behindExports(database: Database, folder: string): Promise<readonly Problem[]> {
  const problems: Problem[] = [];
  for (const name of await readdir(join(folder, exportsFolder)).catch(() => [])) {
    const own = join(folder, exportsFolder, name);
    const [entry, [last]] = [await entryIn(own), await keptIn(own)];
    if (!entry || !last) continue;
    const count = await database.recordCount(entry.programmeId);
    if (count >= last.version) continue;
    const facts = { value: entry.name, count, expected: last.version, folder: [folder] };
    problems.push(recordProblem('database.behind', { file: folder }, facts));
  }
  return problems;
}
