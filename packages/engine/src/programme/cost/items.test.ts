import { expect, it } from 'vitest';
import { type CostRow, cartridgeItem, partItem, rowItem } from './items.ts';

const row: CostRow = {
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
};
const basis = {
  currency: 'XTS',
  rates: [{ currency: 'XXA', day: 50, perUnit: 4, source: null }],
  redenominations: [],
  priceChange_fraction_per_year: null,
};
const given = { basis, day: 200, visits_per_year: null, people: null };

it('takes a row with its range, each end converted', () => {
  expect(rowItem(row, given)).toMatchObject({
    item: {
      itemId: 'C1',
      pieces_count: 1,
      amount: { low: 8, likely: 10, high: 15 },
      reason: null,
      timing: { kind: 'yearly' },
    },
    problems: [],
  });
  expect(rowItem({ ...row, currency: 'XXA' }, given).item.amount).toMatchObject({ low: 32, likely: 40, high: 60 });
});

it('counts by visit and by person, or says what it cannot be counted by', () => {
  expect(rowItem({ ...row, per: 'visit' }, { ...given, visits_per_year: 2 }).item).toMatchObject({ pieces_count: 2 });
  expect(rowItem({ ...row, per: 'visit' }, given).item).toMatchObject({ amount: null, reason: 'visitsUnknown' });
  expect(rowItem({ ...row, per: 'person' }, { ...given, people: 90 }).item).toMatchObject({
    pieces_count: 90,
    timing: { kind: 'once' },
  });
  expect(rowItem({ ...row, per: 'person' }, given).item).toMatchObject({ amount: null, reason: 'peopleUnknown' });
});

it('has no amount where there is no rate, and tells it once', () => {
  const { item, problems } = rowItem({ ...row, currency: 'XXB' }, given);
  expect(item).toMatchObject({ amount: null, reason: 'rateMissing' });
  expect(problems.map(({ code }) => code)).toEqual(['money.rate_missing']);
  expect(rowItem({ ...row, amount: null }, given).item).toMatchObject({ amount: null, reason: 'amountUnknown' });
});

it('tells a range that is turned, and keeps the likely figure', () => {
  const { item, problems } = rowItem({ ...row, low: 12 }, given);
  expect(problems.map(({ code }) => code)).toEqual(['cost.range_turned']);
  expect(item.amount).toMatchObject({ low: 10, likely: 10, high: 10 });
});

it('renews a part by its life, and a set of cartridges by the forecast of its wear', () => {
  const part = { partId: 'T1', name: 'Tank', pieces_count: 2, amount: 50, reason: null };
  expect(partItem({ ...part, life_years: 12 }).timing).toMatchObject({
    isBoughtFirst: true,
    life_years: { likely: 12 },
  });
  const life_days = { p10: 365.2425, p50: 730.485, p90: 1e9 };
  const { timing, amount } = cartridgeItem({ ...part, unitId: 'S1/U1', life_days });
  expect(timing).toMatchObject({ isBoughtFirst: false, life_years: { low: 1, likely: 2, high: 200, ends: 'p10p90' } });
  expect(amount?.inputId).toBe('price T1');
  expect(cartridgeItem({ ...part, unitId: 'S1/U1', life_days: null }).timing).toMatchObject({ life_years: null });
});
