import { describe, expect, it } from 'vitest';
import { meanYear_days } from '../../kernel/index.ts';
import { siteFouling } from './siteFouling.ts';
import { type FuturesGiven, wearFutures, wearRange } from './wearFutures.ts';

const days = 3652;
const same = (value: number, length = days) => new Float64Array(length).fill(value);
const flow = { cleanFlow_L_per_h: 900, lowestFlow_L_per_h: 300, ratedPressure_kPa: 60, workingPressure_kPa: 60 };
const rating = { ratedLitres_L: 2e6, ratedTurbidity_NTU: 5, flow, ageLimit_days: Infinity };
const turbidity = { roof_NTU_range: { low: 1, high: 1 }, source_NTU_range: null };

/** A site that always gives 2,000 L, and a set that nothing but its litres ends. */
const given: FuturesGiven = {
  rating,
  soFar: { roof_L: 0, secondSource_L: 0, age_days: 0 },
  futureOf: (_, count) => ({ roof_L: same(2000, count), secondSource_L: same(0, count) }),
  temperature_C: same(20),
  turbidity,
  fouling: siteFouling(rating, turbidity, [], 0.6),
  failures_count_per_year: 0,
  unbroken_days: 0,
  futures_count: 200,
  seed: 3,
};

describe('many futures', () => {
  it('that differ in nothing end on one day: rated litres ÷ litres a day', () => {
    const range = wearRange(wearFutures(given));
    expect(range.endsBy_fraction.litres).toBeGreaterThan(0.99);
    expect(range.early_days).toBeCloseTo(1000, 9);
    expect(range.late_days).toBeCloseTo(1000, 9);
    expect(range.middle_L).toBeCloseTo(2e6, 6);
  });

  it('of a set that nothing but chance ends are spread as the times of failures at a constant rate are', () => {
    const broken = {
      ...given,
      rating: { ...rating, ratedLitres_L: 1e12 },
      failures_count_per_year: 2,
      futures_count: 2000,
    };
    const range = wearRange(wearFutures(broken));
    expect(range.endsBy_fraction.failure).toBe(1);
    for (const [found, share] of [
      [range.early_days, 0.1],
      [range.middle_days, 0.5],
      [range.late_days, 0.9],
    ] as const)
      expect(found! / ((-Math.log(1 - share) / 2) * meanYear_days)).toBeCloseTo(1, 2);
  });

  it('of a set that clogs are spread as its wear is: after 1 ÷ wear of the load it bears', () => {
    const clogging = {
      ...given,
      rating: { ...rating, ratedLitres_L: 1e12, flow: { ...flow, cleanFlow_L_per_h: 300 * (1 + 1e6) } },
    };
    const load_days = (1e12 * 5) / 1e6 / 2000;
    const weak = { ...clogging.rating.flow, workingPressure_kPa: (60 * (1 + 0.5)) / (1 + 1e6) };
    // At the site's pressure the set may have 1.5 times its resistance: after half of 2,500 days at a wear of 1.
    const range = wearRange(
      wearFutures({ ...clogging, rating: { ...clogging.rating, flow: weak }, futures_count: 2000 }),
    );
    expect(range.endsBy_fraction.flow).toBeGreaterThan(0.95);
    expect(range.middle_days! / (load_days / 2)).toBeCloseTo(1, 2);
    expect(range.early_days! / ((load_days / 2) * Math.exp(-1.281552 * 0.6))).toBeCloseTo(1, 2);
  });

  it('whose end is not in the days looked at have none, and no litres', () => {
    const range = wearRange(wearFutures({ ...given, rating: { ...rating, ratedLitres_L: 1e12 } }));
    expect(range).toMatchObject({ early_days: null, middle_days: null, late_days: null, few_L: null });
    expect(range.endless_fraction).toBe(1);
  });

  it('end with the years of the set, told from when it was put in', () => {
    const old = {
      ...given,
      rating: { ...rating, ageLimit_days: 900 },
      soFar: { roof_L: 1e5, secondSource_L: 0, age_days: 50 },
    };
    const range = wearRange(wearFutures(old));
    expect(range).toMatchObject({ early_days: 850, late_days: 850, middle_L: 1e5 + 850 * 2000 });
    expect(range.endsBy_fraction.age).toBe(1);
  });

  it('meet each its own water, and go on past the years looked at first', () => {
    const asked: number[] = [];
    const drawn = {
      ...given,
      futures_count: 2,
      futureOf: (future: number, count: number) => {
        asked.push(count);
        return { roof_L: same(future === 0 ? 4000 : 1000, count), secondSource_L: same(0, count) };
      },
    };
    expect([...wearFutures(drawn).end_days]).toEqual([500, 2000]);
    expect(asked).toEqual([1096, 1096, days]);
  });

  it('never fail before the day they are known to have lasted till', () => {
    const lasted = { ...given, failures_count_per_year: 50, unbroken_days: 600 };
    const { end_days, ends } = wearFutures(lasted);
    expect(Math.min(...end_days)).toBeGreaterThanOrEqual(600);
    expect(ends).toContain('failure');
  });

  it('count what a second source brings by its own turbidity', () => {
    const both = {
      ...given,
      turbidity: { roof_NTU_range: { low: 1, high: 1 }, source_NTU_range: { low: 20, high: 20 } },
      futureOf: (_: number, count: number) => ({ roof_L: same(1000, count), secondSource_L: same(250, count) }),
      rating: { ...rating, flow: null },
    };
    expect(wearRange(wearFutures(both)).middle_days).toBeCloseTo(2e6 / (1000 + 4 * 250), 9);
  });

  it('without a rated turbidity tell the latest end there can be', () => {
    const unrated = { ...rating, ratedTurbidity_NTU: null };
    const muddy = { roof_NTU_range: { low: 100, high: 400 }, source_NTU_range: null };
    const late = wearRange(
      wearFutures({ ...given, rating: unrated, turbidity: muddy, fouling: siteFouling(unrated, muddy, [], 0.6) }),
    );
    expect(late.early_days).toBeCloseTo(1000, 9);
    const known = { ...given, turbidity: muddy, fouling: siteFouling(rating, muddy, [], 0.6) };
    expect(wearRange(wearFutures(known)).late_days).toBeLessThan(1000);
  });
});
