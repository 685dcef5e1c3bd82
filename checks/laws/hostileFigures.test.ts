import {
  defaultSettings,
  designSites,
  type GaugeFacts,
  noKit,
  noRollout,
  noSafety,
  noStorms,
  noTreatment,
  type ProgrammeFacts,
  readyProgramme,
  type SiteFacts,
  seriesOf,
  unmeasuredPart,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const runs = process.env['EAVEWELL_SOAK'] ? 20_000 : 2_000;

/** Figures as they should be, and as nobody should ever write them. */
const hostile = fc.constantFrom(
  Number.NaN,
  Infinity,
  -Infinity,
  -1,
  -0,
  5e-324,
  1e-300,
  1e-12,
  1e12,
  1e300,
  Number.MAX_VALUE,
);
const figure = (usual: number) => fc.oneof({ weight: 12, arbitrary: fc.constant(usual) }, hostile);
const known = (usual: number) => fc.oneof({ weight: 8, arbitrary: figure(usual) }, fc.constant(null));
/** Mostly measured as it should be, or not at all. */
const seldom = (usual: number) => fc.oneof({ weight: 20, arbitrary: fc.constantFrom(usual, null) }, figure(usual));
/** Mostly one roof, one tank and one purpose; more, or none, now and then. */
const few = <T>(one: fc.Arbitrary<T>) => fc.array(one, { minLength: 0, maxLength: 2, size: 'max' });

const anySite: fc.Arbitrary<SiteFacts> = fc.record({
  siteId: fc.constant('S1'),
  name: fc.constant('Made up'),
  latitude_deg: known(-8),
  longitude_deg: known(125),
  siteClass: fc.constantFrom(null, 'school'),
  target: fc.constant(null),
  people: known(40),
  peopleCountedOn: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, known(19_000)),
  households_count: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, known(8)),
  growthFraction_per_year: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, figure(0.02)),
  designYear: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, figure(2031)),
  presence: fc.oneof(
    { weight: 6, arbitrary: fc.constant(null) },
    fc.record({
      calendarId: fc.constant('term'),
      periods: few(
        fc.record({
          from_dayOfYear: fc.constant(100),
          to_dayOfYear: fc.constant(200),
          presentFraction: figure(0.5),
          reason: fc.constant(null),
        }),
      ),
    }),
  ),
  nearSecondSource: fc.constant(null),
  secondSource: fc.oneof(
    { weight: 4, arbitrary: fc.constant(null) },
    fc.record({
      secondSourceId: fc.constant('R'),
      name: fc.constant('Made up'),
      kind: fc.constant('river' as const),
      months: fc.constantFrom([], [1, 2], [7]),
      turbidity_NTU: known(20),
    }),
  ),
  gaugeId: fc.constant('G'),
  rainFactor: figure(1),
  handOverDay: known(20_000),
  roofs: few(
    fc.record({
      roofId: fc.constant('R1'),
      tankId: fc.constantFrom(null, null, 'T1', 'T2'),
      length_m: known(14),
      width_m: known(8),
      roofPlanArea_m2: known(110),
      material: fc.constant('corrugatedMetal' as const),
      runoffFraction: known(0.85),
      gutteredFraction: known(0.8),
      diverter: fc.option(
        fc.record({
          firstFlush_mm: known(0.5),
          chamber_L: known(40),
          drainHole: fc.constantFrom('open', 'blocked'),
          chamberBore_mm: seldom(160),
          drainHole_mm: seldom(4),
        }),
      ),
      form: fc.constantFrom(null, 'gable', 'flat'),
      pitch_deg: seldom(20),
      eaveHeight_m: seldom(3),
      wallAbove_m2: seldom(6),
      valleys_count: seldom(1),
      isFragile: fc.constantFrom(null, true, false),
      coating: fc.constantFrom(null, 'unknownPaint' as const),
      hasLead: fc.constantFrom(null, true, false),
      hasAsbestos: fc.constantFrom(null, true),
      isUnderTrees: fc.constantFrom(null, false),
    }),
  ),
  gutters: few(
    fc.record({
      gutterId: fc.constant('G1'),
      roofId: fc.constantFrom('R1', 'R2'),
      shape: fc.constantFrom(null, 'halfRound'),
      width_mm: seldom(150),
      depth_mm: seldom(75),
      length_m: seldom(14),
      fall_mm_per_m: seldom(5),
      outlet_mm: seldom(90),
      baseWidth_mm: seldom(100),
      outlets_count: seldom(2),
      runToOutlet_m: seldom(7),
      bends_count: seldom(1),
      outletGrate: fc.constantFrom('open', 'grated'),
    }),
  ),
  downpipes: few(
    fc.record({
      downpipeId: fc.constant('D1'),
      roofId: fc.constantFrom('R1', 'R2'),
      bore_mm: seldom(90),
      length_m: seldom(3),
    }),
  ),
  tanks: few(
    fc.record({
      tankId: fc.constantFrom('T1', 'T2'),
      nominal_L: known(10_000),
      partVolume_L: known(10_000),
      outletHeight_m: known(0.1),
      overflowHeight_m: known(2.1),
      diameter_m: known(2.5),
      joinedTo: fc.constantFrom(null, 'T1'),
      role: fc.constantFrom('storage', 'storage', 'settling'),
      peopleFraction: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, figure(0.5)),
      height_m: seldom(2.4),
      standHeight_m: seldom(0.5),
      partId: fc.constant(null),
      inletHeight_m: seldom(2.2),
      overflowBore_mm: seldom(110),
      overflows_count: seldom(1),
      overflowScreen: fc.constantFrom('open', 'screened'),
      cells_count: seldom(2),
      emptyMass_kg: seldom(180),
      partMass_kg: seldom(180),
      standMass_kg: seldom(400),
      groundClass: fc.constantFrom(null, 'firmClay', 'softOrMadeGround'),
      pads_count: seldom(4),
      padSide_m: seldom(0.6),
      baseWidth_m: seldom(2),
      isFastened: fc.constantFrom(null, true, false),
      signedBy: fc.constantFrom(null, 'An engineer'),
      signedOn: seldom(19_000),
    }),
  ),
  pipes: few(
    fc.record({
      pipeId: fc.constantFrom('P1', 'P2'),
      tankId: fc.constantFrom(null, 'T1'),
      leg: fc.constantFrom('tankToUnit', 'unitToTap'),
      bore_mm: seldom(26.2),
      length_m: seldom(12),
      material: fc.constantFrom(null, 'plastic', 'galvanised'),
      elbows_count: seldom(3),
      tees_count: seldom(1),
      valves_count: seldom(1),
      meters_count: seldom(0),
      otherLoss_k: seldom(2),
    }),
  ),
  taps_count: seldom(4),
  tapHeight_m: seldom(0.6),
  unitHeight_m: seldom(0.5),
  hasHandPump: fc.constantFrom(null, true, false),
  windSpeed_m_per_s: seldom(35),
  windExposure: fc.constantFrom(null, 'openGround', 'openWater'),
  demand: few(
    fc.record({
      purpose: fc.constant('drinking'),
      litres_per_person_per_day: figure(5),
      judged: fc.constantFrom(true, true, false),
    }),
  ),
  ration: fc.oneof(
    { weight: 4, arbitrary: fc.constant(null) },
    fc.record({ below_fraction: known(0.3), judged_fraction: known(1), other_fraction: known(0) }),
  ),
  doubts: fc.constant([]),
  doubtsBeside: fc.constant({ drainage: [], settling: [], stand: [], head: [], treatment: [], safety: [] }),
  treatment: fc.constant(noTreatment),
  safety: fc.constant(noSafety),
});

