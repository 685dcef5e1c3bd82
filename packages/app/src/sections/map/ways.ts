import type { GeoPosition } from '@eavewell/engine';
import type { Plane, PlanePoint } from './plane.ts';

/** A row of a table, as the server gives it. */
export interface Row {
  readonly key: string;
  readonly cells: Readonly<Record<string, string>>;
}

export type WayMode = 'road' | 'river' | 'foot' | 'other';

/** The programme's own ways as paths of the plane [km], by how they are gone. */
export interface WaysDrawn {
  readonly paths: Readonly<Record<WayMode, string>>;
  /** Names of rivers, each at the middle of its line. */
  readonly rivers: readonly { readonly key: string; readonly name: string; readonly point: PlanePoint }[];
  /** How many ways have no line, so that they are not drawn. */
  readonly without: number;
}

/** A place of the programme that is no site. */
export interface MapPlace {
  readonly key: string;
  readonly name: string;
  readonly kind: 'store' | 'landing' | 'other';
  readonly point: PlanePoint;
}

const modes: readonly string[] = ['road', 'river', 'foot'];

/** A way with the pieces of its line. */
export interface WayLine {
  readonly key: string;
  readonly name: string | null;
  readonly mode: string;
  readonly pieces: readonly (readonly GeoPosition[])[];
}

/** Ways and places that are drawn where they are not those of the tables as they stand. */
export interface MapGround {
  readonly ways: readonly WayLine[];
  readonly places: readonly (Omit<MapPlace, 'point' | 'kind'> & GeoPosition & { readonly kind: string | null })[];
}

/**
 * The lines of ways, as they are drawn.
 *
 * @param ways - rows of the table of ways
 * @param lines - rows of their lines: a GeoJSON feature each
 */
export function waysOf(ways: readonly Row[], lines: readonly Row[], plane: Plane): WaysDrawn {
  const known = new Map(ways.map((row) => [row.key, row.cells]));
  const { drawn, ...paths } = linesDrawn(
    lines.map(({ key, cells }) => {
      const way = known.get(key);
      return { key, name: way?.['name'] ?? null, mode: way?.['mode'] ?? '', pieces: piecesOf(cells['line']) };
    }),
    plane,
  );
  return { ...paths, without: ways.filter(({ key }) => !drawn.has(key)).length };
}

function linesDrawn(
  lines: readonly WayLine[],
  plane: Plane,
): Omit<WaysDrawn, 'without'> & { readonly drawn: ReadonlySet<string> } {
  const paths: Record<WayMode, string> = { road: '', river: '', foot: '', other: '' };
  const rivers: { key: string; name: string; point: PlanePoint }[] = [];
  const drawn = new Set<string>();
  for (const { key, name, mode, pieces: laid } of lines) {
    const pieces = laid.map((piece) => piece.map((position) => plane.at(position)).filter((point) => point !== null));
    const path = pieces.map(pathOf).join('');
    if (path === '') continue;
    paths[modes.includes(mode) ? (mode as WayMode) : 'other'] += path;
    drawn.add(key);
    const longest = pieces.reduce((a, b) => (b.length > a.length ? b : a));
    const point = longest[Math.floor(longest.length / 2)];
    if (mode === 'river' && name && point) rivers.push({ key, name, point });
  }
  return { paths, rivers, drawn };
}

/** The ways and places of a ground, laid on a plane. */
export function groundDrawn(
  { ways, places }: MapGround,
  plane: Plane,
): { readonly ways: WaysDrawn; readonly places: readonly MapPlace[] } {
  const { paths, rivers } = linesDrawn(ways, plane);
  return {
    ways: { paths, rivers, without: 0 },
    places: places.flatMap(({ key, name, kind, ...position }) => {
      const point = plane.at(position);
      return point ? [{ key, name, kind: drawnAs(kind), point }] : [];
    }),
  };
}

const drawnAs = (kind: string | null | undefined): MapPlace['kind'] =>
  kind === 'store' || kind === 'landing' ? kind : 'other';

/**
 * The places of a programme that have a position.
 *
 * @param numberOf - reads a cell as a number; null where it is none
 */
export function placesOf(
  rows: readonly Row[],
  plane: Plane,
  numberOf: (cell: string | undefined) => number | null,
): readonly MapPlace[] {
  return rows.flatMap(({ key, cells }) => {
    const [latitude_deg, longitude_deg] = [numberOf(cells['latitude_deg']), numberOf(cells['longitude_deg'])];
    if (latitude_deg === null || longitude_deg === null || Math.abs(latitude_deg) > 90) return [];
    const point = plane.at({ latitude_deg, longitude_deg });
    return point ? [{ key, name: cells['name'] ?? key, kind: drawnAs(cells['kind']), point }] : [];
  });
}

/** A line of the plane as a path; none where it is one point. */
export function pathOf(points: readonly PlanePoint[]): string {
  if (points.length < 2) return '';
  return `M${points.map(([x, y]) => `${x.toFixed(3)} ${y.toFixed(3)}`).join('L')}`;
}

/** The pieces of a line that is kept as GeoJSON; none where it is no line. */
function piecesOf(text: string | undefined): readonly (readonly GeoPosition[])[] {
  const geometry = geometryOf(text);
  if (geometry === null || !Array.isArray(geometry.coordinates)) return [];
  const pieces: readonly unknown[] = geometry.type === 'LineString' ? [geometry.coordinates] : geometry.coordinates;
  if (geometry.type !== 'LineString' && geometry.type !== 'MultiLineString') return [];
  return pieces.map((piece) => (Array.isArray(piece) ? piece.flatMap(positionOf) : []));
}

function geometryOf(text: string | undefined): { readonly type?: unknown; readonly coordinates?: unknown } | null {
  try {
    return JSON.parse(text ?? 'null')?.geometry ?? null;
  } catch {
    return null;
  }
}

function positionOf(pair: unknown): readonly GeoPosition[] {
  if (!Array.isArray(pair)) return [];
  const [longitude_deg, latitude_deg]: readonly unknown[] = pair;
  if (typeof longitude_deg !== 'number' || typeof latitude_deg !== 'number') return [];
  return Math.abs(latitude_deg) <= 90 && Number.isFinite(longitude_deg) ? [{ longitude_deg, latitude_deg }] : [];
}
