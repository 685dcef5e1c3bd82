import { expect, it } from 'vitest';
import type { OverviewBody, SiteEntry } from './overview.ts';
import { Overview } from './overviewOpened.ts';
import { packedOf } from './overviewPacked.ts';
import { RowKeys } from './rowKeys.ts';
import { SiteCollection } from './siteCollection.ts';

const sites = Array.from({ length: 30 }, (_, i) => ({ key: `S${i}`, siteId: `S${i}`, name: `Site ${i}` }) as SiteEntry);
const list = { sites: sites.map((site) => ({ ...site, stations: null, remedy: null })) };
const overview = new Overview(packedOf(list as unknown as OverviewBody, (a, b) => a.localeCompare(b)));
const shown = Uint32Array.from([4, 2, 9, ...Array.from({ length: 15 }, (_, i) => i + 12)]);
let labelled = 0;
const rows = new SiteCollection(overview, shown, ({ name }) => {
  labelled++;
  return name;
});

it('leads from row to row in the order shown, and ends at both ends', () => {
  expect([...rows.getKeys()].slice(0, 3)).toEqual(['S4', 'S2', 'S9']);
  expect([rows.getKeyBefore('S4'), rows.getKeyAfter('S4'), rows.getKeyBefore('S9')]).toEqual([null, 'S2', 'S2']);
  expect([rows.getFirstKey(), rows.getLastKey(), rows.getKeyAfter('S26')]).toEqual(['S4', 'S26', null]);
});

it('knows nothing of sites that are not shown', () => {
  expect([rows.getItem('S0'), rows.getItem('nobody'), rows.getKeyAfter('S0'), rows.rowOfKey(null)]).toEqual([
    ...[null, null, null, -1],
  ]);
});

it('makes the label of a row once, when it is looked at', () => {
  expect(labelled).toBe(0);
  expect([rows.getItem('S2')!.textValue, rows.getItem('S2')!.textValue, rows.getItem('S2')!.index]).toEqual([
    ...['Site 2', 'Site 2', 1],
  ]);
  expect(labelled).toBe(1);
});

it('goes by pages without leaving the list', () => {
  const keys = new RowKeys(rows);
  expect([keys.getKeyPageBelow('S4'), keys.getKeyPageBelow('S26'), keys.getKeyPageAbove('S2')]).toEqual([
    ...['S19', 'S26', 'S4'],
  ]);
});
