import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { seriesOf, yearsFrom } from './madeUp.testing.ts';
import { doubtSpans, dryPieces, recordFacts, startMonthOf, yearOf } from './record.ts';

describe('the days of a record', () => {
  it('dry stretches stand in order, and one across the seam has its whole length twice', () => {
    expect(dryPieces(Uint8Array.of(1, 1, 0, 1, 0, 0, 1))).toEqual([
      { from: 0, to: 2, days: 3 },
      { from: 3, to: 4, days: 1 },
      { from: 6, to: 7, days: 3 },
    ]);
    expect(dryPieces(Uint8Array.of(1, 1, 1))).toEqual([{ from: 0, to: 3, days: 3 }]);
    expect(dryPieces(Uint8Array.of(0, 0))).toEqual([]);
  });

  it('days that were not measured are told by kind, neighbours as filled', () => {
    expect(doubtSpans(Uint8Array.of(0, 2, 3, 1, 0, 4), 0, 6)).toEqual([
      { kind: 'filled', from: 1, to: 3 },
      { kind: 'unknown', from: 3, to: 4 },
      { kind: 'made', from: 5, to: 6 },
    ]);
    expect(doubtSpans(Uint8Array.of(2, 2, 2), 1, 2)).toEqual([{ kind: 'filled', from: 1, to: 2 }]);
  });

  it('a day is in the year that holds it', () => {
    const years = yearsFrom(2000, 1, 2);
    expect(yearOf(years, 0)?.label).toBe(2000);
    expect(yearOf(years, 365)?.label).toBe(2000);
    expect(yearOf(years, 366)?.label).toBe(2001);
    expect(yearOf(years, 731)).toBeNull();
    expect(yearOf(years, -1)).toBeNull();
  });

  it('facts: two years, dry for 3 days in July and 1 in August', () => {
    const years = yearsFrom(2001, 1, 2);
    const dry = new Array<number>(730).fill(0);
    for (const day of [181, 182, 183, 212]) dry[day] = 1;
    const state = new Array<number>(730).fill(0);
    state[5] = 2;
    state[6] = 1;
    const content = dry.map((isDry) => (isDry === 1 ? 0 : 40));
    const series = seriesOf(dayIndexOf(2001, 1, 1), content, { dry, state });
    expect(recordFacts({ series, years, tankVolume_L: 100, longestDryRun_days: 2 })).toEqual({
      days: 730,
      judgedYears: 2,
      firstDay: dayIndexOf(2001, 1, 1),
      lastDay: dayIndexOf(2002, 12, 31),
      dryDays: 4,
      longestRun: { from: dayIndexOf(2001, 7, 1), to: dayIndexOf(2001, 7, 3), days: 3, waterYear: 2001 },
      runsOver: 1,
      lowest_L: 0,
      filledDays: 1,
      unknownDays: 1,
      madeDays: 0,
      worstMonths: [7, 8],
    });
    expect(startMonthOf({ series, years })).toBe(1);
  });

  it('a record without days says so, and nothing is NaN', () => {
    const facts = recordFacts({ series: seriesOf(0, []), years: [], tankVolume_L: 0, longestDryRun_days: 7 });
    expect(facts).toMatchObject({ days: 0, firstDay: null, lowest_L: null, longestRun: null, worstMonths: [] });
  });
});
