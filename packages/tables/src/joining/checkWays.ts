import { type GeoPosition, greatCircle_km, lineLength_km, type Problem } from '@eavewell/engine';
import { wayLinesFile } from '../contract/ways.ts';
import { nearest } from '../reading/nearest.ts';
import { type NotUsed, tableProblem } from '../reading/tableProblems.ts';
import type { MapLine } from './mapThings.ts';
import type { TablesRead } from './tablesRead.ts';

/** What joining ways, places and lines brought to light. */
export interface WaysChecked {
  readonly problems: readonly Problem[];
  readonly notUsed: readonly NotUsed[];
}

/** A stated length may be so much off that of its line [fraction]; ours: tracks are drawn coarse or wander by about as much. */
const lengthTolerance_fraction = 0.2;
/** A way may be so much shorter than the straight line between its ends [fraction, km]: positions are of villages, not of doors. Ours. */
const [straightTolerance_fraction, straightTolerance_km] = [0.05, 0.5] as const;

/** Positions of sites and places by id, and all their ids. */
function endsOf({ sites, places }: TablesRead) {
  const rows = [
    ...(sites?.rows ?? []).map(({ values }) => ({ id: values.siteId!, ...values })),
    ...(places?.rows ?? []).map(({ values }) => ({ id: values.placeId!, ...values })),
  ];
  const positions = new Map<string, GeoPosition>();
  for (const { id, latitude_deg, longitude_deg } of rows)
    if (latitude_deg !== null && longitude_deg !== null) positions.set(id, { latitude_deg, longitude_deg });
  const lost = [
    ...(sites?.lost ?? []).flatMap(({ keys }) => keys['siteId'] ?? []),
    ...(places?.lost ?? []).flatMap(({ keys }) => keys['placeId'] ?? []),
  ];
  return { ids: new Set([...rows.map(({ id }) => id), ...lost]), positions };
}

/** One id for a site and a place would leave a way's end unknown. */
function sharedIds({ sites, places }: TablesRead): readonly Problem[] {
  const siteIds = new Set((sites?.rows ?? []).map(({ values }) => values.siteId));
  return (places?.rows ?? []).flatMap(({ row, values }) => {
    if (!siteIds.has(values.placeId)) return [];
    const place = { file: places!.file, row, column: 'placeId' };
    return [tableProblem('link.site_and_place', place, { value: values.placeId!, expected: 'an id no site has' })];
  });
}

/** The ends of ways that are nowhere. */
function lostEnds(tables: TablesRead, ids: ReadonlySet<string>) {
  const found = { problems: [] as Problem[], notUsed: [] as NotUsed[] };
  const { ways, sites, places } = tables;
  if (sites?.usable !== true || places?.usable === false) return found;
  for (const { row, values, cells } of ways?.rows ?? [])
    for (const column of ['from', 'to'] as const) {
      const id = values[column];
      if (id === null || ids.has(id)) continue;
      const { file } = ways!;
      const facts = { value: id, column, expected: 'a siteId or placeId', likely: nearest(id, ids) ?? '' };
      found.problems.push(tableProblem('link.unknown_place', { file, row, column }, facts));
      found.notUsed.push({ file, row, column, value: id, code: 'link.unknown_place', cells });
    }
  return found;
}

/** The lines by the way they are of; ids only, for a file of ours says its ids. */
function linesById(lines: readonly MapLine[]): ReadonlyMap<string, MapLine> {
  const byId = new Map<string, MapLine>();
  for (const line of lines) if (line.ids[0] !== undefined && !byId.has(line.ids[0])) byId.set(line.ids[0], line);
  return byId;
}

/**
 * How long is each way that has a line?
 *
 * @param lines - the lines of ways.geojson
 * @returns lengths by wayId [km]
 * @definition ours: docs/decisions/0077-what-a-way-is.md
 */
export function lengthsOfLines(lines: readonly MapLine[]): ReadonlyMap<string, number> {
  return new Map([...linesById(lines)].map(([id, { pieces }]) => [id, lineLength_km(pieces)]));
}

