import { describe, expect, it } from 'vitest';
import {
  type DemandPurpose,
  type DesignSettings,
  dayIndexOf,
  defaultSettings,
  type GaugeFacts,
  noKit,
  noRollout,
  noStorms,
  type PartFacts,
  type RoofFacts,
  type SiteFacts,
  unmeasuredPart,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
} from './kernel/index.ts';
import { designSites, problemsOf, type ReadyProgramme, readyProgramme, remediesOf } from './plan.ts';
import { siteSizes } from './site.ts';

/** Twelve years with 12 mm every third day, but for a dry season of 60 days from 1 June. */
const gauge: GaugeFacts = {
  ...noStorms,
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
  ...unmeasuredRoof,
  roofId: 'R1',
  length_m: 12,
  width_m: 10,

  material: 'corrugatedMetal',

  runoffFraction: 0.8,
  gutteredFraction: 1,

  diverter: { firstFlush_mm: 0, chamber_L: null, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null },
};
const drinking: DemandPurpose = { purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true };

/** The site, and a programme with it alone. */
function factsOf(
  change: Partial<SiteFacts>,
  parts: readonly PartFacts[] = [],
  tank_L = 30_000,
  settings: Partial<DesignSettings> = {},
): [SiteFacts, ReadyProgramme] {
  const site: SiteFacts = {
    ...unmeasuredSite,
    siteId: 'S1',
    name: 'Hall',
    siteClass: null,
    target: null,
    presence: null,
    secondSource: null,
    nearSecondSource: null,
    latitude_deg: null,
    longitude_deg: null,
    people: 30,
    peopleCountedOn: null,
    households_count: null,
    growthFraction_per_year: null,
    designYear: null,
    gaugeId: 'G1',
    rainFactor: 1,
    handOverDay: null,
    ration: null,
    roofs: [roof],
    tanks: [{ ...unmeasuredTank, tankId: 'T1', nominal_L: tank_L }],
    demand: [drinking],

    doubts: [],
    ...change,
  };
  const all = { ...defaultSettings, ...settings };
  return [
    site,
    readyProgramme({
      ...{ settings: all, sites: [site], gauges: [gauge], parts, prices: [] },
      ...{ kit: noKit, rollout: noRollout },
    }),
  ];
}

function designOf(change: Partial<SiteFacts>, tank_L = 30_000, settings: Partial<DesignSettings> = {}) {
  const [site, ready] = factsOf(change, [], tank_L, settings);
  return { design: [...designSites([site], ready)][0]!, own: problemsOf(site, ready) };
}

const codes = (problems: readonly { code: string }[]) => problems.map((problem) => problem.code);

