import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readMap } from '../../packages/formats/src/readMap.ts';
import { line } from './folder.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const point = (name: string, ...coordinates: readonly unknown[]) => ({
  type: 'Feature',
  properties: { name },
  geometry: { type: 'Point', coordinates },
});
const collection = (...features: readonly unknown[]) => ({ type: 'FeatureCollection', features });
const json = (value: unknown) => bytes(JSON.stringify(value));
const good = point('Tarn', 125.25, -8.5);
const kmlPoint = (name: string, coordinates: string) =>
  `<Placemark><name>${name}</name><Point><coordinates>${coordinates}</coordinates></Point></Placemark>`;
const kml = (inside: string, head = '<?xml version="1.0" encoding="UTF-8"?>') =>
  `${head}<kml xmlns="http://www.opengis.net/kml/2.2" xmlns:gx="http://www.google.com/kml/ext/2.2"><Document>${inside}</Document></kml>`;
const tarn = kmlPoint('Tarn', '125.25,-8.5');
const gpx = (inside: string) =>
  `<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">${inside}</gpx>`;
const wpt = (name: string, lat: string, lon: string, more = '') =>
  `<wpt lat="${lat}" lon="${lon}"><name>${name}</name>${more}</wpt>`;

interface Case {
  readonly fault: string;
  readonly file: Uint8Array;
  /** Every problem: code, severity, place and value. */
  readonly problems: readonly string[];
  /** Names of the points that can be used all the same. */
  readonly points?: readonly (string | null)[];
  readonly lines?: number;
}

const ofFile = (code: string, value: unknown = 'a.map') => `${code} blocker @ a.map - - = ${JSON.stringify(value)}`;
const warned = (code: string, value: unknown) => `${code} warning @ a.map - - = ${JSON.stringify(value)}`;
const noted = (code: string, value: unknown) => `${code} note @ a.map - - = ${JSON.stringify(value)}`;

