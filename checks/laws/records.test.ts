import {
  type ChangeRecord,
  changesBetween,
  compareRecords,
  type Facts,
  foldRecords,
  historyOf,
  mergeRecords,
  nextSteps,
  type RowChange,
  recordName,
  takeBack,
} from '@eavewell/records';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const seed = 20261125;
const table = 'sites';
const keys = ['A', 'B', 'C'];
const columns = ['people', 'name', 'gaugeId'];

/** What somebody does next, on which device; `hear` is how many of the records not yet heard of come in before. */
interface Act {
  readonly device: string;
  readonly hear: number;
  readonly kind: 'set' | 'remove' | 'undo' | 'redo' | 'table';
  readonly key: string;
  readonly column: string;
  readonly value: string | null;
}

const act: fc.Arbitrary<Act> = fc.record({
  device: fc.constantFrom('office', 'phone', 'boat'),
  hear: fc.nat(6),
  kind: fc.constantFrom('set', 'set', 'set', 'remove', 'undo', 'redo', 'table'),
  key: fc.constantFrom(...keys),
  column: fc.constantFrom(...columns),
  value: fc.constantFrom('1', '2', '3', null),
});

function changesOf({ kind, key, column, value }: Act, known: readonly ChangeRecord[], facts: Facts, device: string) {
  const present = facts.row(table, key);
  const steps = nextSteps(known, device);
  const of = (changes: readonly RowChange[], source: ChangeRecord['source']['kind'] = 'form', back?: ChangeRecord) => ({
    changes,
    source: { kind: source, name: null },
    takesBack: back ? recordName(back) : null,
  });
  if (kind === 'undo') return steps.undo ? of(takeBack(steps.undo, facts).changes, 'undo', steps.undo) : of([]);
  if (kind === 'redo') return steps.redo ? of(takeBack(steps.redo, facts).changes, 'redo', steps.redo) : of([]);
  if (kind === 'table') return of(changesBetween(facts, table, new Map([[key, { [column]: value ?? '9' }]]), 'go'));
  if (kind === 'remove') return of(present ? [{ kind: 'removed', table, key, before: present }] : []);
  if (!present) return of([{ kind: 'added', table, key, after: { [column]: value ?? '0' } }]);
  return of([
    { kind: 'edited', table, key, before: { [column]: present[column] ?? null }, after: { [column]: value } },
  ]);
}

/** Plays the acts: each device knows its own records and those it heard of. */
function play(acts: readonly Act[]): readonly ChangeRecord[] {
  const all: ChangeRecord[] = [];
  const heard = new Map<string, ChangeRecord[]>();
  for (const one of acts) {
    const known = heard.get(one.device) ?? [];
    const names = new Set(known.map(recordName));
    known.push(...all.filter((record) => !names.has(recordName(record))).slice(0, one.hear));
    heard.set(one.device, known);
    const facts = foldRecords(known);
    const record: ChangeRecord = {
      device: one.device,
      number: known.filter(({ device }) => device === one.device).length + 1,
      clock: Math.max(0, ...known.map(({ clock }) => clock)) + 1,
      at: '2026-03-02T09:00:00.000Z',
      offset_min: 0,
      by: one.device,
      ...changesOf(one, known, facts, one.device),
    };
    known.push(record);
    all.push(record);
  }
  return all;
}

const story = fc.array(act, { minLength: 1, maxLength: 30 }).map(play);
const standing = (facts: Facts) => ({ rows: [...facts.rows(table)], conflicts: facts.conflicts() });
const checked = <T extends [unknown, ...unknown[]]>(property: fc.IProperty<T>) =>
  fc.assert(property, { seed, numRuns: 400 });

