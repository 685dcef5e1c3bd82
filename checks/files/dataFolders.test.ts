import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { copyOfVersion, databaseFile, newestVersion, openDatabase } from '@eavewell/database';
import { serve, tasks } from '@eavewell/server';
import { workHere } from '@eavewell/work';
import { describe, expect, it } from 'vitest';
import { Page } from '../faults/served.ts';

/** Data folders as past versions of the program left them, and what those versions themselves said of them. */
const saved = fileURLToPath(new URL('./dataFolders/', import.meta.url));

interface Said {
  readonly programmeId: string;
  readonly name: string;
  readonly version: number;
  readonly rows: Readonly<Record<string, unknown>>;
  readonly history: unknown;
}

async function inRoom(work: (room: string) => Promise<void>): Promise<void> {
  const room = mkdtempSync(join(tmpdir(), 'eavewell-saved-'));
  try {
    await work(room);
  } finally {
    rmSync(room, { recursive: true, force: true });
  }
}

/** Everything a version said, asked of the program of today. */
async function toldOf(folder: string): Promise<readonly Said[]> {
  const started = await serve({
    ...{ folder, port: 0, version: '0.1.0', demoName: null, by: 'Eavewell', work: workHere(tasks) },
    onFault: (error) => {
      throw error;
    },
  });
  if (!started.ok) throw new Error(started.problems[0]!.code);
  try {
    const page = await Page.open(started.value);
    const { body } = await page.ask('GET', '/api/programmes');
    const told: Said[] = [];
    for (const { programmeId, name } of body.programmes) {
      const at = `/api/programmes/${programmeId}`;
      const rows: Record<string, unknown> = {};
      for (const table of ['sites', 'roofs', 'tanks'])
        rows[table] = (await page.ask('GET', `${at}/tables/${table}`)).body.rows;
      const { body: history } = await page.ask('GET', `${at}/history?table=sites&key=S001&column=people`);
      told.push({
        ...{ programmeId, name, rows, version: (await page.ask('GET', at)).body.version },
        history: history.entries.map((one: { record: { by: string }; after: string }) => [one.record.by, one.after]),
      });
    }
    return told;
  } finally {
    await started.value.close();
  }
}

const byId = (a: Said, b: Said) => (a.programmeId < b.programmeId ? -1 : 1);

describe('a data folder of a past version', () => {
  // That of today may be saved too, for when it is past.
  const versions = Array.from({ length: newestVersion }, (_, i) => i + 1).filter(
    (version) => version < newestVersion || existsSync(join(saved, `version-${version}`)),
  );
  const cases = versions.flatMap((version) => ['ended', 'cut'].map((how) => [version, how] as const));

  it.each(cases)(
    'of version %s, %s: opens with everything it had, and a copy is kept before it is changed',
    async (version, how) => {
      await inRoom(async (room) => {
        const folder = join(room, 'data');
        cpSync(join(saved, `version-${version}`, how), folder, { recursive: true });
        const said = JSON.parse(readFileSync(join(saved, `version-${version}`, 'expected.json'), 'utf8')) as Said[];
        expect(said.map(({ name }) => name).sort()).toEqual(['Empty so far', 'Tarn water']);
        expect([...(await toldOf(folder))].sort(byId)).toEqual([...said].sort(byId));
        // A second time, now as a folder of today.
        expect([...(await toldOf(folder))].sort(byId)).toEqual([...said].sort(byId));
        const copy = join(folder, copyOfVersion(version));
        expect(existsSync(copy)).toBe(version < newestVersion);
        if (version === newestVersion) return;
        // The copy is the old file: of its version, with all its records, and opens by itself.
        expect(readFileSync(copy).readUInt32BE(60)).toBe(version);
        const other = join(room, 'other');
        cpSync(copy, join(other, databaseFile), { recursive: true });
        const found = await openDatabase(other);
        if (!found.ok) throw new Error(found.problems[0]!.code);
        for (const one of said) expect(await found.value.recordCount(one.programmeId)).toBe(one.version);
        await found.value.close();
      });
    },
  );

  it('is saved here for every version there was', () => {
    expect(readdirSync(saved).sort()).toEqual(versions.map((version) => `version-${version}`));
  });

  it('whose copy cannot be kept is not changed', async () => {
    await inRoom(async (room) => {
      const folder = join(room, 'data');
      cpSync(join(saved, 'version-1', 'ended'), folder, { recursive: true });
      // A folder stands where the copy would be put.
      cpSync(join(saved, 'version-1', 'ended'), join(folder, copyOfVersion(1)), { recursive: true });
      const before = readFileSync(join(folder, databaseFile));
      const found = await openDatabase(folder).catch(() => null);
      expect(found === null || !found.ok).toBe(true);
      expect(readFileSync(join(folder, databaseFile)).readUInt32BE(60)).toBe(before.readUInt32BE(60));
      expect(readdirSync(folder).filter((name) => name.endsWith('.unfinished'))).toEqual([]);
    });
  });
});
