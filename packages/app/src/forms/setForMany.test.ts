import { expect, it } from 'vitest';
import { nextId } from './options.ts';
import { mostOfOneRecord, settingAlike } from './setForMany.ts';

const site = (key: string, area?: string) => ({
  table: 'sites',
  key,
  cells: { siteId: key, ...(area === undefined ? {} : { area }) },
});

it('sets a cell where it is another, with what stands there', () => {
  expect(settingAlike([site('S1', 'north'), site('S2'), site('S3', 'south')], 'area', 'north')).toEqual([
    [
      { kind: 'edited', table: 'sites', key: 'S2', before: { area: null }, after: { area: 'north' } },
      { kind: 'edited', table: 'sites', key: 'S3', before: { area: 'south' }, after: { area: 'north' } },
    ],
  ]);
  expect(settingAlike([site('S1', 'north')], 'area', 'north')).toEqual([]);
});

it('parts what one record may not hold', () => {
  const many = Array.from({ length: mostOfOneRecord + 1 }, (_, i) => site(`S${i}`));
  expect(settingAlike(many, 'area', 'north').map(({ length }) => length)).toEqual([mostOfOneRecord, 1]);
});

it('proposes the next id as ids are written', () => {
  expect(nextId(['S001', 'S060', 'S009'], 'S')).toBe('S061');
  expect(nextId(['KAL-3', 'KAL-12'], 'S')).toBe('KAL-13');
  expect(nextId([], 'T')).toBe('T1');
  expect(nextId(['main'], 'T')).toBe('T1');
});
