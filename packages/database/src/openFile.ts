import { accessSync, constants, existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import Sqlite, { type Database as Connection } from 'better-sqlite3';
import { connect } from './connect.ts';
import { isJournalDamaged } from './journalDamage.ts';
import { keepCopy } from './keptCopy.ts';
import { digestsSince, migrate, newestVersion, versionOf } from './migrations.ts';
import { recordDigest } from './recordDigest.ts';

/** The file within a data folder. */
export const databaseFile = 'eavewell.sqlite';

/** The file that says what a data folder is called among those that make records: it is written once the database stands. */
export const deviceFile = 'device.txt';

const sizeOf = (path: string) => (existsSync(path) ? statSync(path).size : 0);

/** What is wrong with a file before anybody opens it: opening alone may write, and what is damaged is to stay as it is. */
function problemBefore(folder: string): Problem | null {
  const [path, journal] = [join(folder, databaseFile), join(folder, `${databaseFile}-wal`)];
  const facts = { value: databaseFile, folder: [folder] };
  if (sizeOf(path) === 0 && (existsSync(join(folder, deviceFile)) || sizeOf(journal) > 0))
    return recordProblem('database.missing', { file: path }, facts);
  if (sizeOf(journal) > 0 && isJournalDamaged(readFileSync(journal), readFileSync(path)))
    return recordProblem('database.damaged', { file: journal }, { ...facts, reason: 'journal' });
  return null;
}

/** Does every record still come to the digest it was written with? */
function firstAltered(connection: Connection): number | null {
  const rows = connection
    .prepare<[], { position: number; programmeId: string; record: string; digest: string }>(
      'SELECT position, programmeId, record, digest FROM records ORDER BY position',
    )
    .iterate();
  for (const { position, programmeId, record, digest } of rows)
    if (recordDigest(programmeId, record) !== digest) return position;
  return null;
}

/** What is wrong with a file, looked at without writing: nothing of a damaged one is put in order behind a person's back. */
function problemWithin(folder: string): Problem | null {
  const place = { file: join(folder, databaseFile) };
  const facts = { value: databaseFile, folder: [folder] };
  const connection = openBeside(folder);
  try {
    const version = versionOf(connection);
    if (version > newestVersion)
      return recordProblem('database.newer', place, { value: String(version), expected: String(newestVersion) });
    const sound = connection.pragma('integrity_check(1)', { simple: true });
    if (sound !== 'ok') return recordProblem('database.damaged', place, { ...facts, reason: String(sound) });
    const row = version < digestsSince ? null : firstAltered(connection);
    return row === null ? null : recordProblem('database.damaged', { ...place, row }, { ...facts, reason: 'record' });
  } finally {
    connection.close();
  }
}

/**
 * Opens the file of a data folder, checked from end to end and brought up to date, with a copy of it kept before; or says what is
 * wrong with it, and leaves it as it is.
 */
export function openFile(folder: string): Connection | Problem {
  const before = problemBefore(folder);
  if (before) return before;
  const path = join(folder, databaseFile);
  // Cut off while it was first made: what was begun is taken back, which only one that may write can do.
  if (existsSync(`${path}-journal`)) connect(path).close();
  // A file that may only be read would be opened all the same, and refuse the first change instead.
  for (const each of [path, `${path}-wal`]) if (existsSync(each)) accessSync(each, constants.W_OK);
  const within = sizeOf(path) > 0 ? problemWithin(folder) : null;
  if (within) return within;
  const connection = connect(path);
  try {
    const version = versionOf(connection);
    if (version > 0 && version < newestVersion) keepCopy(connection, folder, version);
    migrate(connection);
    return connection;
  } catch (error) {
    connection.close();
    throw error;
  }
}

/**
 * Opens the file of a data folder beside the program that has it, only to read.
 *
 * @param folder - the data folder [text]
 * @returns the connection
 * @definition ours
 */
export function openBeside(folder: string): Connection {
  return new Sqlite(join(folder, databaseFile), { readonly: true, fileMustExist: true, timeout: 5000 });
}
