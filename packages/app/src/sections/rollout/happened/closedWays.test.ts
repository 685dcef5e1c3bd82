import { expect, test } from 'vitest';
import type { RowNow } from '../../../forms/draft.ts';
import { crewForTests, sheetForTests, stopForTests, tripForTests } from '../sheetForTests.ts';
import { behindClosed } from './behindClosed.ts';
import {
  areaChoice,
  chosenStretches,
  closedEntry,
  closedTogether,
  modeChoice,
  nameChoice,
  otherEndEntry,
  stretchesOf,
  toLookAgain,
} from './closedWays.ts';
import { againEntry, type Entered } from './happenedChanges.ts';

const today = '2031-06-10';
const row = (table: string, key: string, cells: Record<string, string>): RowNow => ({ table, key, cells });
const way = (key: string, from: string, to: string, mode: string, more: Record<string, string> = {}) =>
  row('ways', key, { from, to, mode, ...more });

/**
 * base ~W1~ tol ~W2~ fork ~W3~ brisk; a road W4 from base to fork; footpaths to the sites S1 (from fork), S2 and S3 (from brisk).
 * W1 to W3 are the Ama, and a river W5 leads from fork to a shed.
 */
const rows = [
  row('crews', 'C1', { base: 'base', store: 'base' }),
  row('places', 'base', { kind: 'store', name: 'Base' }),
  row('places', 'shed', { kind: 'store', name: 'Shed', filledFrom: 'base' }),
  way('W1', 'base', 'tol', 'river', { name: 'Ama' }),
  way('W2', 'fork', 'tol', 'river', { name: 'Ama', weatherArea: 'hills' }),
  way('W3', 'fork', 'brisk', 'river', { name: 'Ama', weatherArea: 'hills' }),
  way('W4', 'base', 'fork', 'road'),
  way('W5', 'fork', 'shed', 'river'),
  way('W6', 'fork', 'S1', 'foot'),
  way('W7', 'brisk', 'S2', 'foot'),
  way('W8', 'brisk', 'S3', 'foot'),
  // Leads nowhere yet.
  row('ways', 'W9', { from: 'brisk', mode: 'river' }),
  row('sites', 'S4', { place: 'brisk' }),
];
const stretches = stretchesOf(rows);
const idsOf = (cells: Record<string, string>) => chosenStretches(stretches, cells).chosen.map(({ wayId }) => wayId);
const faultsOf = ({ faults }: Pick<Entered, 'faults'>) =>
  faults.map(({ field, key }) => `${field} ${key.split('.')[1]}`);
const chosenFaults = (cells: Record<string, string>) => faultsOf(chosenStretches(stretches, cells));

test('a river from one place to another is the stretches between, in the order they are gone', () => {
  expect(idsOf({ what: modeChoice('river'), start: 'tol', end: 'brisk' })).toEqual(['W2', 'W3']);
  expect(idsOf({ what: modeChoice('river'), start: 'brisk', end: 'base' })).toEqual(['W3', 'W2', 'W1']);
  expect(idsOf({ what: nameChoice('Ama') })).toEqual(['W1', 'W2', 'W3']);
  expect(idsOf({ what: nameChoice('Ama'), start: 'base', end: 'fork' })).toEqual(['W1', 'W2']);
  expect(idsOf({ what: areaChoice('hills') })).toEqual(['W2', 'W3']);
  expect(idsOf({ what: 'W4' })).toEqual(['W4']);
});

test('where no such way leads there, or an end is missing, it is said beside its field', () => {
  expect(chosenFaults({})).toEqual(['what fault_missing']);
  expect(chosenFaults({ what: modeChoice('river') })).toEqual(['start fault_missing', 'end fault_missing']);
  expect(chosenFaults({ what: nameChoice('Ama'), start: 'tol' })).toEqual(['end fault_missing']);
  expect(chosenFaults({ what: modeChoice('road'), start: 'tol', end: 'brisk' })).toEqual(['end fault_no_path']);
  // The Ama does not lead to the shed, though another river does.
  expect(chosenFaults({ what: nameChoice('Ama'), start: 'base', end: 'shed' })).toEqual(['end fault_no_path']);
  expect(chosenFaults({ what: modeChoice('river'), start: 'tol', end: 'tol' })).toEqual(['end fault_same_place']);
});

const dates = { from: '2031-07-01', to: '2031-07-31' };
const river = { what: modeChoice('river'), start: 'base', end: 'brisk', ...dates, reason: 'flood' };

test('each stretch is a row of one record, with the next of our numbers; what was taken off stays open', () => {
  // Rows that others named by their own letters are none of its numbers.
  const others = [...rows, row('closures', 'SEA6', {}), row('closures', 'CL7', {})];
  expect(closedEntry(others, { ...river, without: 'W2' }, today).changes).toEqual(
    [
      ['CL8', 'W1'],
      ['CL9', 'W3'],
    ].map(([key, wayId]) => ({
      ...{ kind: 'added', table: 'closures', key },
      after: { closureId: key, wayId, ...dates, reason: 'flood' },
    })),
  );
  expect(faultsOf(closedEntry(rows, { ...river, without: 'W1;W2;W3' }, today))).toEqual(['what fault_no_stretch']);
  expect(faultsOf(closedEntry(rows, { what: 'W1', from: '2031-07-01' }, today))).toEqual(['to fault_missing']);
  expect(faultsOf(closedEntry(rows, { ...river, to: '2031-06-01' }, today))).toEqual(['to fault_before']);
});