const wholeFiles: readonly Case[] = [
  { fault: 'an empty file', file: bytes(' \n'), problems: [ofFile('file.empty')] },
  {
    fault: 'a picture',
    file: Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 0, 1, 2),
    problems: [ofFile('file.wrong_encoding')],
  },
  { fault: 'a table', file: bytes('siteId,lat\nS1,8\n'), problems: [ofFile('positions.not_a_map')] },
  { fault: 'a web page', file: bytes('<!DOCTYPE html><html></html>'), problems: [ofFile('positions.not_a_map')] },
  { fault: 'XML of another kind', file: bytes('<svg><path/></svg>'), problems: [ofFile('positions.not_a_map')] },
  {
    fault: 'JSON cut off',
    file: bytes('{"type":"FeatureCollection","feat'),
    problems: [ofFile('positions.json_broken')],
  },
  { fault: 'JSON that is no map', file: json({ name: 'x' }), problems: [ofFile('positions.not_geojson')] },
  { fault: 'a list', file: json([good]), problems: [ofFile('positions.not_geojson')] },
  {
    fault: 'TopoJSON',
    file: json({ type: 'Topology', objects: {}, arcs: [] }),
    problems: [ofFile('positions.not_geojson')],
  },
  {
    fault: 'features that are no list',
    file: json({ type: 'FeatureCollection', features: 7 }),
    problems: [ofFile('positions.not_geojson')],
  },
  { fault: 'XML cut off', file: bytes(kml(tarn).slice(0, -20)), problems: [ofFile('positions.xml_broken')] },
  {
    fault: 'XML cut off inside a tag',
    file: bytes('<kml><Document id="a'),
    problems: [ofFile('positions.xml_broken')],
  },
  { fault: 'tags that cross', file: bytes('<kml><a><b></a></b></kml>'), problems: [ofFile('positions.xml_broken')] },
  {
    fault: 'an entity nobody declared',
    file: bytes(kml('<name>&tarn;</name>')),
    problems: [ofFile('positions.xml_broken')],
  },
  {
    fault: 'entities that grow',
    file: bytes(`<!DOCTYPE kml [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>${kml('<name>&b;</name>', '')}`),
    problems: [ofFile('positions.doctype')],
  },
  {
    fault: 'an entity that is a file',
    file: bytes(`<?xml version="1.0"?><!DOCTYPE kml SYSTEM "file:///etc/hostname">${kml(tarn, '')}`),
    problems: [ofFile('positions.doctype')],
  },
  {
    fault: 'folders in folders without end',
    file: bytes(kml('<Folder>'.repeat(5000) + '</Folder>'.repeat(5000))),
    problems: [ofFile('positions.too_deep')],
  },
  {
    fault: 'elements without number',
    file: bytes(kml('<a/>'.repeat(1_000_001))),
    problems: [ofFile('positions.too_many')],
  },
  { fault: 'a map without a thing', file: json(collection()), problems: [ofFile('positions.nothing')] },
  {
    fault: 'metres of a grid, said in the file',
    file: json({ ...collection(good), crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::32751' } } }),
    problems: [ofFile('positions.crs_other', 'urn:ogc:def:crs:EPSG::32751')],
  },
  {
    fault: 'another system, named by an address',
    file: json({ ...collection(good), crs: { type: 'link', properties: { href: 'http://example.invalid/crs/4' } } }),
    problems: [ofFile('positions.crs_other', 'http://example.invalid/crs/4')],
  },
];

const spared: readonly Case[] = [
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
  {
    fault: 'a KML with latitude first',
    file: bytes(kml(kmlPoint('Ferry', '-8.75,125.5') + tarn)),
    problems: [warned('positions.swapped', '125.5, -8.75')],
    points: ['Tarn'],
  },
  {
    fault: 'a decimal comma in KML',
    file: bytes(kml(kmlPoint('Ferry', '125,5;-8,75') + tarn)),
    problems: [warned('positions.not_a_number', '125,5;-8,75')],
    points: ['Tarn'],
  },
  {
    fault: 'a space inside a KML position',
    file: bytes(kml(kmlPoint('Ferry', '125.5, -8.75') + tarn)),
    problems: [warned('positions.not_a_number', '125.5,')],
    points: ['Tarn'],
  },
  {
    fault: 'a number with two points',
    file: bytes(kml(kmlPoint('Ferry', '125.5.1,-8.75') + tarn)),
    problems: [warned('positions.not_a_number', '125.5.1,-8.75')],
    points: ['Tarn'],
  },
  {
    fault: 'a KML place without a position',
    file: bytes(kml(`<Placemark><name>Ferry</name></Placemark>${tarn}`)),
    problems: [noted('positions.without_geometry', 'Ferry')],
    points: ['Tarn'],
  },
  {
    fault: 'a link to another map, and pictures',
    file: bytes(
      kml(
        `<Style id="s"><IconStyle><Icon><href>http://example.invalid/pin.png</href></Icon></IconStyle></Style>` +
          `<NetworkLink><name>more</name><Link><href>http://example.invalid/more.kml</href></Link></NetworkLink>${tarn}`,
      ),
    ),
    problems: [
      warned('positions.link_not_followed', 'http://example.invalid/more.kml'),
      noted('positions.address_not_opened', 'http://example.invalid/pin.png'),
    ],
    points: ['Tarn'],
  },
  {
    fault: 'folders in folders, and a track with times',
    file: bytes(
      kml(
        `<Folder><name>a</name><Folder><Folder>${tarn}</Folder></Folder></Folder><Placemark><name>Path</name><gx:Track>` +
          '<when>2026-01-01T00:00:00Z</when><when>2026-01-01T00:10:00Z</when>' +
          '<gx:coord>125.5 -8.75 3</gx:coord><gx:coord>125.6 -8.75 4</gx:coord></gx:Track></Placemark>',
      ),
    ),
    problems: [noted('positions.height_left', 2), noted('positions.time_left', 1)],
    points: ['Tarn'],
    lines: 1,
  },
  {
    fault: 'a track whose positions are no numbers',
    file: bytes(
      kml(
        `<Placemark><name>Path</name><gx:Track><when>2026-01-01T00:00:00Z</when><gx:coord>125,5 -8,75 0</gx:coord></gx:Track></Placemark>${tarn}`,
      ),
    ),
    problems: [warned('positions.not_a_number', '125,5 -8,75 0')],
    points: ['Tarn'],
  },
  {
    fault: 'a decimal comma in GPX',
    file: bytes(gpx(wpt('Ferry', '-8,75', '125,5') + wpt('Tarn', '-8.5', '125.25'))),
    problems: [warned('positions.not_a_number', '-8,75, 125,5')],
    points: ['Tarn'],
  },
  {
    fault: 'a waypoint without a latitude',
    file: bytes(gpx(`<wpt lon="125.5"><name>Ferry</name></wpt>${wpt('Tarn', '-8.5', '125.25')}`)),
    problems: [warned('positions.not_a_number', ', 125.5')],
    points: ['Tarn'],
  },
  {
    fault: 'NaN for a latitude',
    file: bytes(gpx(wpt('Ferry', 'NaN', '125.5') + wpt('Tarn', '-8.5', '125.25'))),
    problems: [warned('positions.not_a_number', 'NaN, 125.5')],
    points: ['Tarn'],
  },
  {
    fault: 'waypoints without a name',
    file: bytes(gpx('<wpt lat="-8.5" lon="125.25"/><wpt lat="-8.75" lon="125.5"/>')),
    problems: [],
    points: [null, null],
  },
  {
    fault: 'a route, and a track in pieces',
    file: bytes(
      gpx(
        '<rte><name>Route</name><rtept lat="-8.5" lon="125.25"/><rtept lat="-8.75" lon="125.5"/></rte>' +
          '<trk><name>Track</name><trkseg><trkpt lat="-8" lon="125"/><trkpt lat="-8" lon="125.1"/></trkseg>' +
          '<trkseg><trkpt lat="-8" lon="125.2"/><trkpt lat="-8" lon="125.3"/></trkseg></trk>',
      ),
    ),
    problems: [noted('positions.line_gaps', 'Track')],
    lines: 2,
  },
  {
    fault: 'a track of one place',
    file: bytes(
      gpx(`<trk><name>Track</name><trkseg><trkpt lat="-8" lon="125"/></trkseg></trk>${wpt('Tarn', '-8.5', '125.25')}`),
    ),
    problems: [warned('positions.line_too_short', 'Track')],
    points: ['Tarn'],
  },
  {
    fault: 'one wrong place in a track',
    file: bytes(
      gpx(
        `<trk><name>Track</name><trkseg><trkpt lat="-8" lon="125"/><trkpt lat="-8" lon="12S"/><trkpt lat="-8" lon="126"/></trkseg></trk>${wpt('Tarn', '-8.5', '125.25')}`,
      ),
    ),
    problems: [warned('positions.not_a_number', '-8, 12S')],
    points: ['Tarn'],
    lines: 0,
  },
];

const zip = (files: Readonly<Record<string, string>>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));
const whole = zip({ 'doc.kml': kml(tarn) });

