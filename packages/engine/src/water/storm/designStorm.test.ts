import { describe, expect, it } from 'vitest';
import {
  type DesignSettings,
  dayIndexOf,
  defaultSettings,
  type ShortReading,
  type StormCoefficients,
  type StormFacts,
} from '../../kernel/index.ts';
import { designStorm } from './designStorm.ts';
import { stormDistribution } from './extremeLimits.ts';
import { maximumOnceIn_mm } from './extremes.ts';
import { fiveMinuteMaxima } from './fiveMinuteMaxima.ts';
import { intensityOfCoefficients_mm_per_h } from './intensityOfCoefficients.ts';
import type { StormGiven } from './stormWay.ts';

const once = (returnPeriod_years: number, intensity_mm_per_h: number, more: Partial<StormFacts> = {}): StormFacts => ({
  returnPeriod_years,
  intensity_mm_per_h,
  low_mm_per_h: null,
  high_mm_per_h: null,
  source: 'An invented weather service',
  ...more,
});
const coefficients: StormCoefficients = {
  lambda: 63.5,
  kappa: 0.15,
  theta_h: 0.2,
  eta: 0.8,
  leastPeriod_years: 2,
  mostPeriod_years: 100,
  source: 'An invented manual',
};
/** Years of short intervals: light rain in each month, and one hard five minutes. */
const shortRain = (years: number, hardest_mm = (i: number) => 9 + ((i * 7) % 5), interval_min = 5): ShortReading[] =>
  Array.from({ length: years }, (_, i) => [
    ...Array.from({ length: 12 }, (_, month) => ({
      day: dayIndexOf(2001 + i, month + 1, 15),
      minuteOfDay: 900,
      interval_min,
      rain_mm: 1,
    })),
    { day: dayIndexOf(2001 + i, 7, 20), minuteOfDay: 960, interval_min, rain_mm: hardest_mm(i) },
  ]).flat();
const dailyMaxima = (years: number) =>
  Array.from({ length: years }, (_, i) => ({ year: 2001 + i, rain_mm: 60 + ((i * 13) % 29) }));

const given = (
  change: Partial<StormGiven['gauge']> = {},
  settings: Partial<DesignSettings> = {},
  days = 0,
): StormGiven => ({
  gauge: { gaugeId: 'G1', storms: [], stormCoefficients: null, shortRain: [], ...change },
  dailyMaxima: dailyMaxima(days),
  settings: { ...defaultSettings, ...settings },
});
const codes = (told: ReturnType<typeof designStorm>) => told.problems.map(({ code }) => code);
const share = { fiveMinutesOfDay_fraction: 0.12, fiveMinutesOfDaySource: 'An invented study' };

describe('which storm is taken', () => {
  const all = { storms: [once(20, 210)], stormCoefficients: coefficients, shortRain: shortRain(15) };

  it('what is stated, then coefficients, then a short record, then days with a stated share', () => {
    const from = (change: Partial<StormGiven['gauge']>) =>
      designStorm(given({ ...all, ...change }, share, 30)).storm!.from;
    expect(from({})).toBe('stated');
    expect(from({ storms: [] })).toBe('coefficients');
    expect(from({ storms: [], stormCoefficients: null })).toBe('shortRecord');
    expect(from({ storms: [], stormCoefficients: null, shortRain: [] })).toBe('dailyMaxima');
  });

  it('none from days alone', () => {
    const told = designStorm(given({}, {}, 30));
    expect(told).toMatchObject({ storm: null, working: [] });
    expect(codes(told)).toEqual(['storm.no_intensity']);
    expect(told.problems[0]!.facts).toEqual({ returnPeriod_years: 20 });
  });

  it('every storm has the working that ends with it', () => {
    for (const change of [all, { ...all, storms: [] }, { shortRain: all.shortRain }, {}]) {
      const { storm, working } = designStorm(given(change, share, 30));
      const last = working.find(({ code }) => code === 'storm.intensity')!;
      expect(last.value).toBe(storm!.intensity_mm_per_h);
      expect(last.unit).toBe('mm/h');
      expect(working.at(-1)).toMatchObject({ code: 'storm.risk' });
      // 1 − (19/20)^20.
      expect(working.at(-1)!.value).toBeCloseTo(0.6415, 4);
    }
  });
});