describe('a site from roof to tank', () => {
  it('holds where the tank outlasts the dry season with room to spare', () => {
    const { design } = designOf({});
    // 30 people × 7.5 L × 60 days = 13,500 L, under half the tank.
    expect(design.verdict).toBe('holds');
    expect(design.storages[0]?.tankToHold_L).toBeNull();
    expect(design.stations).toMatchObject({ storage: 'holds', roof: 'notJudged' });
  });

  it('is large enough at exactly the size that would do, whatever the last bits of the sums', () => {
    // 25 people × 2.2 L is 55.00000000000001 in doubles; a tank of just so many days must not turn on that.
    const demand = [{ ...drinking, litres_per_person_per_day: 2.2 }];
    const least = designOf({ people: 25, demand }, 1000).design.storages[0]!.tankForTarget_L!;
    const whole = Math.round(least);
    expect(Math.abs(least - whole)).toBeLessThan(1e-6);
    expect(designOf({ people: 25, demand }, whole).design.storages[0]?.verdict).not.toBe('short');
    expect(designOf({ people: 25, demand }, whole - 1).design.storages[0]?.verdict).toBe('short');
  });

  it('holds with as many judged years as it takes, and not with one fewer', () => {
    const { design } = designOf({});
    const judged = design.storages[0]!.judgedYears;
    expect(designOf({}, 30_000, { leastYears: judged }).design.verdict).toBe('holds');
    expect(designOf({}, 30_000, { leastYears: judged + 1 }).design.verdict).toBe('tight');
  });

  it('is short in a tank of ten days, and the tank that would hold does hold', () => {
    const { design } = designOf({}, 2250);
    expect(design.storages[0]).toMatchObject({ verdict: 'short', lacks: 'tank', judgedAlone: null });
    const enough = design.storages[0]!.tankToHold_L!;
    expect(designOf({}, enough).design.verdict).toBe('holds');
    expect(designOf({}, enough * 0.97).design.verdict).not.toBe('holds');
  });

  it('is tight at best on a roof far out of the usual, until its area says the same, and remedies say what to measure', () => {
    const long = { ...roof, length_m: 90, width_m: 8, roofPlanArea_m2: null };
    const [site, ready] = factsOf({ roofs: [long] });
    const { design } = designOf({ roofs: [long] });
    expect(design.storages[0]).toMatchObject({ verdict: 'tight', cappedBy: 'site.roof_very_large' });
    expect(remediesOf(site, ready)).toMatchObject({ remedies: [], notMended: 'roofSize' });
    expect(designOf({ roofs: [{ ...long, roofPlanArea_m2: 720 }] }).design.verdict).toBe('holds');
  });

  it('is tight at best while it is only assumed that the whole roof has gutters', () => {
    const { design } = designOf({ roofs: [{ ...roof, gutteredFraction: null }] });
    expect(design.storages[0]).toMatchObject({
      verdict: 'tight',
      cappedBy: 'site.gutters_assumed',
      tankToHold_L: null,
    });
  });

  it('says where the judged litres alone would do', () => {
    const washing = { purpose: 'washing', litres_per_person_per_day: 60, judged: false };
    const { design } = designOf({ demand: [drinking, washing] });
    expect(design.storages[0]).toMatchObject({ verdict: 'short', lacks: 'water', judgedAlone: { meetsTarget: true } });
  });

  it('is judged by the target of its class, and so are other sizes of tank and what would mend it', () => {
    const strict = { daysMet_fraction: 1, longestDryRun_days: 0, goodYears_fraction: 1 };
    const plain = designOf({}, 13_000).design;
    const clinic = designOf({ siteClass: 'clinic', target: strict }, 13_000).design;
    expect(plain).toMatchObject({ targetFrom: 'programme', target: defaultSettings.target });
    expect(clinic).toMatchObject({ siteClass: 'clinic', targetFrom: 'class', target: strict, verdict: 'short' });
    expect(plain.verdict).not.toBe('short');
    expect(clinic.storages[0]!.goodYearsNeeded).toBe(clinic.storages[0]!.judgedYears);
    // The same target in the settings of the programme gives the same finding.
    const asked = designOf({}, 13_000, { target: strict }).design;
    expect(asked.storages).toEqual(clinic.storages);
    expect(asked.working).toEqual(clinic.working);
  });

  it('says where its class has no target of its own', () => {
    const { design, own } = designOf({ siteClass: 'market' });
    expect(codes(own)).toEqual(['site.target_of_programme', 'site.tank_volume_stated']);
    expect(design).toMatchObject({ siteClass: 'market', targetFrom: 'programme', verdict: 'holds' });
  });

  it('is judged for the people of its design year, who never grow along the record', () => {
    const grown = designOf({
      people: 24,
      peopleCountedOn: dayIndexOf(2026, 1, 1),
      growthFraction_per_year: 0.025,
      designYear: 2035,
    });
    // 24 × 1.025 ^ 9 = 29.97: as for 30 people from the first year on.
    expect(grown.design).toMatchObject({ people: 24, design_people: 30, verdict: 'holds' });
    expect(grown.design.storages).toEqual(designOf({}).design.storages);
  });

  it('is tight at best where people grow and it cannot be said how many there will be', () => {
    const { design } = designOf({ growthFraction_per_year: 0.02, designYear: 2030 });
    expect(design.verdict).toBe('tight');
    expect(design.storages[0]!.cappedBy).toBe('site.growth_not_used');
    expect(designOf({ growthFraction_per_year: -0.02, designYear: 2030 }).design.verdict).toBe('holds');
  });

  const river = (months: readonly number[]) => ({
    secondSource: { secondSourceId: 'R', name: 'Ford', kind: 'river', months, turbidity_NTU: null } as const,
  });

  it('is tight at best where it needs its second source, and says how often and what it would be without', () => {
    const without = designOf({}, 4000).design.storages[0]!;
    expect(without).toMatchObject({ verdict: 'short', secondSource: null });
    const { design, own } = designOf(river([5, 6, 7, 8]), 4000);
    expect(design.verdict).toBe('tight');
    expect(codes(own)).toContain('site.second_source');
    const found = design.storages[0]!;
    expect(found.cappedBy).toBe('site.second_source');
    expect(found.dryDays_per_year).toBe(0);
    expect(found.shortfall_L_per_year).toBe(0);
    expect(found.secondSource).toMatchObject({
      kind: 'river',
      aloneVerdict: 'short',
      aloneGoodYears: without.goodYears,
      aloneDryDays_per_year: without.dryDays_per_year,
      days_per_year: without.dryDays_per_year,
    });
    expect(found.secondSource!.given_L_per_year).toBeCloseTo(without.shortfall_L_per_year, 6);
    // What would hold is what would hold without the river.
    expect(found.tankToHold_L).toBe(without.tankToHold_L);
    for (const size of ['tankForDays_L', 'tankForRuns_L', 'tankForTarget_L', 'catalogueForTarget_L', 'sizes'] as const)
      expect(found[size], size).toEqual(without[size]);
    expect(found.tankForTarget_L).toBeGreaterThan(4000);
    expect(found.sizes.find((size) => size.tankVolume_L === 4000)?.meetsTarget).toBe(false);
  });

  it('asks for the same tank where every size is answered at once', () => {
    const [site, ready] = factsOf(river([11, 12, 1]), [], 4000);
    const [found] = siteSizes(site, ready.gauges.get('G1'), ready);
    const finding = designOf(river([11, 12, 1]), 4000).design.storages[0]!;
    expect(finding.tankForTarget_L).toBeGreaterThan(4000);
    expect(found!.tankForTarget_L).toBe(finding.tankForTarget_L);
  });

  it('asks for the tank that would do without it where the river covers every day of the year', () => {
    const without = designOf({}, 4000).design.storages[0]!;
    const found = designOf(river([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]), 4000).design.storages[0]!;
    expect(found).toMatchObject({ verdict: 'tight', dryDays_per_year: 0, lacks: null });
    expect(found.tankForTarget_L).toBe(without.tankForTarget_L);
    expect(found.tankForTarget_L).toBeGreaterThan(0);
  });

  it('covers the days of its months only', () => {
    const { design } = designOf(river([12]), 4000);
    expect(design.storages[0]).toMatchObject({ verdict: 'short', lacks: 'tank', secondSource: { days_per_year: 0 } });
  });

  it('still holds where it would hold without its second source', () => {
    const { design } = designOf(river([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]));
    expect(design.storages[0]).toMatchObject({
      verdict: 'holds',
      cappedBy: null,
      secondSource: { aloneVerdict: 'holds' },
    });
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

  it('asks for the mark of a ration without one, and for what is given below a mark', () => {
    const stated = (ration: SiteFacts['ration']) => designOf({ ration });
    const mark = stated({ below_fraction: 0.3, judged_fraction: null, other_fraction: null });
    expect(mark.own[0]).toMatchObject({ code: 'site.ration_incomplete', place: { column: 'rationedOther_fraction' } });
    expect(mark.design.verdict).toBe('unknown');
    const share = stated({ below_fraction: null, judged_fraction: 0.5, other_fraction: null });
    expect(share.own[0]).toMatchObject({ place: { column: 'rationBelow_fraction' } });
  });

  it('says where the ration itself makes it short, and what would be without it', () => {
    const half = { below_fraction: 0.9, judged_fraction: 0.5, other_fraction: null };
    const [storage] = designOf({ ration: half }).design.storages;
    expect(storage).toMatchObject({
      verdict: 'short',
      lacks: 'ration',
      unrationed: { meetsTarget: true, goodYears: 11 },
    });
    expect(storage!.unrationed!.goodYears).toBe(storage!.judgedYears);
  });

  it('mends each of three tanks apart, but not all with two changes, and says so', () => {
    const tank = { partVolume_L: null, outletHeight_m: null, overflowHeight_m: null, diameter_m: null } as const;
    const ids = ['T1', 'T2', 'T3'];
    const three: Partial<SiteFacts> = {
      people: 90,
      roofs: ids.map((tankId) => ({ ...roof, roofId: `R of ${tankId}`, tankId })),
      tanks: ids.map((tankId) => ({
        ...unmeasuredTank,
        ...tank,
        tankId,
        nominal_L: 2250,

        peopleFraction: 0.333,
      })),
      // Litres that may not be cut, so that only tanks are left.
      demand: [{ ...drinking, litres_per_person_per_day: 2.5 }],
    };
    const large = { ...unmeasuredPart, partId: 'large', kind: 'tank', name: 'Large', volume_L: 40_000 };
    const remediesFor = (count: number) => {
      const tanks = three.tanks!.map((one, index) =>
        index < count ? { ...one, nominal_L: 500 } : { ...one, nominal_L: 40_000 },
      );
      return remediesOf(...factsOf({ ...three, tanks }, [large]))!;
    };
    expect(remediesFor(3)).toMatchObject({ notMended: 'apart', remedies: [] });
    const { remedies, notMended } = remediesFor(2);
    expect(notMended).toBeNull();
    expect(remedies[0]!.changes.map((change) => 'tankId' in change && change.tankId)).toEqual(['T1', 'T2']);
  });
});

it('leaves a station unknown of which a row could not be read, judges the rest, and leaves it out where nobody wants it judged', () => {
  const place = { file: 'gutters.csv', row: 4, column: 'width_mm' };
  const doubtsBeside = { drainage: [place], settling: [], stand: [], head: [], treatment: [], safety: [] };
  expect(designOf({}).design.stations.gutter).toBe('notJudged');
  const { design } = designOf({ doubtsBeside });
  expect(design.stations).toMatchObject({ gutter: 'unknown', storage: 'holds', stand: 'notJudged' });
  expect(design.verdict).toBe('unknown');
  expect(codes(design.problems)).toContain('site.station_in_doubt');
  const never = designOf({ doubtsBeside }, 30_000, { judgeDrainage: 'never' }).design;
  expect(never.stations.gutter).toBe('notJudged');
  expect(never.verdict).toBe('holds');
});
