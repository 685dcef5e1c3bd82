import { expect, it } from 'vitest';
import { rowsThatDiffer } from './rowsThatDiffer.ts';

const price = (amount: number, currency = 'XTS', priceDate = 3) => ({ partId: 'T1', priceDate, amount, currency });

it('tells two prices of one part and day once, and says nothing of the same price twice', () => {
  expect(rowsThatDiffer([price(5), price(5), price(6, 'XTS', 4)], [])).toEqual([]);
  expect(rowsThatDiffer([price(5), price(6), price(7, 'XXA')], [])).toMatchObject([
    { code: 'money.prices_differ', facts: { part: 'T1', day: '1970-01-04', values: ['5 XTS', '6 XTS', '7 XXA'] } },
  ]);
});

it('names the one that stands last, where the first comes again', () => {
  const [problem] = rowsThatDiffer([price(5), price(6), price(5)], []);
  expect(problem!.facts.values).toEqual(['6 XTS', '5 XTS']);
});

it('tells two rates of one day', () => {
  const rate = (perUnit: number) => ({ currency: 'XXA', day: 3, perUnit, source: null });
  expect(rowsThatDiffer([], [rate(4), rate(4)])).toEqual([]);
  expect(rowsThatDiffer([], [rate(4), rate(5)])).toMatchObject([
    { code: 'money.rates_differ', facts: { currency: 'XXA' } },
  ]);
});
