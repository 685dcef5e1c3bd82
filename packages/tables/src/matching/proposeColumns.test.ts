import { describe, expect, it } from 'vitest';
import { diverters } from '../contract/diverters.ts';
import { downpipes } from '../contract/downpipes.ts';
import { gutters } from '../contract/gutters.ts';
import { rain } from '../contract/rain.ts';
import { roofs } from '../contract/roofs.ts';
import { sites } from '../contract/sites.ts';
import type { Table } from '../contract/table.ts';
import { tanks } from '../contract/tanks.ts';
import { headerWords } from './headerWords.ts';
import { proposeColumns } from './proposeColumns.ts';

const propose = (table: Table, header: readonly string[], ...rows: readonly (readonly string[])[]) =>
  proposeColumns(
    table,
    header,
    rows.map((cells, i) => ({ row: i + 2, cells })),
    null,
  );

describe('headerWords', () => {
  it.each([
    ['Rain (in)', ['rain'], 'in'],
    ['rain_mm', ['rain'], 'mm'],
    ['Rainfall [mm]', ['rain'], 'mm'],
    ['Roof length in feet', ['roof', 'length'], 'ft'],
    ['LENGTH_FT', ['length'], 'ft'],
    ['roofPlanArea_m2', ['roof', 'plan', 'area'], 'm2'],
    ['Area (sq ft)', ['area'], 'ft2'],
    ['Capacity US gal', ['nominal'], 'usgal'],
    ['Capacity (gallons)', ['nominal'], 'gal'],
    ['Guttered %', ['guttered'], 'percent'],
    ['Village', ['name'], null],
    ['Village code', ['site', 'id'], null],
    ['m', ['m'], null],
  ])('%s', (header, words, unit) => {
    expect(headerWords(header)).toEqual({ words, unit });
  });
});

describe('proposeColumns', () => {
  it('proposes nothing for what is understood, and nothing for what is like none', () => {
    expect(propose(roofs, ['siteId', 'roofId', 'length_m'], ['S1', 'a', '5'])).toEqual([]);
    expect(propose(roofs, ['siteId', 'roofId', 'Surveyor'], ['S1', 'a', 'Uta'])).toMatchObject([
      { header: 'Surveyor', match: null },
    ]);
  });

  it('looks at the values: words do not fit a length, and a wrong order of day and month fits no date', () => {
    const words = propose(roofs, ['siteId', 'roofId', 'length'], ['S1', 'a', 'long'], ['S1', 'b', 'short']);
    expect(words).toMatchObject([{ header: 'length', open: 'values', fits: 0, looked: 2 }]);
    const days = propose(rain, ['Day', 'rain_mm'], ['25/12/2001', '1'], ['26/12/2001', '1'], ['01/02/2001', '1']);
    expect(days).toMatchObject([{ match: { column: 'date', dateOrder: 'dmy' }, open: null, fits: 3 }]);
    const american = propose(rain, ['Day', 'rain_mm'], ['12/25/2001', '1'], ['01/02/2001', '1']);
    expect(american).toMatchObject([{ match: { column: 'date', dateOrder: 'mdy' }, open: null, fits: 2 }]);
  });

  it('never settles by itself which gallon, which order, or which of two', () => {
    expect(propose(tanks, ['siteId', 'tankId', 'Volume (gal)'], ['S1', 'T', '500'])).toMatchObject([
      { open: 'gallon' },
    ]);
    expect(propose(rain, ['date', 'rain_mm'], ['01/02/2001', '1'])).toMatchObject([
      { header: 'date', open: 'dateOrder', why: ['ownName'] },
    ]);
    const two = propose(sites, ['siteId', 'name', 'Population', 'Persons'], ['S1', 'A', '5', '6']);
    expect(two.map(({ header, open }) => [header, open])).toEqual([
      ['Population', 'several'],
      ['Persons', 'several'],
    ]);
  });

  it('gives no column to two headers that can be accepted', () => {
    const header = ['siteId', 'roofId', 'Length', 'length (m)', 'roof length', 'width', 'Widht_m'];
    const proposals = propose(roofs, header, ['S1', 'a', '5', '5', '5', '5', '5']);
    const columns = proposals.flatMap(({ match, open }) => (match !== null && open === null ? [match.column] : []));
    expect(new Set(columns).size).toBe(columns.length);
    expect(columns).toEqual(['width_m']);
  });

  it('never takes a measure for an id, and names every column it could be, the best first', () => {
    const [volume] = propose(tanks, ['siteId', 'Tank volume (m3)'], ['S1', '5']);
    expect(volume).toMatchObject({ match: { column: 'nominal_L', unit: 'm3' } });
    expect(volume!.choices.map(({ column }) => column)).not.toContain('tankId');
    const [height] = propose(tanks, ['siteId', 'tankId', 'Outlet or overflow height (cm)'], ['S1', 'A', '150']);
    expect(height).toMatchObject({ open: 'several' });
    expect(height!.choices.slice(0, 2)).toEqual([
      { column: 'outletHeight_m', hows: ['cm'] },
      { column: 'overflowHeight_m', hows: ['cm'] },
    ]);
  });

  it('proposes a column of the same word though many of its values are bad', () => {
    const rows = ['2027-03-01', 'soon', 'soon'].map((day, i) => [`S${i}`, 'A', day]);
    expect(propose(sites, ['siteId', 'name', 'Handover'], ...rows)).toMatchObject([
      { match: { column: 'handOverDay' }, open: 'values', fits: 1, looked: 3 },
    ]);
  });

  it('finds the measures of a building, in feet, inches and percent', () => {
    const found = (table: Parameters<typeof propose>[0], header: string, cell: string) =>
      propose(table, [...table.key, header], [...table.key, cell])[0];
    const used = (column: string, unit: string | null) => ({ match: { column, unit }, open: null });
    expect(found(roofs, 'Eave height (ft)', '9')).toMatchObject(used('eaveHeight_m', 'ft'));
    expect(found(roofs, 'Pitch', '22')).toMatchObject(used('pitch_deg', null));
    expect(found(tanks, 'Stand height (in)', '18')).toMatchObject(used('standHeight_m', 'in'));
    expect(found(tanks, 'Height (ft)', '8')).toMatchObject(used('height_m', 'ft'));
    expect(found(gutters, 'Width (in)', '5')).toMatchObject(used('width_mm', 'in'));
    expect(found(gutters, 'Length (ft)', '40')).toMatchObject(used('length_m', 'ft'));
    expect(found(gutters, 'Fall (mm/m)', '5')).toMatchObject(used('fall_mm_per_m', null));
    expect(found(gutters, 'fall_mm_per_metre', '5')).toMatchObject(used('fall_mm_per_m', null));
    expect(found(gutters, 'Fall (%)', '0.5')).toMatchObject(used('fall_mm_per_m', 'percent'));
    expect(found(downpipes, 'Bore (in)', '3')).toMatchObject(used('bore_mm', 'in'));
    expect(found(diverters, 'Chamber bore (in)', '6')).toMatchObject(used('chamberBore_mm', 'in'));
    expect(found(diverters, 'Drain hole (mm)', '4')).toMatchObject(used('drainHole_mm', null));
    expect(found(diverters, 'Drain hole', 'blocked')).toMatchObject(used('drainHole', null));
  });

  it('names a unit that cannot be converted', () => {
    expect(propose(roofs, ['siteId', 'roofId', 'Length (kg)'], ['S1', 'a', '5'])).toMatchObject([{ open: 'unit' }]);
  });
});
