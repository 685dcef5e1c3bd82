import { readFileSync } from 'node:fs';
import Sqlite, { type Database as Connection } from 'better-sqlite3';
import { expect, it } from 'vitest';
import { migrate, migrations, newestVersion, versionOf } from './migrations.ts';

const schemaOf = (connection: Connection) =>
  connection
    .prepare<[], string>('SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type DESC, name')
    .pluck()
    .all()
    .map((sql) => `${sql.replace(/\n {2}/g, '\n')};\n`)
    .join('\n');

/** The first 32 digits of what `printf 'islands\n{"device":"office"}' | sha256sum` prints (GNU coreutils). */
const digest = '3de60373293fca53398fa7d70f1fa001';

/** Something in every table of each past version, as that version wrote it, and what it must be today. */
const written: Readonly<Record<number, string>> = {
  1: `INSERT INTO programmes VALUES ('islands', 'Rain for the Islands', '2026-03-01T00:00:00.000Z');
      INSERT INTO records VALUES (1, 'islands', 'office', 1, '{"device":"office"}');`,
  2: `INSERT INTO programmes VALUES ('islands', 'Rain for the Islands', '2026-03-01T00:00:00.000Z');
      INSERT INTO records VALUES (1, 'islands', 'office', 1, '{"device":"office"}', '${digest}');`,
  3: `INSERT INTO programmes VALUES ('islands', 'Rain for the Islands', '2026-03-01T00:00:00.000Z');
      INSERT INTO records VALUES (1, 'islands', 'office', 1, '{"device":"office"}', '${digest}');
      INSERT INTO programmeChanges VALUES (1, 'islands', '2026-03-02T00:00:00.000Z', 'Nadi', 'Islands', 1);`,
};

it('leads from every past version to the tables of today, with all that was written', () => {
  for (let version = 0; version <= newestVersion; version++) {
    const connection = new Sqlite(':memory:');
    migrate(connection, version);
    if (version > 0) connection.exec(written[version]!);
    migrate(connection);
    expect(versionOf(connection)).toBe(newestVersion);
    expect(schemaOf(connection)).toBe(readFileSync(new URL('../schema.sql', import.meta.url), 'utf8'));
    if (version === 0) continue;
    expect(connection.prepare('SELECT programmeId, name, madeAt FROM programmes').raw().all()).toEqual([
      ['islands', 'Rain for the Islands', '2026-03-01T00:00:00.000Z'],
    ]);
    expect(connection.prepare('SELECT device, number, record, digest FROM records').raw().all()).toEqual([
      ['office', 1, '{"device":"office"}', digest],
    ]);
  }
});

it('takes a step wholly or not at all', () => {
  const connection = new Sqlite(':memory:');
  // The second table of the first step is there already: the step fails when its first is made.
  connection.exec('CREATE TABLE records (x)');
  expect(() => migrate(connection)).toThrow('already exists');
  expect(versionOf(connection)).toBe(0);
  expect(connection.prepare("SELECT name FROM sqlite_schema WHERE name = 'programmes'").all()).toEqual([]);
  expect(migrations.length).toBe(newestVersion);
});
