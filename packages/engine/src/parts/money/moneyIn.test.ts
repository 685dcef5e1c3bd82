import { expect, it } from 'vitest';
import type { MoneyBasis } from './moneyFacts.ts';
import { moneyIn } from './moneyIn.ts';
import { moneyOn } from './moneyOn.ts';

const rate = (currency: string, day: number, perUnit: number, source: string | null = null) => ({
  currency,
  day,
  perUnit,
  source,
});
const basis: MoneyBasis = {
  currency: 'XTS',
  rates: [rate('XXA', 100, 4), rate('XXA', 300, 5, 'the bank'), rate('XXB', 90, 0.5), rate('XXA', 120, 4.5)],
  redenominations: [],
  priceChange_fraction_per_year: null,
  oldRate_days: 92,
};
const plain = { ...basis, rates: [], redenominations: [] };
const of = (amount: number, currency: string, day: number) => ({ amount, currency, day });
const codes = (problems: readonly { readonly code: string }[]) => problems.map(({ code }) => code);

it('converts at the amount’s own date, never by a later rate', () => {
  expect(moneyIn(of(10, 'XXA', 110), basis, { day: 400 })).toMatchObject({ amount: 40, currency: 'XTS', problems: [] });
  expect(moneyIn(of(10, 'XXA', 299), basis, { day: 400 }).amount).toBe(45);
  expect(moneyIn(of(10, 'XXA', 300), basis, { day: 400 }).rates).toEqual([basis.rates[1]]);
  const early = moneyIn(of(10, 'XXA', 99), basis, { day: 400 });
  expect(early.amount).toBeNull();
  expect(early.problems).toMatchObject([{ code: 'money.rate_missing', facts: { currency: 'XXA', day: '1970-04-10' } }]);
});

it('goes the other way, and across the programme’s currency', () => {
  expect(moneyIn(of(40, 'XTS', 110), basis, { currency: 'XXA', day: 110 }).amount).toBe(10);
  expect(moneyIn(of(10, 'XXA', 110), basis, { currency: 'XXB', day: 110 }).amount).toBe(80);
  expect(codes(moneyIn(of(1, 'XXA', 110), basis, { currency: 'XXC', day: 110 }).problems)).toEqual([
    'money.rate_missing',
  ]);
});

it('leaves an amount of the programme’s currency as it is, to the last bit', () => {
  const moved = moneyIn(of(0.1, 'XTS', 1), basis, { day: 9000 });
  expect(moved).toMatchObject({ amount: 0.1, rates: [], problems: [], working: [] });
});

it('tells a rate that is old', () => {
  expect(codes(moneyIn(of(1, 'XXA', 300 + 92), basis, { day: 400 }).problems)).toEqual([]);
  const old = moneyIn(of(1, 'XXA', 300 + 93), basis, { day: 400 });
  expect(old.problems).toMatchObject([{ code: 'money.rate_old', facts: { days: 93 } }]);
  expect(old.amount).toBe(5);
  expect(codes(moneyIn(of(1, 'XXA', 310), { ...basis, oldRate_days: 9 }, { day: 400 }).problems)).toEqual([
    'money.rate_old',
  ]);
});

it('moves by the yearly change, for parts of a year too', () => {
  const change = { ...plain, priceChange_fraction_per_year: 0.21 };
  expect(moneyIn(of(100, 'XTS', 0), change, { day: 365.25 / 2 }).amount).toBeCloseTo(110, 9);
  expect(moneyIn(of(121, 'XTS', 1461), change, { day: 1461 - 365.25 }).amount).toBeCloseTo(100, 9);
});

