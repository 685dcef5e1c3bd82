import { type MoneyBasis, moneyIn, redenominated } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 5_000 : 300, seed: 20261126 };

const day = fc.integer({ min: 0, max: 20_000 });
const letters = fc.constantFrom('XTS', 'XXA', 'XXB', 'XXC');
const rate = fc.record({
  currency: letters.filter((one) => one !== 'XTS'),
  day,
  perUnit: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
  source: fc.constant(null),
});
const change = fc.record({
  currency: letters,
  newCurrency: letters,
  day,
  factor: fc.constantFrom(2, 10, 100, 1000),
  source: fc.constant(null),
});
const basis: fc.Arbitrary<MoneyBasis> = fc.record({
  currency: fc.constant('XTS'),
  rates: fc.array(rate, { maxLength: 12 }),
  redenominations: fc.constant([]),
  priceChange_fraction_per_year: fc.oneof(fc.constant(null), fc.double({ min: -0.1, max: 0.2, noNaN: true })),
  oldRate_days: fc.constant(92),
});
const money = fc.record({ amount: fc.double({ min: 1e-2, max: 1e6, noNaN: true }), currency: letters, day });

const near = (value: number | null, wanted: number) =>
  expect(Math.abs(value! / wanted - 1), `${value} for ${wanted}`).toBeLessThan(1e-9);

describe('money', () => {
  it('there and back on one day is the amount again', () => {
    let converted = 0;
    fc.assert(
      fc.property(basis, money, letters, (all, given, to) => {
        const there = moneyIn(given, all, { currency: to, day: given.day });
        if (there.amount === null) return;
        if (to !== given.currency) converted++;
        const back = moneyIn({ amount: there.amount, currency: to, day: given.day }, all, {
          currency: given.currency,
          day: given.day,
        });
        near(back.amount, given.amount);
      }),
      settings,
    );
    expect(converted).toBeGreaterThan(5);
  });

  it('moving to a day and on is moving there at once', () => {
    fc.assert(
      fc.property(basis, money, day, day, (all, given, on, then) => {
        const own = { ...given, currency: 'XTS' };
        const first = moneyIn(own, all, { day: on }).amount!;
        const twice = moneyIn({ amount: first, currency: 'XTS', day: on }, all, { day: then }).amount!;
        near(twice, moneyIn(own, all, { day: then }).amount!);
      }),
      settings,
    );
  });

  it('a later rate changes no earlier amount, and without a rate there is none', () => {
    fc.assert(
      fc.property(basis, money, rate, (all, given, later) => {
        const wanted = { day: given.day };
        const before = moneyIn(given, all, wanted).amount;
        const rates = [...all.rates, { ...later, day: given.day + 1 }];
        expect(moneyIn(given, { ...all, rates }, wanted).amount).toBe(before);
        const known = all.rates.some((one) => one.currency === given.currency && one.day <= given.day);
        expect(before === null).toBe(given.currency !== 'XTS' && !known);
      }),
      settings,
    );
  });

  it('twice the amount is twice the amount, in any currency', () => {
    fc.assert(
      fc.property(basis, money, letters, day, (all, given, currency, on) => {
        const one = moneyIn(given, all, { currency, day: on }).amount;
        const two = moneyIn({ ...given, amount: 2 * given.amount }, all, { currency, day: on }).amount;
        if (one === null) expect(two).toBeNull();
        else near(two, 2 * one);
      }),
      settings,
    );
  });

  it('redenominations end, whatever they say, and their order in the table is none', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(change, { selector: (one) => one.day, maxLength: 8 }),
        letters,
        day,
        (changes, currency, on) => {
          const found = redenominated(currency, on, changes);
          expect(redenominated(currency, on, [...changes].reverse())).toEqual(found);
          expect(found.divisor_factor).toBe(found.steps.reduce((product, { factor }) => product * factor, 1));
        },
      ),
    );
  });

  it('old money and the new money it became are worth the same', () => {
    fc.assert(
      fc.property(basis, money, fc.integer({ min: 2, max: 10_000 }), (all, given, factor) => {
        const old = { ...given, currency: 'XXA', day: 5000 };
        const redenominations = [{ currency: 'XXA', newCurrency: 'XXN', day: 9000, factor, source: null }];
        const rates = [...all.rates, { currency: 'XXA', day: 4000, perUnit: 3, source: null }];
        const both = { ...all, redenominations, rates };
        const before = moneyIn(old, both, { day: 5000 }).amount!;
        const after = moneyIn({ amount: old.amount / factor, currency: 'XXN', day: 5000 }, both, { day: 5000 }).amount!;
        near(after, before);
      }),
      settings,
    );
  });
});
