import {
  type DesignSettings,
  defaultSettings,
  type HeadFinding,
  headFindings,
  type PipeFacts,
  pipeMaterials,
  type SettlingFinding,
  type SiteFacts,
  settlingFindings,
  type TankFacts,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
  type Verdict,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

// Settling tanks and ways to the taps: figures far outside anything that is built give no figure that is none, and better never makes worse.

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 20_000 : 500, seed: 20261126 };
/** Anything that passes for a figure of a site, near 0 and far beyond measure among it. */
const figure = (usual: number) =>
  fc.oneof(
    { weight: 4, arbitrary: fc.double({ min: usual / 3, max: usual * 3, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(0, 1e-9, 1e-6, 1e6, 1e9) },
  );
const height = (usual: number) =>
  fc.oneof(
    figure(usual),
    figure(usual).map((value) => -value),
  );
const count = fc.constantFrom(0, 1, 2, 40, 1e9);

const pipe = (pipeId: string, leg: PipeFacts['leg']): fc.Arbitrary<PipeFacts> =>
  fc.record({
    pipeId: fc.constant(pipeId),
    tankId: fc.constant(null),
    leg: fc.constant(leg),
    bore_mm: figure(26),
    length_m: figure(10),
    material: fc.constantFrom(null, ...pipeMaterials),
    elbows_count: count,
    tees_count: count,
    valves_count: count,
    meters_count: count,
    otherLoss_k: figure(2),
  });
const tank: fc.Arbitrary<TankFacts> = fc
  .record({
    outletHeight_m: figure(0.3),
    overflowHeight_m: figure(2),
    diameter_m: figure(2),
    standHeight_m: figure(1),
    inletHeight_m: figure(2.1),
    cells_count: fc.constantFrom(null, 1, 3, 20, 1e9),
    role: fc.constantFrom('storage', 'settling'),
  })
  .map((facts) => ({ ...unmeasuredTank, tankId: 'T1', ...facts }));
const site: fc.Arbitrary<SiteFacts> = fc
  .record({
    tanks: fc.tuple(tank),
    pipes: fc.tuple(pipe('P1', 'tankToUnit'), pipe('P2', 'unitToTap')),
    taps_count: fc.constantFrom(1, 2, 12, 1e9),
    tapHeight_m: height(0.6),
    unitHeight_m: height(0.8),
    hasHandPump: fc.constantFrom(null, true, false),
  })
  .map((facts) => ({
    ...unmeasuredSite,
    siteId: 'S1',
    roofs: [{ ...unmeasuredRoof, roofId: 'R1' }],
    ...facts,
  })) as unknown as fc.Arbitrary<SiteFacts>;
const set: fc.Arbitrary<DesignSettings> = fc
  .record({
    waterTemperature_C: fc.double({ min: 0, max: 40, noNaN: true }),
    unitHead_m: figure(1),
    tapFlow_L_per_min: fc.double({ min: 0.01, max: 200, noNaN: true }),
    residualHead_m: figure(1),
    headMargin_m: figure(0.5),
    settlingGrain_um: fc.double({ min: 0.01, max: 2000, noNaN: true }),
    settlingGrainDensity_kg_per_m3: fc.double({ min: 1001, max: 8000, noNaN: true }),
    roofSolids_g_per_m2_per_year: figure(50),
    pumping_h_per_day: fc.double({ min: 0.01, max: 24, noNaN: true }),
  })
  .map((some) => ({ ...defaultSettings, ...some }));

function wayOf(of: SiteFacts, by: DesignSettings) {
  const { finding, working, problems } = headFindings({ site: of, parts: [], settings: by });
  return { way: finding![0]!, working, problems };
}
function settlerOf(of: SiteFacts, by: DesignSettings, storm_L_per_s: number, asked_L_per_day: number) {
  return settlingFindings({
    site: of,
    stormFlow_L_per_s: new Map([['T1', storm_L_per_s]]),
    demandHighest_L_per_day: new Map([['T1', asked_L_per_day]]),
    gutteredArea_m2: new Map([['R1', 80]]),
    settings: by,
  });
}

/** Every place in a value that holds a number which is none. */
function unendingIn(value: unknown, path: string): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => unendingIn(inner, `${path}.${key}`));
}
const goodness: Readonly<Record<Verdict, number>> = { short: 0, unknown: 1, tight: 2, holds: 3 };
const isNoWorse = (one: HeadFinding | SettlingFinding, other: HeadFinding | SettlingFinding) =>
  goodness[one.verdict] >= goodness[other.verdict];

