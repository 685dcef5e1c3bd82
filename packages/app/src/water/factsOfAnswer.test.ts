import { expect, test } from 'vitest';
import { type FactsAnswer, factsOfAnswer, type ReadingsAnswer, readingsOfAnswer } from './factsOfAnswer.ts';

const target = { daysMet_fraction: 0.95, longestDryRun_days: 7, goodYears_fraction: 0.8 };

/** An answer about a site that stands between two gauges, one of them too far to be read. */
const facts: FactsAnswer = {
  version: 3,
  designVersion: 3,
  site: {
    ...{ siteId: 'S1', name: 'NaN', latitude_deg: { figure: '-0' }, longitude_deg: 125.25, siteClass: null, target },
    ...{ people: 40, peopleCountedOn: null, households_count: null, growthFraction_per_year: null, designYear: null },
    ...{
      gaugeId: null,
      rainFactor: { figure: 'Infinity' },
      handOverDay: 20_000,
      roofs: [],
      gutters: [],
      downpipes: [],
    },
    ...{ tanks: [], demand: [], ration: null, presence: null, secondSource: null, nearSecondSource: null, doubts: [] },
  },
  faults: [],
  settings: {
    ...{
      programme: 'Tarn',
      target,
      litres_per_person_per_day: 7.5,
      firstFlush_mm: 0.5,
      range_fraction: 0.9,
      draws: 1000,
    },
    ...{ seed: 1, missingDays_fraction: 0.1, leastYears: 10, waterYearStartMonth: null, gapFilling: 'otherYears' },
    ...{ dayOrder: 'drawFirst', designAfterHandOver_years: 5, growthFraction_per_year: null, madeYears: 100 },
    ...{ people_per_household: null, wetDayAmounts: 'gamma', gaugeReach_km: 50 },
  },
  parts: [],
  prices: [],
  gauges: [
    {
      ...{ gaugeId: 'G1', name: 'East', latitude_deg: 0, longitude_deg: 125, readingTime: null, normals: [] },
      ...{ file: 'rain/G1.csv', readings: { of: 'a', address: '/readings?of=a' } },
    },
    {
      ...{ gaugeId: 'G2', name: 'West', latitude_deg: 5, longitude_deg: 125, readingTime: null, normals: [] },
      ...{ file: 'rain/G2.csv', readings: null },
    },
  ],
  wantedGauges: [],
};
const readings: ReadingsAnswer = {
  gaugeId: 'G1',
  days: [
    [100, 3, 1],
    [99, 1, 1],
  ],
  rows: [
    [2, 2, 0],
    [3, 2, 4],
  ],
  rain_mm: [0.1, null, { figure: 'NaN' }, 12.5],
};

test('every number comes back as it was, and a text that looks like one stays a text', () => {
  const one = factsOfAnswer(facts, new Map([['G1', readings]]));
  expect(one.site.latitude_deg).toBe(-0);
  expect(one.site.rainFactor).toBe(Number.POSITIVE_INFINITY);
  expect(one.site.name).toBe('NaN');
  expect(one.facts.gauges.map(({ gaugeId, readings: read }) => [gaugeId, read.length])).toEqual([
    ['G1', 4],
    ['G2', 0],
  ]);
  expect(readingsOfAnswer(readings)).toEqual([
    { day: 100, rain_mm: 0.1, row: 2 },
    { day: 101, rain_mm: null, row: 2 },
    { day: 102, rain_mm: Number.NaN, row: 3 },
    { day: 99, rain_mm: 12.5, row: 7 },
  ]);
});

test('what does not hold together is not taken for facts', () => {
  expect(() => factsOfAnswer(facts, new Map())).toThrow('G1');
  expect(() => readingsOfAnswer({ ...readings, days: [[100, 3, 1]] })).toThrow('G1');
});
