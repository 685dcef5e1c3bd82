import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import { writeProgramme } from '@eavewell/formats';
import { designReport } from '@eavewell/tables';
import type { ValidateFunction } from 'ajv';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { columnsOf } from './print/text.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);

const part = {
  ...{ partId: 'made-up', kind: 'treatmentUnit', name: 'Made-up unit', cartridges: 3, ratedFlow_L_per_h: 600 },
  ...{ ratedPressure_kPa: 60, ratedLitres_L: 2_000_000, ratedTurbidity_NTU: 5, lifeLimit_years: 3 },
  ...{ lowestFlow_L_per_h: 150, backwash_fraction: 0.02, bacteria_log10: 6, protozoa_log10: 6, viruses_log10: 6 },
  ...{ evidence: 'challengeTest', evidenceSource: 'Made-up test of 2024' },
};
const unit = (siteId: string, installedOn: string, partId: string | null = 'made-up') => ({
  ...{ siteId, serial: `U-${siteId}`, partId, installedOn },
});
const sample = (siteId: string, positive: number) => ({
  waterTests: { siteId, testId: 'W1', takenOn: '2026-02-01', point: 'tap' },
  testPortions: { siteId, testId: 'W1', kind: 'tubes', volume_mL: 100, portions: 1, positive },
});

let room: string;
let folder: string;

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-treatment-'));
  folder = join(room, 'islands');
  const { planted: _, gauges_count: _g, rawFiles: _r, ...made } = demoProgramme({ sites: 6, clean: true });
  const { tables } = made;
  const [one, two, three, four] = tables.sites!.map(({ siteId }) => String(siteId)) as [string, string, string, string];
  const samples = [sample(one, 0), sample(two, 1)];
  const raw = (pathogen: string) => ({ pathogen, typical_per_L: 1, high_per_L: 2, source: 'Made up' });
  await writeProgramme(folder, {
    ...made,
    // The sample is to be young enough on the day of the test.
    settings: {
      ...made.settings,
      ...{ roofTurbidity_NTU: 1, skipping_fraction: 0, daysOff_per_year: 0, sampleAge_days: 3660 },
    },
    tables: {
      ...tables,
      sites: tables.sites!.map((row) => ({ ...row, handOverDay: '2025-12-01' })),
      parts: [...tables.parts!, part],
      treatmentUnits: [unit(one, '2025-03-01'), unit(two, '2022-03-01'), unit(three, '2025-03-01', null)],
      waterTests: samples.map(({ waterTests }) => waterTests),
      testPortions: samples.map(({ testPortions }) => testPortions),
      rawWater: ['campylobacter', 'rotavirus', 'cryptosporidium'].flatMap((germ) =>
        [one, two, four].map((siteId) => ({ siteId, ...raw(germ) })),
      ),
    },
  });
});
afterAll(() => rm(room, { recursive: true, force: true }));

/** The check of a document by the schema that is published for it. */
async function checkOf(file: string): Promise<ValidateFunction> {
  const text = await readFile(new URL(`../../../docs/${file}`, import.meta.url), 'utf8');
  return new Ajv2020({ strict: false }).compile(JSON.parse(text));
}

