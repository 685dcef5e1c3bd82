import { describe, expect, it } from 'vitest';
import { dayIndexOf, filledDay, type JudgedRain, neighbourDay, unknownDay } from '../../kernel/index.ts';
import { judgedDaysFilled, wettestDay } from './recordFacts.ts';

const firstDay = dayIndexOf(2001, 1, 1);
const record = (rain: readonly number[], state: readonly number[]) => ({
  gaugeId: 'G',
  firstDay,
  rain_mm: Float64Array.from(rain),
  state: Uint8Array.from(state),
});

describe('wettestDay', () => {
  it('is the first of the largest measured', () => {
    const state = [0, filledDay, 0, 0, unknownDay];
    expect(wettestDay(record([4, 90, 12, 12, 99], state))).toEqual({ day: firstDay + 2, rain_mm: 12 });
  });

  it('is none where it never rained', () => {
    expect(wettestDay(record([0, 0], [0, unknownDay]))).toBeNull();
  });
});

describe('judgedDaysFilled', () => {
  it('counts by what the days were filled from, in judged years only', () => {
    const states = [0, filledDay, neighbourDay, neighbourDay, filledDay, neighbourDay];
    const rain = {
      record: record(new Array(6).fill(1), states),
      years: [
        { label: 2001, from: 0, to: 4, missing_days: 3, judged: true },
        { label: 2002, from: 4, to: 6, missing_days: 2, judged: false },
      ],
    } as unknown as JudgedRain;
    expect(judgedDaysFilled(rain)).toEqual({ days: 4, fromOtherYearsDays: 1, fromNeighboursDays: 2, madeDays: 0 });
  });
});