describe('a stated storm', () => {
  it('is taken as it stands, with the range that is stated', () => {
    const told = designStorm(
      given({ storms: [once(10, 180), once(20, 210, { low_mm_per_h: 190, high_mm_per_h: 240 })] }),
    );
    expect(told.problems).toEqual([]);
    expect(told.storm).toEqual({
      gaugeId: 'G1',
      returnPeriod_years: 20,
      intensity_mm_per_h: 210,
      intensity_range: { low: 190, high: 240 },
      from: 'stated',
      source: 'An invented weather service',
      years_count: null,
      cappedBy: null,
    });
  });

  it('with one end of a range has that end and the other by the margin, and without any has none', () => {
    const range = (more: Partial<StormFacts>) =>
      designStorm(given({ storms: [once(20, 210, more)] })).storm!.intensity_range;
    // The margin of the settings is a tenth: 189 to 231 mm/h.
    const { low, high } = range({ high_mm_per_h: 240 })!;
    expect([low, high]).toEqual([expect.closeTo(189, 9), 240]);
    const other = range({ low_mm_per_h: 200 })!;
    expect([other.low, other.high]).toEqual([200, expect.closeTo(231, 9)]);
    expect(range({})).toBeNull();
  });

  it('that nobody says is taken, and told', () => {
    const told = designStorm(given({ storms: [once(20, 210, { source: null })] }));
    expect(told.storm!.source).toBeNull();
    expect(codes(told)).toEqual(['storm.source_missing']);
  });

  it.each([19.9, 601, 2100])('of %d mm/h is not believed, and nothing is taken in its stead', (value) => {
    const told = designStorm(given({ storms: [once(20, value)], stormCoefficients: coefficients }));
    expect(told.storm).toBeNull();
    expect(codes(told)).toEqual(['storm.intensity_unlikely']);
    expect(told.problems[0]!.facts).toMatchObject({ of: 'stated', value_mm_per_h: value });
  });

  it('outside the range stated for it is not believed', () => {
    for (const more of [
      { low_mm_per_h: 220, high_mm_per_h: 240 },
      { low_mm_per_h: 240, high_mm_per_h: 190 },
      { high_mm_per_h: 200 },
    ]) {
      const told = designStorm(given({ storms: [once(20, 210, more)], stormCoefficients: coefficients }));
      expect(told.storm).toBeNull();
      expect(codes(told)).toEqual(['storm.range_reversed']);
    }
  });

  it('for other years alone is told with the years there are, and what lies between two of them', () => {
    const told = designStorm(given({ storms: [once(10, 180), once(50, 260)] }));
    expect(told.storm).toBeNull();
    expect(codes(told)).toEqual(['storm.period_not_stated', 'storm.no_intensity']);
    const { facts, place } = told.problems[0]!;
    expect(place).toEqual({ file: 'storms.csv', gaugeId: 'G1' });
    expect(facts['stated_years']).toEqual(['10', '50']);
    // By hand: y(10) 2.2504, y(20) 2.9702, y(50) 3.9019; 180 + 80 × (2.9702 − 2.2504) ÷ (3.9019 − 2.2504).
    expect(facts['between_mm_per_h']).toBeCloseTo(214.87, 1);
  });

  it('nothing lies between years all on one side, nor where the rarer storm is smaller', () => {
    for (const storms of [
      [once(5, 150), once(10, 180)],
      [once(50, 260)],
      [once(10, 260), once(50, 180)],
      [once(1, 90), once(50, 180)],
    ])
      expect(designStorm(given({ storms })).problems[0]!.facts).not.toHaveProperty('between_mm_per_h');
  });
});

describe('coefficients', () => {
  it('give the intensity of five minutes', () => {
    const { storm, problems } = designStorm(given({ stormCoefficients: coefficients }));
    expect(problems).toEqual([]);
    expect(storm).toMatchObject({ from: 'coefficients', source: 'An invented manual', intensity_range: null });
    expect(storm!.intensity_mm_per_h).toBe(intensityOfCoefficients_mm_per_h(coefficients, 20, 1 / 12));
  });

  it('not made for the return period are left for what else there is', () => {
    const set = { ...coefficients, leastPeriod_years: 2, mostPeriod_years: 10 };
    const told = designStorm(given({ stormCoefficients: set, shortRain: shortRain(15) }));
    expect(codes(told)).toEqual(['storm.coefficients_out_of_range']);
    expect(told.storm!.from).toBe('shortRecord');
  });

  it('that do not say what they are made for are good for 2 to 100 years', () => {
    const set = { ...coefficients, leastPeriod_years: null, mostPeriod_years: null };
    expect(designStorm(given({ stormCoefficients: set })).storm).not.toBeNull();
    expect(codes(designStorm(given({ stormCoefficients: set }, { stormReturnPeriod_years: 200 })))).toEqual([
      'storm.coefficients_out_of_range',
      'storm.no_intensity',
    ]);
  });

  it('that give what cannot be believed, as those for minutes do, give nothing', () => {
    const told = designStorm(
      given({ stormCoefficients: { ...coefficients, lambda: 1500, theta_h: 12 }, shortRain: shortRain(15) }),
    );
    // 1500 × 20^0.15 ÷ 12.08^0.8 is 320: believed. Without the 12 it is not.
    expect(told.storm).not.toBeNull();
    const minutes = { ...coefficients, lambda: 1500, theta_h: 0 };
    expect(codes(designStorm(given({ stormCoefficients: minutes })))).toEqual(['storm.intensity_unlikely']);
  });
});

