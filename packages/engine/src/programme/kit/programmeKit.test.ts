import { expect, it } from 'vitest';
import { type KitFigures, noKitFigures } from '../../kernel/index.ts';
import type { KitPart } from './kitFacts.ts';
import type { SiteKit } from './kitOfSite.ts';
import { kitsTogether, uncountedIn } from './kitTogether.ts';
import { type PriceOf, programmeKit } from './programmeKit.ts';
import { readyRules } from './readyRules.ts';

const kit = (siteId: string, totals: Readonly<Record<string, number | null>>): SiteKit => ({
  ...{ siteId, isBuilt: false, problems: [], ruleIds: ['used'], working: [] },
  lines: Object.entries(totals).map(([partId, total_count]) => ({
    ...{ partId, name: partId, kind: 'other', countedIn: 'piece' as const, from: 'rule' as const, ruleIds: [] },
    ...{ total_count, needed_count: total_count, rounded_count: total_count, spare_count: total_count && 1 },
    ...{ isAtLeast: total_count === null, counts: [], cuts: null, working: [] },
  })),
});
const part = (partId: string, given: Partial<KitFigures> = {}, kind = 'other'): KitPart => ({
  ...{ partId, kind, name: partId, length_m: null },
  kit: { ...noKitFigures, supplier: 'Works store', leadTime_days: 21, stock_count: 0, ...given },
});
const kits = [kit('S2', { screw: 130, tap: 3 }), kit('S1', { screw: 130, tap: null, tank: 1 })];
const sum = kitsTogether(kits);
const priceOf: PriceOf = (partId) =>
  partId === 'tap' ? { price: null, reason: 'noPrice' } : { price: { amount: 2, currency: 'XTS' }, reason: null };
const buy = (parts: readonly KitPart[], neededOn: number | null = 100) =>
  programmeKit(kits, { parts, kit: { rules: [] }, settings: { cutWaste_mm: 3 }, today: 50 }, priceOf, neededOn);

it('adds up sites, part by part, and says what is known at some of them alone', () => {
  expect(sum).toMatchObject({
    sites_count: 2,
    lines: [
      {
        partId: 'screw',
        total_count: 260,
        spare_count: 2,
        isAtLeast: false,
        bySite: [{ siteId: 'S1' }, { siteId: 'S2' }],
      },
      { partId: 'tank', total_count: 1 },
      { partId: 'tap', total_count: 3, isAtLeast: true, bySite: [{ total_count: null }, { total_count: 3 }] },
    ],
  });
  expect(kitsTogether([kit('S1', { tap: null })]).lines[0]).toMatchObject({ total_count: null, spare_count: null });
});

it('buys whole packs on the sum of the sites, less what is on hand', () => {
  // 260 less 70 are 190: two packs, where each site by itself would take two.
  const [line] = buy([part('screw', { packSize_count: 100, stock_count: 70 })]).lines;
  expect(line).toMatchObject({ total_count: 260, short_count: 190, packs_count: 2, bought_count: 200, amount: 400 });
  const enough = buy([part('screw', { stock_count: 500 })]);
  expect(enough.lines[0]).toMatchObject({ short_count: 0, packs_count: 0, amount: 0, isLate: false, orderBy: null });
  expect(enough.suppliers).toEqual([]);
});

it('orders as many days ahead as parts take to arrive, and says what is late', () => {
  const { lines, suppliers, problems } = buy([part('screw'), part('tank', { leadTime_days: 84 })]);
  expect(lines).toMatchObject([
    { partId: 'screw', orderBy: 79, isLate: false, late_days: 0 },
    { partId: 'tank', orderBy: 16, isLate: true, late_days: 34 },
  ]);
  expect(suppliers[0]!.orderBy).toBe(16);
  expect(problems).toMatchObject([{ code: 'kit.order_late', facts: { of: ['tank'], most_days: 34 } }]);
  expect(buy([part('tank', { leadTime_days: 84 })], null).problems).toEqual([]);
  expect(buy([part('tank', { leadTime_days: null })]).problems).toMatchObject([{ code: 'kit.lead_time_unknown' }]);
});

it('buys all of what nobody counted on hand, and tells', () => {
  for (const stock_count of [null, -4, Number.NaN]) {
    const { lines, problems } = buy([part('tank', { stock_count })]);
    expect(lines[0]).toMatchObject({ inStock_count: null, short_count: 1 });
    expect(problems).toMatchObject([{ code: 'kit.stock_unknown', facts: { of: ['tank'] } }]);
  }
});

it('lists by supplier, those nobody names last, with known amounts and what has no price', () => {
  const { suppliers } = buy([part('screw', { supplier: ' ' }), part('tank', { supplier: 'Tank maker' }), part('tap')]);
  expect(suppliers.map(({ supplier, sums, unpriced }) => [supplier, sums, unpriced])).toEqual([
    ['Tank maker', [{ currency: 'XTS', amount: 2 }], []],
    ['Works store', [], ['tap']],
    [null, [{ currency: 'XTS', amount: 520 }], []],
  ]);
});

it('counts sites that are handed over, and asks nothing of their rules', () => {
  const built: SiteKit = { ...kit('S3', {}), isBuilt: true, ruleIds: [] };
  const market = { parts: [part('tap')], kit: { rules: [] }, settings: { cutWaste_mm: 3 }, today: 50 };
  expect(programmeKit([built], market, priceOf)).toMatchObject({
    sites_count: 1,
    built_count: 1,
    lines: [],
    problems: [],
  });
});

it('tells parts and rules that count nothing at any site', () => {
  const rule = { each_count: 1, rounding: 'up', spare_fraction: 0, leastSpare_count: 0, conditions: [] } as const;
  const rules = ['used', 'idle'].map((ruleId) => ({ ...rule, ruleId, partId: 'tap', countedBy: 'tap' as const }));
  const ready = readyRules(rules, [part('tap'), part('left'), part('whole', {}, 'site')]);
  expect(uncountedIn([kit('S1', { tap: 1 })], ready)).toMatchObject([
    { code: 'kit.parts_uncounted', facts: { of: ['left'] } },
    { code: 'kit.rules_idle', facts: { of: ['idle'] } },
  ]);
});
