import { distance_km } from './distances.ts';
import { numbers } from './numbers.ts';

const many = (count: number, one: string, more: string): string =>
  `${numbers.quantity(count, 'number')} ${count === 1 ? one : more}`;

const points = (count: number) => many(count, 'point', 'points');

/** What the commands `positions` and `map` say beside problems. */
export const maps = {
  help: {
    positions: 'Take positions, and ways, from a map: GeoJSON, KML, KMZ or GPX.',
    map: 'Write sites, gauges, places and ways as a map: GeoJSON, KML, KMZ or GPX.',
    file: 'the map',
    accept: 'write what is sure: matched by id or by name, with nothing against it',
    acceptLikely: 'write what is likely too: names that are nearly the same',
    ways: 'take its lines as ways',
    far: 'how far a position may move unquestioned, in km',
    reach: 'how far from the end of a line a site or place may be, in km',
    allRows: 'list everything, not the first few',
    outFile: 'the map to write; its ending says the form: .geojson, .kml, .kmz, .gpx',
    replace: 'replace FILE if it is there',
    positionsExamples: `
Examples:
  $ eavewell positions islands survey.gpx            what would be set; nothing
                                                     is written
  $ eavewell positions islands survey.gpx --accept   set what is sure
  $ eavewell positions islands survey.gpx --ways --accept   and keep its lines

Only latitude and longitude of the rows named are written; all else in the
tables stays as it is. What is in doubt is never set by itself. No address
in a map is ever opened.`,
    mapExamples: `
Examples:
  $ eavewell map islands --out islands.kmz       for a colleague's map
  $ eavewell map islands --out islands.gpx       for a handheld
  $ eavewell map islands --out islands.geojson   for other programs

Verdicts are not on it: a map of facts only.`,
  },
  kinds: { geojson: 'GeoJSON', kml: 'KML', kmz: 'KMZ', gpx: 'GPX' },
  holds: (file: string, kind: string, pointCount: number, lineCount: number) =>
    `${file}: ${kind}, ${points(pointCount)}, ${many(lineCount, 'line', 'lines')}`,
  sure: 'Sure',
  likely: 'Likely, by a name that is nearly the same',
  doubtful: 'In doubt, never set by itself',
  columns: ['id', 'point in the map', 'from', 'to', 'moved'],
  position: (latitude: number, longitude: number) => `${latitude.toFixed(5)} ${longitude.toFixed(5)}`,
  noPosition: 'none',
  moved: (moved_km: number | null) => (moved_km === null ? 'new' : distance_km(moved_km)),
  already: (count: number) => `${points(count)} ${count === 1 ? 'is' : 'are'} where the tables have them already.`,
  nothingMatched: 'No point of the map is a row of the tables.',
  more: (count: number) => `and ${numbers.quantity(count, 'number')} more: --all lists them`,
  unmatchedPoints: (count: number) => `In the map only: ${points(count)}`,
  unmatchedRows: (count: number) => `In the tables only: ${many(count, 'row', 'rows')}`,
  withoutPosition: (count: number, ids: string) => `${many(count, 'row', 'rows')} still without a position: ${ids}`,
  unnamed: (number: number) => `(thing ${number}, no name)`,
  ways: 'Ways',
  waysColumns: ['way', 'name', 'from', 'to', 'mode', 'length'],
  noLines: 'There is no line in the map.',
  linesNotTaken: (count: number) => `${many(count, 'line', 'lines')} in the map: --ways takes them as ways.`,
  newWay: 'new',
  unknown: '-',
  length: distance_km,
  nothingWritten: 'Nothing was written.',
  toAccept: (sure: number, ways: number) =>
    `--accept sets ${numbers.quantity(sure, 'number')} ${sure === 1 ? 'position' : 'positions'}${ways > 0 ? ` and keeps ${many(ways, 'way', 'ways')}` : ''}.`,
  toAcceptLikely: (count: number) => `--accept-likely sets ${many(count, 'likely one', 'likely ones')} too.`,
  nothingToSet: 'There is nothing to set.',
  set: (count: number, path: string) => `${many(count, 'position', 'positions')} set: ${path}`,
  kept: (path: string) => `Written: ${path}`,
  waterCaution:
    'A position from a map says where, not whether a river can be crossed or a path is safe: ask who knows the way.',
  onMap: (pointCount: number, wayCount: number, path: string) =>
    `${points(pointCount)} and ${many(wayCount, 'way', 'ways')} written: ${path}`,
  notOnMap: (count: number, ids: string) =>
    `Not on it, without a position: ${numbers.quantity(count, 'number')} (${ids})`,
  waysNotOnMap: (count: number, ids: string) =>
    `Not on it, without a line: ${numbers.quantity(count, 'number')} (${ids})`,
  nothingToShow: 'No row has a position and no way has a line: there is nothing to write.',
  few: (ids: readonly string[], most: number) =>
    ids.length > most ? `${ids.slice(0, most).join(', ')}, …` : ids.join(', '),
  people: (count: number) => numbers.people(count),
  trouble: {
    ending: (path: string) => `${path}: end the name in .geojson, .kml, .kmz or .gpx, so that the form is known.`,
    isThere: (path: string) => `${path} is there already. Name another file, or add --replace.`,
    isLines: 'ways.geojson of the folder keeps the lines of ways. Name another file.',
    outMissing: 'Name the map to write, as in: eavewell map islands --out islands.kmz',
    kilometres: 'A distance in km must be a number above 0, at most 20000.',
  },
};
