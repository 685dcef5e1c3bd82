import { mkdir } from 'node:fs/promises';
import type { Checked, Problem } from '@eavewell/engine';
import { type ChangeRecord, readRecord, recordName, recordProblem, recordText } from '@eavewell/records';
import type { Database as Connection } from 'better-sqlite3';
import { databaseProblem } from './databaseFaults.ts';
import { type FolderLock, lockFolder } from './folderLock.ts';
import { databaseFile, openBeside, openFile } from './openFile.ts';
import { recordDigest } from './recordDigest.ts';

/** A programme kept in a data folder. */
export interface ProgrammeEntry {
  readonly programmeId: string;
  readonly name: string;
  /** The instant it was made, ISO 8601 in UTC. */
  readonly madeAt: string;
}

/** What is known of a programme without reading its records. */
export interface ProgrammeListed extends ProgrammeEntry {
  /** Put away by somebody, kept whole. */
  readonly isSetAside: boolean;
  /** Its records [count], and what they take [byte]. */
  readonly version: number;
  readonly size_bytes: number;
  /** The last record that was written; null where there is none. */
  readonly lastChange: { readonly at: string; readonly by: string } | null;
}

/** A change of what a programme is called, or whether it is set aside. */
export interface ProgrammeChange {
  readonly at: string;
  readonly by: string;
  readonly name: string;
  readonly isSetAside: boolean;
}

/** A programme with all its records. */
export interface ProgrammeWhole {
  readonly entry: ProgrammeEntry;
  readonly records: readonly ChangeRecord[];
}

/** The one door to what is kept: programmes and their records. Several programmes stand side by side in one folder. */
export interface Database {
  programmes(): Promise<readonly ProgrammeEntry[]>;
  /** @problem database.programme_twice - there is one of that id */
  makeProgramme(entry: ProgrammeEntry): Promise<Checked<ProgrammeEntry>>;
  /**
   * Writes records down, all or none; once it answers they are on the disk. Those that are there already are passed over.
   *
   * @problem record.name_taken - another record has that name; none is written
   * @problem database.programme_unknown - there is no such programme
   */
  append(
    programmeId: string,
    records: readonly ChangeRecord[],
    /** Their texts, where they are written already. */
    texts?: readonly string[],
  ): Promise<Checked<{ readonly written: number }>>;
  /** @problem record.unreadable - what stands there is no record: the file was changed by another hand */
  records(programmeId: string): Promise<Checked<readonly ChangeRecord[]>>;
  /** The programmes, with what is known of them without reading their records. */
  listed(): Promise<readonly ProgrammeListed[]>;
  /** @problem database.programme_unknown - there is no such programme */
  changeProgramme(programmeId: string, change: ProgrammeChange): Promise<Checked<ProgrammeChange>>;
  /** How many records a programme has [count]; 0 where there is no such programme. */
  recordCount(programmeId: string): Promise<number>;
  /**
   * Brings in whole programmes with their records, all or none, where there is none yet.
   *
   * @problem database.programme_twice - one of them is here
   */
  bringIn(programmes: readonly ProgrammeWhole[]): Promise<Checked<{ readonly programmes: number }>>;
  /** Writes a whole copy of everything into a file that is not there yet. */
  copyTo(file: string): Promise<void>;
  close(): Promise<void>;
}

/**
 * Opens the database of a data folder, made where there is none, brought up to date where it is older.
 *
 * @param folder - the data folder [text]
 * @returns the database, this program's alone until it is closed
 * @problem database.in_use - another program has the folder open
 * @problem database.newer - written by a newer version of this program; nothing is touched
 * @problem database.damaged - the file, its journal or a record is not what was written; nothing is touched
 * @problem database.missing - the file is gone or empty where there was one
 * @problem database.no_permission - the folder may not be written
 * @problem database.disk_full - the disk is full
 * @definition ours: docs/decisions/0101-database.md
 */
export async function openDatabase(folder: string): Promise<Checked<Database>> {
  let lock: FolderLock | null = null;
  try {
    await mkdir(folder, { recursive: true });
    lock = lockFolder(folder);
    if (!lock) return refused(recordProblem('database.in_use', { file: folder }, { value: folder }));
    const opened = openFile(folder);
    if ('code' in opened) {
      lock.release();
      return refused(opened);
    }
    return { ok: true, value: new SqliteDatabase(opened, folder, lock), problems: [] };
  } catch (error) {
    lock?.release();
    return refused(databaseProblem(error, folder));
  }
}

