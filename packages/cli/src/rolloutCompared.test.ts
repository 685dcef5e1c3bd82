import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { writeProgramme } from '@eavewell/formats';
import { rolloutReport } from '@eavewell/tables';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { made, quick, settings, tables } from './rolloutForTests.ts';

let room: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-compared-'));
});
afterAll(() => rm(room, { recursive: true, force: true }));

describe('other crews, boats and stores', () => {
  it('are tried beside the plan, a store that is not there yet with each crew', async () => {
    const places = tables.places.map((one) =>
      one.placeId === 'jetty' ? { ...one, filledFrom: 'store', filledBy: 'boat' } : one,
    );
    // The built command: threads are of it.
    const program = fileURLToPath(new URL('../bin/eavewell.js', import.meta.url));
    const folder = join(room, 'could');
    await writeProgramme(folder, { settings, rain: made.rain, tables: { ...tables, places } });
    const args = ['rollout', folder, '--json', '--compare', ...quick];
    const { stdout } = await promisify(execFile)(process.execPath, [program, ...args], { maxBuffer: 2 ** 25 });
    const { compared } = rolloutReport.parse(JSON.parse(stdout));
    const stores = compared!.filter(({ kind }) => kind === 'newStore');
    expect(stores.map(({ of, crewId }) => [of, crewId]).toSorted()).toEqual([
      ['jetty', 'east'],
      ['jetty', 'west'],
    ]);
    expect(stores.map(({ said }) => said).toSorted()[0]).toBe(
      'Crew east loads at Tarn jetty, a store that is not there yet',
    );
  });
});
