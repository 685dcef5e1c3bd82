import { expect, it } from 'vitest';
import type { ChangeRecord, RowChange } from './changeRecord.ts';
import { historyOf } from './historyOf.ts';

const record = (number: number, change: RowChange): ChangeRecord => ({
  device: 'office',
  number,
  clock: number,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: 0,
  by: 'Nadi',
  source: { kind: 'form', name: null },
  takesBack: null,
  changes: [change],
});

it('tells every value a cell had, oldest first', () => {
  const row = { table: 'sites', key: 'A' };
  const records = [
    record(3, { kind: 'removed', ...row, before: { siteId: 'A', people: '60' } }),
    record(1, { kind: 'added', ...row, after: { siteId: 'A', people: '50' } }),
    record(2, { kind: 'edited', ...row, before: { people: '50' }, after: { people: '60' } }),
    record(4, { kind: 'added', ...row, after: { siteId: 'A' } }),
  ];
  const told = historyOf(records, 'sites', 'A', 'people').map(({ record: { number }, before, after }) => [
    number,
    before,
    after,
  ]);
  expect(told).toEqual([
    [1, null, '50'],
    [2, '50', '60'],
    [3, '60', null],
  ]);
  expect(historyOf(records, 'sites', 'B', 'people')).toEqual([]);
});
