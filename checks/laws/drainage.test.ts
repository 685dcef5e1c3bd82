import {
  type DesignStorm,
  type DrainageFinding,
  defaultSettings,
  unmeasuredGutter,
  unmeasuredRoof,
  unmeasuredSite,
  unmeasuredTank,
  verdictOrder,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  downpipeCapacity_L_per_s,
  drainageFinding,
  effectiveArea_m2,
  gutterCapacity,
  gutterSection,
  idealGutterFlow,
  outletCapacity_L_per_s,
  overflowCapacity_L_per_s,
  type SectionFacts,
  smallestThatHolds,
  stormFlow_L_per_s,
} from '../../packages/engine/src/water/drainage/index.ts';
import { firstFlushChamber } from '../../packages/engine/src/water/roof/index.ts';

const width = fc.double({ min: 40, max: 400, noNaN: true });
const depth = fc.double({ min: 20, max: 300, noNaN: true });
const run = fc.double({ min: 0.1, max: 30, noNaN: true });

/** Sections that can be drawn, of every shape. */
const section: fc.Arbitrary<SectionFacts> = fc
  .tuple(
    fc.constantFrom('halfRound', 'rectangular', 'trapezoidal', 'cutPipe'),
    width,
    depth,
    fc.double({ min: 0.2, max: 1, noNaN: true }),
  )
  .map(([shape, width_mm, depth_mm, sole]) => ({ shape, width_mm, depth_mm, baseWidth_mm: sole * width_mm }) as const);
const halfRound = (width_mm: number): SectionFacts => ({
  shape: 'halfRound',
  width_mm,
  depth_mm: width_mm / 2,
  baseWidth_mm: null,
});
const scaled = (facts: SectionFacts, by: number): SectionFacts => ({
  ...facts,
  width_mm: facts.width_mm! * by,
  depth_mm: facts.depth_mm! * by,
  baseWidth_mm: facts.baseWidth_mm === null ? null : facts.baseWidth_mm * by,
});
const capacity = (facts: SectionFacts, run_m: number, bends = 0) =>
  gutterCapacity(facts, run_m, bends)?.capacity_L_per_s ?? 0;
const atLeast = (more: number, less: number) => expect(more).toBeGreaterThanOrEqual(less * (1 - 1e-9));

describe('gutters', () => {
  it('half rounds carry as their width to the power 2.5', () => {
    fc.assert(
      fc.property(width, fc.double({ min: 1, max: 3, noNaN: true }), (one, by) => {
        const ratio = capacity(halfRound(one * by), 0.1) / capacity(halfRound(one), 0.1);
        expect(ratio / by ** 2.5).toBeCloseTo(1, 9);
      }),
    );
  });

  it('of any shape, twice the size carries as 2^2.5, friction or not', () => {
    fc.assert(
      fc.property(section, (facts) => {
        expect(capacity(scaled(facts, 2), 0.2) / capacity(facts, 0.1)).toBeCloseTo(2 ** 2.5, 6);
        const ideal = (of: SectionFacts) => idealGutterFlow(gutterSection(of)!).flow_L_per_s;
        expect(ideal(scaled(facts, 2)) / ideal(facts)).toBeCloseTo(2 ** 2.5, 6);
      }),
    );
  });

  it('a longer run never carries more, nor does one bend more', () => {
    fc.assert(
      fc.property(section, run, run, fc.nat(4), (facts, one, more, bends) => {
        atLeast(capacity(facts, one, bends), capacity(facts, one + more, bends));
        atLeast(capacity(facts, one, bends), capacity(facts, one, bends + 1));
      }),
    );
  });

  it('a wider or deeper rectangle never carries less', () => {
    const rectangle = (width_mm: number, depth_mm: number) =>
      ({ shape: 'rectangular', width_mm, depth_mm, baseWidth_mm: null }) as const;
    const more = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(width, depth, more, more, run, (wide, deep, wider, deeper, run_m) => {
        fc.pre(gutterCapacity(rectangle(wide, deep), run_m, 0) !== null);
        const before = capacity(rectangle(wide, deep), run_m);
        atLeast(capacity(rectangle(wide + wider, deep), run_m), before);
        atLeast(capacity(rectangle(wide, deep + deeper), run_m), before);
      }),
      {
        numRuns: 2000,
        examples: [
          [100, 105, 0, 1, 1],
          [105, 100, 1, 0, 1],
          [100, 95, 1, 0, 1],
        ],
      },
    );
  });

  it('none carries more than the flow without friction', () => {
    fc.assert(
      fc.property(section, (facts) => {
        atLeast(0.8015 * 0.9 * idealGutterFlow(gutterSection(facts)!).flow_L_per_s, capacity(facts, 0.1));
      }),
    );
  });

  it('pours at least its depth ÷ √3 deep', () => {
    fc.assert(
      fc.property(section, (facts) => {
        atLeast(idealGutterFlow(gutterSection(facts)!).outletDepth_mm, facts.depth_mm! / Math.sqrt(3));
      }),
    );
  });
});