describe('a short record', () => {
  it('gives the storm of the distribution of its maxima, with a range', () => {
    const rows = shortRain(15);
    const { storm, problems } = designStorm(given({ shortRain: rows }));
    const maxima = fiveMinuteMaxima(rows).maxima.map(({ depth_mm }) => depth_mm);
    expect(maxima).toHaveLength(15);
    expect(problems).toEqual([]);
    expect(storm).toMatchObject({ from: 'shortRecord', source: null, years_count: 15, cappedBy: null });
    expect(storm!.intensity_mm_per_h).toBeCloseTo(maximumOnceIn_mm(stormDistribution(maxima)!, 20) * 12, 9);
    expect(storm!.intensity_range!.low).toBeLessThan(storm!.intensity_mm_per_h);
    expect(storm!.intensity_range!.high).toBeGreaterThan(storm!.intensity_mm_per_h);
  });

  it('too short, too coarse or all alike gives none, and says which', () => {
    expect(codes(designStorm(given({ shortRain: shortRain(9) })))).toEqual([
      'storm.too_few_years',
      'storm.no_intensity',
    ]);
    expect(codes(designStorm(given({ shortRain: shortRain(15, undefined, 15) })))).toEqual([
      'storm.record_too_coarse',
      'storm.no_intensity',
    ]);
    expect(codes(designStorm(given({ shortRain: shortRain(15, () => 9) })))).toEqual([
      'storm.not_fitted',
      'storm.no_intensity',
    ]);
    expect(codes(designStorm(given({ shortRain: shortRain(15, (i) => 1.05 + i / 1000) })))).toEqual([
      'storm.intensity_unlikely',
      'storm.no_intensity',
    ]);
  });

  it('tells what of it was left aside', () => {
    const rows = [
      ...shortRain(15),
      { day: dayIndexOf(2016, 2, 1), minuteOfDay: 100, interval_min: 5, rain_mm: 2 },
      { day: dayIndexOf(2010, 2, 1), minuteOfDay: 100, interval_min: 5, rain_mm: 70 },
      { day: dayIndexOf(2010, 7, 20), minuteOfDay: 962, interval_min: 5, rain_mm: 2 },
      { day: dayIndexOf(2010, 3, 1), minuteOfDay: 60, interval_min: 60, rain_mm: 20 },
    ];
    const told = designStorm(given({ shortRain: rows }));
    expect(codes(told)).toEqual([
      'storm.record_too_coarse',
      'storm.record_overlaps',
      'storm.record_unlikely',
      'storm.years_left_out',
    ]);
    expect(told.problems[2]!.facts).toEqual({ count: 1, day: '2010-02-01' });
    expect(told.problems[3]!.facts).toEqual({ partYears: ['2016'], thinYears: [] });
    expect(told.storm).not.toBeNull();
  });
});

describe('the wettest days', () => {
  it('give a storm by the stated share of five minutes, tight at best', () => {
    const { storm, problems } = designStorm(given({}, share, 30));
    expect(problems.map(({ code }) => code)).toEqual(['storm.from_daily']);
    const maxima = dailyMaxima(30).map(({ rain_mm }) => rain_mm);
    expect(storm!.intensity_mm_per_h).toBeCloseTo(maximumOnceIn_mm(stormDistribution(maxima)!, 20) * 0.12 * 12, 9);
    expect(storm).toMatchObject({ years_count: 30, cappedBy: 'storm.from_daily', source: 'An invented study' });
  });

  it('tell a share that nobody says, and too few years', () => {
    expect(codes(designStorm(given({}, { ...share, fiveMinutesOfDaySource: null }, 30)))).toEqual([
      'storm.from_daily',
      'storm.source_missing',
    ]);
    expect(codes(designStorm(given({}, share, 9)))).toEqual(['storm.too_few_years', 'storm.no_intensity']);
  });

  it('that come to what cannot be believed give none, and nothing is said of resting on them', () => {
    const told = designStorm(given({}, { ...share, fiveMinutesOfDay_fraction: 0.9 }, 30));
    expect(codes(told)).toEqual(['storm.intensity_unlikely', 'storm.no_intensity']);
  });
});

it('of every year nothing is fitted', () => {
  const told = designStorm(given({ shortRain: shortRain(15) }, { ...share, stormReturnPeriod_years: 1 }, 30));
  expect(codes(told)).toEqual(['storm.no_intensity']);
});
