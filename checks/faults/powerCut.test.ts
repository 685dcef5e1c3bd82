import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { databaseFile, openDatabase } from '@eavewell/database';
import { seededDice } from '@eavewell/engine';
import { type ChangeRecord, foldRecords, recordName } from '@eavewell/records';
import { afterAll, expect, it } from 'vitest';

/** How often the power is cut; `npm run soak` asks for more. */
const cuts = process.env['EAVEWELL_SOAK'] === '1' ? 2000 : 150;
const journal = `${databaseFile}-wal`;
const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});
const folderMade = () => {
  const folder = mkdtempSync(join(tmpdir(), 'power cut '));
  folders.push(folder);
  return folder;
};
const bytesOf = (file: string) => (existsSync(file) ? readFileSync(file) : Buffer.alloc(0));

function record(number: number, length: number): ChangeRecord {
  const after = { siteId: `S${number}`, name: 'x'.repeat(1 + length) };
  return {
    device: 'office',
    number,
    clock: number,
    at: '2026-03-02T09:00:00.000Z',
    offset_min: 0,
    by: 'Nadi',
    source: { kind: 'import', name: null },
    takesBack: null,
    changes: [{ kind: 'added', table: 'sites', key: `S${number}`, after }],
  };
}

/**
 * A file as a disk may hold it in the middle of a write: the new bytes up to some point, then the old; or, where pages are
 * written in no order, some pages new and some old; and in a file that grew, rubbish where nothing was written yet.
 */
function torn(before: Buffer, after: Buffer, below: (n: number) => number, inOrder: boolean): Buffer {
  const page = 512;
  const length = inOrder ? below(after.length + 1) : after.length;
  const mixed = Buffer.alloc(Math.max(before.length, length), 0xa5);
  before.copy(mixed);
  if (inOrder) after.copy(mixed, 0, 0, length);
  else for (let at = 0; at < after.length; at += page) if (below(2) === 0) after.copy(mixed, at, at, at + page);
  return mixed;
}

it(`keeps every record that was answered for, and no half of one, over ${cuts} cuts of the power`, async () => {
  const below = seededDice(20261126).next;
  const folder = folderMade();
  const file = join(folder, databaseFile);
  const found = await openDatabase(folder);
  if (!found.ok) throw new Error('not opened');
  const database = found.value;
  await database.makeProgramme({ programmeId: 'p', name: 'P', madeAt: '2026-03-01T00:00:00.000Z' });
  let [number, cutInJournal, cutInFile, unansweredKept] = [0, 0, 0, 0];
  for (let cut = 0; cut < cuts; cut++) {
    const before = { file: bytesOf(file), journal: bytesOf(join(folder, journal)) };
    const answered = number;
    const batch = Array.from({ length: 1 + below(4) }, () => record(++number, below(60_000)));
    expect(await database.append('p', batch)).toMatchObject({ ok: true });
    const after = { file: bytesOf(file), journal: bytesOf(join(folder, journal)) };
    const copy = folderMade();
    // A page goes into the file only once the journal that holds it is wholly on the disk.
    const inFile = !before.file.equals(after.file) && below(4) > 0;
    if (inFile) cutInFile++;
    else cutInJournal++;
    writeFileSync(join(copy, databaseFile), inFile ? torn(before.file, after.file, below, false) : before.file);
    writeFileSync(join(copy, journal), inFile ? after.journal : torn(before.journal, after.journal, below, true));
    const again = await openDatabase(copy);
    if (!again.ok) throw new Error(`cut ${cut}: ${again.problems[0]!.code}`);
    const kept = await again.value.records('p');
    if (!kept.ok) throw new Error(`cut ${cut}: ${kept.problems[0]!.code}`);
    await again.value.close();
    const names = kept.value.map(recordName);
    expect([answered, number]).toContain(names.length);
    if (names.length === number) unansweredKept++;
    expect(names).toEqual(Array.from({ length: names.length }, (_, i) => `office.${i + 1}`));
    expect([...foldRecords(kept.value).rows('sites')].length).toBe(names.length);
    rmSync(copy, { recursive: true, force: true });
  }
  // The cuts fell where they should: in the journal, in the file, before and after the record was whole.
  expect(cutInJournal).toBeGreaterThan(0);
  expect(cutInFile).toBeGreaterThan(0);
  expect(unansweredKept).toBeGreaterThan(0);
  expect(unansweredKept).toBeLessThan(cuts);
  await database.close();
}, 3_600_000);

it('would see a record that is lost', async () => {
  const folder = folderMade();
  const found = await openDatabase(folder);
  if (!found.ok) throw new Error('not opened');
  await found.value.makeProgramme({ programmeId: 'p', name: 'P', madeAt: '2026-03-01T00:00:00.000Z' });
  await found.value.append('p', [record(1, 10)]);
  const copy = folderMade();
  copyFileSync(join(folder, databaseFile), join(copy, databaseFile));
  await found.value.close();
  const bare = await openDatabase(copy);
  if (!bare.ok) throw new Error('not opened');
  // Without its journal the file knows nothing: what the cuts above look for is really in the journal.
  expect(await bare.value.programmes()).toEqual([]);
  await bare.value.close();
});
