import {
  barPlan,
  type CountedDesign,
  type CountedOne,
  type KitRule,
  kitOfDesign,
  kitsTogether,
  noKitFigures,
  programmeKit,
  readyRules,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 5_000 : 200, seed: 20261126 };

const parts = [
  ['gutter', 'gutter', 4],
  ['gutter-short', 'gutter', 2.5],
  ['pipe', 'pipe', 6],
  ['bracket', 'other', 0.2],
  ['tank', 'tank', null],
  ['other-tank', 'tank', null],
  ['joint', 'other', null],
].map(([partId, kind, length_m]) => ({
  ...{ partId: `${partId}`, kind: `${kind}`, name: `${partId}`, length_m: length_m as number | null },
  kit: { ...noKitFigures, packSize_count: 12, stock_count: 5, leadTime_days: 20, supplier: 'A' },
}));
const lengths_m = fc.double({ min: 0.05, max: 14, noNaN: true });
const count = fc.integer({ min: 0, max: 9 });
const one = (countedBy: CountedOne['countedBy'], ofId: string, given: Partial<CountedOne>): CountedOne => ({
  ...{ countedBy, ofId, things_count: 1, run: null, partId: null, isAssumed: false, choices: {} },
  ...given,
});
const runs = fc.array(fc.tuple(lengths_m, fc.constantFrom(100, 150, 200, null)), { maxLength: 6 });
const tanks = fc.array(fc.constantFrom('tank', 'other-tank', null), { maxLength: 3 });
const counted: fc.Arbitrary<CountedOne[]> = fc
  .tuple(runs, runs, tanks, count)
  .map(([gutters, pipes, tankParts, taps]) => [
    ...gutters.map(([length_m, gutterWidth_mm], at) =>
      one('gutterMetre', `G${at}`, { run: { length_m, from: 'measured' }, choices: { gutterWidth_mm } }),
    ),
    ...pipes.map(([length_m], at) => one('pipeMetre', `P${at}`, { run: { length_m, from: 'measured' } })),
    ...tankParts.map((partId, at) => one('tank', `T${at}`, { partId })),
    one('tap', 'taps', { things_count: taps }),
  ]);
const rules: fc.Arbitrary<KitRule[]> = fc
  .array(
    fc.record({
      partId: fc.constantFrom(...parts.map(({ partId }) => partId)),
      countedBy: fc.constantFrom('gutterMetre', 'pipeMetre', 'tank', 'tap', 'gutterJoint', 'pipeJoint', 'site'),
      each_count: fc.constantFrom(0, 0.3, 1, 1.1, 2, 2.5),
      rounding: fc.constantFrom('up', 'nearest', 'none'),
      spare_fraction: fc.constantFrom(0, 0.05, 0.5),
      leastSpare_count: fc.constantFrom(0, 1, 3),
      conditions: fc.constantFrom([], [{ field: 'gutterWidth_mm', test: 'atMost', value: '150' } as const]),
    }),
    { maxLength: 8 },
  )
  .map((some) => some.map((rule, at) => ({ ...rule, ruleId: `R${at}` })));
const cutting = { cut_mm: 3, squareOff_mm: 0 };
const design = (siteId: string, ones: readonly CountedOne[]): CountedDesign => ({ siteId, counted: ones, choices: {} });
const kit = (ones: readonly CountedOne[], some: readonly KitRule[], siteId = 'S') =>
  kitOfDesign(design(siteId, ones), readyRules(some, parts), cutting);
const totals = (found: ReturnType<typeof kit>) =>
  new Map(found.lines.map(({ partId, total_count }) => [partId, total_count]));

