import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What the commands `positions` and `map` say beside problems. */
// long: the words of two commands, one a line
export const mapsIn = ({ say, numbers }: Speech) => ({
  help: {
    positions: say('commandLine.maps.help.positions'),
    map: say('commandLine.maps.help.map'),
    file: say('commandLine.maps.help.file'),
    accept: say('commandLine.maps.help.accept'),
    acceptLikely: say('commandLine.maps.help.acceptLikely'),
    ways: say('commandLine.maps.help.ways'),
    far: say('commandLine.maps.help.far'),
    reach: say('commandLine.maps.help.reach'),
    allRows: say('commandLine.maps.help.allRows'),
    outFile: say('commandLine.maps.help.outFile'),
    replace: say('commandLine.maps.help.replace'),
    positionsExamples: say('commandLine.maps.help.positionsExamples'),
    mapExamples: say('commandLine.maps.help.mapExamples'),
  },
  kinds: {
    geojson: say('commandLine.maps.kinds.geojson'),
    kml: say('commandLine.maps.kinds.kml'),
    kmz: say('commandLine.maps.kinds.kmz'),
    gpx: say('commandLine.maps.kinds.gpx'),
  },
  holds: (file: string, kind: string, pointCount: number, lineCount: number) =>
    say('commandLine.maps.holds', { file, kind, pointCount, lineCount }),
  sure: say('commandLine.maps.sure'),
  likely: say('commandLine.maps.likely'),
  doubtful: say('commandLine.maps.doubtful'),
  columns: [
    say('commandLine.maps.columns.1'),
    say('commandLine.maps.columns.2'),
    say('commandLine.maps.columns.3'),
    say('commandLine.maps.columns.4'),
    say('commandLine.maps.columns.5'),
  ],
  position: (latitude: number, longitude: number) => `${latitude.toFixed(5)} ${longitude.toFixed(5)}`,
  noPosition: say('commandLine.maps.noPosition'),
  moved: (moved_km: number | null) =>
    say('commandLine.maps.moved', { hasMoved: yes(moved_km !== null), distance: numbers.distance_km(moved_km) }),
  already: (count: number) => say('commandLine.maps.already', { count }),
  nothingMatched: say('commandLine.maps.nothingMatched'),
  more: (count: number) => say('commandLine.maps.more', { count: numbers.quantity(count, 'number') }),
  unmatchedPoints: (count: number) => say('commandLine.maps.unmatchedPoints', { count }),
  unmatchedRows: (count: number) => say('commandLine.maps.unmatchedRows', { count }),
  withoutPosition: (count: number, ids: string) => say('commandLine.maps.withoutPosition', { count, ids }),
  unnamed: (number: number) => say('commandLine.maps.unnamed', { number }),
  ways: say('commandLine.maps.ways'),
  waysColumns: [
    say('commandLine.maps.waysColumns.1'),
    say('commandLine.maps.waysColumns.2'),
    say('commandLine.maps.waysColumns.3'),
    say('commandLine.maps.waysColumns.4'),
    say('commandLine.maps.waysColumns.5'),
    say('commandLine.maps.waysColumns.6'),
  ],
  noLines: say('commandLine.maps.noLines'),
  linesNotTaken: (count: number) => say('commandLine.maps.linesNotTaken', { count }),
  newWay: say('commandLine.maps.newWay'),
  unknown: '-',
  length: numbers.distance_km,
  nothingWritten: say('commandLine.maps.nothingWritten'),
  toAccept: (sure: number, ways: number) => say('commandLine.maps.toAccept', { sure, hasWays: yes(ways > 0), ways }),
  toAcceptLikely: (count: number) => say('commandLine.maps.toAcceptLikely', { count }),
  nothingToSet: say('commandLine.maps.nothingToSet'),
  set: (count: number, path: string) => say('commandLine.maps.set', { count, path }),
  kept: (path: string) => say('commandLine.maps.kept', { path }),
  waterCaution: say('commandLine.maps.waterCaution'),
  onMap: (pointCount: number, wayCount: number, path: string) =>
    say('commandLine.maps.onMap', { pointCount, wayCount, path }),
  notOnMap: (count: number, ids: string) =>
    say('commandLine.maps.notOnMap', { count: numbers.quantity(count, 'number'), ids }),
  waysNotOnMap: (count: number, ids: string) =>
    say('commandLine.maps.waysNotOnMap', { count: numbers.quantity(count, 'number'), ids }),
  nothingToShow: say('commandLine.maps.nothingToShow'),
  few: (ids: readonly string[], most: number) =>
    ids.length > most ? `${ids.slice(0, most).join(', ')}, …` : ids.join(', '),
  people: (count: number) => numbers.people(count),
  trouble: {
    ending: (path: string) => say('commandLine.maps.trouble.ending', { path }),
    isThere: (path: string) => say('commandLine.maps.trouble.isThere', { path }),
    isLines: say('commandLine.maps.trouble.isLines'),
    outMissing: say('commandLine.maps.trouble.outMissing'),
    kilometres: say('commandLine.maps.trouble.kilometres'),
  },
});