function lengthProblems(
  { ways }: TablesRead,
  lines: ReadonlyMap<string, MapLine>,
  positions: ReadonlyMap<string, GeoPosition>,
): readonly Problem[] {
  const problems: Problem[] = [];
  for (const { row, values } of ways?.rows ?? []) {
    const place = { file: ways!.file, row, column: 'length_km' };
    const line = lines.get(values.wayId!);
    const line_km = line ? lineLength_km(line.pieces) : null;
    const { length_km, wayId } = values;
    if (length_km === null && line_km === null)
      problems.push(tableProblem('ways.without_length', place, { value: wayId!, expected: 'a length or a line' }));
    if (length_km !== null && line_km !== null && Math.abs(length_km / line_km - 1) > lengthTolerance_fraction)
      problems.push(tableProblem('ways.length_differs', place, { value: wayId!, length_km, line_km }));
    const [from, to] = [values.from, values.to].map((id) => (id === null ? undefined : positions.get(id)));
    const known_km = length_km ?? line_km;
    if (from === undefined || to === undefined || known_km === null) continue;
    const straight_km = greatCircle_km(from, to);
    if (known_km < straight_km * (1 - straightTolerance_fraction) - straightTolerance_km)
      problems.push(
        tableProblem('ways.shorter_than_straight', place, { value: wayId!, length_km: known_km, straight_km }),
      );
  }
  return problems;
}

/** Lines of ways that are not in the table, and ways without a line where others have one. */
function lineLinks({ ways }: TablesRead, lines: readonly MapLine[], byId: ReadonlyMap<string, MapLine>) {
  const problems: Problem[] = [];
  const wayIds = new Set([
    ...(ways?.rows ?? []).map(({ values }) => values.wayId!),
    ...(ways?.lost ?? []).flatMap(({ keys }) => keys['wayId'] ?? []),
  ]);
  for (const { ids, name, number } of lines) {
    const id = ids[0] ?? '';
    if (wayIds.has(id)) continue;
    const facts = { value: id, name: name ?? '', number, expected: 'a wayId of ways.csv' };
    problems.push(
      tableProblem('ways.line_unknown', { file: wayLinesFile }, { ...facts, likely: nearest(id, wayIds) ?? '' }),
    );
  }
  const without = (ways?.rows ?? []).filter(({ values }) => !byId.has(values.wayId!));
  if (lines.length > 0 && without.length > 0)
    problems.push(
      tableProblem(
        'ways.without_line',
        { file: ways!.file, row: without[0]!.row },
        {
          value: without[0]!.values.wayId!,
          count: without.length,
        },
      ),
    );
  return problems;
}

/**
 * Do ways, places and the lines of ways go together? Ends must be sites or places, lines must be of ways, and lengths must be
 * possible.
 *
 * @param tables - the tables as they were read
 * @param lines - the lines of ways.geojson; null where it is not there or could not be read
 * @returns the problems, and the cells not used
 * @problem link.unknown_place - a way's end that is neither a site nor a place
 * @problem ways.line_unknown - a line of a way that is not in the table
 * @problem ways.no_lines - neither a line nor a table of ways
 * @problem ways.shorter_than_straight - a way shorter than the straight line between its ends
 * @definition ours: docs/decisions/0077-what-a-way-is.md
 */
export function checkWays(tables: TablesRead, lines: readonly MapLine[] | null): WaysChecked {
  const { ids, positions } = endsOf(tables);
  const ends = lostEnds(tables, ids);
  const byId = linesById(lines ?? []);
  const problems = [
    ...sharedIds(tables),
    ...ends.problems,
    ...lengthProblems(tables, byId, positions),
    ...(lines === null ? [] : lineLinks(tables, lines, byId)),
    ...(lines?.length === 0 && tables.ways === undefined ? [noLines()] : []),
  ];
  return { problems, notUsed: ends.notUsed };
}

function noLines(): Problem {
  return tableProblem('ways.no_lines', { file: wayLinesFile }, { value: wayLinesFile, found: 'geojson' });
}
