import { greatCircle_km } from '@eavewell/engine';
import { expect, test } from 'vitest';
import { planeAt } from './plane.ts';
import { waysOf } from './ways.ts';

test('distances from the middle are those of the earth to a thousandth within 100 km, and the scale is told beyond', () => {
  for (const [latitude_deg, longitude_deg] of [
    [-9.5, 83],
    [70, -179.9],
    [0, 0],
  ] as const) {
    const plane = planeAt({ latitude_deg, longitude_deg });
    const there = { latitude_deg: latitude_deg + 0.6, longitude_deg: longitude_deg + 0.4 };
    const [x, y] = plane.at(there)!;
    const true_km = greatCircle_km({ latitude_deg, longitude_deg }, there);
    expect(Math.abs(Math.hypot(x, y) / true_km - 1)).toBeLessThan(1e-3);
    expect(y).toBeLessThan(0);
    expect(x).toBeGreaterThan(0);
    expect(plane.truth([0, 0])).toBeCloseTo(1, 6);
    // Stereographic, conformal: the scale at an angle c from the middle is 1 / cos²(c/2) (Snyder 1987, eq. 21-4, from memory).
    expect(plane.truth([1000, 0])).toBeCloseTo(Math.cos(Math.atan(1000 / 2 / 6371.0088)) ** 2, 5);
  }
});

test('the far side of the earth is not on the sheet', () => {
  expect(planeAt({ latitude_deg: -9.5, longitude_deg: 83 }).at({ latitude_deg: 9.5, longitude_deg: -97 })).toBeNull();
});

test('a line that cannot be read is not drawn and counted; the others are drawn by how they are gone', () => {
  const plane = planeAt({ latitude_deg: -9, longitude_deg: 83 });
  const line = (coordinates: unknown, type = 'LineString') => ({
    line: JSON.stringify({ type: 'Feature', geometry: { type, coordinates } }),
  });
  const ways = ['W1', 'W2', 'W3', 'W4', 'W5'].map((key, i) => ({
    key,
    cells: { wayId: key, name: key, mode: ['road', 'river', 'foot', '', 'road'][i]! },
  }));
  const lines = [
    { key: '#around', cells: { line: '{"type":"FeatureCollection"}' } },
    {
      key: 'W1',
      cells: line([
        [83, -9],
        [83.1, -9],
      ]),
    },
    {
      key: 'W2',
      cells: line(
        [
          [
            [83, -9],
            [83, -9.1],
          ],
          [
            [83, -9.2],
            [83, -9.3],
          ],
        ],
        'MultiLineString',
      ),
    },
    { key: 'W3', cells: { line: 'not json' } },
    {
      key: 'W4',
      cells: line([
        [83, -9],
        ['x', 3],
        [83.2, -9],
      ]),
    },
    { key: 'W5', cells: line([[83, -9]]) },
  ];
  const drawn = waysOf(ways, lines, plane);
  const east_km = greatCircle_km({ latitude_deg: -9, longitude_deg: 83 }, { latitude_deg: -9, longitude_deg: 83.1 });
  expect(drawn.paths.road).toMatch(new RegExp(`^M0\\.000 0\\.000L${east_km.toFixed(3)} `));
  expect(drawn.paths.river.split('M')).toHaveLength(3);
  expect(drawn.paths.foot).toBe('');
  expect(drawn.paths.other.split('L')).toHaveLength(2);
  expect(drawn.without).toBe(2);
  expect(drawn.rivers.map(({ name }) => name)).toEqual(['W2']);
});
