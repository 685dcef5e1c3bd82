import { isoDay } from '@eavewell/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDate } from './readDate.ts';

describe('readDate', () => {
  it('reads year-month-day', () => {
    expect(readDate('2000-02-29')).toEqual({ value: 11016 });
  });

  it.each([
    ['01/02/2001', 'cell.date_form', ['2001-02-01', '2001-01-02']],
    ['25.12.2001', 'cell.date_form', ['2001-12-25']],
    ['12-25-2001', 'cell.date_form', ['2001-12-25']],
    ['2001-2-3', 'cell.date_form', ['2001-02-03']],
    ['2001/02/03', 'cell.date_form', ['2001-02-03']],
    ['20010203', 'cell.date_form', ['2001-02-03']],
    ['2001-02-03T07:00:00', 'cell.date_form', ['2001-02-03']],
    ['01/02/01', 'cell.date_form', []],
    ['31/31/2001', 'cell.date_form', []],
    // The 1900 date system's day 61 is 1900-03-01: common practice, no source.
    ['10000', 'cell.date_serial', ['1927-05-18']],
    ['45000.75', 'cell.date_serial', ['2023-03-15']],
  ])('names %s and what it could mean', (text, code, readings) => {
    expect(readDate(text)).toEqual({ code, facts: { readings } });
  });

  it.each([
    ['2001-02-29', 'cell.date_not_real'],
    ['2001-13-01', 'cell.date_not_real'],
    ['1 March 2001', 'cell.not_a_date'],
    ['-2001-01-01', 'cell.not_a_date'],
    ['01001', 'cell.not_a_date'],
  ])('refuses %s', (text, code) => {
    expect(readDate(text)).toEqual({ code, facts: {} });
  });

  it('reads back every day as it is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: -700000, max: 2900000 }), (day) => {
        expect(readDate(isoDay(day))).toEqual({ value: day });
      }),
      { seed: 3 },
    );
  });
});
