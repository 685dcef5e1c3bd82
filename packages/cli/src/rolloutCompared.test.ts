import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { costWithin_fraction } from '@eavewell/engine';
import { writeProgramme } from '@eavewell/formats';
import { rolloutReport } from '@eavewell/tables';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { made, quick, settings, sites, tables } from './rolloutForTests.ts';

let room: string;
beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-compared-'));
});
/** What the built command tells: threads are of it. */
async function told(folder: string, ...asked: readonly string[]) {
  const program = fileURLToPath(new URL('../bin/eavewell.js', import.meta.url));
  const args = ['rollout', folder, '--json', '--compare', ...asked];
  const { stdout } = await promisify(execFile)(process.execPath, [program, ...args], { maxBuffer: 2 ** 25 }).catch(
    // It ends with 1 where a blocker is told, and tells its plan all the same.
    (ended: { stdout: string }) => ended,
  );
  return rolloutReport.parse(JSON.parse(stdout));
}

afterAll(() => rm(room, { recursive: true, force: true }));

/** In an order that costs do not change. */
type Compared = NonNullable<Awaited<ReturnType<typeof told>>['compared']>;
const ordered = (compared: Compared) => [...compared].sort((a, b) => keyOf(a).localeCompare(keyOf(b)));
const keyOf = ({ kind, of, by_count, crewId, otherCrewId }: Compared[number]) =>
  JSON.stringify([kind, of, by_count, crewId, otherCrewId]);

describe('other crews, boats and stores', () => {
  it('are never told as worse for being searched for too shortly: what there is can do no less with more of it', async () => {
    const folder = join(room, 'many');
    const many = Array.from({ length: 16 }, (_, at) => {
      const people = 30 + 17 * ((at * 7) % 16);
      return { ...sites[at % 3]!, siteId: `M${at}`, name: `Site ${at}`, people };
    });
    const arrivals = tables.arrivals.map((one) => ({ ...one, quantity: 90 }));
    const roofs = many.map(({ siteId }) => ({ ...tables.roofs[0]!, siteId }));
    await writeProgramme(folder, { settings, rain: made.rain, tables: { ...tables, sites: many, roofs, arrivals } });
    const report = await told(folder, '--tries', '4', '--futures', '20');
    const most = report.waiting.weighted * (1 + costWithin_fraction);
    const enough = report.compared!.filter(({ kind, by_count }) => kind !== 'newStore' && by_count > 0);
    expect(enough.length).toBeGreaterThan(1);
    expect(enough.filter(({ weighted }) => weighted > most)).toEqual([]);
  });

  it('are tried beside the plan, a store that is not there yet with each crew and with two, and what setting it up costs is counted', async () => {
    const places = tables.places.map((one) =>
      one.placeId === 'jetty' ? { ...one, filledFrom: 'store', filledBy: 'boat' } : one,
    );
    const folder = join(room, 'could');
    await writeProgramme(folder, { settings, rain: made.rain, tables: { ...tables, places } });
    const { compared } = await told(folder, ...quick);
    const priced = places.map((one) =>
      one.placeId === 'jetty' ? { ...one, setUp_amount: 700, currency: 'USD', priceDate: '2026-02-01' } : one,
    );
    await writeProgramme(
      folder,
      { settings, rain: made.rain, tables: { ...tables, places: priced } },
      { overwrite: true },
    );
    const withCost = await told(folder, ...quick);
    for (const [nth, one] of ordered(compared!).entries()) {
      const own = ordered(withCost.compared!)[nth]!;
      const isNew = one.kind === 'newStore';
      expect([own.said === one.said, own.setUp_amount, one.setUp_amount]).toEqual([!isNew, isNew ? 700 : null, null]);
      expect(own.cost - one.cost).toBeCloseTo(isNew ? 700 : 0, 6);
    }
    const stores = compared!.filter(({ kind }) => kind === 'newStore');
    expect(
      stores
        .map(({ of, crewId, otherCrewId }) => [of, [crewId, otherCrewId].filter(Boolean).toSorted().join()])
        .toSorted(),
    ).toEqual([
      ['jetty', 'east'],
      ['jetty', 'east,west'],
      ['jetty', 'west'],
    ]);
    expect(stores.map(({ said }) => said)).toContain(
      'Crew east loads at Tarn jetty, a store that is not there yet (setting it up is not counted: setUp_amount in places.csv)',
    );
  }, 120_000);
});
