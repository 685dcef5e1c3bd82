import { describe, expect, it } from 'vitest';
import { readMap } from '../../packages/formats/src/readMap.ts';
import {
  assertCases,
  bytes,
  collection,
  good,
  json,
  kml,
  kmlPoint,
  latin,
  type MapCase,
  noted,
  point,
  tarn,
  warned,
} from './mapCases.ts';

const spared: readonly MapCase[] = [
  {
    fault: 'an old file that names its system',
    file: json({ ...collection(good), crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:OGC:1.3:CRS84' } } }),
    problems: [noted('positions.crs_said', 'urn:ogc:def:crs:OGC:1.3:CRS84')],
    points: ['Tarn'],
  },
  {
    fault: 'a byte order mark',
    file: bytes(`\uFEFF${JSON.stringify(collection(good))}`),
    problems: [],
    points: ['Tarn'],
  },
  {
    fault: 'a byte order mark before XML',
    file: bytes(`\uFEFF${kml(tarn)}`),
    problems: [],
    points: ['Tarn'],
  },
  {
    fault: 'letters of Windows-1252',
    file: latin(kml(kmlPoint('Caf\xe9', '125.25,-8.5'), '<?xml version="1.0" encoding="windows-1252"?>')),
    problems: [warned('file.encoding_taken', 'a.map')],
    points: ['Café'],
  },
  {
    fault: 'letters of another encoding, which the file names',
    file: latin(kml(kmlPoint('\xcb\xe0', '125.25,-8.5'), '<?xml version="1.0" encoding="windows-1251"?>')),
    problems: [warned('file.encoding_taken', 'a.map')],
    points: ['Ла'],
  },
  {
    fault: 'coordinates as texts',
    file: json(collection(point('Ferry', '125.5', '-8.75'), good)),
    problems: [warned('positions.not_a_number', '["125.5","-8.75"]')],
    points: ['Tarn'],
  },
  {
    fault: 'coordinates that are null',
    file: json(collection(point('Ferry', null, null), good)),
    problems: [warned('positions.not_a_number', '[null,null]')],
    points: ['Tarn'],
  },
  {
    fault: 'a number too large for any',
    file: bytes(JSON.stringify(collection(point('Ferry', 1, 2), good)).replace('[1,2]', '[1e999,2]')),
    problems: [warned('positions.not_a_number', '[null,2]')],
    points: ['Tarn'],
  },
  {
    fault: 'no coordinates',
    file: json(collection({ type: 'Feature', properties: { name: 'Ferry' }, geometry: { type: 'Point' } }, good)),
    problems: [warned('positions.not_a_number', '')],
    points: ['Tarn'],
  },
  {
    fault: 'eastings and northings',
    file: json(collection(point('Ferry', 744000.5, 9032000), good)),
    problems: [warned('positions.projected', '9032000, 744000.5')],
    points: ['Tarn'],
  },
  {
    fault: 'latitude first, which shows',
    file: json(collection(point('Ferry', -8.75, 125.5), good)),
    problems: [warned('positions.swapped', '125.5, -8.75')],
    points: ['Tarn'],
  },
  {
    fault: 'a longitude counted past 180',
    file: json(collection(point('Ferry', 190.5, -17), good)),
    problems: [warned('positions.out_of_range', '-17, 190.5')],
    points: ['Tarn'],
  },
  {
    fault: 'a latitude nowhere on the earth',
    file: json(collection(point('Ferry', 125.5, -98), good)),
    problems: [warned('positions.out_of_range', '-98, 125.5')],
    points: ['Tarn'],
  },
  {
    fault: 'something that is no feature',
    file: json(collection(7, { type: 'Circle' }, good)),
    problems: [warned('positions.not_a_thing', ''), warned('positions.not_a_thing', '')],
    points: ['Tarn'],
  },
  {
    fault: 'a geometry nobody knows',
    file: json(collection({ type: 'Feature', properties: { name: 'Ferry' }, geometry: { type: 'Circle' } }, good)),
    problems: [warned('positions.not_a_thing', 'Ferry')],
    points: ['Tarn'],
  },
  {
    fault: 'heights',
    file: json(collection(point('Ferry', 125.5, -8.75, 40), good)),
    problems: [noted('positions.height_left', 1)],
    points: ['Ferry', 'Tarn'],
  },
  {
    fault: 'an area and a thing without a place',
    file: json(
      collection(
        { type: 'Feature', properties: { name: 'Field' }, geometry: { type: 'Polygon', coordinates: [[[1, 2]]] } },
        { type: 'Feature', properties: null, geometry: null },
        good,
      ),
    ),
    problems: [noted('positions.area_left', 'Field'), noted('positions.without_geometry', '2')],
    points: ['Tarn'],
  },
  {
    fault: 'things in collections in collections',
    file: json(
      collection({
        type: 'Feature',
        properties: { name: 'Ferry' },
        geometry: {
          type: 'GeometryCollection',
          geometries: [
            { type: 'GeometryCollection', geometries: [{ type: 'Point', coordinates: [125.5, -8.75] }] },
            {
              type: 'LineString',
              coordinates: [
                [125.5, -8.75],
                [125.6, -8.75],
              ],
            },
          ],
        },
      }),
    ),
    problems: [],
    points: ['Ferry'],
    lines: 1,
  },
  {
    fault: 'a line of one place',
    file: json(
      collection(
        {
          type: 'Feature',
          properties: { name: 'Path' },
          geometry: { type: 'LineString', coordinates: [[125.5, -8.75]] },
        },
        good,
      ),
    ),
    problems: [warned('positions.line_too_short', 'Path')],
    points: ['Tarn'],
  },
  {
    fault: 'a line with one place that is no number',
    file: json(
      collection(
        {
          type: 'Feature',
          properties: { name: 'Path' },
          geometry: {
            type: 'LineString',
            coordinates: [
              [125.5, -8.75],
              ['x', 1],
              [125.6, -8.7],
            ],
          },
        },
        good,
      ),
    ),
    problems: [warned('positions.not_a_number', '["x",1]')],
    points: ['Tarn'],
    lines: 0,
  },
];

describe('a fault of GeoJSON that costs its own thing only', () => assertCases(spared));

describe('what is likely meant', () => {
  const likely = (value: unknown) => readMap(json(value), 'a.map').problems[0]!.facts['likely'];

  it('is said, never taken', () => {
    expect(likely(point('a', -8.75, 125.5))).toBe('-8.75, 125.5');
    expect(likely(point('a', 190.5, -17))).toBe('-17, -169.5');
    expect(likely(point('a', -190.5, -17))).toBe('-17, 169.5');
    expect(likely(point('a', 125.5, -98))).toBe('');
  });
});

describe('a line over the 180° meridian', () => {
  it('is short, in one piece or cut in two', () => {
    const crossing = {
      type: 'LineString',
      coordinates: [
        [179.9, -17],
        [-179.9, -17],
      ],
    };
    const cut = {
      type: 'MultiLineString',
      coordinates: [
        [
          [179.9, -17],
          [180, -17],
        ],
        [
          [-180, -17],
          [-179.9, -17],
        ],
      ],
    };
    for (const geometry of [crossing, cut]) {
      const read = readMap(json({ type: 'Feature', properties: {}, geometry }), 'a.map');
      expect(read.problems).toEqual([]);
      expect(read.lines).toHaveLength(1);
    }
  });
});

describe('a name', () => {
  const nameOf = (name: unknown) => readMap(json(point(name as string, 125.25, -8.5)), 'a.map').points[0]!.name;

  it('is what can be seen of it, up to what a cell may hold', () => {
    expect(nameOf(' Upper\t\u0000 Tarn\n')).toBe('Upper Tarn');
    expect(nameOf('x'.repeat(9000))).toBe('x'.repeat(500));
    expect(nameOf(7)).toBe('7');
    expect(nameOf('\u0007')).toBeNull();
    expect(nameOf({})).toBeNull();
  });
});
