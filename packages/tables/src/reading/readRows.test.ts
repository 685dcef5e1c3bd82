import { describe, expect, it } from 'vitest';
import { demand } from '../contract/demand.ts';
import { readRows } from './readRows.ts';

const header = ['siteId', 'purpose', 'litres_per_person_per_day', 'judged'];
const options = { file: 'demand.csv', decimalComma: false };

function read(...rows: readonly string[]) {
  const raw = rows.map((line, i) => ({ row: i + 2, cells: line.split(',') }));
  return readRows(demand, header, raw, options);
}

describe('readRows', () => {
  it('gives typed values with their row numbers', () => {
    const { rows, count, usable } = read('S1,drinking,7.5,yes', ',washing,5,no');
    expect(rows.map(({ row, values }) => ({ row, ...values }))).toEqual([
      { row: 2, siteId: 'S1', purpose: 'drinking', litres_per_person_per_day: 7.5, judged: true, months: null },
      { row: 3, siteId: null, purpose: 'washing', litres_per_person_per_day: 5, judged: false, months: null },
    ]);
    expect([count, usable]).toEqual([2, true]);
  });

  it('never takes a row with an unreadable siteId for the programme’s own', () => {
    const { rows, lost } = read('S 1,drinking,7.5,yes');
    expect(rows).toEqual([]);
    expect(lost).toEqual([{ row: 2, keys: { purpose: 'drinking' } }]);
  });

  it('keeps both of two rows that share part of a key', () => {
    expect(read('S1,drinking,7.5,yes', 'S2,drinking,7.5,yes', ',drinking,7.5,yes').problems).toEqual([]);
  });

  it('says which site a fault is about', () => {
    const { problems } = read('S1,drinking,many,yes', ',drinking,many,yes');
    expect(problems.map(({ place }) => place)).toEqual([
      { file: 'demand.csv', row: 2, column: 'litres_per_person_per_day', siteId: 'S1' },
      { file: 'demand.csv', row: 3, column: 'litres_per_person_per_day' },
    ]);
  });

  it('compares a third row with the first, however many there are', () => {
    const { rows, problems } = read('S1,drinking,7.5,yes', 'S1,drinking,8,yes', 'S1,drinking,7.5,yes');
    expect(rows).toHaveLength(1);
    expect(problems.map(({ code, place }) => [code, place.row])).toEqual([
      ['row.key_twice', 3],
      ['row.twice_same', 4],
    ]);
  });

  it('counts decimal commas by column where they are read', () => {
    const raw = ['7,5', '8,5', '9'].map((litres, i) => ({ row: i + 2, cells: [`S${i}`, 'drinking', litres, 'yes'] }));
    const { problems, rows } = readRows(demand, header, raw, { ...options, decimalComma: true });
    expect(rows.map(({ values }) => values.litres_per_person_per_day)).toEqual([7.5, 8.5, 9]);
    expect(problems).toMatchObject([
      { code: 'column.decimal_comma', severity: 'warning', place: { row: 2 }, facts: { value: '7,5', count: 2 } },
    ]);
  });
});
