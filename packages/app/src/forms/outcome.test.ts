import { loadAppLanguage } from '@eavewell/words/app';
import { describe, expect, it } from 'vitest';
import { type Draft, type DraftStep, draftAfter, emptyDraft, type RowNow } from './draft.ts';
import { formTable } from './formTables.ts';
import { outcomeOf } from './outcome.ts';

const { numbers } = await loadAppLanguage('en');
const site: RowNow = { table: 'sites', key: 'S1', cells: { siteId: 'S1', name: 'Osk', people: '120' } };
const tank: RowNow = { table: 'tanks', key: 'S1/T1', cells: { siteId: 'S1', tankId: 'T1', nominal_L: '5000' } };
const rows = [site, tank];
const after = (...steps: readonly DraftStep[]): Draft =>
  steps.reduce((draft, step) => draftAfter(draft, step, '2026-01-01T00:00:00Z'), emptyDraft);
const type = (row: RowNow, column: string, typed: string, seen = row.cells[column] ?? null): DraftStep => ({
  kind: 'type',
  row: { table: row.table, key: row.key },
  column,
  cell: { typed, chosen: null, seen },
});
const outcome = (draft: Draft, now: readonly RowNow[] = rows) =>
  outcomeOf(draft, { rows: now, tableOf: formTable, numbers });

describe('what a draft comes to', () => {
  it('is one edit a row, with what was seen, and nothing for a cell that stands so already', () => {
    const draft = after(type(site, 'people', '134'), type(site, 'name', 'Osk'), type(tank, 'nominal_L', ''));
    expect(outcome(draft)).toEqual({
      changes: [
        { kind: 'edited', table: 'sites', key: 'S1', before: { people: '120' }, after: { people: '134' } },
        { kind: 'edited', table: 'tanks', key: 'S1/T1', before: { nominal_L: '5000' }, after: { nominal_L: null } },
      ],
      faults: [],
      unsaved: 2,
    });
  });

  it('names a fault and still holds the rest', () => {
    const { faults, unsaved } = outcome(after(type(site, 'people', 'many'), type(tank, 'nominal_L', '6000')));
    expect(faults.map(({ column, kind }) => [column, kind])).toEqual([['people', 'wrong']]);
    expect(unsaved).toBe(2);
  });

  it('asks where somebody changed the cell since, until one of both is chosen', () => {
    const now = [{ ...site, cells: { ...site.cells, people: '150' } }, tank];
    const draft = after(type(site, 'people', '134'));
    expect(outcome(draft, now).faults.map(({ kind }) => kind)).toEqual(['stale']);
    const row = { table: 'sites', key: 'S1' };
    const mine = draftAfter(draft, { kind: 'see', row, column: 'people', present: '150' }, '');
    expect(outcome(mine, now).changes).toEqual([
      { kind: 'edited', table: 'sites', key: 'S1', before: { people: '150' }, after: { people: '134' } },
    ]);
    const theirs = draftAfter(draft, { kind: 'leaveCell', row, column: 'people' }, '');
    expect(theirs).toEqual(emptyDraft);
    expect(outcome(after(type(site, 'people', '150', '120')), now)).toMatchObject({ faults: [], unsaved: 0 });
  });

  it('adds rows under a key of their own, once, with all that is needed', () => {
    const add = (tankId: string): DraftStep => ({ kind: 'add', table: 'tanks', cells: { siteId: 'S1', tankId } });
    expect(outcome(after(add('T2'))).changes).toEqual([
      { kind: 'added', table: 'tanks', key: 'S1/T2', after: { siteId: 'S1', tankId: 'T2' } },
    ]);
    const twice = outcome(after(add('T1'), add('T2'), add('T2'), add('')));
    expect(twice.faults.map(({ column, said }) => [column, said.key])).toEqual([
      ['tankId', 'forms.fault_taken'],
      ['tankId', 'forms.fault_taken'],
      ['tankId', 'forms.fault_missing'],
    ]);
  });

  it('removes a row with all it holds, and tells where a row is gone', () => {
    const remove: DraftStep = { kind: 'remove', row: { table: 'tanks', key: 'S1/T1' }, isNew: false };
    expect(outcome(after(remove)).changes).toEqual([
      { kind: 'removed', table: 'tanks', key: 'S1/T1', before: tank.cells },
    ]);
    expect(outcome(after(type(tank, 'nominal_L', '6000')), [site]).faults.map(({ kind }) => kind)).toEqual(['stale']);
  });
});
