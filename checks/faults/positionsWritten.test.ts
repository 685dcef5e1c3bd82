import type { MapContent } from '@eavewell/tables';
import { DOMParser, type Element } from '@xmldom/xmldom';
import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type MapKind, readMap } from '../../packages/formats/src/readMap.ts';
import { lineGeometry } from '../../packages/formats/src/wayLines.ts';
import { writtenMap } from '../../packages/formats/src/writtenMap.ts';

const kinds: readonly MapKind[] = ['geojson', 'kml', 'kmz', 'gpx'];
const about = { title: 'Tarn & <water>', creator: 'eavewell', people: (count: number) => `${count} people` };
const at = (latitude_deg: number, longitude_deg: number) => ({ latitude_deg, longitude_deg });

const content: MapContent = {
  points: [
    {
      kind: 'site',
      idName: 'siteId',
      id: 'S001',
      name: 'Upper "Tarn" & <Sons>',
      people: 120,
      position: at(-8.5, 125.25),
    },
    {
      kind: 'site',
      idName: 'siteId',
      id: '002',
      name: "O'Reedy ]]> \u0007 Ö 川",
      people: null,
      position: at(-8.1234567, 125.7654321),
    },
    { kind: 'gauge', idName: 'gaugeId', id: 'G-east', name: 'East', people: null, position: at(90, 180) },
    { kind: 'landing', idName: 'placeId', id: 'L1', name: 'Jetty', people: null, position: at(0, -180) },
  ],
  ways: [
    {
      wayId: 'W1',
      name: 'Over the edge',
      from: 'S001',
      to: 'L1',
      mode: 'river',
      length_km: 1.23456,
      pieces: [[at(-17, 179.9), at(-17.2, -179.9), at(-17.3, -179.8)]],
    },
    {
      wayId: 'W2',
      name: null,
      from: null,
      to: null,
      mode: null,
      length_km: 2,
      pieces: [
        [at(1, 2), at(3, 4)],
        [at(5, 6), at(7, 8)],
      ],
    },
  ],
  withoutPosition: [],
  withoutLine: [],
};

const text = (kind: MapKind) => strFromU8(writtenMap(content, kind, about));
const rootOf = (xml: string) =>
  new DOMParser({
    onError: (level, message) => {
      // The reader says so of U+FFFD, which stands for what XML cannot hold.
      if (level !== 'warning') throw new Error(message);
    },
  }).parseFromString(xml, 'text/xml').documentElement!;
const childrenOf = (element: Element) =>
  Array.from(element.childNodes).filter((node) => node.nodeType === 1) as Element[];
const namesOf = (element: Element) => childrenOf(element).map(({ nodeName }) => nodeName);
const all = (element: Element, name: string) => Array.from(element.getElementsByTagName(name));

/** Are the names in the order of this list? */
function inOrder(names: readonly string[], order: readonly string[]): boolean {
  const places = names.map((name) => order.indexOf(name));
  return places.every((place, i) => place >= 0 && (i === 0 || place >= places[i - 1]!));
}

describe('GeoJSON', () => {
  // RFC 7946: 3 (objects), 3.1.1 (longitude first), 3.1.9 (cut at the 180° meridian), 4 (no crs).
  it('is what RFC 7946 asks for', () => {
    const map = JSON.parse(text('geojson')) as {
      type: string;
      features: { type: string; id: unknown; properties: object; geometry: { type: string; coordinates: unknown } }[];
    };
    expect(Object.keys(map)).toEqual(['type', 'features']);
    expect(map.type).toBe('FeatureCollection');
    for (const feature of map.features) {
      expect(Object.keys(feature).sort()).toEqual(['geometry', 'id', 'properties', 'type']);
      expect(feature.type).toBe('Feature');
      expect(typeof feature.id).toBe('string');
    }
    expect(map.features[0]).toEqual({
      type: 'Feature',
      id: 'S001',
      properties: { name: 'Upper "Tarn" & <Sons>', siteId: 'S001', kind: 'site', people: 120 },
      geometry: { type: 'Point', coordinates: [125.25, -8.5] },
    });
    expect(map.features[4]!.geometry).toEqual({
      type: 'MultiLineString',
      coordinates: [
        [
          [179.9, -17],
          [180, -17.1],
        ],
        [
          [-180, -17.1],
          [-179.9, -17.2],
          [-179.8, -17.3],
        ],
      ],
    });
    expect(map.features[4]!.properties).toEqual({
      name: 'Over the edge',
      wayId: 'W1',
      mode: 'river',
      from: 'S001',
      to: 'L1',
      length_km: 1.235,
    });
  });
});

