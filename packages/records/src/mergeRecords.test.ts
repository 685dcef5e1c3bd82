import { describe, expect, it } from 'vitest';
import type { ChangeRecord } from './changeRecord.ts';
import { mergeRecords, recordText } from './mergeRecords.ts';

const record = (device: string, number: number, by = 'Nadi'): ChangeRecord => ({
  device,
  number,
  clock: number,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: 0,
  by,
  source: { kind: 'visit', name: null },
  takesBack: null,
  changes: [{ kind: 'added', table: 'sites', key: 'A', after: { name: 'x', siteId: 'A' } }],
});

describe('mergeRecords', () => {
  it('knows each record once, in their order', () => {
    const merged = mergeRecords([record('b', 2), record('b', 1)], [record('a', 2), record('b', 2), record('a', 1)]);
    expect(merged.records.map(({ device, number }) => `${device}${number}`)).toEqual(['a1', 'b1', 'a2', 'b2']);
    expect(merged).toMatchObject({ differing: [], missing: [] });
  });

  it('names two records of one name and keeps the one that was known', () => {
    const merged = mergeRecords([record('a', 1)], [record('a', 1, 'Somebody else')]);
    expect(merged.differing).toEqual(['a.1']);
    expect(merged.records).toEqual([record('a', 1)]);
  });

  it('names records still on their way', () => {
    expect(mergeRecords([record('a', 1)], [record('a', 4)]).missing).toEqual([{ device: 'a', numbers: [2, 3] }]);
  });
});

it('writes one record one way', () => {
  const one = record('a', 1);
  const turned = Object.fromEntries(Object.entries(one).reverse()) as unknown as ChangeRecord;
  expect(recordText(turned)).toBe(recordText(one));
  expect(recordText(one)).not.toContain('\n');
});