/** As much of a record as says who made it and when [character]. */
const longestHead = 5000;

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

class SqliteDatabase implements Database {
  private readonly connection: Connection;
  private readonly folder: string;
  private readonly lock: FolderLock;

  constructor(connection: Connection, folder: string, lock: FolderLock) {
    this.connection = connection;
    this.folder = folder;
    this.lock = lock;
  }

  async programmes(): Promise<readonly ProgrammeEntry[]> {
    return (await this.listed()).map(({ programmeId, name, madeAt }) => ({ programmeId, name, madeAt }));
  }

  async makeProgramme(entry: ProgrammeEntry): Promise<Checked<ProgrammeEntry>> {
    const { programmeId } = entry;
    if (this.knows(programmeId)) {
      return refused(recordProblem('database.programme_twice', { file: this.folder }, { value: programmeId }));
    }
    return this.writing(() => {
      this.insertProgramme(entry);
      return entry;
    });
  }

  async append(
    programmeId: string,
    records: readonly ChangeRecord[],
    texts: readonly string[] = records.map(recordText),
  ): Promise<Checked<{ readonly written: number }>> {
    if (!this.knows(programmeId)) return this.unknown(programmeId);
    const there = this.connection
      .prepare<[string, string, number], string>(
        'SELECT record FROM records WHERE programmeId = ? AND device = ? AND number = ?',
      )
      .pluck();
    const fresh = new Map<string, readonly [record: ChangeRecord, text: string]>();
    for (const [i, record] of records.entries()) {
      const text = texts[i]!;
      const name = recordName(record);
      const kept = fresh.get(name)?.[1] ?? there.get(programmeId, record.device, record.number);
      if (kept !== undefined && kept !== text) {
        return refused(recordProblem('record.name_taken', { file: this.folder }, { value: name }));
      }
      if (kept === undefined) fresh.set(name, [record, text]);
    }
    return this.writing(() => {
      for (const [record, text] of fresh.values()) this.insert(programmeId, record, text);
      return { written: fresh.size };
    });
  }

  async records(programmeId: string): Promise<Checked<readonly ChangeRecord[]>> {
    if (!this.knows(programmeId)) return this.unknown(programmeId);
    return recordsIn(this.connection, programmeId);
  }

  async listed(): Promise<readonly ProgrammeListed[]> {
    const rows = this.connection.prepare<[], ProgrammeEntry>('SELECT * FROM programmes ORDER BY programmeId').all();
    return rows.map(({ programmeId, name, madeAt }) => {
      const change = this.connection
        .prepare<[string], { name: string; isSetAside: number }>(
          'SELECT name, isSetAside FROM programmeChanges WHERE programmeId = ? ORDER BY position DESC LIMIT 1',
        )
        .get(programmeId);
      const all = this.connection
        .prepare<[string], { version: number; size_bytes: number | null; last: number | null }>(
          'SELECT count(*) AS version, sum(octet_length(record)) AS size_bytes, max(position) AS last FROM records WHERE programmeId = ?',
        )
        .get(programmeId)!;
      return {
        ...{ programmeId, name: change?.name ?? name, madeAt, isSetAside: change?.isSetAside === 1 },
        ...{ version: all.version, size_bytes: all.size_bytes ?? 0 },
        lastChange: all.last === null ? null : this.changeAt(all.last),
      };
    });
  }

  /** Who made a record, and when; null where it does not say. */
  private changeAt(position: number): ProgrammeListed['lastChange'] {
    const text = this.connection
      .prepare<[number], string>('SELECT record FROM records WHERE position = ?')
      .pluck()
      .get(position);
    // A record is written with its fields in the order of their names: these two come before its changes.
    const found = /^\{"at":"([^"]+)","by":("(?:[^"\\]|\\.)*"),/.exec((text ?? '').slice(0, longestHead));
    return found ? { at: found[1]!, by: String(parsed(found[2]!)) } : null;
  }

