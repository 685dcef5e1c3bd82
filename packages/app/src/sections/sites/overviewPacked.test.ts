import { expect, it } from 'vitest';
import type { OverviewBody, SiteEntry } from './overview.ts';
import { Overview, overviewOf } from './overviewOpened.ts';
import { handedOver, packedOf, placeOfKey, sitesOf } from './overviewPacked.ts';

const { compare } = new Intl.Collator('en', { numeric: true });
const entry = (key: string, more: Partial<SiteEntry> = {}) =>
  ({
    ...{ key, siteId: key, name: `Village ${key}`, area: null, people: null, verdict: null, stations: null },
    ...{ remedy: null, standGate: null, hasStorm: null, latitude_deg: null, longitude_deg: null, ...more },
  }) as SiteEntry;
const bodyOf = (sites: readonly SiteEntry[]) => ({ name: 'Here', sites }) as unknown as OverviewBody;
const packed = (sites: readonly SiteEntry[]) => packedOf(bodyOf(sites), compare);

const odd = [
  entry('S1', { name: 'Ñandelu 東 🌧', people: 12, latitude_deg: -8.25, longitude_deg: 0 }),
  entry('#2', { siteId: '', name: '' }),
  entry('ключ', { siteId: 'S1', name: '', people: 0 }),
];

it('every site is read again as it was told, whatever its letters', () => {
  const list = packed(odd);
  const overview = new Overview(list);
  expect(Array.from({ length: overview.count }, (_, place) => overview.siteAt(place))).toEqual(odd);
  expect(sitesOf(list)).toEqual(odd);
  expect([overview.siteAt(-1), overview.siteAt(3), overview.siteAt(Number.NaN)]).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  expect(overview.head).toEqual({ name: 'Here' });
});

it('a site has its key, its number and what it is called, and is found by its key', () => {
  const overview = new Overview(packed(odd));
  const told = odd.map((_, place) => [overview.keyAt(place), overview.siteIdAt(place), overview.nameAt(place)]);
  expect(told).toEqual([
    ['S1', 'S1', 'Ñandelu 東 🌧'],
    ['#2', '', '#2'],
    ['ключ', 'S1', 'S1'],
  ]);
  expect(['S1', '#2', 'ключ', 'S', 'S11', ''].map((key) => overview.placeOf(key))).toEqual([0, 1, 2, -1, -1, -1]);
});

it('of five thousand every key leads to its place, and no other to any', () => {
  const list = packed(Array.from({ length: 5000 }, (_, i) => entry(`S${i}`)));
  for (let i = 0; i < 5000; i++) expect(placeOfKey(list, `S${i}`)).toBe(i);
  for (let i = 5000; i < 6000; i++) expect(placeOfKey(list, `S${i}`)).toBe(-1);
  expect(placeOfKey(packed([]), 'S1')).toBe(-1);
});

it('a site stays the same thing while it is looked at, and a list while it is there', () => {
  const list = packed(Array.from({ length: 500 }, (_, i) => entry(`S${i}`)));
  const overview = overviewOf(list);
  expect(overviewOf(list)).toBe(overview);
  const first = overview.siteAt(7);
  for (let i = 0; i < 150; i++) overview.siteAt(100 + i);
  expect(overview.siteAt(7)).toBe(first);
  for (let i = 0; i < 400; i++) overview.siteAt(100 + i);
  expect(overview.siteAt(7)).toEqual(first);
});

it('what is not known is no number, and 0 is one', () => {
  const { people, latitude_deg, longitude_deg } = packed(odd).numbers;
  expect([...people]).toEqual([12, Number.NaN, 0]);
  expect([latitude_deg[0], longitude_deg[0], latitude_deg[1]]).toEqual([-8.25, 0, Number.NaN]);
});

it('that no storm is known is told where a site was judged, and not before', () => {
  const isWithout = (...storms: SiteEntry['hasStorm'][]) =>
    packed(storms.map((hasStorm, i) => entry(`S${i}`, { hasStorm }))).numbers.isWithoutStorm;
  expect([isWithout(), isWithout(null), isWithout(null, false), isWithout(false, true)]).toEqual([
    ...[false, false, true, false],
  ]);
});

it('is handed over whole: nothing of it is copied', () => {
  const list = packed(odd);
  const given = handedOver(list);
  const there = structuredClone(list, { transfer: given });
  expect(list.bytes.byteLength + list.numbers.people.byteLength + list.names.starts.byteLength).toBe(0);
  expect(sitesOf(there)).toEqual(odd);
});
