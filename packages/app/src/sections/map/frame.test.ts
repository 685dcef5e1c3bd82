import { describe, expect, test } from 'vitest';
import { type FewSite, fewSites } from './fewSites.ts';
import { frameOf } from './frame.ts';
import type { MapSites } from './mapSites.ts';

const site = (key: string, latitude_deg: number | null, longitude_deg: number | null): FewSite => ({
  ...{ key, name: key, latitude_deg, longitude_deg },
  verdict: 'holds',
});
const grid = (count: number, latitude_deg: number, longitude_deg: number) =>
  Array.from({ length: count }, (_, i) =>
    site(`S${i}`, latitude_deg + 0.01 * (i % 10), longitude_deg + 0.01 * Math.floor(i / 10)),
  );
const keysAt = (sites: MapSites, places: Iterable<number>) => Array.from(places, (place) => sites.keyAt(place));
const wide = ({ west, east }: { west: number; east: number }) => east - west;

describe('the picture', () => {
  test('is not squashed by a lost minus sign or by columns changed round, and says what it leaves out', () => {
    const sites = [...grid(60, -9.5, 83), site('minus', 9.5, 83), site('round', 83.1, -9.5), site('none', null, 83)];
    const all = fewSites(sites);
    const frame = frameOf(all)!;
    expect(frame.far.map(({ place }) => all.keyAt(place))).toEqual(['minus', 'round']);
    expect(frame.far[0]!.away_km).toBeGreaterThan(2000);
    expect(keysAt(all, frame.without)).toEqual(['none']);
    expect(keysAt(all, frame.near.places)).toEqual(sites.slice(0, 60).map(({ key }) => key));
    expect(wide(frame.box)).toBeLessThan(12);
  });

  test('leaves out one in a hundred at most: a second group of sites belongs to it', () => {
    const frame = frameOf(fewSites([...grid(900, -9.5, 83), ...grid(100, -5, 85)]))!;
    expect(frame.far).toEqual([]);
    expect(frame.near.count).toBe(1000);
  });

  test('lies over the meridian of 180° as anywhere', () => {
    const frame = frameOf(fewSites([site('a', -9, 179.9), site('b', -9, -179.9), site('c', -9.1, 180)]))!;
    expect(frame.near.count).toBe(3);
    // Two tenths of a degree at 9° south are about 22 km.
    expect(wide(frame.box)).toBeGreaterThan(20);
    expect(wide(frame.box)).toBeLessThan(24);
  });

  test('of one site, or of sites at one place, is a kilometre wide; of none there is no picture', () => {
    expect(wide(frameOf(fewSites([site('a', -9, 83)]))!.box)).toBeCloseTo(1, 6);
    expect(wide(frameOf(fewSites([site('a', -9, 83), site('b', -9, 83)]))!.box)).toBeCloseTo(1, 6);
    expect(frameOf(fewSites([]))).toBeNull();
    expect(frameOf(fewSites([site('a', null, null)]))).toBeNull();
  });

  test('two sites far apart are both in it', () => {
    expect(frameOf(fewSites([site('a', -9, 83), site('b', 9, -83)]))!.near.count).toBe(2);
  });
});
