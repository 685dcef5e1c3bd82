import { join } from 'node:path';
import { type ChangeRecord, readRecord } from '@eavewell/records';
import Sqlite from 'better-sqlite3';
import { databaseFile } from './openDatabase.ts';

/**
 * The first records of a programme, read beside the program that holds the data folder: for its own threads, which would else be
 * handed them all. Nothing is written.
 *
 * @param folder - the data folder [text]
 * @param programmeId - the programme [text]
 * @param most - how many are wanted; records are only ever added, so the first so many are always the same; all where it
 *   is not given [count]
 * @returns the records in the order they were written
 * @definition ours: docs/decisions/0114-work-beside-the-page.md
 */
export function recordsBeside(folder: string, programmeId: string, most = -1): readonly ChangeRecord[] {
  const connection = new Sqlite(join(folder, databaseFile), { readonly: true, fileMustExist: true });
  try {
    const rows = connection
      .prepare<[string, number], string>('SELECT record FROM records WHERE programmeId = ? ORDER BY position LIMIT ?')
      .pluck()
      .iterate(programmeId, most);
    const found: ChangeRecord[] = [];
    for (const text of rows) {
      const record = readRecord(JSON.parse(text));
      if (record === null) throw new Error(`record ${found.length + 1} of ${programmeId} cannot be read`);
      found.push(record);
    }
    return found;
  } finally {
    connection.close();
  }
}
