import { describe, expect, it } from 'vitest';
import type { ChangeRecord, RowChange } from './changeRecord.ts';
import { changesWithout, stepsBack } from './stepsBack.ts';

const place = { table: 'sites', key: 'S001' } as const;
const record = (number: number, change: RowChange, kind: ChangeRecord['source']['kind'] = 'form'): ChangeRecord => ({
  ...{ device: 'office', number, clock: number, at: '2026-01-01T00:00:00Z', offset_min: 0, by: 'Nadi' },
  ...{ takesBack: null, source: { kind, name: null }, changes: [change] },
});
const edit = (before: Record<string, string | null>, after: Record<string, string | null>): RowChange => ({
  kind: 'edited',
  ...place,
  before,
  after,
});
const came = record(1, { kind: 'added', ...place, after: { siteId: 'S001', people: '120' } }, 'import');
const mended = record(2, edit({ people: '120' }, { people: '130' }));
const filled = record(3, edit({ place: null }, { place: 'Ford' }));

describe('what a file would set back', () => {
  it('is a cell that was changed since, to what it was; a new value is none', () => {
    const all = [came, mended, filled];
    expect(stepsBack(all, [edit({ people: '130' }, { people: '120' })])).toEqual([
      { ...place, column: 'people', stands: '130', older: '120', since: mended },
    ]);
    expect(stepsBack(all, [edit({ people: '130' }, { people: '125' })])).toEqual([]);
    // A cell that was empty, and was filled here.
    expect(stepsBack(all, [edit({ place: 'Ford' }, { place: null })])).toMatchObject([
      { column: 'place', older: null },
    ]);
    // What came with its row was never empty, and never another.
    expect(stepsBack([came], [edit({ people: '120' }, { people: null })])).toEqual([]);
    expect(stepsBack([came], [edit({ people: '120' }, { people: '130' })])).toEqual([]);
  });

  it('is not what an undo took back: the file is taken in again on purpose', () => {
    const undone = record(3, edit({ people: '130' }, { people: '120' }), 'undo');
    expect(stepsBack([came, mended, undone], [edit({ people: '120' }, { people: '130' })])).toEqual([]);
  });

  it('is a row that was removed here', () => {
    const removed = record(4, { kind: 'removed', ...place, before: { siteId: 'S001', people: '120' } });
    const again: RowChange = { kind: 'added', ...place, after: { siteId: 'S001', people: '120' } };
    expect(stepsBack([came, removed], [again])).toMatchObject([{ column: null, since: removed }]);
    expect(stepsBack([came, { ...removed, source: { kind: 'undo', name: null } }], [again])).toEqual([]);
    expect(stepsBack([], [again])).toEqual([]);
  });

  it('can be left out, and nothing else with it', () => {
    const change = edit({ people: '130', place: 'Ford' }, { people: '120', place: 'Weir' });
    expect(changesWithout([change], [{ ...place, column: 'people' }])).toEqual([
      edit({ place: 'Ford' }, { place: 'Weir' }),
    ]);
    const left = ['people', 'place'].map((column) => ({ ...place, column }));
    expect(changesWithout([change], left)).toEqual([]);
    const row: RowChange = { kind: 'added', ...place, after: { siteId: 'S001' } };
    expect(changesWithout([row, change], [{ ...place, column: null }])).toEqual([change]);
  });
});
