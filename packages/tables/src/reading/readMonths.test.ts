import { describe, expect, it } from 'vitest';
import { likelyMonthDay, readMonthDay, readMonths } from './readMonths.ts';

describe('readMonthDay', () => {
  it('reads the days of a year, 29 February as 28 February', () => {
    expect(['01-01', '02-28', '02-29', '03-01', '12-31'].map(readMonthDay)).toEqual([1, 59, 59, 60, 365]);
  });
  it('reads nothing else', () => {
    for (const text of ['', '1-1', '13-01', '00-10', '04-31', '02-30', '06/15', '15-06', '2026-06-15', '06-15 '])
      expect(readMonthDay(text), text).toBeNull();
  });
});

describe('likelyMonthDay', () => {
  it('names what a spreadsheet made of it', () => {
    expect(['15-Jun', 'Jun-15', '5 June', 'december 24', '2026-06-15'].map(likelyMonthDay)).toEqual([
      '06-15',
      '06-15',
      '06-05',
      '12-24',
      '06-15',
    ]);
    expect(['31-Jun', '15-Juin x', 'term', '06/15', '2026-06-31'].map(likelyMonthDay)).toEqual(Array(5).fill(null));
  });
});

describe('readMonths', () => {
  it('reads months, spans and spans over the year’s end, parted by spaces or semicolons', () => {
    expect(readMonths('6')).toEqual([6]);
    expect(readMonths('6-9')).toEqual([6, 7, 8, 9]);
    expect(readMonths('06 to 09')).toEqual([6, 7, 8, 9]);
    expect(readMonths('12 to 1; 6 7')).toEqual([1, 6, 7, 12]);
    expect(readMonths('1 to 12')).toHaveLength(12);
    expect(readMonths('3 to 3 3')).toEqual([3]);
  });
  it('reads nothing else', () => {
    for (const text of ['', '0', '13', '6 to', '6-9-11', 'June', '09-Jun', '6,7', '6..9', '2026-06-09', '6 - ', '123'])
      expect(readMonths(text), text).toBeNull();
  });
});
