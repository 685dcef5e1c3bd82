import { matchPositions, type PositionTarget, waysOfLines } from '@eavewell/tables';
import { problemSentence } from '@eavewell/words';
import fc from 'fast-check';
import { zipSync } from 'fflate';
import { expect, it } from 'vitest';
import { readMap } from '../../packages/formats/src/readMap.ts';
import { fuzzRuns } from './fuzzRuns.ts';

const geojson = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      id: 'S001',
      properties: { name: 'Upper Tarn' },
      geometry: { type: 'Point', coordinates: [125.25, -8.5, 3] },
    },
    {
      type: 'Feature',
      properties: { name: 'Path', mode: 'foot' },
      geometry: {
        type: 'MultiLineString',
        coordinates: [
          [
            [125.25, -8.5],
            [125.3, -8.55],
          ],
          [
            [125.3, -8.6],
            [125.5, -8.75],
          ],
        ],
      },
    },
    {
      type: 'Feature',
      properties: null,
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [1, 2],
            [3, 4],
            [1, 2],
          ],
        ],
      },
    },
  ],
});
const kml =
  '<?xml version="1.0" encoding="UTF-8"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document><Folder><Placemark id="a">' +
  '<name>Upper Tarn</name><ExtendedData><Data name="siteId"><value>S001</value></Data></ExtendedData><Point>' +
  '<coordinates>125.25,-8.5,0</coordinates></Point></Placemark><Placemark><name>Path &amp; steps</name><LineString>' +
  '<coordinates>125.25,-8.5 125.3,-8.55</coordinates></LineString></Placemark></Folder></Document></kml>';
const gpx =
  '<?xml version="1.0"?><gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1"><wpt lat="-8.5" lon="125.25">' +
  '<ele>4</ele><time>2026-01-01T00:00:00Z</time><name>Upper Tarn</name></wpt><trk><name>Path</name><trkseg>' +
  '<trkpt lat="-8.5" lon="125.25"/><trkpt lat="-8.55" lon="125.3"/></trkseg></trk></gpx>';

const encode = (text: string) => new TextEncoder().encode(text);
const bases = [
  encode(geojson),
  encode(kml),
  encode(gpx),
  zipSync({ 'doc.kml': encode(kml) }, { mtime: new Date(2000, 0, 1) }),
];

const targets: readonly PositionTarget[] = [
  { table: 'sites', id: 'S001', name: 'Upper Tarn', row: 2, position: { latitude_deg: -8.5, longitude_deg: 125.25 } },
  { table: 'sites', id: 'S002', name: 'Lower Tarn', row: 3, position: null },
  { table: 'gauges', id: 'G1', name: 'Upper Tarn', row: 2, position: null },
];

/** Pieces that may be put anywhere. */
const pieces = [
  '',
  '"',
  '<',
  '>',
  '</',
  '&x;',
  '<!DOCTYPE a>',
  ']',
  '}',
  '{',
  ',',
  '-',
  '1e999',
  'NaN',
  'null',
  '\u0000',
  '[[',
  '<a>',
  '9'.repeat(400),
  '\uFEFF',
];

const mutation = fc.record({
  at: fc.nat(),
  kind: fc.constantFrom('insert', 'cut', 'drop', 'byte', 'double', 'number', 'number', 'number'),
  number: fc.constantFrom(
    '-8,5',
    '200',
    '-95',
    '9e5',
    '1e999',
    'NaN',
    '',
    '0',
    '179.99',
    '-180',
    '"3"',
    'null',
    '1.2.3',
    '-0',
  ),
  piece: fc.oneof(fc.constantFrom(...pieces), fc.string({ maxLength: 8, unit: 'binary' })),
  length: fc.nat(60),
});

function mutated(
  bytes: Uint8Array,
  { at, kind, piece, number, length }: typeof mutation extends fc.Arbitrary<infer T> ? T : never,
) {
  const place = at % (bytes.length + 1);
  const [before, after] = [bytes.subarray(0, place), bytes.subarray(place)];
  const joined = (...parts: readonly Uint8Array[]) => Uint8Array.from(Buffer.concat(parts));
  switch (kind) {
    case 'number': {
      const text = Buffer.from(bytes).toString('latin1');
      const numbers = [...text.matchAll(/-?\d+\.\d+/g)];
      const found = numbers[at % Math.max(1, numbers.length)];
      if (!found) return bytes;
      return joined(bytes.subarray(0, found.index), encode(number), bytes.subarray(found.index + found[0].length));
    }
    case 'insert':
      return joined(before, encode(piece), after);
    case 'cut':
      return joined(before);
    case 'drop':
      return joined(before, after.subarray(length));
    case 'byte':
      return joined(before, Uint8Array.of(length * 4), after.subarray(1));
    case 'double':
      return joined(before, after.subarray(0, length), after);
  }
}

it('reads a thousand spoilt maps without a throw, without NaN, and with every position in range', () => {
  let [readable, refused] = [0, 0];
  fc.assert(
    fc.property(fc.constantFrom(...bases), fc.array(mutation, { minLength: 1, maxLength: 3 }), (base, mutations) => {
      const read = readMap(mutations.reduce(mutated, base), 'a.map');
      const matched = matchPositions(read.points, targets, 'a.map', { far_km: 5 });
      const ways = waysOfLines(read.lines, [], [], 'a.map', 1);
      const problems = [...read.problems, ...matched.problems, ...ways.problems];
      for (const problem of problems) {
        const { what, todo } = problemSentence(problem);
        // What stands in the file may itself be called NaN; it is then in quotes.
        expect(`${what} ${todo}`.replace(/".*?"/g, '')).not.toMatch(/\bNaN\b|undefined|Infinity|\[object/);
      }
      const positions = [
        ...read.points.map(({ position }) => position),
        ...read.lines.flatMap(({ pieces: all }) => all.flat()),
      ];
      for (const { latitude_deg, longitude_deg } of positions) {
        expect(Math.abs(latitude_deg)).toBeLessThanOrEqual(90);
        expect(Math.abs(longitude_deg)).toBeLessThanOrEqual(180);
      }
      for (const { length_km } of ways.ways) expect(length_km).toBeGreaterThan(0);
      for (const { moved_km } of matched.matches) expect(moved_km === null || Number.isFinite(moved_km)).toBe(true);
      if (positions.length > 0) readable++;
      else {
        refused++;
        expect(problems.some(({ severity }) => severity === 'blocker')).toBe(true);
      }
    }),
    { seed: 20261126, numRuns: fuzzRuns(1000) },
  );
  // The mutations are neither all harmless nor all deadly.
  expect(readable).toBeGreaterThan(100);
  expect(refused).toBeGreaterThan(100);
});

it('is not felled by depth or length', () => {
  const texts = [
    '['.repeat(3e6),
    `{"type":"FeatureCollection","features":${'['.repeat(2e5)}${']'.repeat(2e5)}}`,
    `{"type":"Feature","geometry":${'{"type":"GeometryCollection","geometries":['.repeat(5e4)}${']}'.repeat(5e4)}}`,
    `<kml>${'<a '.repeat(5e5)}`,
    `<kml a="${'x'.repeat(5e6)}`,
    `<kml>${'<!--'.repeat(3e5)}`,
    `<kml>${'&'.repeat(1e6)}</kml>`,
    `<gpx>${'<![CDATA['.repeat(1e5)}`,
  ];
  for (const text of texts) {
    const started_ms = performance.now();
    expect(readMap(encode(text), 'a.map').problems.some(({ severity }) => severity === 'blocker')).toBe(true);
    expect(performance.now() - started_ms).toBeLessThan(20_000);
  }
});
