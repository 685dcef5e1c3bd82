import type { Database as Connection } from 'better-sqlite3';
import { recordDigest } from './recordDigest.ts';

/**
 * Every step from an empty file to the tables of today, in order: step n leads to version n. A step that has landed is never
 * changed; what it made wrong is mended by a later one.
 */
export const migrations: readonly string[] = [
  `
  CREATE TABLE programmes (
    programmeId TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    madeAt TEXT NOT NULL
  ) STRICT;

  CREATE TABLE records (
    position INTEGER PRIMARY KEY,
    programmeId TEXT NOT NULL REFERENCES programmes (programmeId),
    device TEXT NOT NULL,
    number INTEGER NOT NULL,
    record TEXT NOT NULL,
    UNIQUE (programmeId, device, number)
  ) STRICT;

  CREATE TRIGGER records_are_never_changed BEFORE UPDATE ON records
  BEGIN SELECT RAISE (ABORT, 'a record is never changed'); END;
  `,
  // Each record bears the digest of what it was when it was written.
  `
  DROP TRIGGER records_are_never_changed;

  ALTER TABLE records ADD COLUMN digest TEXT NOT NULL DEFAULT '';

  UPDATE records SET digest = record_digest (programmeId, record);

  CREATE TRIGGER records_are_never_changed BEFORE UPDATE ON records
  BEGIN SELECT RAISE (ABORT, 'a record is never changed'); END;
  `,
  // What a programme is called, and whether it is set aside: the last row of it stands.
  `
  CREATE TABLE programmeChanges (
    position INTEGER PRIMARY KEY,
    programmeId TEXT NOT NULL REFERENCES programmes (programmeId),
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    name TEXT NOT NULL,
    isSetAside INTEGER NOT NULL CHECK (isSetAside IN (0, 1))
  ) STRICT;

  CREATE TRIGGER programme_changes_are_never_changed BEFORE UPDATE ON programmeChanges
  BEGIN SELECT RAISE (ABORT, 'a change of a programme is never changed'); END;
  `,
];

/** The version from which records bear digests. */
export const digestsSince = 2;

/** The version this program writes. */
export const newestVersion = migrations.length;

/** The version of the file behind a connection; 0 where it is empty. */
export function versionOf(connection: Connection): number {
  return connection.pragma('user_version', { simple: true }) as number;
}

/** Brings a file to a version, each step whole or not at all. */
export function migrate(connection: Connection, to: number = newestVersion): void {
  connection.function('record_digest', { deterministic: true }, (programmeId, record) =>
    recordDigest(String(programmeId), String(record)),
  );
  for (let version = versionOf(connection); version < to; version++) {
    connection
      .transaction(() => {
        connection.exec(migrations[version]!);
        connection.pragma(`user_version = ${version + 1}`);
      })
      .immediate();
  }
}