/** The bytes with the encrypted bit set in both places it stands. */
function locked(from: Uint8Array): Uint8Array {
  const to = from.slice();
  const view = new DataView(to.buffer);
  for (let at = 0; at < to.length - 4; at++) {
    const signature = view.getUint32(at, true);
    if (signature === 0x04034b50) to[at + 6]! |= 1;
    if (signature === 0x02014b50) to[at + 8]! |= 1;
  }
  return to;
}

/** One letter of a stored entry changed, as a worn disk does. */
function worn(): Uint8Array {
  const stored = zipSync({ 'doc.kml': [strToU8(kml(tarn)), { level: 0 }] });
  const at = Buffer.from(stored).indexOf('125.25');
  stored[at + 2] = '7'.charCodeAt(0);
  return stored;
}

const zips: readonly Case[] = [
  { fault: 'a KMZ as it should be', file: whole, problems: [], points: ['Tarn'] },
  {
    fault: 'a KMZ without doc.kml',
    file: zip({ 'images/a.txt': 'x', 'other.kml': kml(tarn) }),
    problems: [noted('positions.kmz_taken', 'other.kml')],
    points: ['Tarn'],
  },
  {
    fault: 'a KMZ with two maps',
    file: zip({ 'a.kml': kml(kmlPoint('Ferry', '1,2')), 'doc.kml': kml(tarn) }),
    problems: [noted('positions.kmz_taken', 'doc.kml')],
    points: ['Tarn'],
  },
  { fault: 'a KMZ without a map', file: zip({ 'a.txt': 'x' }), problems: [ofFile('positions.kmz_without_kml')] },
  { fault: 'a KMZ cut off', file: whole.slice(0, -30), problems: [ofFile('zip.cut_off')] },
  { fault: 'a KMZ cut to its first bytes', file: whole.slice(0, 8), problems: [ofFile('zip.cut_off')] },
  { fault: 'a KMZ locked with a password', file: locked(whole), problems: [ofFile('zip.unreadable', 'doc.kml')] },
  { fault: 'a KMZ in which one letter was lost', file: worn(), problems: [ofFile('zip.broken', 'doc.kml')] },
  {
    fault: 'a KMZ that grows without end',
    file: zip({ 'doc.kml': kml(' '.repeat(30e6)) }),
    problems: [ofFile('zip.too_dense', 'doc.kml')],
  },
  {
    fault: 'a KMZ of many files',
    file: zip(Object.fromEntries(Array.from({ length: 2001 }, (_, i) => [`a${i}.txt`, '']))),
    problems: [ofFile('zip.too_many')],
  },
  {
    fault: 'a path out of the folder, which is only a name',
    file: zip({ '../../doc.kml': kml(tarn) }),
    problems: [noted('positions.kmz_taken', '../../doc.kml')],
    points: ['Tarn'],
  },
  {
    fault: 'a document type inside the KMZ',
    file: zip({ 'doc.kml': `<!DOCTYPE kml>${kml(tarn, '')}` }),
    problems: [ofFile('positions.doctype')],
  },
];

describe.each([
  ['a map that cannot be read at all', wholeFiles],
  ['a fault that costs its own thing only', spared],
  ['a zip', zips],
] as const)('%s', (_, cases) => {
  it.each(cases)('$fault', ({ file, problems, points, lines }) => {
    const read = readMap(file, 'a.map');
    expect(read.problems.map(line)).toEqual(problems);
    expect(read.points.map(({ name }) => name)).toEqual(points ?? []);
    if (lines !== undefined) expect(read.lines).toHaveLength(lines);
  });
});

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