describe('a line over the 180° meridian', () => {
  // RFC 7946, section 3.1.9: the worked example of a line from 45° N, 170° E to 45° N, 170° W, and its MultiLineString.
  it('is cut as the standard cuts its own', () => {
    expect(lineGeometry([[at(45, 170), at(45, -170)]])).toEqual({
      type: 'MultiLineString',
      coordinates: [
        [
          [170, 45],
          [180, 45],
        ],
        [
          [-180, 45],
          [-170, 45],
        ],
      ],
    });
  });

  it('is cut the same the other way round, and at a place on the meridian itself', () => {
    const coordinates = (pieces: Parameters<typeof lineGeometry>[0]) =>
      (lineGeometry(pieces) as { coordinates: unknown }).coordinates;
    const [west, east] = [
      [
        [-170, 45],
        [-180, 45],
      ],
      [
        [180, 45],
        [170, 45],
      ],
    ];
    expect(coordinates([[at(45, -170), at(45, 170)]])).toEqual([west, east]);
    expect(coordinates([[at(45, -170), at(45, -180), at(45, 170)]])).toEqual([west, east]);
    expect(coordinates([[at(45, -170), at(45, 180), at(45, 170)]])).toEqual([west, east]);
    expect(coordinates([[at(45, 180), at(45, -170)]])).toEqual([
      [-180, 45],
      [-170, 45],
    ]);
  });
});

describe.each(['kml', 'kmz'] as const)('%s', (kind) => {
  const xml = () =>
    kind === 'kml' ? text('kml') : strFromU8(unzipSync(writtenMap(content, 'kmz', about))['doc.kml']!);

  // OGC KML 2.2: 7 (kml), 9.1 (features: name first, ExtendedData before the geometry), 10 (lon,lat tuples).
  it('is what KML 2.2 asks for', () => {
    const root = rootOf(xml());
    expect([root.nodeName, root.namespaceURI]).toEqual(['kml', 'http://www.opengis.net/kml/2.2']);
    expect(namesOf(root)).toEqual(['Document']);
    expect(inOrder(namesOf(childrenOf(root)[0]!), ['name', 'Folder'])).toBe(true);
    const marks = all(root, 'Placemark');
    expect(marks).toHaveLength(6);
    for (const mark of marks) {
      expect(namesOf(mark).slice(0, 2)).toEqual(['name', 'ExtendedData']);
      expect(namesOf(mark)).toHaveLength(3);
      expect(['Point', 'LineString', 'MultiGeometry']).toContain(namesOf(mark)[2]);
    }
    for (const data of all(root, 'Data')) {
      expect(data.getAttribute('name')).toMatch(/^[A-Za-z_]+$/);
      expect(namesOf(data)).toEqual(['value']);
    }
    for (const coordinates of all(root, 'coordinates'))
      expect(coordinates.textContent).toMatch(/^-?[\d.]+,-?[\d.]+( -?[\d.]+,-?[\d.]+)*$/);
    expect(all(marks[0]!, 'coordinates')[0]!.textContent).toBe('125.25,-8.5');
    expect(all(marks[0]!, 'name')[0]!.textContent).toBe('Upper "Tarn" & <Sons>');
    expect(all(marks[1]!, 'name')[0]!.textContent).toBe("O'Reedy ]]> \ufffd Ö 川");
  });
});