describe('whatever was measured', () => {
  it('ways to the taps have figures or none', () => {
    let judged = 0;
    fc.assert(
      fc.property(site, set, (of, by) => {
        const found = wayOf(of, by);
        expect(unendingIn(found, 'head')).toEqual([]);
        if (found.way.headLeft_m !== null) judged++;
      }),
      settings,
    );
    expect(judged).toBeGreaterThan(settings.numRuns / 4);
  });

  it('settling tanks have figures or none, and shares are shares', () => {
    let judged = 0;
    fc.assert(
      fc.property(site, set, figure(1), figure(600), (of, by, storm, asked) => {
        const found = settlerOf(of, by, storm, asked);
        expect(unendingIn(found, 'settling')).toEqual([]);
        for (const { settledByDay_fraction: share, grains } of found.finding ?? []) {
          if (share !== null) judged++;
          expect(share ?? 0).toBeGreaterThanOrEqual(0);
          expect(share ?? 0).toBeLessThanOrEqual(1);
          for (const { leavesInStorm_fraction: leaves } of grains) expect(leaves ?? 0).toBeGreaterThanOrEqual(0);
        }
      }),
      settings,
    );
    expect(judged).toBeGreaterThan(settings.numRuns / 8);
  });
});

describe('better never makes worse', () => {
  const plainSettings: DesignSettings = { ...defaultSettings, unitHead_m: 0.5 };

  it('a higher tank, wider or shorter pipes, lower taps', () => {
    fc.assert(
      fc.property(site, fc.double({ min: 0, max: 3, noNaN: true }), fc.integer({ min: 0, max: 3 }), (of, by, which) => {
        const before = wayOf(of, plainSettings).way;
        const change: Partial<SiteFacts>[] = [
          { tanks: of.tanks.map((one) => ({ ...one, standHeight_m: one.standHeight_m! + by })) },
          { pipes: of.pipes.map((one) => ({ ...one, bore_mm: one.bore_mm! * (1 + by) })) },
          { pipes: of.pipes.map((one) => ({ ...one, length_m: one.length_m! / (1 + by) })) },
          { tapHeight_m: of.tapHeight_m! - by },
        ];
        const after = wayOf({ ...of, ...change[which] }, plainSettings).way;
        if (before.headLeft_m === null) return true;
        // What was higher at 10⁹ m loses the metre added to it.
        const hair = 1e-9 * Math.max(1, Math.abs(before.headLeft_m));
        return isNoWorse(after, before) && after.headLeft_m! >= before.headLeft_m - hair;
      }),
      settings,
    );
  });

  it('a wider settling tank, less asked of it, a smaller storm', () => {
    const wider = fc.double({ min: 1, max: 3, noNaN: true });
    fc.assert(
      fc.property(site, figure(1), figure(600), wider, wider, (of, storm, asked, by, less) => {
        const [before] = settlerOf(of, defaultSettings, storm, asked).finding ?? [];
        const wide = { ...of, tanks: of.tanks.map((one) => ({ ...one, diameter_m: one.diameter_m! * by })) };
        const [after] = settlerOf(wide, defaultSettings, storm / less, asked / less).finding ?? [];
        return before === undefined || isNoWorse(after!, before);
      }),
      settings,
    );
  });
});
