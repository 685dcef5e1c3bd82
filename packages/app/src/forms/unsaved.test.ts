import { expect, it } from 'vitest';
import { draftAfter, emptyDraft } from './draft.ts';
import { draftName, touchedIn, Unsaved } from './unsaved.ts';

const now = '2026-01-01T00:00:00Z';
const typed = { typed: '7', chosen: null, seen: '5' };
const row = { table: 'roofs', key: 'S001/R1' };

it('a row that is offered is no change until something is typed into it', () => {
  const offered = draftAfter(
    emptyDraft,
    { kind: 'add', table: 'sites', cells: { siteId: 'S9' }, isOffered: true },
    now,
  );
  expect(touchedIn(offered)).toBe(0);
  expect(offered.beganAt).toBeNull();
  const key = Object.values(offered.rows)[0]!.key;
  const begun = draftAfter(offered, { kind: 'type', row: { table: 'sites', key }, column: 'name', cell: typed }, now);
  expect(touchedIn(begun)).toBe(1);
  expect(begun.beganAt).toBe(now);
  const more = draftAfter(offered, { kind: 'add', table: 'roofs', cells: {} }, now);
  expect([touchedIn(more), more.beganAt]).toEqual([1, now]);
});

it('counts what forms say and what was left in the browser, each programme for itself', () => {
  const left = draftAfter(emptyDraft, { kind: 'type', row, column: 'length_m', cell: typed }, now);
  const all = new Unsaved([
    [draftName('p-1', 'site-S001'), JSON.stringify(left)],
    ['eavewell.who', 'Nadi'],
    [draftName('p-2', 'settings'), '{'],
  ]);
  expect(all.count('p-1')).toBe(1);
  expect(all.count('p-2')).toBe(0);
  let told = 0;
  all.subscribe(() => told++);
  all.note(draftName('p-2', 'settings'), 3);
  all.note(draftName('p-2', 'settings'), 3);
  expect([all.count('p-2'), all.count(), told]).toEqual([3, 4, 1]);
  all.find(draftName('p-1', 'site-S001'), null);
  expect(all.count('p-1')).toBe(0);
});
