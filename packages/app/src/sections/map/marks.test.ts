import { describe, expect, test } from 'vitest';
import { type FewSite, nearOf } from './fewSites.ts';
import { marksOf, siteAt } from './marks.ts';
import { placeNames } from './names.ts';
import { scaleBarOf } from './scaleBar.ts';
import { fitted, onPicture, type View, zoomed } from './view.ts';

const size = { wide: 400, high: 400 };
const view: View = { east_km: 0, south_km: 0, pixels_per_km: 10 };
const point = (key: string, verdict: FewSite['verdict'], x: number, y: number) => ({
  ...{ key, verdict },
  point: [x, y] as const,
});
const dots = (path: string) => path.split('M').length - 1;

describe('marks', () => {
  test('the worst takes the place, the others on it become dots of their colour, and none is lost', () => {
    const sites = [point('a', 'short', 0, 0), point('b', 'tight', 0.1, 0), point('c', 'unknown', 5, 5)];
    const drawn = marksOf(nearOf(sites), new Set(), view, size);
    expect(drawn.marks.map(({ site }) => site.key).sort()).toEqual(['a', 'c']);
    expect([dots(drawn.under.tight), drawn.underCount]).toEqual([1, 1]);
  });

  test('what the list shows comes before what is worse', () => {
    const drawn = marksOf(nearOf([point('a', 'short', 0, 0), point('b', 'tight', 0, 0)]), new Set([1]), view, size);
    expect(drawn.marks.map(({ site, size: high }) => [site.key, high])).toEqual([['b', 20]]);
    expect(dots(drawn.under.short)).toBe(1);
  });

  test('ten thousand sites: no more than 400 marks, every other exception a dot, specks on one spot once', () => {
    const sites = Array.from({ length: 10_000 }, (_, i) =>
      point(`S${i}`, i % 4 === 0 ? 'short' : 'holds', (i % 100) * 0.4 - 20, Math.floor(i / 100) * 0.4 - 20),
    );
    const drawn = marksOf(nearOf(sites), new Set(), view, size);
    expect(drawn.marks.length).toBeLessThanOrEqual(400);
    expect(drawn.marks.length + drawn.underCount).toBe(2500);
    expect(dots(drawn.specks)).toBe(7500);
    const far = marksOf(nearOf(sites), new Set(), { ...view, pixels_per_km: 1 }, size);
    expect(dots(far.specks)).toBeLessThan(500);
  });

  test('a press means the nearest site, an exception before a speck as near, and nothing far off', () => {
    const sites = [point('speck', 'holds', 1, 0), point('mark', 'short', 2.2, 0)];
    expect(siteAt(nearOf(sites), view, size, [215, 200], 22)?.key).toBe('mark');
    expect(siteAt(nearOf(sites), view, size, [209, 200], 22)?.key).toBe('speck');
    expect(siteAt(nearOf(sites), view, size, [300, 300], 22)).toBeNull();
  });
});

describe('names', () => {
  const asked = (key: string, x: number, y: number, width = 60) => ({
    ...{ key, text: key, x, y, width },
    clear: 8,
    height: 16,
  });

  test('stand beside their points and never on one another, on a mark or over the edge', () => {
    const many = Array.from({ length: 40 }, (_, i) => asked(`n${i}`, 20 + (i % 8) * 50, 30 + Math.floor(i / 8) * 30));
    const placed = placeNames(many, [{ left: 195, top: 0, right: 205, bottom: 400 }], size);
    const rects = placed.map(({ x, y, anchor }) => {
      const left = anchor === 'start' ? x : anchor === 'end' ? x - 60 : x - 30;
      return { left, right: left + 60, top: y - 12.8, bottom: y + 4 };
    });
    expect(placed.length).toBeGreaterThan(4);
    for (const [i, a] of rects.entries()) {
      expect(a.left >= 0 && a.right <= 400 && a.top >= 0).toBe(true);
      expect(a.right <= 195 || a.left >= 205).toBe(true);
      for (const b of rects.slice(i + 1))
        expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
    }
  });

  test('the first asked for gets its place; one without room is left out', () => {
    const placed = placeNames([asked('first', 200, 200, 380), asked('second', 200, 200, 380)], [], size);
    expect(placed.map(({ key }) => key)).toEqual(['first', 'second']);
    expect(placed[0]!.y).not.toBe(placed[1]!.y);
    expect(placeNames([asked('wide', 200, 200, 500)], [], size)).toEqual([]);
  });
});

describe('the view', () => {
  const box = { west: -10, east: 10, north: -5, south: 5 };

  test('shows the whole box, and keeps the point that is zoomed about where it is', () => {
    const whole = fitted(box, size);
    for (const corner of [
      [-10, -5],
      [10, 5],
    ] as const)
      for (const at of onPicture(whole, size, corner)) expect(at >= 0 && at <= 400).toBe(true);
    const about = onPicture(whole, size, [3, 2]);
    const after = onPicture(zoomed(whole, size, box, 2, about), size, [3, 2]);
    expect(after[0]).toBeCloseTo(about[0], 6);
    expect(after[1]).toBeCloseTo(about[1], 6);
  });

  test('goes no nearer than 200 px a km and no farther than a quarter of what fits', () => {
    const whole = fitted(box, size);
    expect(zoomed(whole, size, box, 1e9).pixels_per_km).toBe(200);
    expect(zoomed(whole, size, box, 1e-9).pixels_per_km).toBeCloseTo(whole.pixels_per_km / 4, 9);
  });
});

test('the bar of the scale is 1, 2 or 5 of a power of ten, and as long as it can be', () => {
  expect(scaleBarOf(10, 120)).toEqual({ length_km: 10, pixels: 100 });
  expect(scaleBarOf(2.3, 120).length_km).toBe(50);
  expect(scaleBarOf(200, 120).length_km).toBe(0.5);
  expect(scaleBarOf(0.05, 120).length_km).toBe(2000);
});
