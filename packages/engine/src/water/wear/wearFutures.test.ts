import { describe, expect, it } from 'vitest';
import { meanYear_days } from '../../kernel/index.ts';
import { siteWear } from './siteWear.ts';
import { type FuturesGiven, wearFutures, wearRange } from './wearFutures.ts';

const days = 3652;
const same = (value: number, length = days) => new Float64Array(length).fill(value);
const flow = { cleanFlow_L_per_h: 900, lowestFlow_L_per_h: 300, ratedPressure_kPa: 60, workingPressure_kPa: 60 };
const rating = { ratedLitres_L: 2e6, ratedTurbidity_NTU: 5, flow, calendarLimit_days: Infinity };
const turbidity = { tank_NTU_range: { low: 1, high: 1 }, source_NTU_range: null };

/** A tank that always gives what is asked, and a set that nothing but its litres ends. */
const given: FuturesGiven = {
  rating,
  soFar: { tank_L: 0, source_L: 0, age_days: 0 },
  tanks: [
    {
      tankVolume_L: 1e6,
      content_L: 1e6,
      judged_L: same(2000),
      other_L: same(0),
      covered: null,
      order: 'drawFirst',
      ration: null,
      otherTreated_fraction: 1,
      pool: [{ inflow_L: same(1e5, 365), inflowFactor: 1 }],
    },
  ],
  years: { draws: 1, length: 1, positions: Uint16Array.of(0) },
  ahead: Array.from({ length: 10 }, (_, year) => ({ from: year * 365, to: year * 365 + 365, skipped_days: 0 })),
  temperature_C: same(20),
  turbidity,
  wear: siteWear(rating, turbidity, []),
  failures_count_per_year: 0,
  futures_count: 200,
  seed: 3,
};

describe('many futures', () => {
  it('that differ in nothing end on one day: rated litres ÷ litres a day', () => {
    const range = wearRange(wearFutures(given));
    expect(range.share_fraction.litres).toBeGreaterThan(0.99);
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
    expect(range.share_fraction.failure).toBe(1);
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
    expect(range.share_fraction.flow).toBeGreaterThan(0.95);
    expect(range.middle_days! / (load_days / 2)).toBeCloseTo(1, 2);
    expect(range.early_days! / ((load_days / 2) * Math.exp(-1.281552 * 0.6))).toBeCloseTo(1, 2);
  });

  it('whose end is not in the days looked at have none, and no litres', () => {
    const range = wearRange(wearFutures({ ...given, rating: { ...rating, ratedLitres_L: 1e12 } }));
    expect(range).toMatchObject({ early_days: null, middle_days: null, late_days: null, few_L: null });
    expect(range.share_fraction.none).toBe(1);
  });

  it('end with the years of the set, told from when it was put in', () => {
    const old = {
      ...given,
      rating: { ...rating, calendarLimit_days: 900 },
      soFar: { tank_L: 1e5, source_L: 0, age_days: 50 },
    };
    const range = wearRange(wearFutures(old));
    expect(range).toMatchObject({ early_days: 850, late_days: 850, middle_L: 1e5 + 850 * 2000 });
    expect(range.share_fraction.calendar).toBe(1);
  });

  it('meet the years as they were drawn, from the day of the year on', () => {
    const [tank] = given.tanks;
    const wet = { inflow_L: same(1e5, 365), inflowFactor: 1 };
    const dry = { inflow_L: same(0, 365), inflowFactor: 1 };
    const drawn = {
      ...given,
      tanks: [{ ...tank!, tankVolume_L: 2000, content_L: 2000, pool: [wet, dry] }],
      years: { draws: 1, length: 2, positions: Uint16Array.of(1, 0) },
      ahead: [
        { from: 0, to: 165, skipped_days: 200 },
        ...given.ahead.map(({ from, to }) => ({ from: from + 165, to: Math.min(days, to + 165), skipped_days: 0 })),
      ],
      rating: { ...rating, ratedLitres_L: 100_000 },
    };
    // 2,000 L at once, then nothing for 165 days; from the wet year's second day on 2,000 L a day.
    expect(wearRange(wearFutures(drawn)).middle_days).toBeCloseTo(165 + 1 + 49, 9);
  });

  it('without a rated turbidity tell the latest end there can be', () => {
    const unrated = { ...rating, ratedTurbidity_NTU: null };
    const muddy = { tank_NTU_range: { low: 100, high: 400 }, source_NTU_range: null };
    const late = wearRange(
      wearFutures({ ...given, rating: unrated, turbidity: muddy, wear: siteWear(unrated, muddy, []) }),
    );
    expect(late.early_days).toBeCloseTo(1000, 9);
    const known = { ...given, turbidity: muddy, wear: siteWear(rating, muddy, []) };
    expect(wearRange(wearFutures(known)).late_days).toBeLessThan(1000);
  });
});
