import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  designSites,
  type GapFilling,
  gapFillings,
  type ProgrammeFacts,
  readyGauges,
  readyProgramme,
} from '@eavewell/engine';
import { readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

let folder: string;
let read: ProgrammeFacts;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eavewell-laws-'));
  await writeProgramme(join(folder, 'a'), demoProgramme({ sites: 60, seed: 3 }));
  read = (await readProgramme(join(folder, 'a'))).facts;
});
afterAll(() => rm(folder, { recursive: true }));

const factsWith = (gapFilling: GapFilling): ProgrammeFacts => ({
  ...read,
  settings: { ...read.settings, gapFilling },
});

describe.each(gapFillings)('a programme whose gaps are filled by %s', (gapFilling) => {
  it('finds the same at a gauge whichever others are wanted, and whatever their order', () => {
    const facts = factsWith(gapFilling);
    const all = readyGauges(facts);
    const backwards = readyGauges({ ...facts, gauges: [...facts.gauges].reverse() });
    expect(all.size).toBeGreaterThan(2);
    for (const [gaugeId, finding] of all) {
      expect(readyGauges(facts, new Set([gaugeId]))).toEqual(new Map([[gaugeId, finding]]));
      expect(backwards.get(gaugeId)).toEqual(finding);
    }
  });

  it('fills from neighbours where it says so, and changes no measured day', () => {
    const found = [...readyGauges(factsWith(gapFilling)).values()];
    const near = found.reduce((sum, { rain }) => sum + (rain?.neighbourDays ?? 0), 0);
    if (gapFilling === 'otherYears') expect(near).toBe(0);
    else expect(near).toBeGreaterThan(50);
    const before = readyGauges(factsWith('otherYears'));
    for (const { gaugeId, rain } of found) {
      const other = before.get(gaugeId)!.rain;
      expect(rain?.filledDays).toBe(other?.filledDays);
      expect(rain?.judgedYears).toBe(other?.judgedYears);
      rain?.record.state.forEach((state, day) => {
        if (state === 0) expect(rain.record.rain_mm[day]).toBe(other!.record.rain_mm[day]);
      });
    }
  });

  it('gives one site alone the design it has among all', () => {
    const facts = factsWith(gapFilling);
    const designs = [...designSites(facts.sites, readyProgramme(facts))];
    for (const site of facts.sites.slice(0, 3)) {
      const alone = { ...facts, sites: [site] };
      const [design] = [...designSites(alone.sites, readyProgramme(alone, new Set([site.gaugeId!])))];
      expect(design).toEqual(designs.find(({ siteId }) => siteId === site.siteId));
    }
  });
});