describe('GPX', () => {
  // GPX 1.1 schema: gpxType, wptType, trkType are sequences; latitudeType -90 to 90, longitudeType -180 up to but not 180.
  const wptOrder = [
    'ele',
    'time',
    'magvar',
    'geoidheight',
    'name',
    'cmt',
    'desc',
    'src',
    'link',
    'sym',
    'type',
    'fix',
    'sat',
  ];
  const trkOrder = ['name', 'cmt', 'desc', 'src', 'link', 'number', 'type', 'extensions', 'trkseg'];

  it('is what the schema of GPX 1.1 asks for', () => {
    const root = rootOf(text('gpx'));
    expect([root.nodeName, root.namespaceURI]).toEqual(['gpx', 'http://www.topografix.com/GPX/1/1']);
    expect([root.getAttribute('version'), root.getAttribute('creator')]).toEqual(['1.1', 'eavewell']);
    expect(inOrder(namesOf(root), ['metadata', 'wpt', 'rte', 'trk', 'extensions'])).toBe(true);
    for (const wpt of all(root, 'wpt')) expect(inOrder(namesOf(wpt), wptOrder)).toBe(true);
    for (const trk of all(root, 'trk')) expect(inOrder(namesOf(trk), trkOrder)).toBe(true);
    for (const place of [...all(root, 'wpt'), ...all(root, 'trkpt')]) {
      const [lat, lon] = [place.getAttribute('lat')!, place.getAttribute('lon')!];
      for (const value of [lat, lon]) expect(value).toMatch(/^-?\d+\.\d{7}$/);
      expect(Math.abs(Number(lat))).toBeLessThanOrEqual(90);
      expect(Number(lon) >= -180 && Number(lon) < 180).toBe(true);
    }
    expect(all(root, 'trkseg')).toHaveLength(3);
    expect(all(root, 'wpt')[0]!.getElementsByTagName('desc')[0]!.textContent).toBe('120 people');
  });
});

describe.each(kinds)('%s read back', (kind) => {
  it('says the same names, ids and ends', () => {
    const read = readMap(writtenMap(content, kind, about), `a.${kind}`);
    expect(read.kind).toBe(kind);
    expect(read.problems.filter(({ code }) => code !== 'positions.line_gaps')).toEqual([]);
    expect(read.points.map(({ ids, comment }) => [...ids, comment].includes('S001'))).toEqual([
      true,
      false,
      false,
      false,
    ]);
    expect(read.points.map(({ kind: what }) => what)).toEqual(['site', 'site', 'gauge', 'landing']);
    expect(read.points[0]!.name).toBe('Upper "Tarn" & <Sons>');
    expect(read.lines.map(({ ids, comment, mode }) => [ids.at(-1) ?? comment, mode])).toEqual([
      ['W1', 'river'],
      ['W2', null],
    ]);
  });

  it('gives the same positions to 7 decimals, whatever they are', () => {
    const position = fc.record({
      latitude_deg: fc.double({ min: -90, max: 90, noNaN: true }),
      longitude_deg: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(position, { minLength: 1, maxLength: 5 }),
        fc.array(fc.string({ unit: 'binary' }), { minLength: 5, maxLength: 5 }),
        (positions, names) => {
          const points = positions.map((one, i) => ({
            ...content.points[0]!,
            id: `S${i}`,
            name: names[i]!,
            position: one,
          }));
          const read = readMap(writtenMap({ ...content, points, ways: [] }, kind, about), 'a');
          expect(read.points).toHaveLength(points.length);
          read.points.forEach(({ position: got }, i) => {
            expect(Math.abs(got.latitude_deg - positions[i]!.latitude_deg)).toBeLessThanOrEqual(0.5000001e-7);
            const turn = Math.abs(got.longitude_deg - positions[i]!.longitude_deg);
            expect(Math.min(turn, 360 - turn)).toBeLessThanOrEqual(0.5000001e-7);
          });
        },
      ),
      { seed: 5, numRuns: 200 },
    );
  });
});

it('gives the same bytes each time', () => {
  for (const kind of kinds) expect(writtenMap(content, kind, about)).toEqual(writtenMap(content, kind, about));
});
