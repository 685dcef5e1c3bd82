import { describe, expect, it } from 'vitest';
import type { ChangeRecord, RowChange } from './changeRecord.ts';
import { foldRecords } from './foldRecords.ts';
import { nextSteps, takeBack } from './takeBack.ts';

const row = { table: 'tanks', key: 'A/t1' };
const record = (number: number, changes: readonly RowChange[], more: Partial<ChangeRecord> = {}): ChangeRecord => ({
  device: 'office',
  number,
  clock: number,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: 0,
  by: 'Nadi',
  source: { kind: 'form', name: null },
  takesBack: null,
  changes,
  ...more,
});
const begun = record(1, [{ kind: 'added', ...row, after: { tankId: 't1', nominal_L: '5000' } }]);
const larger = record(2, [
  { kind: 'edited', ...row, before: { nominal_L: '5000', partId: null }, after: { nominal_L: '8000', partId: 'T8' } },
]);

describe('takeBack', () => {
  it('sets back what still stands and names what was changed since', () => {
    const since = record(3, [{ kind: 'edited', ...row, before: { partId: 'T8' }, after: { partId: 'T9' } }]);
    const { changes, changedSince } = takeBack(larger, foldRecords([begun, larger, since]));
    expect(changes).toEqual([{ kind: 'edited', ...row, before: { nominal_L: '8000' }, after: { nominal_L: '5000' } }]);
    expect(changedSince).toEqual([{ ...row, column: 'partId' }]);
  });

  it('takes a row away that nobody touched since, and leaves one that somebody did', () => {
    expect(takeBack(begun, foldRecords([begun])).changes).toEqual([
      { kind: 'removed', ...row, before: { tankId: 't1', nominal_L: '5000' } },
    ]);
    expect(takeBack(begun, foldRecords([begun, larger]))).toEqual({
      changes: [],
      changedSince: [
        { ...row, column: 'nominal_L' },
        { ...row, column: 'partId' },
      ],
    });
  });

  it('brings back a row that was removed, unless there is one again', () => {
    const gone = record(2, [{ kind: 'removed', ...row, before: { tankId: 't1', nominal_L: '5000' } }]);
    const back = { kind: 'added', ...row, after: { tankId: 't1', nominal_L: '5000' } };
    expect(takeBack(gone, foldRecords([begun, gone])).changes).toEqual([back]);
    const again = record(3, [{ kind: 'added', ...row, after: { tankId: 't1' } }]);
    expect(takeBack(gone, foldRecords([begun, gone, again]))).toEqual({
      changes: [],
      changedSince: [{ ...row, column: null }],
    });
    expect(takeBack(larger, foldRecords([begun, gone])).changedSince).toEqual([{ ...row, column: null }]);
  });
});

describe('nextSteps', () => {
  const undo = (number: number, takesBack: string) =>
    record(number, [], { source: { kind: 'undo', name: null }, takesBack });
  const redo = (number: number, takesBack: string) =>
    record(number, [], { source: { kind: 'redo', name: null }, takesBack });
  const names = (records: readonly ChangeRecord[], device = 'office') => {
    const steps = nextSteps(records, device);
    return [steps.undo?.number ?? null, steps.redo?.number ?? null];
  };

  it('goes back a step at a time, forward again, and forgets the way forward after a change', () => {
    const made: ChangeRecord[] = [begun, larger];
    expect(names(made)).toEqual([2, null]);
    made.push(undo(3, 'office.2'));
    expect(names(made)).toEqual([1, 3]);
    made.push(undo(4, 'office.1'));
    expect(names(made)).toEqual([null, 4]);
    made.push(redo(5, 'office.4'));
    expect(names(made)).toEqual([5, 3]);
    made.push(record(6, []));
    expect(names(made)).toEqual([6, null]);
  });

  it("leaves another device's work alone", () => {
    expect(names([begun, { ...larger, device: 'phone', number: 1 }])).toEqual([1, null]);
    expect(names([begun], 'phone')).toEqual([null, null]);
  });
});
