import { expect, it } from 'vitest';
import type { ChangeRecord } from './changeRecord.ts';
import { readRecord } from './readRecord.ts';

const row = { table: 'sites', key: 'A' };
const record: ChangeRecord = {
  device: 'office',
  number: 1,
  clock: 4,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: -600,
  by: 'Nadi',
  source: { kind: 'import', name: 'survey.xlsx' },
  takesBack: null,
  changes: [
    { kind: 'added', ...row, after: { siteId: 'A' } },
    { kind: 'edited', table: 'sites', key: 'B', before: { people: '5' }, after: { people: null } },
    { kind: 'removed', table: 'demand', key: '/washing', before: { purpose: 'washing' } },
  ],
};

it('reads what it would write', () => {
  expect(readRecord(JSON.parse(JSON.stringify(record)))).toEqual(record);
});

it('reads nothing that is not wholly a record', () => {
  const wrong: readonly unknown[] = [
    null,
    'text',
    [],
    { ...record, number: 0 },
    { ...record, clock: 1.5 },
    { ...record, device: '../etc' },
    { ...record, at: 'yesterday' },
    { ...record, source: { kind: 'guess', name: null } },
    { ...record, more: 1 },
    { ...record, changes: [{ kind: 'added', ...row, after: { siteId: 7 } }] },
    { ...record, changes: [{ kind: 'edited', ...row, before: { people: '5' }, after: { name: 'x' } }] },
    { ...record, changes: [record.changes[0], record.changes[0]] },
    { ...record, changes: [{ kind: 'moved', ...row }] },
  ];
  for (const one of wrong) expect(readRecord(one)).toBeNull();
});
