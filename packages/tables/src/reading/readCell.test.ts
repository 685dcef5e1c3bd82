import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allTables } from '../contract/allTables.ts';
import { expectedText } from '../contract/columns.ts';
import { sites } from '../contract/sites.ts';
import { readCell } from './readCell.ts';
import { tableProblems } from './tableProblems.ts';

const habit = { decimalComma: false };
const { columns } = sites;

describe('readCell', () => {
  it('reads an empty cell as not known, never 0', () => {
    expect(readCell(columns.people, '  ', habit)).toEqual({ value: null, fault: null, comma: false });
  });

  it('takes no notice of spaces round a value', () => {
    expect(readCell(columns.people, ' 120\u00a0', habit).value).toBe(120);
  });

  it('keeps the ends of a range, and leaves out an end it is above', () => {
    expect(readCell(columns.latitude_deg, '-90', habit).value).toBe(-90);
    expect(readCell(columns.latitude_deg, '90', habit).value).toBe(90);
    expect(readCell(columns.latitude_deg, '90.000001', habit).fault!.code).toBe('cell.out_of_range');
    expect(readCell(columns.rainFactor, '5', habit).value).toBe(5);
    expect(readCell(columns.rainFactor, '0', habit).fault!.code).toBe('cell.out_of_range');
    expect(readCell(columns.rainFactor, '1e-9', habit).value).toBe(1e-9);
  });

  it('warns outside the usual range and uses the value', () => {
    const reading = readCell(columns.people, '5', habit);
    expect(reading.value).toBe(5);
    expect(reading.fault).toMatchObject({ code: 'cell.unusual', facts: { low: '10', high: '3000', unit: 'person' } });
  });

  it('loses one apostrophe of a text or an id, and none of a number', () => {
    expect(readCell(columns.name, "'=Tarn", habit).value).toBe('=Tarn');
    expect(readCell(columns.gaugeId, "'-east", habit).value).toBe('-east');
    expect(readCell(columns.people, "'120", habit).fault!.code).toBe('cell.not_a_number');
  });

  it('lets no id be a path', () => {
    for (const text of ['../x', 'a/b', 'a\\b', '.', 'a b', 'é', 'x'.repeat(65)])
      expect(readCell(columns.gaugeId, text, habit)).toMatchObject({ value: null, fault: { code: 'cell.unsafe_id' } });
    expect(readCell(columns.gaugeId, 'x'.repeat(64), habit).value).toHaveLength(64);
  });

  it('shows a long cell cut, with the whole length known', () => {
    const { fault } = readCell(columns.name, 'n'.repeat(501), habit);
    expect(fault).toMatchObject({ code: 'cell.too_long', facts: { length: 501, longest: 500 } });
    expect(String(fault!.facts['value'])).toHaveLength(81);
  });

  const every = allTables.flatMap((table) => Object.entries(table.columns).map(([name, column]) => ({ name, column })));

  it('gives a value of the column’s own kind, or null with a blocker that names the cell, for any text', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom('0', '1e400', 'NaN', '-0', '9'.repeat(400), '2001-02-30', 'yes', '24:00', '12 m', '1,5'),
    );
    fc.assert(
      fc.property(fc.constantFrom(...every), text, fc.boolean(), ({ column }, written, decimalComma) => {
        const { value, fault } = readCell(column, written, { decimalComma });
        const blocked = fault !== null && tableProblems[fault.code] === 'blocker';
        expect(value === null).toBe(blocked || written.trim() === '');
        if (value !== null) expect(column.schema.safeParse(value).success).toBe(true);
        if (fault === null) return;
        expect(fault.facts['expected']).toBe(expectedText(column));
        expect(fault.facts).toHaveProperty('value');
      }),
      { seed: 5, numRuns: 2000 },
    );
  });
});