describe('bars', () => {
  const bar = { length_m: 4, cut_mm: 3, squareOff_mm: 5 };
  const plan = (some: readonly number[]) =>
    barPlan(
      some.map((length_m, at) => ({ runId: `${at}`, length_m })),
      bar,
      50_000,
    )!;

  it('hold what is cut from them, once, and are never fewer than the bound', () => {
    fc.assert(
      fc.property(fc.array(lengths_m, { maxLength: 20 }), (some) => {
        const { bars, bars_count, bound_count, joints_count } = plan(some);
        expect(bound_count).toBeLessThanOrEqual(bars_count);
        const usable_m = bar.length_m - (2 * bar.squareOff_mm) / 1000;
        let pieces = 0;
        for (const { cuts, offcut_m, bars_count: many } of bars) {
          const length_m = cuts.reduce((sum, cut) => sum + cut.length_m, 0);
          pieces += many * cuts.length;
          expect(length_m + (cuts.length - 1) * 0.003).toBeLessThanOrEqual(usable_m + 1e-5);
          if (offcut_m > 0) expect(length_m + cuts.length * 0.003 + offcut_m).toBeCloseTo(usable_m, 5);
        }
        expect(pieces).toBe(some.length + joints_count);
        const wanted_m = some.reduce((sum, length_m) => sum + length_m, 0);
        expect(bars_count * usable_m).toBeGreaterThanOrEqual(wanted_m - 1e-4);
      }),
      settings,
    );
  });

  it('never become fewer by one more run or a longer one, whatever the order', () => {
    fc.assert(
      fc.property(fc.array(lengths_m, { minLength: 1, maxLength: 10 }), lengths_m, (some, more) => {
        const now = plan(some);
        const [first, ...others] = some;
        const then = [plan([...some, more]), plan([first! + more, ...others])];
        for (const one of then)
          if (now.bound_count === now.bars_count) expect(one.bars_count).toBeGreaterThanOrEqual(now.bars_count);
        expect(plan([...some].reverse()).bars_count).toBe(now.bars_count);
      }),
      settings,
    );
  });
});

describe('a kit', () => {
  it('is the same whatever the order of its rules and of what is counted', () => {
    fc.assert(
      fc.property(counted, rules, (ones, some) => {
        const now = kit(ones, some);
        expect(kit(ones, [...some].reverse())).toEqual(now);
        expect(totals(kit([...ones].reverse(), some))).toEqual(totals(now));
      }),
      settings,
    );
  });

  it('never has fewer of any part for more of a thing', () => {
    fc.assert(
      fc.property(counted, rules, fc.nat(), (ones, some, pick) => {
        const before = kit(ones, some);
        const chosen = ones[pick % ones.length]!;
        const grown = ones.map((one) => {
          if (one !== chosen) return one;
          if (one.run !== null) return { ...one, run: { ...one.run, length_m: one.run.length_m * 1.7 } };
          return { ...one, things_count: one.things_count! + 2 };
        });
        const after = totals(kit(grown, some));
        for (const { partId, total_count } of before.lines)
          if (total_count !== null) expect(after.get(partId)).toBeGreaterThanOrEqual(total_count);
      }),
      settings,
    );
  });

  it('of a programme is the sum of its sites, and what is bought and on hand covers it', () => {
    fc.assert(
      fc.property(fc.array(counted, { maxLength: 4 }), rules, (sites, some) => {
        const kits = sites.map((ones, at) => kit(ones, some, `S${at}`));
        const market = { parts, kit: { rules: some }, settings: { cutWaste_mm: 3 }, today: 0 };
        const all = programmeKit(kits, market, () => ({ price: null, reason: 'noPrice' }), 10);
        for (const { partId, total_count, inStock_count, bought_count, short_count } of all.lines) {
          const each = kits.flatMap(({ lines }) => lines.filter((line) => line.partId === partId));
          const known = each.flatMap((line) => (line.total_count === null ? [] : [line.total_count]));
          expect(total_count).toBe(known.length === 0 ? null : known.reduce((sum, one) => sum + one, 0));
          if (total_count === null) continue;
          expect(bought_count! + inStock_count!).toBeGreaterThanOrEqual(total_count);
          expect(bought_count! - short_count!).toBeLessThan(12);
        }
        expect(kitsTogether([...kits].reverse())).toEqual(kitsTogether(kits));
        expect(all.lines.length).toBe(new Set(kits.flatMap(({ lines }) => lines.map(({ partId }) => partId))).size);
      }),
      settings,
    );
  });

  it('never counts a named thing twice', () => {
    fc.assert(
      fc.property(tanks, (named) => {
        const ones = named.map((partId, at) => one('tank', `T${at}`, { partId }));
        const rule: KitRule = {
          ...{ ruleId: 'R', partId: 'tank', countedBy: 'tank', each_count: 1, rounding: 'up', spare_fraction: 0 },
          ...{ leastSpare_count: 0, conditions: [] },
        };
        const found = [...totals(kit(ones, [rule])).values()];
        expect(found.reduce<number>((sum, total) => sum + (total ?? 0), 0)).toBe(named.length);
      }),
      settings,
    );
  });
});
