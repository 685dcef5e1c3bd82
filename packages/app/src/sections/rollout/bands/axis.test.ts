import { dayIndexOf, readIsoDay } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { axisOf, dateOf, dayAt, isoWeekOf, mondayOf, monthsBetween, weekStep, weeksBetween, xOf } from './axis.ts';

const day = (text: string) => readIsoDay(text)!;

/** After `datetime.date.isocalendar` of Python 3.11's standard library: date, year, week. */
const isocalendar: readonly (readonly [string, number, number])[] = [
  ['1999-12-31', 1999, 52],
  ['2000-01-01', 1999, 52],
  ['2008-12-29', 2009, 1],
  ['2009-12-31', 2009, 53],
  ['2010-01-03', 2009, 53],
  ['2015-12-31', 2015, 53],
  ['2016-01-03', 2015, 53],
  ['2020-12-28', 2020, 53],
  ['2021-01-03', 2020, 53],
  ['2021-01-04', 2021, 1],
  ['2024-12-29', 2024, 52],
  ['2024-12-30', 2025, 1],
  ['2026-03-29', 2026, 13],
  ['2026-10-25', 2026, 43],
  ['2026-12-31', 2026, 53],
  ['2027-01-01', 2026, 53],
  ['2027-01-03', 2026, 53],
  ['2027-01-04', 2027, 1],
  ['2028-02-29', 2028, 9],
  ['2028-12-31', 2028, 52],
  ['2033-01-02', 2032, 53],
];

describe('the weeks of the axis', () => {
  it.each(isocalendar)('%s is of week %i-%i', (date, year, week) => {
    expect(isoWeekOf(day(date))).toEqual({ year, week });
  });

  it('begin on the Monday of the first day and end with the week of the last', () => {
    const axis = axisOf(day('2026-06-10'), day('2026-06-22'), 70);
    expect(dateOf(axis.first)).toBe('2026-06-08');
    expect(axis.weeks_count).toBe(3);
    expect(axis.width_px).toBe(210);
  });

  it('have a Monday before 1970 too', () => {
    expect(dateOf(mondayOf(day('1969-12-31')))).toBe('1969-12-29');
    expect(dateOf(mondayOf(day('1969-12-29')))).toBe('1969-12-29');
    expect(dateOf(mondayOf(day('1969-12-28')))).toBe('1969-12-22');
  });

  it('are as wide where clocks go forward or back as anywhere', () => {
    const axis = axisOf(day('2026-01-05'), day('2026-12-31'), 70);
    for (const sunday of ['2026-03-29', '2026-10-25', '2026-11-01'])
      expect(xOf(axis, day(sunday) + 1) - xOf(axis, day(sunday))).toBeCloseTo(10, 9);
    for (let at = axis.first; at < axis.first + axis.weeks_count * 7; at++) expect(dayAt(axis, xOf(axis, at))).toBe(at);
  });

  it('go on from week 53 to week 1 at the turn of the year', () => {
    const axis = axisOf(day('2026-12-20'), day('2027-01-12'), 30);
    expect(weeksBetween(axis, 0, axis.width_px).map(({ year, week }) => `${year}-${week}`)).toEqual([
      '2026-51',
      '2026-52',
      '2026-53',
      '2027-1',
      '2027-2',
    ]);
  });

  it('are given for what is seen and no more', () => {
    const axis = axisOf(day('2026-01-05'), day('2027-12-31'), 30);
    expect(weeksBetween(axis, 95, 151).map(({ x_px }) => x_px)).toEqual([90, 120, 150]);
    expect(weeksBetween(axis, -500, -10)).toEqual([]);
    expect(weeksBetween(axis, 1e6, 2e6)).toEqual([]);
  });

  it('are one where the last day is before the first', () => {
    expect(axisOf(day('2026-06-10'), day('2026-01-01'), 30).weeks_count).toBe(1);
  });

  it('write fewer numbers the narrower they are', () => {
    const axis = (week_px: number) => axisOf(0, 700, week_px);
    expect([40, 24, 23, 12, 7, 2, 1, 0.1].map((px) => weekStep(axis(px)))).toEqual([1, 1, 2, 2, 4, 13, 26, 52]);
  });
});

describe('the months of the axis', () => {
  it('are cut to it and meet without a gap', () => {
    const axis = axisOf(day('2026-11-25'), day('2027-03-02'), 70);
    const months = monthsBetween(axis, 0, axis.width_px);
    expect(months.map(({ year, month }) => `${year}-${month}`)).toEqual([
      '2026-11',
      '2026-12',
      '2027-1',
      '2027-2',
      '2027-3',
    ]);
    expect(months[0]!.x_px).toBe(0);
    expect(months.at(-1)!.end_px).toBe(axis.width_px);
    for (let i = 1; i < months.length; i++) expect(months[i]!.x_px).toBe(months[i - 1]!.end_px);
    expect(months[3]!.end_px - months[3]!.x_px).toBeCloseTo(280, 9);
  });

  it('have 29 days of a February in a leap year', () => {
    const axis = axisOf(dayIndexOf(2028, 1, 31), dayIndexOf(2028, 3, 6), 70);
    const february = monthsBetween(axis, 0, axis.width_px).find(({ month }) => month === 2)!;
    expect(february.end_px - february.x_px).toBeCloseTo(290, 9);
  });
});
