import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { ChangeRecord } from '@eavewell/records';
import Sqlite from 'better-sqlite3';
import { afterEach, describe, expect, it } from 'vitest';
import { newestVersion } from './migrations.ts';
import { type Database, openDatabase } from './openDatabase.ts';
import { databaseFile } from './openFile.ts';

const folders: string[] = [];
const open: Database[] = [];
function folderMade(): string {
  const folder = mkdtempSync(join(tmpdir(), 'data folder '));
  folders.push(folder);
  return folder;
}
afterEach(async () => {
  for (const one of open.splice(0)) await one.close();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

async function opened(folder: string): Promise<Database> {
  const found = await openDatabase(folder);
  if (!found.ok) throw new Error(found.problems[0]!.code);
  open.push(found.value);
  return found.value;
}

async function closed(database: Database): Promise<void> {
  open.splice(open.indexOf(database), 1);
  await database.close();
}

const record = (number: number, people = '50'): ChangeRecord => ({
  device: 'office',
  number,
  clock: number,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: 600,
  by: 'Nadi',
  source: { kind: 'form', name: null },
  takesBack: null,
  changes: [{ kind: 'added', table: 'sites', key: `S${number}`, after: { siteId: `S${number}`, people } }],
});
const programme = { programmeId: 'islands', name: 'Rain for the Islands', madeAt: '2026-03-01T00:00:00.000Z' };
const code = (found: { readonly problems: readonly { readonly code: string }[] }) => found.problems[0]?.code;

describe('openDatabase', () => {
  it('keeps programmes and records, side by side, over a restart', async () => {
    const folder = folderMade();
    const first = await opened(join(folder, 'not', 'there yet'));
    expect(await first.programmes()).toEqual([]);
    await first.makeProgramme(programme);
    await first.makeProgramme({ ...programme, programmeId: 'highlands' });
    expect(await first.append('islands', [record(1), record(2)])).toMatchObject({ ok: true, value: { written: 2 } });
    expect(await first.append('highlands', [record(1, '7')])).toMatchObject({ ok: true });
    await closed(first);
    const again = await opened(join(folder, 'not', 'there yet'));
    expect((await again.programmes()).map(({ programmeId }) => programmeId)).toEqual(['highlands', 'islands']);
    expect(await again.records('islands')).toEqual({ ok: true, value: [record(1), record(2)], problems: [] });
    expect(await again.records('highlands')).toMatchObject({ value: [record(1, '7')] });
  });

  it('passes over what is there and refuses another record of the same name, with all that came beside it', async () => {
    const database = await opened(folderMade());
    await database.makeProgramme(programme);
    await database.append('islands', [record(1)]);
    expect(await database.append('islands', [record(1), record(2), record(2)])).toMatchObject({
      value: { written: 1 },
    });
    const refused = await database.append('islands', [record(3), record(1, '51')]);
    expect(code(refused)).toBe('record.name_taken');
    expect(await database.records('islands')).toMatchObject({ value: [record(1), record(2)] });
  });

  it('knows what it does not have, and has each programme once', async () => {
    const database = await opened(folderMade());
    await database.makeProgramme(programme);
    expect(code(await database.makeProgramme(programme))).toBe('database.programme_twice');
    expect(code(await database.append('lowlands', [record(1)]))).toBe('database.programme_unknown');
    expect(code(await database.records('lowlands'))).toBe('database.programme_unknown');
  });

  it('opens a folder for one program at a time', async () => {
    const folder = folderMade();
    const first = await opened(folder);
    expect(code(await openDatabase(folder))).toBe('database.in_use');
    await closed(first);
    await opened(folder);
  });

  it('leaves a file of a newer version as it is', async () => {
    const folder = folderMade();
    await closed(await opened(folder));
    const file = join(folder, databaseFile);
    const raw = new Sqlite(file);
    raw.pragma(`user_version = ${newestVersion + 1}`);
    raw.close();
    const before = readFileSync(file);
    expect(await openDatabase(folder)).toMatchObject({
      ok: false,
      problems: [{ code: 'database.newer', facts: { value: String(newestVersion + 1) } }],
    });
    expect(readFileSync(file)).toEqual(before);
  });

  it('says that a file is damaged, and leaves it', async () => {
    for (const damage of [
      () => Buffer.from('this was never a database, though it has its name'),
      (bytes: Buffer) => Buffer.concat([bytes.subarray(0, 4096 + 8), Buffer.alloc(bytes.length - 4104, 0xa5)]),
      (bytes: Buffer) => bytes.subarray(0, bytes.length - 6000),
    ]) {
      const folder = folderMade();
      const database = await opened(folder);
      await database.makeProgramme(programme);
      await database.append(
        'islands',
        Array.from({ length: 200 }, (_, i) => record(i + 1)),
      );
      await closed(database);
      const file = join(folder, databaseFile);
      const bytes = damage(readFileSync(file));
      writeFileSync(file, bytes);
      expect(code(await openDatabase(folder))).toBe('database.damaged');
      expect(readFileSync(file)).toEqual(bytes);
    }
  });

  it('lets nobody change a record, and names one that somebody did', async () => {
    const folder = folderMade();
    const database = await opened(folder);
    await database.makeProgramme(programme);
    await database.append('islands', [record(1)]);
    await closed(database);
    const raw = new Sqlite(join(folder, databaseFile));
    expect(() => raw.prepare("UPDATE records SET record = '{}'").run()).toThrow('never changed');
    raw.prepare('DELETE FROM records').run();
    raw.prepare("INSERT INTO records VALUES (9, 'islands', 'office', 1, '{\"people\": 5}', 'x')").run();
    raw.close();
    expect(await openDatabase(folder)).toMatchObject({
      ok: false,
      problems: [{ code: 'database.damaged', place: { row: 9 }, facts: { reason: 'record' } }],
    });
  });

  it('writes everything to the disk before it counts', async () => {
    const folder = folderMade();
    await closed(await opened(folder));
    await opened(folder);
    const { connect } = await import('./connect.ts');
    const other = connect(join(folder, databaseFile));
    expect(other.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(other.pragma('synchronous', { simple: true })).toBe(2);
    expect(other.pragma('foreign_keys', { simple: true })).toBe(1);
    other.close();
  });

  it('copies everything into a file that opens', async () => {
    const folder = folderMade();
    const database = await opened(folder);
    await database.makeProgramme(programme);
    await database.append('islands', [record(1)]);
    const copy = folderMade();
    await database.copyTo(join(copy, databaseFile));
    expect(await (await opened(copy)).records('islands')).toMatchObject({ value: [record(1)] });
  });

  it('says that a file stands where the folder should', async () => {
    const file = join(folderMade(), 'file');
    writeFileSync(file, 'x');
    expect(code(await openDatabase(file))).toBe('database.not_a_folder');
    expect(code(await openDatabase(join(file, 'below')))).toBe('database.not_a_folder');
  });
});