it('divides old money first, then converts, then moves, and shows each step', () => {
  const redenominations = [{ currency: 'XXA', newCurrency: 'XXD', day: 200, factor: 100, source: null }];
  const all = { ...basis, redenominations, priceChange_fraction_per_year: 0.1 };
  // 5,000 old are 50 new; an old one bought 4, so a new one 400.
  const moved = moneyIn(of(5000, 'XXA', 110), all, { day: 110 + 1461 });
  expect(moved.amount).toBeCloseTo(20_000 * 1.1 ** 4, 6);
  expect(moved.working.map(({ code, unit }) => [code, unit])).toEqual([
    ['money.redenominated', 'XXD'],
    ['money.converted', 'XTS'],
    ['money.moved', 'XTS'],
  ]);
  expect(moved.working[0]!.value).toBe(50);
  // A rate of the old money serves the new one where none is newer.
  expect(moneyIn(of(50, 'XXD', 201), { ...all, rates: [rate('XXA', 150, 4)] }, { day: 201 }).amount).toBe(20_000);
});

it('reads rates in what the programme’s money was when they were written', () => {
  const redenominations = [{ currency: 'XTO', newCurrency: 'XTS', day: 200, factor: 1000, source: null }];
  const own = { ...basis, redenominations, rates: [rate('XXA', 100, 4000), rate('XXA', 250, 4)] };
  expect(moneyIn(of(1, 'XXA', 110), own, { day: 300 }).amount).toBe(4);
  expect(moneyIn(of(1, 'XXA', 260), own, { day: 300 }).amount).toBe(4);
  expect(moneyIn(of(7000, 'XTO', 110), own, { day: 300 }).amount).toBe(7);
  // A change still to come takes no bit away.
  const planned = { ...own, currency: 'XTO' };
  expect(moneyIn(of(0.1, 'XTO', 20), planned, { day: 30 }).amount).toBe(0.1);
  expect(moneyIn(of(2, 'XXA', 110), planned, { day: 150 }).amount).toBeCloseTo(8000, 9);
});

it('tells letters that had ended', () => {
  const redenominations = [{ currency: 'XTO', newCurrency: 'XTS', day: 200, factor: 1000, source: null }];
  const late = moneyIn(of(7000, 'XTO', 250), { ...plain, redenominations }, { day: 300 });
  expect(late.amount).toBe(7);
  expect(codes(late.problems)).toEqual(['money.currency_ended']);
});

it('has no amount where a figure cannot be reckoned with', () => {
  for (const amount of [Number.NaN, Number.POSITIVE_INFINITY, 1e300])
    expect(moneyIn(of(amount, 'XTS', 1), basis, { day: 1 })).toMatchObject({
      amount: null,
      problems: [{ code: 'money.figure_unusable' }],
    });
  for (const change of [-1, -2, Number.NaN])
    expect(moneyIn(of(1, 'XTS', 1), { ...plain, priceChange_fraction_per_year: change }, { day: 9 }).amount).toBeNull();
  const hot = { ...plain, priceChange_fraction_per_year: 9 };
  expect(moneyIn(of(1, 'XTS', 1), hot, { day: 4e6 })).toMatchObject({
    amount: null,
    problems: [{ code: 'money.figure_unusable' }],
  });
  for (const perUnit of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(moneyIn(of(1, 'XXA', 1), { ...plain, rates: [rate('XXA', 0, perUnit)] }, { day: 9 }).amount).toBeNull();
});

it('is told in the currency stated, else in that of the latest price', () => {
  const settings = { currency: null, priceChange_fraction_per_year: null, oldRate_days: 92 };
  const kit = { rates: basis.rates, redenominations: [] };
  const priced = [
    { currency: 'XTS', priceDate: 9 },
    { currency: 'XXB', priceDate: 20 },
    { currency: 'XXA', priceDate: 3 },
  ];
  expect(moneyOn(settings, kit, 400, priced).currency).toBe('XXB');
  expect(moneyOn(settings, kit, 400, []).currency).toBeNull();
  const money = moneyOn({ ...settings, currency: 'XTS' }, kit, 400, priced);
  expect(money.currency).toBe('XTS');
  expect(money.convert(10, 'XXA', 110)).toMatchObject({ amount: 40, currency: 'XTS', day: 400 });
  expect(money.convert(10, 'XXC', 110, { file: 'costs.csv' }).problems[0]!.place).toEqual({ file: 'costs.csv' });
});
