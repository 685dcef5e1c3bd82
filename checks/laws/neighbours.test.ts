import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  designSites,
  fillFromNeighbours,
  fillGaps,
  type GapFilling,
  gapFillings,
  neighboursOf,
  type ProgrammeFacts,
  type RainRecord,
  rainRecord,
  readyGauges,
  readyProgramme,
  unknownDay,
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
      const [design] = [...designSites(alone.sites, readyProgramme(alone, { gauges: new Set([site.gaugeId!]) }))];
      expect(design).toEqual(designs.find(({ siteId }) => siteId === site.siteId));
    }
  });
});

describe('gaps made on purpose in whole records', () => {
  /** Every third month of the record taken out. */
  function holed(record: RainRecord): RainRecord {
    const rain_mm = record.rain_mm.slice();
    const state = record.state.slice();
    for (let at = 30; at + 30 <= state.length; at += 90) {
      rain_mm.fill(0, at, at + 30);
      state.fill(unknownDay, at, at + 30);
    }
    return { ...record, rain_mm, state };
  }

  /** Mean miss of a gap's rain [mm], and what all gaps got beside what they had. */
  function missOf(record: RainRecord, filled: RainRecord) {
    let miss_mm = 0;
    let gaps = 0;
    const all = { had_mm: 0, got_mm: 0 };
    const sum = (rain_mm: Float64Array, at: number) => rain_mm.subarray(at, at + 30).reduce((a, b) => a + b, 0);
    for (let at = 30; at + 30 <= record.state.length; at += 90) {
      const [had, got] = [sum(record.rain_mm, at), sum(filled.rain_mm, at)];
      miss_mm += Math.abs(got - had);
      all.had_mm += had;
      all.got_mm += got;
      gaps++;
    }
    return { miss_mm: miss_mm / gaps, bias_fraction: all.got_mm / all.had_mm - 1 };
  }

  it('are filled nearer to the truth by neighbours than by other years, and by normal ratio to a twentieth of all the rain', async () => {
    await writeProgramme(join(folder, 'clean'), demoProgramme({ sites: 60, seed: 3, clean: true }));
    const { gauges } = (await readProgramme(join(folder, 'clean'))).facts;
    const known = gauges.flatMap((gauge) => {
      const record = rainRecord(gauge);
      return record.ok ? [{ gauge, record: record.value }] : [];
    });
    expect(known.length).toBeGreaterThan(2);
    for (const { gauge, record } of known) {
      const gappy = holed(record);
      const neighbours = neighboursOf(gauge, known);
      const byYears = missOf(record, fillGaps(gappy, 1));
      const byRatio = missOf(record, fillFromNeighbours(gappy, neighbours, 'normalRatio'));
      const byDistance = missOf(record, fillFromNeighbours(gappy, neighbours, 'inverseDistance'));
      expect(byRatio.miss_mm).toBeLessThan(byYears.miss_mm);
      expect(byDistance.miss_mm).toBeLessThan(byYears.miss_mm);
      expect(Math.abs(byRatio.bias_fraction)).toBeLessThan(0.05);
    }
  });
});
