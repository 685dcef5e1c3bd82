import { describe, expect, it } from 'vitest';
import { dayIndexOf, filledDay, type RainRecord, unknownDay } from '../../kernel/index.ts';
import { monthlyNormals } from './monthlyNormals.ts';

function years(first: number, last: number): RainRecord {
  const firstDay = dayIndexOf(first, 1, 1);
  const days = dayIndexOf(last + 1, 1, 1) - firstDay;
  return { gaugeId: 'G1', firstDay, rain_mm: new Float64Array(days).fill(0.5), state: new Uint8Array(days) };
}

describe('monthlyNormals', () => {
  it('gives totals, wet days and daily means by month', () => {
    const record = years(2001, 2005);
    record.rain_mm[dayIndexOf(2003, 1, 15) - record.firstDay] = 10.5;
    const [january, february] = monthlyNormals(record);
    expect(january).toMatchObject({ month: 1, years: 5, completeYears: 5, meanTotal_mm: 15.5 + 2, meanWetDays: 0.2 });
    expect(january?.meanDaily_mm).toBeCloseTo(0.5 + 2 / 31, 12);
    // Four common Februaries and one of 29 days.
    expect(february?.meanTotal_mm).toBeCloseTo((0.5 * (4 * 28 + 29)) / 5, 12);
  });

  it('drops a month with a day missing from totals and keeps it in the daily mean', () => {
    for (const how of [unknownDay, filledDay]) {
      const record = years(2001, 2005);
      record.state[dayIndexOf(2003, 1, 15) - record.firstDay] = how;
      record.rain_mm[dayIndexOf(2003, 1, 15) - record.firstDay] = 99;
      expect(monthlyNormals(record)[0]).toMatchObject({ completeYears: 4, meanTotal_mm: 15.5, meanDaily_mm: 0.5 });
    }
  });

  it('gives none where too few of the years are complete', () => {
    const record = years(2001, 2005);
    for (const year of [2002, 2003]) record.state[dayIndexOf(year, 1, 15) - record.firstDay] = unknownDay;
    expect(monthlyNormals(record)[0]).toMatchObject({ completeYears: 3, meanTotal_mm: null, meanWetDays: null });
    expect(monthlyNormals(record)[0]?.meanDaily_mm).toBeCloseTo(0.5, 12);
  });

  it('counts a month the record only touches among its years', () => {
    const whole = years(2001, 2005);
    const cut = { ...whole, rain_mm: whole.rain_mm.slice(0, -10), state: whole.state.slice(0, -10) };
    expect(monthlyNormals(cut)[11]).toMatchObject({ years: 5, completeYears: 4, meanTotal_mm: 15.5 });
  });

  it('gives null, never NaN, for a month the record does not touch', () => {
    const record = years(2001, 2001);
    const short = { ...record, rain_mm: record.rain_mm.slice(0, 40), state: record.state.slice(0, 40) };
    expect(monthlyNormals(short)[11]).toEqual({
      month: 12,
      years: 0,
      completeYears: 0,
      meanTotal_mm: null,
      meanWetDays: null,
      meanDaily_mm: null,
    });
  });
});
