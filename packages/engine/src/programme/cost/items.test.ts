import { expect, it } from 'vitest';
import type { CostFacts } from '../../kernel/index.ts';
import { moneyOn } from '../../parts/index.ts';
import { cartridgeItem, partItem, rowItem } from './items.ts';

const row: CostFacts = {
  costId: 'C1',
  siteId: 'S1',
  head: 'opEx',
  what: 'caretaker',
  amount: 10,
  low: 8,
  high: 15,
  currency: 'XTS',
  priceDate: 100,
  per: 'year',
  life_years: null,
  source: null,
};
const rates = [{ currency: 'XXA', day: 50, perUnit: 4, source: null }];
const settings = { currency: 'XTS', priceChange_fraction_per_year: null, oldRate_days: 400 };
const money = moneyOn(settings, { rates, redenominations: [] }, 200, []);
const people = { start_people: 90, mean_people: 100 };
const nobody = { start_people: null, mean_people: null };

it('takes a row with its range, each end converted', () => {
  expect(rowItem(row, money, nobody)).toMatchObject({
    item: {
      ...{ itemId: 'C1', pieces_count: 1, amount: { low: 8, likely: 10, high: 15 }, reason: null },
      timing: { kind: 'yearly' },
    },
    problems: [],
  });
  expect(rowItem({ ...row, currency: 'XXA' }, money, nobody).item.amount).toMatchObject({
    low: 32,
    likely: 40,
    high: 60,
  });
});

it('counts by person at the start, by person and year in the mean, or says that people are not known', () => {
  expect(rowItem({ ...row, per: 'person' }, money, people).item).toMatchObject({
    pieces_count: 90,
    timing: { kind: 'once' },
  });
  expect(rowItem({ ...row, per: 'personYear' }, money, people).item).toMatchObject({
    ...{ pieces_count: 100, timing: { kind: 'yearly' } },
  });
  expect(rowItem({ ...row, per: 'person' }, money, nobody).item).toMatchObject({
    amount: null,
    reason: 'peopleUnknown',
  });
  expect(rowItem({ ...row, per: 'site', life_years: 15 }, money, nobody).item.timing).toMatchObject({
    ...{ kind: 'renewed', isBoughtFirst: true, life_years: { likely: 15 } },
  });
});

it('has no amount where there is no rate, and tells it once', () => {
  const { item, problems } = rowItem({ ...row, currency: 'XXB' }, money, people);
  expect(item).toMatchObject({ amount: null, reason: 'rateMissing' });
  expect(problems.map(({ code }) => code)).toEqual(['money.rate_missing']);
});

it('tells a range that is turned, and keeps the likely figure', () => {
  const { item, problems } = rowItem({ ...row, low: 12 }, money, people);
  expect(problems.map(({ code }) => code)).toEqual(['cost.range_turned']);
  expect(item.amount).toMatchObject({ low: 10, likely: 10, high: 10 });
});

it('renews a part by its life, and a set of cartridges by the forecast of its wear', () => {
  const part = { partId: 'T1', name: 'Tank', pieces_count: 2, amount: 50, reason: null };
  expect(partItem({ ...part, life_years: 12, isRenewed: true }).timing).toMatchObject({
    ...{ isBoughtFirst: true, life_years: { likely: 12 } },
  });
  expect(partItem({ ...part, life_years: 12, isRenewed: false }).timing).toEqual({ kind: 'once' });
  const { timing, amount } = cartridgeItem({
    ...{ ...part, unitId: 'S1 U1', life: { p10_years: 1, p50_years: 2, p90_years: Number.POSITIVE_INFINITY } },
  });
  expect(timing).toMatchObject({ isBoughtFirst: false, life_years: { low: 1, likely: 2, high: 200, ends: 'p10p90' } });
  expect(amount?.inputId).toBe('price T1');
  expect(cartridgeItem({ ...part, unitId: 'S1 U1', life: null }).timing).toMatchObject({ life_years: null });
});

it('has no amount of what could not be counted, or has no price', () => {
  const part = { partId: 'T1', name: 'Tank', life_years: 12, isRenewed: true };
  expect(partItem({ ...part, pieces_count: null, amount: 50, reason: null })).toMatchObject({
    amount: null,
    reason: 'countUnknown',
  });
  expect(partItem({ ...part, pieces_count: 2, amount: null, reason: 'noPrice' })).toMatchObject({
    amount: null,
    reason: 'noPrice',
  });
});
