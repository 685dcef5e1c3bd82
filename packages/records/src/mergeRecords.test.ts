import { describe, expect, it } from 'vitest';
import type { ChangeRecord } from './changeRecord.ts';
import { changesText, mergeRecords, recordText, recordTextOf } from './mergeRecords.ts';

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

it('puts a record together around changes that were written before, letter for letter', () => {
  const changes = [
    { kind: 'edited', table: 'sites', key: 'S1', before: { b: '1', a: null }, after: { b: null, a: '"changes":0,' } },
    { kind: 'added', table: 'sites', key: 'S2', after: { name: 'x' } },
  ] as const;
  const head: Omit<ChangeRecord, 'changes'> = {
    ...{ device: 'office', number: 2, clock: 3, at: '2026-03-01T00:00:00.000Z', offset_min: 0, by: '"changes":0,' },
    source: { kind: 'import', name: '"changes":0,' },
    takesBack: null,
  };
  expect(recordTextOf(head, changesText(changes)!)).toBe(recordText({ ...head, changes }));
  expect(changesText([changes[1], changes[1]])).toBeNull();
  expect(changesText([{ ...changes[1], table: '../x' }])).toBeNull();
});