describe('records made on devices that hear of each other late', () => {
  it('come to the same facts in whatever order they arrive', () => {
    checked(
      fc.property(story, fc.array(fc.nat(1000), { minLength: 30, maxLength: 30 }), (records, weights) => {
        const shuffled = records
          .map((record, i) => ({ record, weight: weights[i]! }))
          .sort((a, b) => a.weight - b.weight);
        expect(standing(foldRecords(shuffled.map(({ record }) => record)))).toEqual(standing(foldRecords(records)));
      }),
    );
  });

  it('merge the same whichever comes first, and however often', () => {
    checked(
      fc.property(story, (records) => {
        const some = records.filter((_, i) => i % 3 !== 0);
        const others = records.filter((_, i) => i % 2 === 0);
        const merged = mergeRecords(some, others);
        expect(mergeRecords(others, some)).toEqual(merged);
        expect(mergeRecords(merged.records, others)).toEqual(merged);
        expect(merged.differing).toEqual([]);
        const all = mergeRecords(merged.records, records);
        expect(all.records).toEqual([...records].sort(compareRecords));
        expect(all.missing).toEqual([]);
      }),
    );
  });

  it('lose nothing anybody entered: it stands, was seen by who changed it, or is told as a conflict', () => {
    checked(
      fc.property(story, (records) => {
        const facts = foldRecords(records);
        for (const record of records)
          for (const change of record.changes) {
            if (change.kind === 'removed') continue;
            for (const [column, value] of Object.entries(change.after)) {
              const history = historyOf(records, table, change.key, column);
              expect(history.some((one) => one.record === record && one.after === value)).toBe(true);
            }
          }
        const named = facts.conflicts().map((one) => one.key);
        for (const key of named) expect(facts.row(table, key)).not.toBeNull();
      }),
    );
  });

  it('stand as the last record that touched a cell left it, by a slow second way', () => {
    checked(
      fc.property(story, (records) => {
        expect([...foldRecords(records).rows(table)]).toEqual(slowly(records));
      }),
    );
  });
});

/** The rules once more, row by row over plain objects: a twin that shares nothing with the fold. */
function slowly(records: readonly ChangeRecord[]): readonly (readonly [string, Record<string, string>])[] {
  return keys.flatMap((key) => {
    let row: Record<string, string | null> = {};
    let there = false;
    for (const record of [...records].sort(compareRecords))
      for (const change of record.changes.filter((one) => one.key === key)) {
        if (change.kind === 'removed') {
          const filled = Object.entries(row).filter(([, value]) => value !== null);
          const seen = JSON.stringify(Object.entries(change.before).sort());
          if (there && JSON.stringify(filled.sort()) === seen) there = false;
          continue;
        }
        if (change.kind === 'added' && !there) row = {};
        row = { ...row, ...change.after };
        there = true;
      }
    const cells = Object.entries(row).flatMap(([name, value]) => (value === null ? [] : [[name, value] as const]));
    return there ? [[key, Object.fromEntries(cells)] as const] : [];
  });
}

describe('one device alone', () => {
  const alone = fc.array(act, { minLength: 1, maxLength: 20 }).map((acts) =>
    play(
      acts.map((one) => ({
        ...one,
        device: 'office',
        kind: one.kind === 'undo' || one.kind === 'redo' ? 'set' : one.kind,
      })),
    ),
  );
  const step = (records: readonly ChangeRecord[], kind: 'undo' | 'redo') =>
    play2(records, { device: 'office', hear: 0, kind, key: 'A', column: 'people', value: null });

  it('never has a conflict', () => {
    checked(
      fc.property(alone, (records) => {
        expect(foldRecords(records).conflicts()).toEqual([]);
      }),
    );
  });

  it('undoes back to nothing and redoes to where it was', () => {
    checked(
      fc.property(alone, (records) => {
        const rows = (some: readonly ChangeRecord[]) => [...foldRecords(some).rows(table)];
        let all = records;
        for (let i = records.length; i > 0; i--) {
          all = step(all, 'undo');
          expect(rows(all)).toEqual(rows(records.slice(0, i - 1)));
        }
        for (let i = 1; i <= records.length; i++) all = step(all, 'redo');
        expect(rows(all)).toEqual(rows(records));
      }),
    );
  });
});

/** One more act on one device that knows everything. */
function play2(records: readonly ChangeRecord[], one: Act): readonly ChangeRecord[] {
  const last = records.at(-1)!;
  const { at, offset_min, by, device } = last;
  const made = changesOf(one, records, foldRecords(records), device);
  return [...records, { device, number: last.number + 1, clock: last.clock + 1, at, offset_min, by, ...made }];
}
