import { expect, it } from 'vitest';
import type { KitPart } from './kitFacts.ts';
import type { SiteKit } from './kitOfSite.ts';
import { kitsTogether, uncountedIn } from './kitTogether.ts';
import { purchasesOf } from './purchases.ts';
import { readyRules } from './readyRules.ts';

const kit = (siteId: string, totals: Readonly<Record<string, number | null>>): SiteKit => ({
  siteId,
  lines: Object.entries(totals).map(([partId, total_count]) => ({
    ...{ partId, countedIn: 'piece' as const, total_count, needed_count: total_count, rounded_count: total_count },
    ...{
      spare_count: total_count === null ? null : 1,
      isAtLeast: total_count === null,
      from: [],
      bars: null,
      working: [],
    },
  })),
  problems: [],
  ruleIds: ['used'],
});
const part = (partId: string, given: Partial<KitPart> = {}): KitPart => ({
  ...{ partId, kind: 'other', name: partId, length_m: null, countedIn: 'piece', packSize_count: null },
  ...{ supplier: 'Works store', leadTime_days: 21, stock_count: 0 },
  ...given,
});
const sum = kitsTogether([kit('S2', { screw: 130, tap: 3 }), kit('S1', { screw: 130, tap: null, tank: 1 })]);
const priceOf = (partId: string) =>
  partId === 'tap' ? ({ amount: null, reason: 'noPrice' } as const) : { amount: 2, currency: 'XTS' };
const buy = (parts: readonly KitPart[], neededOn: number | null = 100, today = 50) =>
  purchasesOf(sum, parts, { today, neededOn }, priceOf);

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
  const [order] = buy([part('screw', { packSize_count: 100, stock_count: 70 })]).orders;
  // 260 less 70 are 190: two packs, where each site by itself would take two.
  expect(order!.purchases[0]).toMatchObject({ short_count: 190, packs_count: 2, bought_count: 200, amount: 400 });
  const [enough] = buy([part('screw', { stock_count: 500 })]).orders;
  expect(enough!.purchases[0]).toMatchObject({ short_count: 0, packs_count: 0, amount: 0, late_days: 0 });
});

it('orders as many days ahead as parts take to arrive, and says what is late', () => {
  const { orders, problems } = buy([part('screw'), part('tank', { leadTime_days: 84 })]);
  expect(orders[0]!.purchases).toMatchObject([
    { partId: 'screw', orderBy: 79, late_days: 0 },
    { partId: 'tank', orderBy: 16, late_days: 34 },
  ]);
  expect(orders[0]!.orderBy).toBe(16);
  expect(problems).toMatchObject([{ code: 'kit.order_late', facts: { of: ['tank'], most_days: 34 } }]);
  expect(buy([part('tank', { leadTime_days: 84 })], null).problems).toEqual([]);
  expect(buy([part('tank', { leadTime_days: null })]).problems).toMatchObject([{ code: 'kit.lead_time_unknown' }]);
});

it('buys all of what nobody counted on hand, and tells', () => {
  const { orders, problems } = buy([part('tank', { stock_count: null })]);
  expect(orders[0]!.purchases[0]).toMatchObject({ stock_count: null, short_count: 1 });
  expect(problems).toMatchObject([{ code: 'kit.stock_unknown', facts: { of: ['tank'] } }]);
});

it('lists by supplier, those nobody names last, with known amounts and what has no price', () => {
  const { orders } = buy([part('screw', { supplier: ' ' }), part('tank', { supplier: 'Tank maker' }), part('tap')]);
  expect(orders.map(({ supplier, sums, unpriced }) => [supplier, sums, unpriced])).toEqual([
    ['Tank maker', [{ currency: 'XTS', amount: 2 }], []],
    ['Works store', [], ['tap']],
    [null, [{ currency: 'XTS', amount: 520 }], []],
  ]);
});

it('tells parts and rules that count nothing at any site', () => {
  const rule = { each_count: 1, rounding: 'up', spare_fraction: 0, leastSpare_count: 0, conditions: [] } as const;
  const rules = ['used', 'idle'].map((ruleId) => ({ ...rule, ruleId, partId: 'tap', countedBy: 'tap' as const }));
  const ready = readyRules(rules, [part('tap'), part('left'), part('whole', { kind: 'site' })]);
  expect(uncountedIn([kit('S1', { tap: 1 })], ready)).toMatchObject([
    { code: 'kit.parts_uncounted', facts: { of: ['left'] } },
    { code: 'kit.rules_idle', facts: { of: ['idle'] } },
  ]);
});
