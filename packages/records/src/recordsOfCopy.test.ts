import { describe, expect, it } from 'vitest';
import type { ChangeRecord } from './changeRecord.ts';
import { foldRecords } from './foldRecords.ts';
import { mergeRecords } from './mergeRecords.ts';
import { readRecord } from './readRecord.ts';
import { recordsOfCopy } from './recordsOfCopy.ts';
import { nextSteps } from './takeBack.ts';

const record = (device: string, number: number, clock: number, people: string | null, more = {}): ChangeRecord => ({
  ...{ device, number, clock, at: '2026-01-01T00:00:00Z', offset_min: 0, by: 'Nadi', takesBack: null },
  source: { kind: 'form', name: null },
  changes: [
    number === 1
      ? { kind: 'added', table: 'sites', key: 'S001', after: people === null ? {} : { people } }
      : { kind: 'edited', table: 'sites', key: 'S001', before: { people: '1' }, after: { people } },
  ],
  ...more,
});

const own = [
  record('a', 1, 1, '1'),
  // At one clock the later name stands: with a mark behind the names their order would turn.
  record('a', 2, 2, '2'),
  record('a-b', 2, 2, '3'),
  record('a', 3, 3, '1', { source: { kind: 'undo', name: null }, takesBack: 'a-b.2' }),
];

describe('the history of a second programme', () => {
  it('comes to the same facts, under names of its own', () => {
    const copy = recordsOfCopy(own, 'm1');
    expect(copy.map(({ device, number }) => `${device}.${number}`)).toEqual(['m1-a.1', 'm1-a.2', 'm1-a-b.2', 'm1-a.3']);
    expect(copy.at(-1)!.takesBack).toBe('m1-a-b.2');
    for (const some of [1, 2, 3, 4])
      expect([...foldRecords(copy.slice(0, some)).rows('sites')]).toEqual([
        ...foldRecords(own.slice(0, some)).rows('sites'),
      ]);
    expect(copy.map(({ by, at }) => [by, at])).toEqual(own.map(({ by, at }) => [by, at]));
    expect(mergeRecords(own, copy)).toMatchObject({ differing: [], records: { length: 8 } });
    // What was done in the first cannot be undone in the second by one step.
    expect(nextSteps(copy, 'a')).toEqual({ undo: null, redo: null });
  });

  it('keeps the order of names that would grow too long', () => {
    const long = 'x'.repeat(60);
    const both = [record(`${long}a`, 1, 1, '1'), record(`${long}b`, 2, 2, '2'), record(`${long}a`, 2, 2, '3')];
    const copy = recordsOfCopy(both, 'mark1234');
    expect(copy.map(({ device }) => device)).toEqual(['mark1234-1', 'mark1234-2', 'mark1234-1']);
    expect(copy.every((one) => readRecord(one) !== null)).toBe(true);
    expect([...foldRecords(copy).rows('sites')]).toEqual([...foldRecords(both).rows('sites')]);
  });
});
