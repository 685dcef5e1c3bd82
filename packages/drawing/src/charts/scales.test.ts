import { dayIndexOf } from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { letterWidth_px } from './letterWidth.ts';
import { axisEnd, monthStarts, roundUp, shareOf, stepsUp, ticksTo, yearStarts, yearStep } from './scales.ts';

describe('scales', () => {
  it('round figures are never under what they stand for', () => {
    expect([0.3, 1, 1.01, 2.2, 3, 6, 11, 26_000].map((value) => roundUp(value))).toEqual([
      0.5, 1, 2, 2.5, 5, 10, 20, 50_000,
    ]);
    expect([0, -1, Number.NaN, Infinity].map((value) => roundUp(value))).toEqual([1, 1, 1, 1]);
    expect([11, 26_000, 70].map(axisEnd)).toEqual([12, 30_000, 80]);
  });

  it('an axis ends at a whole step, and has ticks at each', () => {
    expect(stepsUp(170, 4)).toBe(200);
    expect(stepsUp(44, 4)).toBe(60);
    expect(stepsUp(40, 4)).toBe(40);
    expect(ticksTo(60, 4)).toEqual([0, 20, 40, 60]);
    expect(ticksTo(200, 4)).toEqual([0, 50, 100, 150, 200]);
  });

  it('years and months begin where the calendar has them, both ends counted', () => {
    const [from, to] = [dayIndexOf(1999, 12, 1), dayIndexOf(2001, 1, 1)];
    expect(yearStarts(from, to).map(({ year }) => year)).toEqual([2000, 2001]);
    expect(yearStarts(from + 32, to - 1)).toEqual([]);
    const months = monthStarts(from, to);
    expect(months).toHaveLength(14);
    expect(months[0]).toEqual({ year: 1999, month: 12, day: from });
    expect(months[13]).toEqual({ year: 2001, month: 1, day: to });
    expect(monthStarts(from + 1, to - 1)).toHaveLength(12);
  });

  it('years are named as far apart as their letters need', () => {
    expect(yearStep(36, 34)).toBe(1);
    expect(yearStep(30, 34)).toBe(2);
    expect(yearStep(3, 34)).toBe(20);
  });

  it('a share is between 0 and 1, whatever is divided', () => {
    expect([shareOf(1, 4), shareOf(5, 4), shareOf(0, 0), shareOf(1, 0), shareOf(-1, 4)]).toEqual([0.25, 1, 0, 0, 0]);
  });

  it('letters: figures are all of one width, and strong ones wider', () => {
    expect(letterWidth_px('1,111')).toBe(letterWidth_px('8,888'));
    expect(letterWidth_px('dry', 'lettering', true)).toBeGreaterThan(letterWidth_px('dry'));
    expect(letterWidth_px('水', 'body')).toBeGreaterThan(letterWidth_px('w', 'body'));
    expect(letterWidth_px('')).toBe(0);
  });
});
