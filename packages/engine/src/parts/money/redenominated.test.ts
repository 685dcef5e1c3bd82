import { expect, it } from 'vitest';
import { currencyOn, redenominated } from './redenominated.ts';

const change = (currency: string, newCurrency: string, day: number, factor: number) => ({
  currency,
  newCurrency,
  day,
  factor,
  source: null,
});
const chain = [change('XOB', 'XOC', 900, 10), change('XOA', 'XOB', 500, 1000)];

it('divides an amount of before each day, one change after the other, in whatever order they stand', () => {
  expect(redenominated('XOA', 100, chain)).toMatchObject({ currency: 'XOC', divisor_factor: 10_000, endedBy: null });
  expect(redenominated('XOB', 600, chain)).toMatchObject({ currency: 'XOC', divisor_factor: 10 });
  expect(redenominated('XOC', 1000, chain)).toMatchObject({ currency: 'XOC', divisor_factor: 1, steps: [] });
  expect(redenominated('XOA', 100, [...chain].reverse())).toEqual(redenominated('XOA', 100, chain));
});

it('takes the first day of new money as new', () => {
  const same = [change('XOA', 'XOA', 500, 1000)];
  expect(redenominated('XOA', 499, same).divisor_factor).toBe(1000);
  expect(redenominated('XOA', 500, same).divisor_factor).toBe(1);
});

it('takes letters that had ended for old money, and says by what', () => {
  expect(redenominated('XOA', 950, chain)).toMatchObject({
    currency: 'XOC',
    divisor_factor: 10_000,
    endedBy: chain[1],
  });
});

it('knows letters that came back', () => {
  const back = [change('XOA', 'XOB', 100, 1000), change('XOB', 'XOA', 200, 5)];
  expect(redenominated('XOA', 50, back)).toMatchObject({ currency: 'XOA', divisor_factor: 5000 });
  expect(redenominated('XOA', 250, back)).toMatchObject({ currency: 'XOA', divisor_factor: 1, endedBy: null });
  expect(redenominated('XOA', 150, back)).toMatchObject({ currency: 'XOA', divisor_factor: 5000, endedBy: back[0] });
});

it('does not reckon with a factor of nothing', () => {
  for (const factor of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(redenominated('XOA', 1, [change('XOA', 'XOB', 5, factor)])).toMatchObject({
      currency: 'XOA',
      divisor_factor: 1,
    });
});

it('finds the letters of an earlier day', () => {
  expect([100, 500, 900].map((day) => currencyOn('XOC', day, chain))).toEqual(['XOA', 'XOB', 'XOC']);
  expect(currencyOn('XTS', 1, chain)).toBe('XTS');
});

it('takes two changes of one day one after the other, whichever row stands first', () => {
  const day = [change('XOA', 'XOB', 500, 1000), change('XOB', 'XOC', 500, 10)];
  for (const both of [day, [...day].reverse()]) {
    expect(redenominated('XOA', 100, both)).toMatchObject({ currency: 'XOC', divisor_factor: 10_000, endedBy: null });
    expect(redenominated('XOA', 600, both)).toMatchObject({ currency: 'XOC', divisor_factor: 10_000, endedBy: day[0] });
    // Letters that lasted for no day.
    expect(redenominated('XOB', 600, both)).toMatchObject({ currency: 'XOC', divisor_factor: 10, endedBy: day[1] });
    expect(redenominated('XOC', 600, both)).toMatchObject({ currency: 'XOC', divisor_factor: 1, steps: [] });
    expect(currencyOn('XOC', 100, both)).toBe('XOA');
  }
});

it('ends, where letters change into each other on one day', () => {
  const round = [change('XOA', 'XOB', 500, 2), change('XOB', 'XOA', 500, 3)];
  expect(redenominated('XOA', 100, round)).toMatchObject({ currency: 'XOA', divisor_factor: 6 });
  expect(currencyOn('XOA', 100, round)).toBe('XOA');
});
