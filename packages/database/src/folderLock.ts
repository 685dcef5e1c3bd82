import { join } from 'node:path';
import Sqlite, { type Database as Connection } from 'better-sqlite3';

/** Holds a data folder for one program. */
export interface FolderLock {
  release(): void;
}

/**
 * Takes a data folder for this program alone. The lock is one of the operating system on a small file, so it goes with the
 * program that holds it, however that ends; no lock is ever left behind.
 *
 * @param folder - the data folder [text]
 * @returns the lock, or null where another program holds it
 * @definition ours: docs/decisions/0101-database.md
 */
export function lockFolder(folder: string): FolderLock | null {
  let connection: Connection | null = null;
  try {
    connection = new Sqlite(join(folder, 'in-use.sqlite'), { timeout: 0 });
    connection.pragma('journal_mode = DELETE');
    connection.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    connection?.close();
    if (error instanceof Sqlite.SqliteError && /^SQLITE_(BUSY|LOCKED)/.test(error.code)) return null;
    throw error;
  }
  const held = connection;
  return { release: () => held.close() };
}
