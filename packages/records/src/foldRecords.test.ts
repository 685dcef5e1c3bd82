import { describe, expect, it } from 'vitest';
import type { ChangeRecord, RowChange } from './changeRecord.ts';
import { foldRecords } from './foldRecords.ts';

const added = (after: Record<string, string>): RowChange => ({ kind: 'added', table: 'sites', key: 'A', after });
const edited = (before: Record<string, string | null>, after: Record<string, string | null>): RowChange => ({
  kind: 'edited',
  table: 'sites',
  key: 'A',
  before,
  after,
});
const removed = (before: Record<string, string>): RowChange => ({ kind: 'removed', table: 'sites', key: 'A', before });
const of = (device: string, number: number, clock: number, ...changes: RowChange[]): ChangeRecord => ({
  device,
  number,
  clock,
  at: '2026-03-02T09:00:00.000Z',
  offset_min: 600,
  by: 'Nadi',
  source: { kind: 'form', name: null },
  takesBack: null,
  changes,
});
const begun = of('office', 1, 1, added({ siteId: 'A', people: '50' }));

describe('foldRecords', () => {
  it('leaves each cell as the last record left it', () => {
    const facts = foldRecords([
      of('office', 2, 2, edited({ people: '50' }, { people: '60' })),
      begun,
      of('office', 3, 3, edited({ name: null }, { name: 'Upper landing' })),
    ]);
    expect(facts.row('sites', 'A')).toEqual({ siteId: 'A', people: '60', name: 'Upper landing' });
    expect(facts.conflicts()).toEqual([]);
    expect(facts.setBy('sites', 'A', 'people')).toBe('office.2');
    expect(facts.setBy('sites', 'A', 'gaugeId')).toBeNull();
  });

  it('empties a cell that is set to nothing', () => {
    const facts = foldRecords([begun, of('office', 2, 2, edited({ people: '50' }, { people: null }))]);
    expect(facts.row('sites', 'A')).toEqual({ siteId: 'A' });
  });

  it('names a cell that two changed unseen, until it is changed again', () => {
    const unseen = [
      begun,
      of('phone', 1, 2, edited({ people: '50' }, { people: '70' })),
      of('office', 2, 2, edited({ people: '50' }, { people: '60' })),
    ];
    const facts = foldRecords(unseen);
    expect(facts.row('sites', 'A')).toMatchObject({ people: '70' });
    const cell = { kind: 'cell', table: 'sites', key: 'A', column: 'people' };
    expect(facts.conflicts()).toEqual([{ ...cell, stands: '70', standsBy: 'phone.1', over: '60', overBy: 'office.2' }]);
    const settled = foldRecords([...unseen, of('office', 3, 3, edited({ people: '70' }, { people: '65' }))]);
    expect(settled.row('sites', 'A')).toMatchObject({ people: '65' });
    expect(settled.conflicts()).toEqual([]);
  });

  it('sees no conflict where two say the same, or change different cells', () => {
    const same = [begun, of('office', 2, 2, edited({ people: '50' }, { people: '60' }))];
    expect(foldRecords([...same, of('phone', 1, 2, edited({ people: '50' }, { people: '60' }))]).conflicts()).toEqual(
      [],
    );
    expect(foldRecords([...same, of('phone', 1, 2, edited({ name: null }, { name: 'B' }))]).conflicts()).toEqual([]);
  });

  it('removes a row as it was seen, and no other', () => {
    const seen = of('office', 2, 2, removed({ siteId: 'A', people: '50' }));
    const gone = foldRecords([begun, seen]);
    expect(gone.row('sites', 'A')).toBeNull();
    expect([...gone.rows('sites')]).toEqual([]);
    expect(gone.tableNames()).toEqual([]);
    const changed = of('field', 1, 2, edited({ people: '50' }, { people: '90' }));
    const facts = foldRecords([begun, seen, changed]);
    expect(facts.row('sites', 'A')).toEqual({ siteId: 'A', people: '90' });
    const row = { kind: 'row', table: 'sites', key: 'A' };
    expect(facts.conflicts()).toEqual([{ ...row, removedBy: 'office.2', changedBy: 'field.1' }]);
  });

  it('brings a row back that somebody changed while another removed it', () => {
    const facts = foldRecords([
      begun,
      of('a', 1, 2, removed({ siteId: 'A', people: '50' })),
      of('b', 1, 2, edited({ people: '50' }, { people: '90' })),
    ]);
    expect(facts.row('sites', 'A')).toEqual({ siteId: 'A', people: '90' });
    expect(facts.conflicts()).toEqual([{ kind: 'row', table: 'sites', key: 'A', removedBy: 'a.1', changedBy: 'b.1' }]);
  });

  it('begins a row anew where one went', () => {
    const facts = foldRecords([
      begun,
      of('office', 2, 2, removed({ siteId: 'A', people: '50' })),
      of('office', 3, 3, added({ siteId: 'A', name: 'New' })),
    ]);
    expect(facts.row('sites', 'A')).toEqual({ siteId: 'A', name: 'New' });
    expect(facts.conflicts()).toEqual([]);
  });

  it('refuses a record out of its order', () => {
    const facts = foldRecords([begun]);
    expect(() => facts.add(begun)).toThrow(RangeError);
  });
});
