import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { databaseFile, openDatabase } from '@eavewell/database';
import { seededDice } from '@eavewell/engine';
import type { ChangeRecord } from '@eavewell/records';
import { afterAll, expect, it } from 'vitest';

const runs = process.env['EAVEWELL_SOAK'] === '1' ? 2000 : 150;
const journal = `${databaseFile}-wal`;
const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});
function folderMade(): string {
  const folder = mkdtempSync(join(tmpdir(), 'journal '));
  folders.push(folder);
  return folder;
}

const record = (number: number, length: number): ChangeRecord => ({
  ...{ device: 'office', number, clock: number, at: '2026-03-02T09:00:00.000Z', offset_min: 0, by: 'Nadi' },
  ...{ source: { kind: 'form', name: null }, takesBack: null },
  changes: [
    { kind: 'added', table: 'sites', key: `S${number}`, after: { siteId: `S${number}`, name: 'x'.repeat(length) } },
  ],
});

/** A folder as it is when the power goes after the last answer: everything after the first change stands in the journal. */
async function cutFolder(lengths: readonly number[]): Promise<{ folder: string; startOfLast: number }> {
  const [folder, copy] = [folderMade(), folderMade()];
  const found = await openDatabase(folder);
  if (!found.ok) throw new Error('not opened');
  await found.value.makeProgramme({ programmeId: 'p', name: 'P', madeAt: '2026-03-01T00:00:00.000Z' });
  let startOfLast = 0;
  for (const [i, length] of lengths.entries()) {
    startOfLast = readFileSync(join(folder, journal)).length;
    await found.value.append('p', [record(i + 1, length)]);
  }
  for (const name of [databaseFile, journal]) copyFileSync(join(folder, name), join(copy, name));
  await found.value.close();
  return { folder: copy, startOfLast };
}

async function opened(folder: string): Promise<number | string> {
  const found = await openDatabase(folder);
  if (!found.ok) return found.problems[0]!.code;
  try {
    const kept = await found.value.records('p');
    return kept.ok ? kept.value.length : kept.problems[0]!.code;
  } finally {
    await found.value.close();
  }
}

it(`a journal with a byte changed, ${runs} times: refused and left as it is, or nothing is missing but a change that was the last`, async () => {
  const below = seededDice(20261126).next;
  const lengths = Array.from({ length: 12 }, () => 1 + below(12_000));
  const { folder, startOfLast } = await cutFolder(lengths);
  const [file, whole] = [readFileSync(join(folder, databaseFile)), readFileSync(join(folder, journal))];
  const counts = { refused: 0, whole: 0, withoutLast: 0 };
  for (let run = 0; run < runs; run++) {
    const copy = folderMade();
    const at = run < 60 ? run : below(whole.length);
    const bytes = Buffer.from(whole);
    bytes[at] = bytes[at]! ^ (1 + below(255));
    writeFileSync(join(copy, databaseFile), file);
    writeFileSync(join(copy, journal), bytes);
    const found = await opened(copy);
    if (typeof found === 'string') {
      expect([at, found]).toEqual([at, 'database.damaged']);
      expect(
        readFileSync(join(copy, databaseFile)).equals(file) && readFileSync(join(copy, journal)).equals(bytes),
      ).toBe(true);
      counts.refused++;
    } else if (found === lengths.length) counts.whole++;
    else {
      expect([at, found]).toEqual([at, lengths.length - 1]);
      expect(at).toBeGreaterThanOrEqual(startOfLast);
      counts.withoutLast++;
    }
    rmSync(copy, { recursive: true });
  }
  expect(counts.refused).toBeGreaterThan(runs / 2);
  expect(counts.withoutLast).toBeGreaterThan(0);
}, 600_000);

it('a head that was being written when the power went stops nobody: the file holds what stood behind it', async () => {
  const { folder } = await cutFolder([10, 20, 30]);
  const whole = readFileSync(join(folder, journal));
  // Opened and closed: everything is in the file. Then the old journal stands there again, with half a new head.
  expect(await opened(folder)).toBe(3);
  expect(existsSync(join(folder, journal))).toBe(false);
  whole.fill(0xa5, 12, 32);
  writeFileSync(join(folder, journal), whole);
  expect(await opened(folder)).toBe(3);
});

it('a journal whose file is gone is not passed over', async () => {
  const { folder } = await cutFolder([10]);
  rmSync(join(folder, databaseFile));
  expect(await opened(folder)).toBe('database.missing');
  writeFileSync(join(folder, databaseFile), '');
  expect(await opened(folder)).toBe('database.missing');
});
