import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import { askedBefore, type ChangeTold, type RecordTold, type RecordWords, recordSentence } from './recordSentence.ts';

const { say } = await loadAppLanguage('en');
const record = (number: number, changes: readonly ChangeTold[], more: Partial<RecordTold> = {}): RecordTold => ({
  device: 'office',
  number,
  clock: number,
  place: number,
  at: '2026-01-01T00:00:00Z',
  offset_min: 0,
  by: 'Nadi',
  source: { kind: 'form', name: null },
  takesBack: null,
  changes: [...changes],
  changeCount: changes.length,
  said: null,
  ...more,
});
const edit: ChangeTold = {
  kind: 'edited',
  table: 'sites',
  key: 'S014',
  before: { people: '120' },
  after: { people: '134' },
};
const roof: ChangeTold = { kind: 'added', table: 'roofs', key: 'S014/R2', after: { siteId: 'S014', roofId: 'R2' } };
const first = record(1, [edit]);
const undo = record(2, [edit], { source: { kind: 'undo', name: null }, takesBack: 'office.1', by: 'Amara' });
const words: RecordWords = {
  say,
  words: {
    label: (_, column) => (column === 'people' ? 'People' : column),
    one: (table) => table.slice(0, -1),
    choice: (word) => word,
  },
  cell: (_, cell) => cell ?? 'not known',
  siteName: (siteId) => (siteId === 'S014' ? 'Osk' : null),
  find: (name) => (name === 'office.1' ? first : name === 'office.2' ? undo : undefined),
};
const told = (one: RecordTold) => recordSentence(one, words);

describe('a record in words', () => {
  it('says who set what from what to what', () => {
    expect(told(first)).toBe('Nadi set People of Osk (S014) from 120 to 134.');
    expect(told(record(3, [roof]))).toBe('Nadi added roof R2 of Osk (S014).');
    expect(told(record(3, [edit, roof]))).toBe('Nadi changed 2 rows of Osk (S014).');
    expect(told(record(3, [edit, { ...edit, key: 'S015' }]))).toBe('Nadi changed 2 rows.');
  });

  it('tells a site that comes from one that goes, by its name', () => {
    const cells = { siteId: 'S061', name: 'Pellanta' };
    const site: ChangeTold = { kind: 'added', table: 'sites', key: 'S061', after: cells };
    const its = (table: string, key: string): ChangeTold => ({ kind: 'added', table, key, after: {} });
    const rows = [its('roofs', 'S061/R1'), its('tanks', 'S061/T1')];
    expect(told(record(3, [site, ...rows]))).toBe('Nadi added site Pellanta (S061) with 2 rows.');
    expect(told(record(3, [site]))).toBe('Nadi added site Pellanta (S061).');
    const gone = [site, ...rows].map(({ table, key }) => ({ kind: 'removed' as const, table, key, before: cells }));
    expect(told(record(3, gone))).toBe('Nadi removed site Pellanta (S061) with 2 rows.');
    expect(told(record(3, [...gone.slice(0, 1), ...rows]))).toBe('Nadi changed 3 rows of S061.');
  });

  it('tells what was done to plans as the program says it, also where it was taken back', () => {
    const stop: ChangeTold = {
      ...edit,
      table: 'planStops',
      key: 'P1/S014',
      before: { tripId: 'T3' },
      after: { tripId: 'T1' },
    };
    const moved = record(3, [stop, { ...stop, key: 'P1/S015' }], { said: 'Osk went from trip 3 of A to trip 1 of B' });
    expect(told(moved)).toBe('Osk went from trip 3 of A to trip 1 of B (Nadi).');
    const back = record(4, [stop], {
      source: { kind: 'undo', name: null },
      takesBack: 'phone.9',
      said: 'Osk went home',
    });
    expect(told(back)).toBe('Osk went home (Nadi).');
    expect(told({ ...back, takesBack: 'office.1' })).toBe(
      'Nadi took back: Nadi set People of Osk (S014) from 120 to 134.',
    );
  });

  it('asks before the first filling, or many rows, are taken back', () => {
    const filling = record(1, [roof], { source: { kind: 'import', name: 'export.zip' } });
    expect(askedBefore(filling)).toBe('all');
    expect(askedBefore({ ...filling, place: 2 })).toBeNull();
    expect(askedBefore({ ...filling, place: 2, changeCount: 51 })).toBe('many');
    expect(askedBefore(record(1, [edit]))).toBeNull();
  });

  it('says which file came in, and what was taken back', () => {
    expect(told(record(3, [roof], { source: { kind: 'import', name: 'survey.xlsx' }, changeCount: 120 }))).toBe(
      'Nadi took in survey.xlsx: 120 rows.',
    );
    expect(told(undo)).toBe('Amara took back: Nadi set People of Osk (S014) from 120 to 134.');
    const redo = record(4, [edit], { source: { kind: 'redo', name: null }, takesBack: 'office.2' });
    expect(told(redo)).toBe('Nadi did again: Nadi set People of Osk (S014) from 120 to 134.');
    const unknown = record(4, [edit], { source: { kind: 'undo', name: null }, takesBack: 'phone.9' });
    expect(told(unknown)).toBe('Nadi took the change before back: 1 row.');
  });
});
