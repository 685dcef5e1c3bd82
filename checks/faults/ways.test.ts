import { describe, expect, it } from 'vitest';
import { assertPlanted, type Files, good, line, type Planted, readFiles } from './folder.ts';

const places = [
  'placeId,name,kind,latitude_deg,longitude_deg',
  'store-1,Harbour store,store,-8.4,125.2',
  'jetty,Tarn jetty,landing,-8.52,125.26',
  '',
].join('\n');
const ways = [
  'wayId,name,from,to,mode,length_km',
  'W1,River road,store-1,jetty,road,15.5',
  'W2,Tarn path,jetty,S001,foot,2.6',
  'W3,,jetty,S003,river,',
  '',
].join('\n');
const feature = (id: string, coordinates: readonly (readonly [number, number])[]) => ({
  type: 'Feature',
  id,
  properties: { name: null },
  geometry: { type: 'LineString', coordinates },
});
const lines = (...features: readonly unknown[]) => JSON.stringify({ type: 'FeatureCollection', features });
const three = [
  feature('W1', [
    [125.2, -8.4],
    [125.22, -8.45],
    [125.26, -8.52],
  ]),
  feature('W2', [
    [125.26, -8.52],
    [125.25, -8.5],
  ]),
  feature('W3', [
    [125.26, -8.52],
    [125.4, -8.7],
    [125.5, -8.75],
  ]),
];
const sound: Files = { ...good, 'places.csv': places, 'ways.csv': ways, 'ways.geojson': lines(...three) };
const but = (file: string, from: string, to: string): Files => {
  const text = String(sound[file]);
  expect(text.split(from)).toHaveLength(2);
  return { ...sound, [file]: text.replace(from, () => to) };
};

const planted: readonly Planted[] = [
  {
    fault: 'an end that is neither a site nor a place',
    files: () => but('ways.csv', 'store-1,jetty', 'store-1,jety'),
    problems: ['link.unknown_place blocker @ ways.csv 2 to = "jety"'],
    notUsed: ['ways.csv 2 to link.unknown_place'],
    inDoubt: [],
  },
  {
    fault: 'an id that a site and a place both have',
    files: () => but('places.csv', 'store-1,Harbour', 'S002,Harbour'),
    problems: [
      'link.site_and_place blocker @ places.csv 2 placeId = "S002"',
      'link.unknown_place blocker @ ways.csv 2 from = "store-1"',
    ],
    notUsed: ['ways.csv 2 from link.unknown_place'],
    inDoubt: [],
  },
  {
    fault: 'a file of lines without any, and no table of ways',
    files: () => ({ ...good, 'ways.geojson': lines() }),
    problems: ['ways.no_lines warning @ ways.geojson - - = "ways.geojson"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'another kind of map under the name of the file of lines',
    files: () => ({
      ...good,
      'ways.geojson':
        '<kml><Placemark><name>W1</name><LineString><coordinates>125.2,-8.4 125.3,-8.4</coordinates></LineString></Placemark></kml>',
    }),
    problems: ['ways.no_lines warning @ ways.geojson - - = "ways.geojson"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a line of a way that is not there',
    files: () => ({
      ...sound,
      'ways.geojson': lines(
        ...three,
        feature('W9', [
          [125.2, -8.4],
          [125.3, -8.4],
        ]),
      ),
    }),
    problems: ['ways.line_unknown warning @ ways.geojson - - = "W9"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a way without a line and without a length',
    files: () => ({ ...sound, 'ways.geojson': lines(three[0], three[1]) }),
    problems: [
      'ways.without_length warning @ ways.csv 4 length_km = "W3"',
      'ways.without_line note @ ways.csv 4 - = "W3"',
    ],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'no lines at all',
    files: () => {
      const { 'ways.geojson': _lines, ...rest } = sound;
      return rest;
    },
    problems: ['ways.without_length warning @ ways.csv 4 length_km = "W3"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a length that is not that of its line',
    files: () => but('ways.csv', 'foot,2.6', 'foot,26'),
    problems: ['ways.length_differs warning @ ways.csv 3 length_km = "W2"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a way shorter than the straight line between its ends',
    files: () => but('ways.csv', 'road,15.5', 'road,12.5'),
    problems: ['ways.shorter_than_straight warning @ ways.csv 2 length_km = "W1"'],
    notUsed: [],
    inDoubt: [],
  },
  {
    fault: 'a length that is none',
    files: () => but('ways.csv', 'road,15.5', 'road,0'),
    problems: ['cell.out_of_range blocker @ ways.csv 2 length_km = "0"'],
    notUsed: ['ways.csv 2 length_km cell.out_of_range'],
    inDoubt: [],
  },
  {
    fault: 'a way of going that nobody knows',
    files: () => but('ways.csv', 'foot,2.6', 'mule,2.6'),
    problems: ['cell.not_a_choice blocker @ ways.csv 3 mode = "mule"'],
    notUsed: ['ways.csv 3 mode cell.not_a_choice'],
    inDoubt: [],
  },
  {
    fault: 'a file of lines cut off',
    files: () => ({ ...sound, 'ways.geojson': lines(...three).slice(0, -9) }),
    problems: [
      'positions.json_broken blocker @ ways.geojson - - = "ways.geojson"',
      'ways.without_length warning @ ways.csv 4 length_km = "W3"',
    ],
    notUsed: [],
    inDoubt: [],
  },
];

describe('places, ways and their lines', () => {
  it('are read without a word where they are sound', async () => {
    const read = await readFiles(sound);
    expect(read.problems.map(line)).toEqual([]);
    expect(read.files.filter(({ file }) => /places|ways/.test(file))).toEqual([
      { file: 'places.csv', rows: 2, used: 2 },
      { file: 'ways.csv', rows: 3, used: 3 },
    ]);
  });

  it('may hold no line yet', async () => {
    const empty = { ...sound, 'ways.geojson': lines(), 'ways.csv': ways.replace('river,', 'river,40') };
    expect((await readFiles(empty)).problems.map(line)).toEqual([]);
  });

  it.each(planted)('$fault', async (one) => {
    await assertPlanted(one);
  });

  it('names the id that was likely meant', async () => {
    const read = await readFiles(planted[0]!.files());
    expect(read.problems[0]!.facts['likely']).toBe('jetty');
  });
});