test('all of an area is one row; some of it a row for each stretch', () => {
  const area = { what: areaChoice('hills'), ...dates, slower_factor: '1.5' };
  const after = { closureId: 'CL1', ...dates, slower_factor: '1.5' };
  expect(closedEntry(rows, area, today).changes).toEqual([
    { kind: 'added', table: 'closures', key: 'CL1', after: { ...after, weatherArea: 'hills' } },
  ]);
  expect(closedEntry(rows, { ...area, without: 'W3' }, today).changes).toEqual([
    { kind: 'added', table: 'closures', key: 'CL1', after: { ...after, wayId: 'W2' } },
  ]);
});

test('a last day that nobody knows is a day to come on which one looks again', () => {
  const guess = { what: 'W1', from: '2031-06-01', ends: 'guess' };
  expect(faultsOf(closedEntry(rows, { ...guess, to: today }, today))).toEqual(['to fault_before']);
  const [made] = closedEntry(rows, { ...guess, to: '2031-06-20' }, today).changes;
  expect(made).toMatchObject({ after: { to: '2031-06-20', isToGuessed: 'yes' } });
  const closed = row('closures', 'CL1', { wayId: 'W1', from: '2031-06-01', to: '2031-06-20', isToGuessed: 'yes' });
  const sure = row('closures', 'CL2', { wayId: 'W2', from: '2031-06-01', to: '2031-06-20' });
  expect(toLookAgain([closed, sure], '2031-06-19')).toEqual([]);
  expect(toLookAgain([closed, sure], '2031-06-20')).toEqual([closed]);
  expect(otherEndEntry([closed], { ends: 'known', to: '2031-06-25' }, '2031-06-20').changes).toMatchObject([
    { after: { to: '2031-06-25', isToGuessed: null } },
  ]);
  expect(faultsOf(otherEndEntry([closed], { ends: 'guess', to: '2031-06-20' }, '2031-06-20'))).toEqual([
    'to fault_before',
  ]);
  const toCome = row('closures', 'CL3', { wayId: 'W1', from: '2031-07-01', to: '2031-07-20' });
  expect(faultsOf(otherEndEntry([toCome], { ends: 'known', to: '2031-06-30' }, today))).toEqual(['to fault_before']);
  expect(againEntry([closed], { again: '2031-06-12' }).changes).toMatchObject([
    { after: { to: '2031-06-11', isToGuessed: null } },
  ]);
});

test('what closed together is open again in one record', () => {
  const { changes } = closedEntry(rows, river, today);
  const closed = changes.map((change) => row('closures', change.key, change.kind === 'added' ? change.after : {}));
  const other = row('closures', 'CL9', { wayId: 'W4', ...dates });
  const together = closedTogether([...closed, other]);
  expect(together).toEqual([closed, [other]]);
  expect(againEntry(together[0]!, { again: '2031-07-11' }).changes.map(({ key }) => key)).toEqual([
    'CL1',
    'CL2',
    'CL3',
  ]);
  expect(faultsOf(againEntry(together[0]!, { again: '2031-07-01' }))).toEqual(['again fault_before']);
});

const site = (siteId: string) => ({ siteId, name: siteId, people: 100 }) as never;
const leg = (wayIds: string[]) => [{ from: 'base', to: 'S1', leaves: null, arrives: null, hours_h: 1, wayIds }];
const planned = tripForTests('T1', '2031-07-20', '2031-07-25', [], { legs: leg(['W1', 'W2']) });
const out = tripForTests('T2', '2031-06-08', '2031-06-14', [stopForTests('S2', null, null)], { state: 'underWay' });
const sheet = sheetForTests([crewForTests('C1', [out, planned])], {
  candidates: ['S1', 'S2', 'S3', 'S4', 'S5'].map(site),
});
const closing = (...ids: string[]) => behindClosed({ rows, sheet }, new Set(ids), dates);

test('behind a closed way lie the sites and stores to which no other way leads, and crews that are out there', () => {
  // By road one still comes to the fork, and from there up the river.
  expect(closing('W1', 'W2').sites).toEqual([]);
  expect(closing('W3').sites.map(({ siteId }) => siteId)).toEqual(['S2', 'S3', 'S4']);
  expect(closing('W3').crewsOut).toEqual(['Crew C1']);
  expect(closing('W2', 'W4').sites.map(({ siteId }) => siteId)).toEqual(['S1', 'S2', 'S3', 'S4']);
  expect(closing('W5').stores.map(({ store, from }) => [store.key, from.key])).toEqual([['shed', 'base']]);
  expect(closing('W2').crewsOut).toEqual([]);
});

test('trips that go over it are told where they are out in those days', () => {
  expect(closing('W2').trips).toEqual([{ crew: 'Crew C1', leaves: '2031-07-20' }]);
  expect(closing('W3').trips).toEqual([]);
  const before = { from: '2031-06-15', to: '2031-07-19' };
  expect(behindClosed({ rows, sheet }, new Set(['W2']), before).trips).toEqual([]);
});
