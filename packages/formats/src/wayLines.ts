import type { GeoPosition, Problem } from '@eavewell/engine';
import { type MapLine, tableProblem, type WayOfLine, wayLinesFile } from '@eavewell/tables';
import { decodeText } from './decodeText.ts';
import { positionDecimals } from './editTable.ts';
import { readFileBytes } from './readFileBytes.ts';
import { readMap } from './readMap.ts';

/** The lines of ways in a folder. */
export interface WayLines {
  /** Null where there is no file of them, or none that can be read. */
  readonly lines: readonly MapLine[] | null;
  readonly problems: readonly Problem[];
}

/**
 * Which lines of ways are kept in this folder?
 *
 * @param folder - the programme folder [text]
 * @returns the lines of ways.geojson, and what is wrong with them
 * @problem ways.no_lines - it is another kind of map
 * @definition ours: docs/decisions/0077-what-a-way-is.md
 */
export async function readWayLines(folder: string): Promise<WayLines> {
  const found = await readFileBytes(folder, wayLinesFile);
  if (found.bytes === null) return { lines: null, problems: found.problem ? [found.problem] : [] };
  const { kind, lines, problems } = readMap(found.bytes, wayLinesFile);
  const said = problems.filter(({ code }) => code !== 'positions.nothing');
  if (said.some(({ severity }) => severity === 'blocker')) return { lines: null, problems: said };
  const isRead = kind === 'geojson';
  const file = { value: wayLinesFile, found: String(kind) };
  const none = isRead ? [] : [tableProblem('ways.no_lines', { file: wayLinesFile }, file)];
  return { lines: isRead ? lines : null, problems: [...said, ...none] };
}

const rounded = (value: number) => Number(value.toFixed(positionDecimals));

/**
 * How is a position written in a map? Longitude first, to 7 decimals.
 *
 * @param position - the position [deg]
 * @returns longitude and latitude [deg]
 * @source rfc7946, section 3.1.1
 */
export function coordinatesOf({ latitude_deg, longitude_deg }: GeoPosition): readonly [number, number] {
  return [rounded(longitude_deg), rounded(latitude_deg)];
}

/**
 * How is a line cut where it crosses the 180° meridian? Into pieces that each stay on one side, with an end on it.
 *
 * @param pieces - the pieces of the line [deg]
 * @returns the pieces, none of which crosses it [deg]
 * @source rfc7946, section 3.1.9
 */
export function cutAtMeridian(pieces: MapLine['pieces']): MapLine['pieces'] {
  const cut: GeoPosition[][] = [];
  for (const piece of pieces) {
    let own: GeoPosition[] = [piece[0]!];
    for (let i = 1; i < piece.length; i++) {
      const [before, after] = [piece[i - 1]!, piece[i]!];
      const east = after.longitude_deg - before.longitude_deg;
      if (Math.abs(east) > 180) {
        const side = Math.sign(before.longitude_deg) * 180;
        const part = (side - before.longitude_deg) / (east + 2 * side);
        const latitude_deg = before.latitude_deg + part * (after.latitude_deg - before.latitude_deg);
        if (before.longitude_deg !== side) own.push({ latitude_deg, longitude_deg: side });
        if (own.length > 1) cut.push(own);
        own = after.longitude_deg === -side ? [] : [{ latitude_deg, longitude_deg: -side }];
      }
      own.push(after);
    }
    if (own.length > 1) cut.push(own);
  }
  return cut;
}

/**
 * How is a line written as a geometry? In one piece or several, cut at the 180° meridian.
 *
 * @param pieces - its pieces [deg]
 * @returns a LineString or MultiLineString
 * @source rfc7946, sections 3.1.4 and 3.1.5
 */
export function lineGeometry(pieces: MapLine['pieces']): object {
  const lines = cutAtMeridian(pieces).map((piece) => piece.map(coordinatesOf));
  return lines.length === 1
    ? { type: 'LineString', coordinates: lines[0]! }
    : { type: 'MultiLineString', coordinates: lines };
}

interface Kept {
  readonly type: string;
  readonly features: readonly { readonly id?: unknown }[];
}

/**
 * How is the file of lines with those of these ways in it? Lines of other ways, and all else in the file, stay.
 *
 * @param bytes - the file as it stands; null where there is none [byte]
 * @param ways - the ways with their lines
 * @returns the text to write; or the problem, and then nothing is to be written
 * @problem positions.table_broken - the file that is there is no collection of features
 * @source rfc7946, sections 3.2 and 3.3
 */
export function withWayLines(
  bytes: Uint8Array | null,
  ways: readonly WayOfLine[],
): { readonly text: string } | { readonly problem: Problem } {
  const file = wayLinesFile;
  let kept: Kept = { type: 'FeatureCollection', features: [] };
  try {
    const decoded = bytes === null ? null : decodeText(bytes);
    if (decoded) kept = JSON.parse('text' in decoded ? decoded.text : '') as Kept;
    if (kept.type !== 'FeatureCollection' || !Array.isArray(kept.features)) throw new SyntaxError('no collection');
  } catch {
    return { problem: tableProblem('positions.table_broken', { file }, { value: file }) };
  }
  const fresh = new Map(ways.map((way) => [way.wayId, way]));
  const others = kept.features.filter((feature) => !fresh.has(String(feature?.id)));
  const features = [
    ...others,
    ...ways.map(({ wayId, name, pieces }) => ({
      type: 'Feature',
      id: wayId,
      properties: { name },
      geometry: lineGeometry(pieces),
    })),
  ];
  const { features: _features, ...members } = kept;
  const head = JSON.stringify({ ...members, features: [] }).slice(0, -2);
  return { text: `${head}\n${features.map((feature) => JSON.stringify(feature)).join(',\n')}\n]}\n` };
}