const roof = fc.record({
  roofPlanArea_m2: fc.double({ min: 1, max: 2000, noNaN: true }),
  pitch_deg: fc.double({ min: 0, max: 70, noNaN: true }),
  gutteredFraction: fc.double({ min: 0, max: 1, noNaN: true }),
  wallAbove_m2: fc.double({ min: 0, max: 50, noNaN: true }),
});

describe('roofs and the parts they need', () => {
  it('a steeper roof never brings less, nor does a larger one', () => {
    fc.assert(
      fc.property(roof, fc.double({ min: 0, max: 70, noNaN: true }), (one, other) => {
        const [flat, steep] = [Math.min(one.pitch_deg, other), Math.max(one.pitch_deg, other)];
        atLeast(effectiveArea_m2({ ...one, pitch_deg: steep })!, effectiveArea_m2({ ...one, pitch_deg: flat })!);
        atLeast(effectiveArea_m2({ ...one, roofPlanArea_m2: one.roofPlanArea_m2 + other })!, effectiveArea_m2(one)!);
      }),
    );
  });

  it('a larger roof never needs a smaller gutter, outlet, downpipe or overflow', () => {
    const sizes = [50, 63, 75, 90, 110, 125, 150, 200, 250];
    const parts = (carries: (size_mm: number) => number) =>
      sizes.map((size_mm) => ({ partId: String(size_mm), size_mm, capacity_L_per_s: carries(size_mm) }));
    const catalogues = [
      parts((size) => capacity(halfRound(size), 6)),
      parts((size) => outletCapacity_L_per_s(size, 40, 'open')),
      parts((size) => downpipeCapacity_L_per_s(size)),
      parts((size) => overflowCapacity_L_per_s(size, 80, 'screened')),
    ];
    let found = 0;
    fc.assert(
      fc.property(fc.nat(3), roof, fc.double({ min: 0, max: 100, noNaN: true }), (which, one, more_m2) => {
        const flow = (extra: number) =>
          stormFlow_L_per_s(effectiveArea_m2({ ...one, roofPlanArea_m2: one.roofPlanArea_m2 / 20 + extra })!, 150);
        const small = smallestThatHolds(catalogues[which]!, flow(0));
        const large = smallestThatHolds(catalogues[which]!, flow(more_m2));
        if (large === null) return;
        found++;
        expect(small!.size_mm).toBeLessThanOrEqual(large.size_mm);
      }),
    );
    expect(found).toBeGreaterThan(20);
  });

  it('more water over an outlet, or a wider one, never lets go less; nor does an overflow', () => {
    const bore = fc.double({ min: 20, max: 200, noNaN: true });
    const head = fc.double({ min: 1, max: 300, noNaN: true });
    const wider = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(bore, head, wider, (one, over, more) => {
        for (const flow of [outletCapacity_L_per_s, overflowCapacity_L_per_s]) {
          atLeast(flow(one, over + more, 'open'), flow(one, over, 'open'));
          atLeast(flow(one + more, over, 'open'), flow(one, over, 'open'));
        }
        atLeast(downpipeCapacity_L_per_s(one + more), downpipeCapacity_L_per_s(one));
      }),
    );
  });
});

describe('first flush', () => {
  it('the mean flow of an emptying chamber is half of its first, whatever its size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 50, max: 600, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 5, max: 500, noNaN: true }),
        (chamber_L, chamberBore_mm, drainHole_mm, area) => {
          const diverter = { firstFlush_mm: null, chamber_L, drainHole: 'open', chamberBore_mm, drainHole_mm } as const;
          const { emptying_h, leak_mm_per_h } = firstFlushChamber(diverter, area, 1);
          expect(chamber_L / emptying_h! / (leak_mm_per_h! * area)).toBeCloseTo(0.5, 9);
        },
      ),
    );
  });
});

