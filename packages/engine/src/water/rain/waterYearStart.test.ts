import { describe, expect, it } from 'vitest';
import { calendarDay, dayIndexOf, type RainRecord } from '../../kernel/index.ts';
import { waterYearStart, wholeWaterYears } from './waterYearStart.ts';

/** Rain every day but in the dry months. */
function record(from: number, to: number, dryMonths: readonly number[]): RainRecord {
  const rain_mm = new Float64Array(to - from).map((_, i) => (dryMonths.includes(calendarDay(from + i).month) ? 0 : 5));
  return { gaugeId: 'G1', firstDay: from, rain_mm, state: new Uint8Array(to - from) };
}
const years = (first: number, last: number, dryMonths: readonly number[]) =>
  record(dayIndexOf(first, 1, 1), dayIndexOf(last + 1, 1, 1), dryMonths);

describe('wholeWaterYears', () => {
  it('counts only years that are there from their first day to their last', () => {
    const whole = years(2000, 2004, []);
    expect(wholeWaterYears(whole, 1)).toEqual({ firstYear: 2000, years: 5 });
    expect(wholeWaterYears(whole, 7)).toEqual({ firstYear: 2000, years: 4 });
    const lacksADay = record(dayIndexOf(2000, 1, 2), dayIndexOf(2005, 1, 1), []);
    expect(wholeWaterYears(lacksADay, 1)).toEqual({ firstYear: 2001, years: 4 });
    expect(wholeWaterYears(record(dayIndexOf(2000, 3, 1), dayIndexOf(2000, 9, 1), []), 1).years).toBe(0);
  });
});

describe('waterYearStart', () => {
  it('stays in January where January splits nothing', () => {
    expect(waterYearStart(years(2000, 2009, [6, 7, 8]))).toBe(1);
  });

  it('leaves January where the dry season crosses the new year, for the nearest month that splits nothing', () => {
    expect(waterYearStart(years(2000, 2009, [11, 12, 1]))).toBe(2);
    expect(waterYearStart(years(2000, 2009, [12, 1, 2]))).toBe(12);
    expect(waterYearStart(years(2000, 2009, [10, 11, 12, 1, 2, 3]))).toBe(4);
  });

  it('prefers the month with more whole years among equals', () => {
    // From 1 May to 30 April: May holds 10 whole years, every other month 9.
    expect(waterYearStart(record(dayIndexOf(2000, 5, 1), dayIndexOf(2010, 5, 1), []))).toBe(5);
  });

  it('never gives up the only whole year', () => {
    expect(waterYearStart(years(2000, 2000, [12, 1]))).toBe(1);
  });

  it('never trades the only whole year for a boundary that splits nothing', () => {
    // One whole year from 1 July or 1 August; both cut the dry season, September would not.
    const month = waterYearStart(record(dayIndexOf(2000, 7, 1), dayIndexOf(2001, 8, 15), [6, 7, 8]));
    expect([7, 8]).toContain(month);
  });

  it('is January where there is no whole year', () => {
    expect(waterYearStart(record(dayIndexOf(2000, 3, 1), dayIndexOf(2000, 9, 1), []))).toBe(1);
  });
});
