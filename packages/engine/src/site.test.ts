import { describe, expect, it } from 'vitest';
import {
  type DemandPurpose,
  type DesignSettings,
  dayIndexOf,
  defaultSettings,
  type GaugeFacts,
  type RoofFacts,
  type SiteFacts,
} from './kernel/index.ts';
import { designSites, problemsOf, readyProgramme } from './plan.ts';

/** Twelve years with 12 mm every third day, but for a dry season of 60 days from 1 June. */
const gauge: GaugeFacts = {
  gaugeId: 'G1',
  name: 'Gauge',
  readingTime: null,
  latitude_deg: null,
  longitude_deg: null,
  file: 'rain/G1.csv',
  normals: [],
  readings: Array.from({ length: dayIndexOf(2013, 1, 1) - dayIndexOf(2001, 1, 1) }, (_, i) => {
    const day = dayIndexOf(2001, 1, 1) + i;
    const intoYear = i % 365;
    return { day, rain_mm: intoYear >= 150 && intoYear < 210 ? 0 : i % 3 === 0 ? 12 : 0, row: i + 2 };
  }),
};
const roof: RoofFacts = {
  roofId: 'R1',
  length_m: 12,
  width_m: 10,
  roofPlanArea_m2: null,
  material: 'corrugatedMetal',
  runoffFraction: 0.8,
  gutteredFraction: 1,
  diverter: { firstFlush_mm: 0, chamber_L: null, drainHole: 'open' },
};
const drinking: DemandPurpose = { purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true };

function designOf(change: Partial<SiteFacts>, tank_L = 30_000, settings: Partial<DesignSettings> = {}) {
  const site: SiteFacts = {
    siteId: 'S1',
    name: 'Hall',
    latitude_deg: null,
    longitude_deg: null,
    people: 30,
    gaugeId: 'G1',
    rainFactor: 1,
    handOverDay: null,
    roofs: [roof],
    tanks: [
      {
        tankId: 'T1',
        nominal_L: tank_L,
        partVolume_L: null,
        outletHeight_m: null,
        overflowHeight_m: null,
        diameter_m: null,
        joinedTo: null,
      },
    ],
    demand: [drinking],
    doubts: [],
    ...change,
  };
  const facts = {
    settings: { ...defaultSettings, ...settings },
    sites: [site],
    gauges: [gauge],
    parts: [],
    prices: [],
  };
  const ready = readyProgramme(facts);
  return { design: [...designSites([site], ready)][0]!, own: problemsOf(site, ready) };
}

const codes = (problems: readonly { code: string }[]) => problems.map((problem) => problem.code);

describe('a site from roof to tank', () => {
  it('holds where the tank outlasts the dry season with room to spare', () => {
    const { design } = designOf({});
    // 30 people × 7.5 L × 60 days = 13,500 L, under half the tank.
    expect(design.verdict).toBe('holds');
    expect(design.storage?.tankToHold_L).toBeNull();
    expect(design.stations).toMatchObject({ storage: 'holds', roof: 'notJudged' });
  });

  it('is large enough at exactly the size that would do, whatever the last bits of the sums', () => {
    // 25 people × 2.2 L is 55.00000000000001 in doubles; a tank of just so many days must not turn on that.
    const demand = [{ ...drinking, litres_per_person_per_day: 2.2 }];
    const least = designOf({ people: 25, demand }, 1000).design.storage!.tankForTarget_L!;
    const whole = Math.round(least);
    expect(Math.abs(least - whole)).toBeLessThan(1e-6);
    expect(designOf({ people: 25, demand }, whole).design.storage?.verdict).not.toBe('short');
    expect(designOf({ people: 25, demand }, whole - 1).design.storage?.verdict).toBe('short');
  });

  it('holds with as many judged years as it takes, and not with one fewer', () => {
    const { design } = designOf({});
    const judged = design.storage!.judgedYears;
    expect(designOf({}, 30_000, { leastYears: judged }).design.verdict).toBe('holds');
    expect(designOf({}, 30_000, { leastYears: judged + 1 }).design.verdict).toBe('tight');
  });

  it('is short in a tank of ten days, and the tank that would hold does hold', () => {
    const { design } = designOf({}, 2250);
    expect(design.storage).toMatchObject({ verdict: 'short', lacks: 'tank', judgedAlone: null });
    const enough = design.storage!.tankToHold_L!;
    expect(designOf({}, enough).design.verdict).toBe('holds');
    expect(designOf({}, enough * 0.97).design.verdict).not.toBe('holds');
  });

  it('is tight at best while it is only assumed that the whole roof has gutters', () => {
    const { design } = designOf({ roofs: [{ ...roof, gutteredFraction: null }] });
    expect(design.storage).toMatchObject({ verdict: 'tight', cappedBy: 'site.gutters_assumed', tankToHold_L: null });
  });

  it('says where the judged litres alone would do', () => {
    const washing = { purpose: 'washing', litres_per_person_per_day: 60, judged: false };
    const { design } = designOf({ demand: [drinking, washing] });
    expect(design.storage).toMatchObject({ verdict: 'short', lacks: 'water', judgedAlone: { meetsTarget: true } });
  });

  it('gives no verdict while a row is in doubt, and says so once', () => {
    const { design, own } = designOf({ doubts: [{ file: 'roofs.csv', row: 3 }], people: null });
    expect(design.verdict).toBe('unknown');
    expect(codes(design.problems)).toEqual(['site.facts_in_doubt']);
    expect(own).toEqual([]);
  });

  it('gives no verdict where a fact is missing, and names each', () => {
    const { design, own } = designOf({ people: null, roofs: [], tanks: [], gaugeId: null });
    expect(design.verdict).toBe('unknown');
    expect(codes(own)).toEqual(['site.gauge_unknown', 'site.roof_none', 'site.people_unknown', 'site.tank_none']);
    expect(codes(design.problems)).toEqual(codes(own));
  });
});