/** What a house of one roof comes to: its gutters, pipes and overflow as measured, in a storm. */
function houseIn(storm_mm_per_h: number, one: House): DrainageFinding {
  const storm: DesignStorm = {
    ...{ gaugeId: 'A', returnPeriod_years: 20, intensity_mm_per_h: storm_mm_per_h, intensity_range: null },
    ...{ from: 'stated', source: null, years_count: null, cappedBy: null },
  };
  const roofFacts = { ...unmeasuredRoof, roofId: 'R1', gutteredFraction: 1, ...one.roof };
  const gutters = [1, 2].map((n) => ({
    ...{ ...unmeasuredGutter, gutterId: `G${n}`, roofId: 'R1', shape: 'halfRound' as const, fall_mm_per_m: 4 },
    ...{ width_mm: one.width_mm, depth_mm: one.width_mm / 2, length_m: 4 * n, outlet_mm: one.width_mm / 2 },
  }));
  const site = {
    ...{ ...unmeasuredSite, siteId: 'S1', name: 'Hall', latitude_deg: null, longitude_deg: null, siteClass: null },
    ...{ target: null, people: 30, peopleCountedOn: null, households_count: null, growthFraction_per_year: null },
    ...{ designYear: null, presence: null, secondSource: null, nearSecondSource: null, ration: null, gaugeId: 'A' },
    ...{ rainFactor: 1, handOverDay: null, demand: [], doubts: [], roofs: [roofFacts], gutters },
    downpipes: [{ downpipeId: 'D1', roofId: 'R1', bore_mm: one.width_mm / 2, length_m: 3 }],
    tanks: [
      { ...unmeasuredTank, tankId: 'T1', height_m: 2, overflowHeight_m: 1.85, overflowBore_mm: one.width_mm / 2 },
    ],
  };
  return drainageFinding({ site, storm, parts: [], settings: defaultSettings }).finding!;
}
interface House {
  readonly width_mm: number;
  readonly roof: { readonly roofPlanArea_m2: number; readonly pitch_deg: number };
}
const house = fc.record({
  width_mm: fc.double({ min: 75, max: 250, noNaN: true }),
  roof: fc.record({
    roofPlanArea_m2: fc.double({ min: 10, max: 200, noNaN: true }),
    pitch_deg: fc.double({ min: 0, max: 60, noNaN: true }),
  }),
});

describe('a house in the storm', () => {
  it('a harder storm, a larger or steeper roof never makes a verdict better, nor what it carries more', () => {
    const more = fc.double({ min: 1, max: 1.8, noNaN: true });
    fc.assert(
      fc.property(house, fc.double({ min: 20, max: 400, noNaN: true }), more, fc.nat(2), (one, storm, by, what) => {
        const { roof } = one;
        const grown = { ...roof, ...(what === 1 ? { roofPlanArea_m2: roof.roofPlanArea_m2 * by } : {}) };
        const steeper = what === 2 ? { ...grown, pitch_deg: Math.min(70, roof.pitch_deg * by) } : grown;
        const before = houseIn(storm, one);
        const after = houseIn(what === 0 ? storm * by : storm, { ...one, roof: steeper });
        const rank = ({ verdict }: DrainageFinding) => verdictOrder.indexOf(verdict);
        expect(rank(after)).toBeLessThanOrEqual(rank(before));
        atLeast(before.carries_mm_per_h!, after.carries_mm_per_h!);
        if (what === 0) expect(after.carries_mm_per_h! / before.carries_mm_per_h!).toBeCloseTo(1, 9);
      }),
    );
  });

  it('in the rain that it carries, its fullest part is just full', () => {
    fc.assert(
      fc.property(house, (one) => {
        const carries = houseIn(100, one).carries_mm_per_h!;
        const full = houseIn(carries, one);
        expect(full.parts[full.governing!]!.use_fraction).toBeCloseTo(1, 9);
        expect(houseIn(carries * 1.001, one).verdict).toBe('short');
        expect(houseIn(carries / 1.05, one).verdict).toBe('tight');
        expect(houseIn(carries / 1.1001, one).verdict).toBe('holds');
      }),
    );
  });
});
