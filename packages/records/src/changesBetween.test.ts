import { expect, it } from 'vitest';
import type { ChangeRecord } from './changeRecord.ts';
import { changesBetween } from './changesBetween.ts';
import { foldRecords } from './foldRecords.ts';

const begun: ChangeRecord = {
  device: 'office',
  number: 1,
  clock: 1,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: 0,
  by: 'Nadi',
  source: { kind: 'import', name: 'survey' },
  takesBack: null,
  changes: [
    { kind: 'added', table: 'sites', key: 'A', after: { siteId: 'A', people: '50' } },
    { kind: 'added', table: 'sites', key: 'B', after: { siteId: 'B' } },
  ],
};
const facts = foldRecords([begun]);

it('finds nothing where everything stands already', () => {
  const wanted = new Map([
    ['B', { siteId: 'B' }],
    ['A', { people: '50', siteId: 'A' }],
  ]);
  expect(changesBetween(facts, 'sites', wanted, 'go')).toEqual([]);
});

it('finds cells that differ, rows that are new, and rows that go where they may', () => {
  const wanted = new Map([
    ['C', { siteId: 'C' }],
    ['A', { siteId: 'A', name: 'Ford' }],
  ]);
  const changed = [
    { kind: 'added', table: 'sites', key: 'C', after: { siteId: 'C' } },
    {
      kind: 'edited',
      table: 'sites',
      key: 'A',
      before: { people: '50', name: null },
      after: { people: null, name: 'Ford' },
    },
  ];
  expect(changesBetween(facts, 'sites', wanted, 'stay')).toEqual(changed);
  expect(changesBetween(facts, 'sites', wanted, 'go')).toEqual([
    ...changed,
    { kind: 'removed', table: 'sites', key: 'B', before: { siteId: 'B' } },
  ]);
});
