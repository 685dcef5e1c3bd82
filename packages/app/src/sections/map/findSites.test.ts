import { expect, test } from 'vitest';
import { fewSites } from './fewSites.ts';
import { findable, findSites } from './findSites.ts';

const names = ['Tarn', 'Osk am Tarn', 'Ñandelu', 'Two\nlines', ' Tarnow', ''];
const sites = fewSites(
  names.map((name, i) => ({ key: i === 4 ? 'Tarn-9' : `S${i}`, name, verdict: 'holds' as const })),
);
const all = findable(sites);

test('a site is found by a part of its name or id without marks and case; those that begin with it come first', () => {
  expect(findSites(all, 'TARN', 9)).toEqual([0, 4, 1]);
  expect(findSites(all, 'nandé', 9)).toEqual([2]);
  expect(findSites(all, 'lines', 9)).toEqual([3]);
  expect(findSites(all, 's5', 9)).toEqual([5]);
  expect(findSites(all, 'elsewhere', 9)).toEqual([]);
});

test('each is found once, and no more than are wanted; without a text they are the first', () => {
  expect(findSites(all, 'tarn', 2)).toEqual([0, 4]);
  expect(findSites(all, ' ', 3)).toEqual([0, 1, 2]);
  expect(findSites(findable(fewSites([])), 'tarn', 3)).toEqual([]);
});

test('nothing is found over the end of a name', () => {
  expect(findSites(all, 'tarns0', 9)).toEqual([]);
  expect(findSites(all, 'two\nlines', 9)).toEqual([3]);
});
