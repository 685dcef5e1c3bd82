import { describe, expect, it } from 'vitest';
import { dayIndexOf, filledDay, normalShares, type RainRecord } from '../../kernel/index.ts';
import { gammaByLMoments, gammaByThom } from './gammaFits.ts';
import { monthTotals } from './monthTotals.ts';
import { spi, standardisedSums } from './spi.ts';

/** Whole calendar years; each month's rain falls on its first day. */
function record(firstYear: number, years: number, total_mm: (year: number, month: number) => number): RainRecord {
  const firstDay = dayIndexOf(firstYear, 1, 1);
  const rain_mm = new Float64Array(dayIndexOf(firstYear + years, 1, 1) - firstDay);
  for (let year = firstYear; year < firstYear + years; year++) {
    for (let month = 1; month <= 12; month++) rain_mm[dayIndexOf(year, month, 1) - firstDay] = total_mm(year, month);
  }
  return { gaugeId: 'G', firstDay, rain_mm, state: new Uint8Array(rain_mm.length) };
}

const uneven = (year: number, month: number) => ((year * 7919 + month * 104729) % 97) + month;

describe('monthTotals', () => {
  it('adds up whole months, and has none for a month with a day not measured or outside', () => {
    const whole = record(2000, 2, (year, month) => year - 1999 + month);
    whole.state[dayIndexOf(2000, 2, 29) - whole.firstDay] = filledDay;
    const { gaugeId, firstDay, rain_mm, state } = whole;
    const cut = { gaugeId, firstDay: firstDay + 1, rain_mm: rain_mm.slice(1), state: state.slice(1) };
    const totals = monthTotals(cut);
    expect(totals).toHaveLength(24);
    expect(totals.slice(0, 3).map((one) => one.total_mm)).toEqual([null, null, 4]);
    expect(totals.at(-1)).toEqual({ year: 2001, month: 12, total_mm: 14 });
  });
});

describe('the gamma fits', () => {
  it('keep the mean and scale with the amounts', () => {
    const amounts = [3, 11, 40, 7, 22, 9.5];
    for (const fit of [gammaByLMoments, gammaByThom]) {
      const one = fit(amounts)!;
      const twice = fit(amounts.map((amount) => 2 * amount))!;
      expect(one.shape * one.scale_mm).toBeCloseTo(92.5 / 6, 10);
      expect(twice.shape).toBeCloseTo(one.shape, 12);
      expect(twice.scale_mm).toBeCloseTo(2 * one.scale_mm, 10);
    }
  });

  // Second L-moment of a gamma distribution of shape a: its ratio to the mean is Γ(a + ½) / (√π Γ(a + 1)).
  it('find the shape from the exact ratio of its L-moments, on both sides of one half', () => {
    for (const [shape, ratio] of [
      [0.5, 2 / Math.PI],
      [1, 0.5],
      [2, 3 / 8],
      [3, 5 / 16],
    ] as const) {
      // Two amounts 1 − r and 1 + r have the ratio r.
      expect(gammaByLMoments([1 + ratio, 1 - ratio])!.shape / shape).toBeCloseTo(1, 4);
    }
  });

  it('give nothing where there is nothing to fit', () => {
    for (const fit of [gammaByLMoments, gammaByThom])
      for (const amounts of [[], [5], [5, 5, 5], [0, 5, 7], [5, Infinity]]) expect(fit(amounts)).toBeNull();
  });
});

describe('standardisedSums', () => {
  it('gives a sum of 0 the chance q, however many there are', () => {
    const sums = [...Array.from({ length: 8 }, () => 0), ...Array.from({ length: 24 }, (_, i) => 5 + 3 * i)];
    const [dry] = standardisedSums(sums, 'lMoments');
    expect(normalShares(dry!).below_fraction).toBeCloseTo(8 / 32, 12);
  });

  it('never falls as the sum grows, by either method', () => {
    const sums = Array.from({ length: 30 }, (_, i) => (i * i) / 3);
    for (const method of ['lMoments', 'thom'] as const) {
      const found = standardisedSums(sums, method) as readonly number[];
      for (let i = 1; i < found.length; i++) expect(found[i]).toBeGreaterThan(found[i - 1]!);
    }
  });

  it('says nothing of 19 sums, nor of 20 with rain in 9', () => {
    const wet = (count: number) => Array.from({ length: count }, (_, i) => 10 + i);
    expect(new Set(standardisedSums(wet(19), 'thom'))).toEqual(new Set([null]));
    expect(standardisedSums(wet(20), 'thom')).not.toContain(null);
    const dry = Array.from({ length: 11 }, () => 0);
    expect(new Set(standardisedSums([...dry, ...wet(9)], 'thom'))).toEqual(new Set([null]));
    expect(standardisedSums([...dry, ...wet(10)], 'thom')).not.toContain(null);
  });
});

describe('spi', () => {
  it('compares a calendar month with itself: a wet season is not a wet month', () => {
    const seasons = record(1990, 30, (year, month) => uneven(year, 1) * (month <= 6 ? 10 : 1));
    const found = spi(seasons, 1, 'lMoments');
    for (let i = 0; i < found.length; i += 12) {
      expect(found[i]!.spi).toBeCloseTo(found[i + 11]!.spi!, 9);
    }
  });

  it('adds up months across the turn of the year, and has none where one is not known', () => {
    const one = record(1990, 25, uneven);
    one.state[dayIndexOf(2000, 1, 20) - one.firstDay] = filledDay;
    const found = spi(one, 3, 'thom');
    expect(found.slice(0, 2).map(({ spi: index }) => index)).toEqual([null, null]);
    const at = (year: number, month: number) => found.find((item) => item.year === year && item.month === month)!;
    expect(at(1995, 1).sum_mm).toBe(uneven(1994, 11) + uneven(1994, 12) + uneven(1995, 1));
    for (const month of [1, 2, 3]) expect(at(2000, month)).toMatchObject({ sum_mm: null, spi: null });
    expect(at(2000, 4).spi).not.toBeNull();
  });

  it('is the same for a record in any unit of rain', () => {
    const one = spi(record(1980, 30, uneven), 12, 'lMoments');
    const tenfold = spi(
      record(1980, 30, (year, month) => 10 * uneven(year, month)),
      12,
      'lMoments',
    );
    for (const [i, { spi: index }] of one.entries()) {
      if (index === null) expect(tenfold[i]!.spi).toBeNull();
      else expect(tenfold[i]!.spi).toBeCloseTo(index, 9);
    }
  });
});
