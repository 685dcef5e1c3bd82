import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  designSites,
  type ProgrammeFacts,
  type RainRecord,
  type ReadyProgramme,
  rainUnder,
  readyProgramme,
  type Scenario,
  type SiteDesign,
  scenarioRain,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

let folder: string;
let facts: ProgrammeFacts;
let ready: ReadyProgramme;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-laws-'));
  await writeProgramme(join(folder, 'a'), demoProgramme({ sites: 60, seed: 3 }));
  const read = (await readProgramme(join(folder, 'a'))).facts;
  // Every fourth site without a gauge of its own, so that rain by distance is put to the question too; a first flush in mm.
  const sites = read.sites.map((site, i) => ({
    ...site,
    gaugeId: i % 4 === 0 ? null : site.gaugeId,
    roofs: site.roofs.map((roof) => ({ ...roof, diverter: null })),
  }));
  facts = { ...read, sites, settings: { ...read.settings, draws: 100, gaugeReach_km: 120 } };
  ready = readyProgramme(facts);
});
afterAll(() => rm(folder, { recursive: true }));

const asked = (wetDays_fraction: number, wetDayRain_fraction: number, lastYears: number | null = null): Scenario => ({
  wetDays_fraction,
  wetDayRain_fraction,
  lastYears,
});
const designs = (scenario: Scenario): readonly SiteDesign[] => [
  ...designSites(facts.sites, rainUnder(ready, scenario)),
];

describe('a programme put to drier and drier rain', () => {
  it.each([
    ['fewer wet days', [asked(1.6, 1), asked(1.2, 1), asked(1, 1), asked(0.9, 1), asked(0.6, 1), asked(0.2, 1)]],
    ['less rain on each', [asked(1, 1.5), asked(1, 1), asked(1, 0.95), asked(1, 0.6), asked(1, 0.2)]],
    [
      'both, in the last years alone',
      [asked(1.2, 1.1, 12), asked(0.95, 1.1, 12), asked(0.95, 0.9, 12), asked(0.5, 0.4, 12)],
    ],
  ] as const)('%s: no site ever has fewer dry days or more good years', (_, steps) => {
    let before = designs(steps[0]!);
    let more = 0;
    for (const step of steps.slice(1)) {
      const after = designs(step);
      let compared = 0;
      for (const [i, { storages }] of after.entries()) {
        const [storage, wetter] = [storages[0], before[i]!.storages[0]];
        if (!storage || !wetter) continue;
        compared++;
        expect(storage.judgedYears).toBe(wetter.judgedYears);
        expect(storage.dryDays_per_year).toBeGreaterThanOrEqual(wetter.dryDays_per_year);
        expect(storage.goodYears).toBeLessThanOrEqual(wetter.goodYears);
        if (storage.dryDays_per_year > wetter.dryDays_per_year) more++;
      }
      expect(compared).toBeGreaterThan(40);
      before = after;
    }
    expect(more).toBeGreaterThan(40);
  });

  it('a question that changes nothing changes no design', () => {
    const same = designs(asked(1, 1));
    const present = [...designSites(facts.sites, ready)];
    for (const [i, design] of same.entries()) expect(JSON.stringify(design)).toBe(JSON.stringify(present[i]));
  });

  it('smaller shares never give any day more rain', () => {
    const rains = [...ready.gauges.values()].flatMap(({ rain }) => (rain ? [rain] : []));
    expect(rains.length).toBeGreaterThan(1);
    const share = fc.double({ min: 0.1, max: 3, noNaN: true });
    const rainOf = (i: number, scenario: Scenario): RainRecord => scenarioRain(rains[i]!, scenario, 1)!.record;
    fc.assert(
      fc.property(
        fc.nat({ max: rains.length - 1 }),
        fc.tuple(share, share),
        fc.tuple(share, share),
        (i, [a, b], [c, d]) => {
          const drier = rainOf(i, asked(Math.min(a, b), Math.min(c, d)));
          const wetter = rainOf(i, asked(Math.max(a, b), Math.max(c, d)));
          return drier.rain_mm.every((rain, day) => rain <= wetter.rain_mm[day]!);
        },
      ),
      { numRuns: process.env['EAVEWELL_SOAK'] ? 2000 : 60, seed: 20261125 },
    );
  });
});
