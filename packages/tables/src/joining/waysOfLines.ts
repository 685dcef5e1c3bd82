import { type GeoPosition, greatCircle_km, lineLength_km, type Problem } from '@eavewell/engine';
import { idForm } from '../contract/columns.ts';
import { tableProblem } from '../reading/tableProblems.ts';
import type { MapLine, WayMode } from './mapThings.ts';

/** A row of ways.csv, as far as lines bear on it. */
export interface WayKnown {
  readonly wayId: string;
  readonly name: string | null;
  readonly row: number;
  readonly from: string | null;
  readonly to: string | null;
  readonly mode: WayMode | null;
}

/** A site or place a way may start or end at. */
export interface WayEnd {
  readonly id: string;
  readonly position: GeoPosition;
}

/** What a line comes to as a way: a row of ways.csv and its line. */
export interface WayOfLine {
  readonly wayId: string;
  readonly name: string | null;
  readonly from: string | null;
  readonly to: string | null;
  readonly mode: WayMode | null;
  readonly length_km: number;
  readonly pieces: MapLine['pieces'];
  /** The row it is already; null where it is a new way. */
  readonly row: number | null;
}

/** A degree of latitude is never shorter than this [km]. Ours: a little under that of the mean sphere. */
const leastDegree_km = 110;

/** The nearest end within reach; of two as near the one whose id comes first. */
function nearestEnd(position: GeoPosition, ends: readonly WayEnd[], reach_km: number): string | null {
  let [best, least_km]: [string | null, number] = [null, reach_km];
  for (const { id, position: there } of ends) {
    if (Math.abs(there.latitude_deg - position.latitude_deg) * leastDegree_km > least_km) continue;
    const away_km = greatCircle_km(position, there);
    if (away_km < least_km || (away_km === least_km && (best === null || id < best))) [best, least_km] = [id, away_km];
  }
  return best;
}

/** An id made of a name, that no other way has. */
function freshId(line: MapLine, taken: ReadonlySet<string>): string {
  const own = line.ids.find((id) => idForm.test(id) && !taken.has(id));
  if (own !== undefined) return own;
  const plain = (line.name ?? '')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 48);
  const base = plain === '' ? `way-${line.number}` : plain;
  let id = base;
  for (let i = 2; taken.has(id); i++) id = `${base}-${i}`;
  return id;
}

/** The way a line is already: by id, or by a name that only one way has. */
function knownWay(line: MapLine, ways: readonly WayKnown[]): WayKnown | null {
  const byId = ways.find(({ wayId }) => line.ids.includes(wayId) || line.name === wayId || line.comment === wayId);
  if (byId) return byId;
  const named = line.name === null ? [] : ways.filter(({ name }) => name === line.name);
  return named.length === 1 ? named[0]! : null;
}

/**
 * Which ways do these lines come to? A line that is a way already brings it a new line and length; its other facts stay. Ends are
 * the nearest site or place within reach, else empty and named.
 *
 * @param lines - the lines of a map
 * @param known - the rows of ways.csv
 * @param ends - where a way may start or end
 * @param file - the map's name, for the places of problems [text]
 * @param reach_km - how far from a line's end a site or place may be [km]
 * @returns a way for each line, with its length [km], and what could not be found
 * @problem ways.end_not_found - no site or place within reach of an end
 * @problem ways.same_ends - it comes back to where it started; its ends are left empty
 * @definition ours: docs/decisions/0077-what-a-way-is.md
 */
export function waysOfLines(
  lines: readonly MapLine[],
  known: readonly WayKnown[],
  ends: readonly WayEnd[],
  file: string,
  reach_km: number,
): { readonly ways: readonly WayOfLine[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const taken = new Set(known.map(({ wayId }) => wayId));
  const used = new Set<string>();
  const ways = lines.map((line): WayOfLine => {
    const found = knownWay(line, known);
    const before = found !== null && !used.has(found.wayId) ? found : null;
    const wayId = before?.wayId ?? freshId(line, taken);
    taken.add(wayId);
    used.add(wayId);
    const [start, end] = [line.pieces[0]![0]!, line.pieces.at(-1)!.at(-1)!];
    let from = before?.from ?? nearestEnd(start, ends, reach_km);
    let to = before?.to ?? nearestEnd(end, ends, reach_km);
    const facts = { name: line.name ?? wayId, number: line.number, reach_km };
    if (from !== null && from === to) {
      problems.push(tableProblem('ways.same_ends', { file }, { ...facts, value: from }));
      [from, to] = [before?.from ?? null, before?.to ?? null];
    } else
      for (const [side, id] of [
        ['from', from],
        ['to', to],
      ] as const)
        if (id === null) problems.push(tableProblem('ways.end_not_found', { file }, { ...facts, value: wayId, side }));
    const { name, mode, pieces } = line;
    const length_km = lineLength_km(pieces);
    const row = before?.row ?? null;
    return { wayId, name: before?.name ?? name, from, to, mode: before?.mode ?? mode, length_km, pieces, row };
  });
  return { ways, problems };
}
