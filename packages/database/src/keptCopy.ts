import { closeSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Database as Connection } from 'better-sqlite3';

/** The copy of a file of an older version that is kept beside it when it is brought up to date. */
export const copyOfVersion = (version: number): string => `eavewell.version-${version}.sqlite`;

/**
 * Keeps a whole copy of the file as it is, before it is brought to a newer version: on the disk under its own name, or not at all.
 *
 * @param connection - the file
 * @param folder - the data folder [text]
 * @param version - the version it has
 * @source sqlite-vacuum, VACUUM INTO
 * @definition ours: docs/decisions/0119-last-good-export.md
 */
export function keepCopy(connection: Connection, folder: string, version: number): void {
  const path = join(folder, copyOfVersion(version));
  const unfinished = `${path}.unfinished`;
  rmSync(unfinished, { force: true });
  try {
    connection.prepare('VACUUM INTO ?').run(unfinished);
    const file = openSync(unfinished, 'r+');
    try {
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(unfinished, path);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
}
