import { type ChangeRecord, foldRecords, type RowChange } from '@eavewell/records';
import { expect, it } from 'vitest';
import { refuseChange } from './refuseChange.ts';

const begun: ChangeRecord = {
  device: 'office',
  number: 1,
  clock: 1,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: 0,
  by: 'Nadi',
  source: { kind: 'form', name: null },
  takesBack: null,
  changes: [
    { kind: 'added', table: 'roofs', key: 'S001/hall', after: { siteId: 'S001', roofId: 'hall' } },
    { kind: 'added', table: 'files', key: 'tanks.csv', after: { text: 'siteId,tankId\nS001,T1,leaks\n' } },
  ],
};
const facts = foldRecords([begun]);
const roof = { table: 'roofs', key: 'S001/hall' };

it.each<readonly [code: string | undefined, change: RowChange]>([
  [undefined, { kind: 'edited', ...roof, before: { length_m: null }, after: { length_m: '12' } }],
  // What was seen differs from what stands: a conflict, and no refusal.
  [undefined, { kind: 'edited', ...roof, before: { length_m: '9' }, after: { length_m: '12' } }],
  [undefined, { kind: 'added', table: 'roofs', key: 'S001/store', after: { siteId: 'S001', roofId: 'store' } }],
  [undefined, { kind: 'removed', ...roof, before: { siteId: 'S001', roofId: 'hall' } }],
  [undefined, { kind: 'added', table: 'rain', key: 'G1/2001-03', after: { readings: '1;2' } }],
  ['change.table_unknown', { kind: 'added', table: 'files', key: 'sites.csv', after: { text: 'x' } }],
  ['change.table_unknown', { kind: 'added', table: 'constructor', key: 'x', after: {} }],
  ['change.table_as_file', { kind: 'added', table: 'tanks', key: 'S001/T1', after: { siteId: 'S001', tankId: 'T1' } }],
  ['change.row_there', { kind: 'added', ...roof, after: { siteId: 'S001', roofId: 'hall' } }],
  ['change.row_gone', { kind: 'removed', table: 'roofs', key: 'S001/store', before: {} }],
  ['change.row_gone', { kind: 'edited', table: 'sites', key: 'S009', before: { name: null }, after: { name: 'x' } }],
  [
    'change.key_differs',
    { kind: 'added', table: 'roofs', key: 'S001/store', after: { siteId: 'S001', roofId: 'barn' } },
  ],
  ['change.key_differs', { kind: 'edited', ...roof, before: { roofId: 'hall' }, after: { roofId: 'barn' } }],
])('answers %s', (code, change) => {
  expect(refuseChange(facts, change)?.code).toBe(code);
});