  async changeProgramme(programmeId: string, change: ProgrammeChange): Promise<Checked<ProgrammeChange>> {
    if (!this.knows(programmeId)) return this.unknown(programmeId);
    const { at, by, name, isSetAside } = change;
    return this.writing(() => {
      this.connection
        .prepare('INSERT INTO programmeChanges (programmeId, at, by, name, isSetAside) VALUES (?, ?, ?, ?, ?)')
        .run(programmeId, at, by, name, isSetAside ? 1 : 0);
      return change;
    });
  }

  async recordCount(programmeId: string): Promise<number> {
    return this.connection
      .prepare<[string], number>('SELECT count(*) FROM records WHERE programmeId = ?')
      .pluck()
      .get(programmeId)!;
  }

  async bringIn(programmes: readonly ProgrammeWhole[]): Promise<Checked<{ readonly programmes: number }>> {
    const there = programmes.find(({ entry }) => this.knows(entry.programmeId));
    if (there) {
      const value = there.entry.programmeId;
      return refused(recordProblem('database.programme_twice', { file: this.folder }, { value }));
    }
    return this.writing(() => {
      for (const { entry, records } of programmes) {
        this.insertProgramme(entry);
        for (const record of records) this.insert(entry.programmeId, record, recordText(record));
      }
      return { programmes: programmes.length };
    });
  }

  async copyTo(file: string): Promise<void> {
    await this.connection.backup(file);
  }

  async close(): Promise<void> {
    this.connection.close();
    this.lock.release();
  }

  private insertProgramme({ programmeId, name, madeAt }: ProgrammeEntry): void {
    this.connection.prepare('INSERT INTO programmes VALUES (?, ?, ?)').run(programmeId, name, madeAt);
  }

  private insert(programmeId: string, { device, number }: ChangeRecord, text: string): void {
    this.connection
      .prepare('INSERT INTO records (programmeId, device, number, record, digest) VALUES (?, ?, ?, ?, ?)')
      .run(programmeId, device, number, text, recordDigest(programmeId, text));
  }

  private knows(programmeId: string): boolean {
    return this.connection.prepare('SELECT 1 FROM programmes WHERE programmeId = ?').get(programmeId) !== undefined;
  }

  private unknown(programmeId: string) {
    return refused(recordProblem('database.programme_unknown', { file: this.folder }, { value: programmeId }));
  }

  /** One transaction; what the disk refuses is a problem, and nothing of it is written. */
  private writing<T>(work: () => T): Checked<T> {
    try {
      return { ok: true, value: this.connection.transaction(work).immediate(), problems: [] };
    } catch (error) {
      return refused(databaseProblem(error, this.folder));
    }
  }
}

/** The records of a programme in the order they were written; one that is not what was written is a problem. */
function recordsIn(connection: Connection, programmeId: string, most = -1): Checked<readonly ChangeRecord[]> {
  const rows = connection
    .prepare<[string, number], { position: number; record: string; digest: string }>(
      'SELECT position, record, digest FROM records WHERE programmeId = ? ORDER BY position LIMIT ?',
    )
    .iterate(programmeId, most);
  const found: ChangeRecord[] = [];
  const problems: Problem[] = [];
  for (const { position, record: text, digest } of rows) {
    const record = digest === recordDigest(programmeId, text) ? readRecord(parsed(text)) : null;
    const place = { file: databaseFile, row: position };
    if (record) found.push(record);
    else problems.push(recordProblem('record.unreadable', place, { value: text.slice(0, 80) }));
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: found, problems };
}

/**
 * The records of a programme as they are on the disk, read beside the program that has the data folder open: from another thread.
 *
 * @param folder - the data folder [text]
 * @param programmeId - the programme [text]
 * @param most - how many of the first are wanted; records are only ever added, so these are always the same; all where it is not
 *   given [count]
 * @returns its records in the order they were written
 * @problem record.unreadable - what stands there is no record
 * @problem database.damaged - and the other codes of openDatabase
 * @definition ours: docs/decisions/0119-last-good-export.md
 */
export async function recordsBeside(
  folder: string,
  programmeId: string,
  most = -1,
): Promise<Checked<readonly ChangeRecord[]>> {
  let connection: Connection | null = null;
  try {
    connection = openBeside(folder);
    return recordsIn(connection, programmeId, most);
  } catch (error) {
    return refused(databaseProblem(error, folder));
  } finally {
    connection?.close();
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