/** Three years of a shower every third day, less in one of them. */
const gauge: GaugeFacts = {
  gaugeId: 'G',
  name: 'Made',
  latitude_deg: null,
  longitude_deg: null,
  readingTime: null,
  normals: [],
  ...noStorms,
  storms: [
    { returnPeriod_years: 20, intensity_mm_per_h: 180, low_mm_per_h: null, high_mm_per_h: null, source: 'Made' },
  ],
  file: 'rain/G.csv',
  readings: Array.from({ length: 3 * 365 }, (_, day) => ({
    day: 11_323 + day,
    rain_mm: day % 3 === 0 ? (day < 365 ? 6 : 9) : 0,
    row: day + 2,
  })),
};

const everywhere = {
  judgeDrainage: 'always',
  judgeSettling: 'always',
  judgeHead: 'always',
  judgeStand: 'always',
} as const;

const facts: ProgrammeFacts = {
  settings: {
    ...{ ...defaultSettings, ...everywhere, draws: 20, waterYearStartMonth: 1 },
    ...{ unitHead_m: 2, roofSolids_g_per_m2_per_year: 60, windSpeed_m_per_s: 30 },
  },
  sites: [],
  gauges: [gauge],
  parts: [{ ...unmeasuredPart, partId: 'tank', kind: 'tank', name: 'Tank', volume_L: 5000 }],
  prices: [],
  kit: noKit,
  rollout: noRollout,
};
const ready = readyProgramme(facts);

/** Every place in a value that holds a number which is none. */
function unendingIn(value: unknown, path: string): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (typeof value === 'string')
    return /\b(NaN|Infinity)\b/.test(value) && !path.endsWith('.value') ? [`${path}: ${value}`] : [];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => unendingIn(inner, `${path}.${key}`));
}

describe('figures that nobody can reckon with', () => {
  it(`never come out of a design or its series, ${runs} sites`, () => {
    const verdicts = { unknown: 0, judged: 0 };
    fc.assert(
      fc.property(anySite, (site) => {
        const [design] = [...designSites([site], ready)];
        expect(unendingIn(design, 'design')).toEqual([]);
        const series = seriesOf(site, ready);
        expect(series.length).toBe(design!.storages.length);
        expect(unendingIn(series, 'series')).toEqual([]);
        if (design!.storages.length === 0) {
          verdicts.unknown++;
          expect(design!.stations.storage).toBe('unknown');
          expect(['unknown', 'short']).toContain(design!.verdict);
          expect(design!.problems.some(({ severity }) => severity === 'blocker')).toBe(true);
        } else verdicts.judged++;
      }),
      { numRuns: runs, seed: 20261126 },
    );
    expect(verdicts.unknown).toBeGreaterThan(runs / 10);
    expect(verdicts.judged).toBeGreaterThan(runs / 50);
  });
});
