import {
  defaultSettings,
  type SiteFacts,
  treatmentFindings,
  unmeasuredSite,
  unmeasuredUnit,
  verdictOrder,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 20_000 : 500, seed: 20261126 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Two of a kind, the smaller first. */
const pair = (min: number, max: number) =>
  fc.tuple(between(min, max), between(min, max)).map(([a, b]) => (a < b ? [a, b] : [b, a]) as [number, number]);
const warmth = pair(0, 40);

describe('a verdict on a unit', () => {
  const world = fc.record({
    ratedFlow_L_per_h: between(20, 5000),
    lowest: between(0.05, 1.2),
    taps_count: fc.option(fc.integer({ min: 1, max: 6 }), { nil: null }),
    hasHandPump: fc.option(fc.boolean(), { nil: null }),
    gravityHead_m: fc.option(between(-3, 15), { nil: null }),
    highestPressure_kPa: fc.option(between(20, 400), { nil: null }),
    pistonBore_mm: fc.option(between(20, 120), { nil: null }),
  });
  type World = typeof world extends fc.Arbitrary<infer W> ? W : never;
  /** The verdict, by its place from worst to best. */
  const found = (of: World, asked_L: number, resistance: number, temperature_C: number) => {
    const { ratedFlow_L_per_h, lowest, taps_count, hasHandPump, gravityHead_m, ...pump } = of;
    const figures = {
      ...unmeasuredUnit,
      ...pump,
      ratedFlow_L_per_h,
      ratedPressure_kPa: 100,
      lowestFlow_L_per_h: ratedFlow_L_per_h * lowest,
      pistonStroke_mm: 150,
    };
    const reading = {
      unitSerial: null,
      readOn: 20_000,
      flow_L_per_h: ratedFlow_L_per_h / resistance,
      pressure_kPa: 100,
      waterTemperature_C: 20,
      passed_L: null,
    };
    const unit = { serial: 'U1', partId: 'P1', figures, installedOn: null, removedOn: null };
    const site = {
      ...unmeasuredSite,
      siteId: 'S1',
      taps_count,
      hasHandPump,
      treatment: { units: [unit], cartridges: [], flowReadings: [reading], pressureTests: [] },
    } as unknown as SiteFacts;
    const settings = { ...defaultSettings, waterTemperature_C: temperature_C };
    const judged = treatmentFindings({ site, demandHighest_L_per_day: asked_L, gravityHead_m, settings });
    return judged.finding![0]!;
  };
  const rank = ({ verdict }: { readonly verdict: (typeof verdictOrder)[number] }) => verdictOrder.indexOf(verdict);

  it('never gets better with more asked, a more worn set or colder water; no figure of it is not a number', () => {
    fc.assert(
      fc.property(world, pair(1, 20_000), pair(1, 12), warmth, (of, [few, many], [r, R], [t, T]) => {
        const [better, worse] = [found(of, few, r, T), found(of, many, R, t)];
        const figures = Object.values(worse).filter((value) => typeof value === 'number');
        return rank(worse) <= rank(better) && figures.every((value) => Number.isFinite(value) && value >= 0);
      }),
      settings,
    );
  });
});

describe('figures that nobody can reckon with', () => {
  const hostile = fc.constantFrom(Number.NaN, Infinity, -Infinity, -1, -0, 5e-324, 1e-300, 1e-12, 1e12, 1e300);
  const known = (usual: number) =>
    fc.oneof({ weight: 6, arbitrary: fc.constantFrom(usual, null) }, { weight: 1, arbitrary: hostile });
  const told = fc.record({
    figures: fc.record({
      ...Object.fromEntries(Object.keys(unmeasuredUnit).map((name) => [name, fc.constant(null)])),
      membraneArea_m2: known(3),
      permeability_L_per_m2_h_bar: known(200),
      ratedFlow_L_per_h: known(500),
      ratedPressure_kPa: known(100),
      highestPressure_kPa: known(200),
      lowestFlow_L_per_h: known(100),
      backwash_fraction: known(0.1),
      backwash_min_per_day: known(10),
      pistonBore_mm: known(50),
      pistonStroke_mm: known(150),
      lever_ratio: known(4),
      reductions: fc.record({ protozoa_log10: known(4) }),
    }),
    taps_count: known(2),
    hasHandPump: fc.constantFrom(null, true, false),
    demandHighest_L_per_day: known(600),
    gravityHead_m: known(5),
    reading: fc.record({ flow_L_per_h: known(300), pressure_kPa: known(100), waterTemperature_C: known(25) }),
    test: fc.record({ pressure_kPa: known(100), fall_kPa_per_min: known(1), airVolume_L: known(2) }),
  });

  /** Every place in a value that holds a number which is none. */
  const unendingIn = (value: unknown, path: string): readonly string[] => {
    if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
    if (typeof value === 'string') return /\b(?:NaN|Infinity)\b/.test(value) ? [`${path}: ${value}`] : [];
    if (value === null || typeof value !== 'object') return [];
    return Object.entries(value).flatMap(([key, inner]) => unendingIn(inner, `${path}.${key}`));
  };

  it('never come out of a finding, its problems or its working', () => {
    const verdicts = new Set<string>();
    fc.assert(
      fc.property(told, ({ figures, reading, test, demandHighest_L_per_day, gravityHead_m, ...site }) => {
        const unit = { serial: 'U1', partId: 'P1', figures, installedOn: null, removedOn: null };
        const of = {
          ...{ ...unmeasuredSite, siteId: 'S1', ...site },
          treatment: {
            units: [unit],
            cartridges: [],
            flowReadings: [{ unitSerial: null, readOn: 20_000, passed_L: null, ...reading }],
            pressureTests: [{ unitSerial: 'U1', testedOn: 20_000, ...test }],
          },
        } as unknown as SiteFacts;
        const judged = treatmentFindings({
          ...{ site: of, demandHighest_L_per_day, gravityHead_m },
          settings: defaultSettings,
        });
        verdicts.add(judged.finding![0]!.verdict);
        return unendingIn(judged, 'judged').join('\n') === '';
      }),
      { ...settings, numRuns: settings.numRuns * 4 },
    );
    if (verdicts.size < 4) throw new Error(`only ${[...verdicts].join(', ')}`);
  });
});
