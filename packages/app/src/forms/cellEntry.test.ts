import { folderTables } from '@eavewell/tables';
import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import { cellEntry, shownCell } from './cellEntry.ts';

const { numbers: english } = await loadAppLanguage('en');
const { numbers: spanish } = await loadAppLanguage('es');
const { sites, roofs, tanks, prices, demand } = folderTables;
const cell = (value: string | null) => ({ kind: 'cell', cell: value, heed: null, offer: null, readAs: null });

describe('what is typed into a field', () => {
  it('takes a comma and a point as the decimal mark, in every language', () => {
    for (const numbers of [english, spanish])
      for (const typed of ['12,5', '12.5', ' 12,50 '])
        expect(cellEntry(roofs.columns.length_m, typed, numbers)).toEqual(cell('12.5'));
  });

  it('is asked about where it may be two numbers, and nothing is guessed', () => {
    const amount = prices.columns.amount;
    expect(cellEntry(amount, '1,234', english)).toEqual({ kind: 'asks', readings: [1234, 1.234] });
    expect(cellEntry(amount, '1,234', spanish)).toEqual({ kind: 'asks', readings: [1.234, 1234] });
    expect(cellEntry(amount, '1,234', english, 1.234)).toMatchObject({ kind: 'cell', cell: '1.234' });
  });

  it('is told as it was read where only one of two numbers can stand there', () => {
    const read = cellEntry(sites.columns.people, '1,234', english);
    expect(read).toMatchObject({ kind: 'cell', cell: '1234', readAs: { key: 'forms.read_as' } });
  });

  it('is "not known" where it is empty, and never 0', () => {
    expect(cellEntry(sites.columns.people, '  ', english)).toEqual(cell(null));
    expect(cellEntry(sites.columns.name, '', english)).toMatchObject({
      kind: 'wrong',
      said: { key: 'forms.fault_missing' },
    });
  });

  it('is refused where it is impossible, and used with a word where it is unusual', () => {
    expect(cellEntry(roofs.columns.width_m, '700', english)).toMatchObject({
      kind: 'wrong',
      said: { key: 'forms.fault_out_of_range', values: { low: '0.5 m', high: '500 m' } },
    });
    expect(cellEntry(roofs.columns.width_m, '80', english)).toMatchObject({
      kind: 'cell',
      cell: '80',
      heed: { key: 'forms.heed_unusual' },
    });
    expect(cellEntry(sites.columns.people, '12.5', english)).toMatchObject({
      said: { key: 'forms.fault_not_whole' },
    });
    expect(cellEntry(demand.columns.purpose, 'hand washing', english)).toMatchObject({
      said: { key: 'forms.fault_unsafe_id' },
    });
  });

  it('offers what is likely meant: litres for cubic metres, per cent for a share', () => {
    expect(cellEntry(tanks.columns.nominal_L, '10', english)).toMatchObject({ kind: 'wrong', offer: '10000' });
    expect(cellEntry(roofs.columns.gutteredFraction, '0,4', english)).toMatchObject({
      kind: 'cell',
      cell: '0.004',
      offer: '0.4',
      heed: { key: 'forms.heed_percent', values: { likely: '40' } },
    });
    expect(cellEntry(sites.columns.growthFraction_per_year, '0.8', english)).toEqual(cell('0.008'));
  });
});

describe('a cell in its field', () => {
  it('has the decimal mark of the language, and shares in per cent, and comes back as it was', () => {
    expect(shownCell(roofs.columns.length_m, '12.5', ',')).toBe('12,5');
    for (const [column, text] of [
      [roofs.columns.gutteredFraction, '0.35'],
      [roofs.columns.gutteredFraction, '0.333'],
      [sites.columns.latitude_deg, '-10.6014'],
    ] as const) {
      const shown = shownCell(column, text, ',');
      expect(cellEntry(column, shown, spanish)).toMatchObject({ kind: 'cell', cell: text });
    }
    expect(shownCell(roofs.columns.gutteredFraction, '0.35', '.')).toBe('35');
  });

  it('stands as it is where it is no plain number', () => {
    expect(shownCell(roofs.columns.length_m, '12,5 m', ',')).toBe('12,5 m');
    expect(shownCell(roofs.columns.length_m, null, ',')).toBe('');
  });
});
