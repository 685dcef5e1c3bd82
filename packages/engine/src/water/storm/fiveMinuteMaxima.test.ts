import { describe, expect, it } from 'vitest';
import { dayIndexOf, type ShortReading } from '../../kernel/index.ts';
import { fiveMinuteMaxima, fixedWindowFactor } from './fiveMinuteMaxima.ts';

const row = (
  [year, month, day]: readonly [number, number, number],
  minuteOfDay: number,
  rain_mm: number,
  interval_min = 5,
): ShortReading => ({ day: dayIndexOf(year, month, day), minuteOfDay, interval_min, rain_mm });

/** A year with light rain on one day of each month. */
const lightYear = (year: number) => Array.from({ length: 12 }, (_, i) => row([year, i + 1, 15], 900, 1));

describe('the most rain in five minutes of each year', () => {
  it('of five-minute rows is that of the fullest, with what a window by the clock misses', () => {
    const { maxima } = fiveMinuteMaxima([...lightYear(2001), row([2001, 7, 3], 600, 11), row([2001, 7, 3], 605, 9)]);
    expect(maxima).toHaveLength(1);
    expect(maxima[0]).toMatchObject({ year: 2001, measured_mm: 11 });
    expect(maxima[0]!.depth_mm).toBeCloseTo((11 * 8) / 7, 12);
  });

  it('of one-minute rows is that of the fullest five in a row, gaps counting as dry', () => {
    const minutes = [3, 1, 0, 2, 4, 3, 1].flatMap((rain_mm, i) =>
      rain_mm === 0 ? [] : [row([2001, 7, 3], 600 + i, rain_mm, 1)],
    );
    const { maxima } = fiveMinuteMaxima([...lightYear(2001), ...minutes]);
    // 0 + 2 + 4 + 3 + 1; the four minutes before are 3 + 1 + 0 + 2 + 4, as many.
    expect(maxima[0]!.measured_mm).toBe(10);
    expect(maxima[0]!.depth_mm).toBeCloseTo(10 * (5 / 4.875), 12);
  });

  it('of a lone minute is that minute, and far minutes do not add up', () => {
    const { maxima } = fiveMinuteMaxima([
      ...lightYear(2001),
      row([2001, 7, 3], 600, 4, 1),
      row([2001, 7, 3], 605, 4, 1),
      row([2001, 7, 3], 609, 2, 1),
    ]);
    expect(maxima[0]!.measured_mm).toBe(6);
  });

  it('runs over midnight', () => {
    const { maxima } = fiveMinuteMaxima([
      ...lightYear(2001),
      row([2001, 7, 3], 1439, 4, 1),
      row([2001, 7, 3], 1440, 4, 1),
      row([2001, 7, 4], 1, 4, 1),
    ]);
    expect(maxima[0]!.measured_mm).toBe(12);
  });

  it('leaves out intervals too long or of no whole number to five minutes, and counts them', () => {
    const rows = [
      ...lightYear(2001),
      row([2001, 7, 3], 600, 40, 15),
      row([2001, 7, 3], 700, 9, 2),
      row([2001, 7, 3], 800, 9, 0),
    ];
    const { maxima, coarse_count } = fiveMinuteMaxima(rows);
    expect(maxima[0]!.measured_mm).toBe(1);
    expect(coarse_count).toBe(3);
  });

  it('counts rows that stand twice or overlap once, the larger where they end together', () => {
    const rows = [...lightYear(2001), row([2001, 7, 3], 600, 7), row([2001, 7, 3], 600, 8), row([2001, 7, 3], 602, 30)];
    const { maxima, overlapping_count } = fiveMinuteMaxima(rows);
    expect(maxima[0]!.measured_mm).toBe(8);
    expect(overlapping_count).toBe(2);
  });

  it('does not use what cannot be believed', () => {
    const rows = [...lightYear(2001), row([2001, 7, 3], 600, 51), row([2001, 8, 3], 600, -1)];
    const found = fiveMinuteMaxima(rows);
    expect(found.maxima[0]!.measured_mm).toBe(1);
    expect(found).toMatchObject({ unlikely_count: 2, firstUnlikelyDay: dayIndexOf(2001, 7, 3) });
  });

  it('of years that the record begins or ends in nothing is said; a month without rain at either end is no gap', () => {
    const rows = [row([2000, 3, 1], 600, 20), ...lightYear(2001), ...lightYear(2002).slice(0, 11)];
    const found = fiveMinuteMaxima(rows);
    expect(found.maxima.map(({ year }) => year)).toEqual([2001]);
    expect(found.partYears).toEqual([2000, 2002]);
  });

  it('of years with far fewer days of rain than the others nothing is said, nor of years without any', () => {
    const rows = [2001, 2002, 2003, 2006].flatMap(lightYear).concat(lightYear(2005).slice(0, 4));
    const found = fiveMinuteMaxima(rows);
    expect(found.maxima.map(({ year }) => year)).toEqual([2001, 2002, 2003, 2006]);
    expect(found.thinYears).toEqual([2004, 2005]);
  });

  it('of no rows is nothing', () => {
    expect(fiveMinuteMaxima([])).toMatchObject({ maxima: [], partYears: [], thinYears: [], coarse_count: 0 });
  });
});

it('a window by the clock misses most where it is one interval', () => {
  expect(fixedWindowFactor(1)).toBeCloseTo(8 / 7, 12);
  expect(fixedWindowFactor(5)).toBeCloseTo(1.0256, 4);
});