describe('wear', () => {
  it('lists every set, the soonest due first, and says what is missing where no date can be told', async () => {
    const { code, out } = await eavewell('wear', folder);
    expect(code).toBe(0);
    const at = ['U-S002', 'U-S001', 'U-S003'].map((serial) => out.indexOf(serial));
    expect(at.every((place) => place > 0)).toBe(true);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(out).toMatch(/^3 sets of cartridges at 3 sites, the soonest due first\.\n1 is due already\./);
    expect(out).toMatch(/Of 1 no date can be told:\n {2}[^\n]*S003/);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('shows one site with its working, and tells a site without a unit so', async () => {
    const { out } = await eavewell('wear', folder, '--site', 'S001');
    expect(out).toMatch(/Cartridges of unit U-S001: when are they due\?/);
    expect(out).toMatch(/How the figures were reached/);
    expect((await eavewell('wear', folder, '--site', 'S005')).out).toBe('This site has no treatment unit in use.\n');
    const wrong = await eavewell('wear', folder, '--site', 'S00x');
    expect([wrong.code, wrong.out]).toEqual([2, '']);
  });

  it('writes the same as the report of a design has, as one document', async () => {
    const { out } = await eavewell('wear', folder, '--json');
    const { sites } = JSON.parse(out) as { sites: { siteId: string; wear: unknown[] }[] };
    const report = designReport.parse(JSON.parse((await eavewell('design', folder, '--json')).out));
    const known = report.sites.filter(({ wear }) => wear !== null && wear.length > 0);
    expect(known.map(({ siteId, wear }) => ({ siteId, wear }))).toEqual(
      sites.map(({ siteId, wear }) => ({ siteId, wear })),
    );
    expect(known).toHaveLength(3);
  });
});

describe.each(['wear', 'safety'] as const)('%s --json', (command) => {
  it('is the document of its schema in docs, of all sites and of one', async () => {
    const isValid = await checkOf(`${command}.schema.json`);
    for (const args of [[], ['--site', 'S001'], ['--site', 'S005']]) {
      const { out } = await eavewell(command, folder, '--json', ...args);
      expect(isValid(JSON.parse(out)), JSON.stringify(isValid.errors)).toBe(true);
    }
    // A document that lacks something, or says something else, is refused.
    const { sites, ...rest } = JSON.parse((await eavewell(command, folder, '--json')).out) as { sites: object[] };
    for (const other of [rest, { ...rest, sites, more: 1 }, { ...rest, sites: [{ ...sites[0], [command]: 'dry' }] }])
      expect(isValid(other)).toBe(false);
  });
});

describe('safety', () => {
  it('lists the worst first, and ends with 1 where water must not be drunk', async () => {
    const { code, out } = await eavewell('safety', folder);
    expect(code).toBe(1);
    expect(out).toMatch(/^3 sites are judged of 6, the worst first\./);
    const at = ['Do not drink: 2 sites', 'S002', 'S004', 'Fit to drink by plan and samples: 1 site', 'S001'].map(
      (text) => out.indexOf(text),
    );
    expect(at.every((place) => place > 0)).toBe(true);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(out).toMatch(/3 sites are not judged/);
    expect(out).toMatch(/Where a test fails: stop, tell people, boil or chlorinate/);
    for (const line of out.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('shows one site with barriers, germs, samples and working, in another language too', async () => {
    const { code, out } = await eavewell('safety', folder, '--site', 'S001');
    expect(code).toBe(0);
    expect(out).toMatch(/membrane +challenge test +6 steps of ten/);
    expect(out).toMatch(/Cryptosporidium/);
    expect(out).toMatch(/1 February 2026 +tap +under/);
    expect(out).toMatch(/How the figures were reached/);
    const spanish = await eavewell('safety', folder, '--site', 'S001', '--language', 'es');
    expect(spanish.out).toMatch(/¿Apta para beber\?/);
    expect((await eavewell('safety', folder, '--site', 'S005')).out).toMatch(/^This site is not judged/);
  });

  it('writes the same as the report of a design has, as one document', async () => {
    const { out } = await eavewell('safety', folder, '--json');
    const { sites } = JSON.parse(out) as { sites: { siteId: string; safety: unknown }[] };
    const report = designReport.parse(JSON.parse((await eavewell('design', folder, '--json')).out));
    const inReport = new Map(report.sites.map(({ siteId, safety }) => [siteId, safety]));
    expect(sites.map(({ siteId }) => siteId)).toEqual(['S002', 'S004', 'S001']);
    for (const { siteId, safety } of sites) expect(safety, siteId).toEqual(inReport.get(siteId));
  });
});

it('the page of a site tells treatment, cartridges and safety on the way of its water', async () => {
  const { out } = await eavewell('design', folder, '--site', 'S001');
  const at = ['does it keep up?', 'when are they due?', 'Fit to drink?', 'How the figures were reached'].map((text) =>
    out.indexOf(text),
  );
  expect(at.every((place) => place > 0)).toBe(true);
  expect(at).toEqual([...at].sort((a, b) => a - b));
});
