import { describe, expect, it } from 'vitest';
import { dayIndexOf, filledDay, type JudgedRain, measured, unknownDay } from '../../kernel/index.ts';
import { yearFacts, yearMoments } from './yearFacts.ts';

const record = {
  gaugeId: 'G1',
  firstDay: dayIndexOf(2001, 1, 1),
  rain_mm: Float64Array.from([0, 4, 1, 0.9, 0, 0, 6, 0, 2, 0]),
  state: new Uint8Array(10).fill(measured),
};
const years = [
  { from: 0, to: 5, judged: true },
  { from: 5, to: 10, judged: true },
];

describe('yearFacts', () => {
  it('adds up rain and days of 1 mm or more, filled ones too', () => {
    const state = record.state.slice();
    state[1] = filledDay;
    expect(yearFacts({ ...record, state }, years)).toEqual([
      { rain_mm: 5.9, wetDays: 2 },
      { rain_mm: 8, wetDays: 2 },
    ]);
  });

  it('has no figure for a year with an unknown day', () => {
    const state = record.state.slice();
    state[4] = unknownDay;
    expect(yearFacts({ ...record, state }, years)[0]).toEqual({ rain_mm: null, wetDays: null });
  });
});

describe('yearMoments', () => {
  it('are mean and spread over the judged years', () => {
    const rain = { record, years } as unknown as JudgedRain;
    const found = yearMoments(rain);
    expect(found.meanRain_mm).toBeCloseTo(6.95, 12);
    // Two values a and b have the deviation |a − b| ÷ √2.
    expect(found.sdRain_mm).toBeCloseTo(2.1 / Math.SQRT2, 12);
    expect(found.meanWetDays).toBe(2);
    // 0.9 and 0 in the first year, a single day in the second.
    expect(found.meanLongestDryRun_days).toBe(1.5);
    expect(found.longestDryRun_days).toBe(2);
    expect(yearMoments({ record, years: [years[0]] } as unknown as JudgedRain).sdRain_mm).toBeNull();
  });
});
