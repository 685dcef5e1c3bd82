import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  designSites,
  type ProgrammeFacts,
  type ReadyProgramme,
  rainOfSite,
  rainUnder,
  readyProgramme,
  remediesOf,
  type SiteFacts,
} from '@eavewell/engine';
import { type ProgrammeTables, readProgramme, writeProgramme } from '@eavewell/formats';
import { schemas } from '@eavewell/server';
import { expect, it } from 'vitest';
import { type FactsAnswer, factsOfAnswer, type ReadingsAnswer } from '../../packages/app/src/water/factsOfAnswer.ts';
import { type Page, withServer, zipOf } from '../faults/served.ts';
import { treated } from './treatedSites.ts';

type Rows = ProgrammeTables['tables'];

/** The demo without what can only be kept letter for letter; its rows and settings changed. */
function demo(
  sites: number,
  change: (tables: Rows) => Partial<Rows> = () => ({}),
  settings: Record<string, unknown> = {},
): ProgrammeTables {
  const { planted: _, gauges_count: _g, ...made } = demoProgramme({ sites });
  const rawFiles = (made.rawFiles ?? []).filter(({ path }) => path === 'ways.geojson');
  const tables = { ...made.tables, ...change(made.tables) };
  return { ...made, settings: { ...made.settings, ...settings }, tables, rawFiles };
}

const withoutGauge = ({ sites }: Rows) => ({ sites: sites!.map((row) => ({ ...row, gaugeId: null })) });

/** A programme as a folder is read, and the same one in a server. */
async function readBoth(page: Page, programme: ProgrammeTables): Promise<{ facts: ProgrammeFacts; address: string }> {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-alone-'));
  try {
    const folder = join(room, 'islands');
    await writeProgramme(folder, programme);
    const { facts } = await readProgramme(folder);
    const files: Record<string, Uint8Array> = {};
    for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
      const path = join(entry.parentPath, entry.name);
      if (entry.isFile()) files[path.slice(folder.length + 1)] = await readFile(path);
    }
    const address = await page.empty();
    const taken = await page.takeIn(address, 'islands.zip', zipOf(files));
    expect(taken.status).toBe(200);
    return { facts, address };
  } finally {
    await rm(room, { recursive: true, force: true });
  }
}

async function designed(page: Page, address: string): Promise<void> {
  for (;;) {
    const { body } = await page.ask('GET', address);
    expect(body.isFailed).toBe(false);
    if (body.done_fraction === 1) return;
    await new Promise((later) => setTimeout(later, 50));
  }
}

/** What a page gets of one site: decoded from what was sent, and nothing else. */
async function alone(page: Page, address: string, siteId: string, kept: Map<string, ReadingsAnswer>) {
  const { status, body } = await page.ask('GET', `${address}/sites/${siteId}/facts`);
  expect(status).toBe(200);
  expect(schemas.siteFacts.safeParse(body).error).toBeUndefined();
  const answer = body as FactsAnswer;
  const readings = new Map<string, ReadingsAnswer>();
  for (const { gaugeId, readings: at } of answer.gauges) {
    if (at === null) continue;
    const known = kept.get(at.address) ?? ((await page.ask('GET', at.address)).body as ReadingsAnswer);
    if (!kept.has(at.address)) expect(schemas.gaugeReadings.safeParse(known).error).toBeUndefined();
    kept.set(at.address, known);
    readings.set(gaugeId, known);
  }
  return factsOfAnswer(answer, readings);
}

/** All that a site comes to. */
function comesTo(site: SiteFacts, ready: ReadyProgramme, withRemedies: boolean) {
  const [design] = designSites([site], ready);
  return { rain: rainOfSite(site, ready), design, remedies: withRemedies ? remediesOf(site, ready, design) : null };
}

/** The long form, of `npm run soak`, has more sites, and works remedies out, which take most of the time, for more of them. */
const isLong = process.env['EAVEWELL_SOAK'] !== undefined;
const some = isLong ? 30 : 18;

const cases: readonly (readonly [string, ProgrammeTables, number])[] = [
  ['as it is', demo(60), isLong ? 1 : 4],
  ['with treatment, samples and raw water', demo(some, treated, { skipping_fraction: 0.1, roofTurbidity_NTU: 2 }), 6],
  ['with gaps filled from neighbours', demo(some, () => ({}), { gapFilling: 'normalRatio' }), 6],
  ['with every site between gauges', demo(some, withoutGauge, { gaugeReach_km: 60 }), 6],
  [
    'with most sites too far from any gauge',
    demo(some, withoutGauge, { gaugeReach_km: 12, gapFilling: 'inverseDistance' }),
    3,
  ],
];

it.each(cases)(
  'the demo %s: each site judged alone, of what a page is sent, comes to what it comes to among all',
  async (_, programme, oneOf) => {
    await withServer(async (page) => {
      const { facts, address } = await readBoth(page, programme);
      await designed(page, address);
      const ready = readyProgramme(facts);
      const kept = new Map<string, ReadingsAnswer>();
      const gaugesSent = new Set<number>();
      expect(facts.sites.length).toBeGreaterThanOrEqual(some);
      for (const [i, site] of facts.sites.entries()) {
        const one = await alone(page, address, site.siteId, kept);
        expect(one.version).toBe(one.designVersion);
        expect(one.site).toEqual(site);
        expect(one.facts.settings).toEqual(facts.settings);
        const sent = new Map(one.facts.gauges.map((gauge) => [gauge.gaugeId, gauge]));
        for (const gauge of facts.gauges)
          if (sent.get(gauge.gaugeId)?.readings.length) expect(sent.get(gauge.gaugeId)).toEqual(gauge);
        gaugesSent.add(sent.size);
        const readyAlone = readyProgramme(one.facts, one.wanted);
        const isMended = i % oneOf === 0;
        expect(comesTo(one.site, readyAlone, isMended)).toEqual(comesTo(site, ready, isMended));
      }
      // Of the question of a drier time too, for one site of each gauge.
      const asked = { wetDays_fraction: 0.9, wetDayRain_fraction: 0.95, lastYears: 20 };
      const seen = new Set<string | null>();
      for (const site of facts.sites) {
        if (seen.has(site.gaugeId)) continue;
        seen.add(site.gaugeId);
        const one = await alone(page, address, site.siteId, kept);
        const under = rainUnder(readyProgramme(one.facts, one.wanted), asked);
        expect(comesTo(one.site, under, false)).toEqual(comesTo(site, rainUnder(ready, asked), false));
      }
      expect(Math.max(...gaugesSent)).toBeLessThanOrEqual(facts.gauges.length);
    });
  },
  180_000,
);
