import { type GeoPosition, greatCircle_km, type Place, type Problem, wayModes } from '@eavewell/engine';
import {
  type MapLine,
  type MapPoint,
  type MapThing,
  type MapThings,
  shown,
  tableProblem,
  type WayMode,
} from '@eavewell/tables';

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Collections within collections are read to this depth; RFC 7946 asks for one. Ours. */
const deepestCollection = 8;
/** A gap between pieces under this is none [km]: a line cut at the 180° meridian has two ends in one place. Ours. */
const leastGap_km = 0.001;

const worldWide = /crs:?84$|epsg:+4326$|wgs[ _]?84/i;
const idNames = ['id', 'siteid', 'gaugeid', 'placeid', 'wayid'];
const timeNames = ['time', 'timestamp', 'timespan', 'coordTimes'];
const areas = ['Polygon', 'MultiPolygon'];
const geometries = ['Point', 'MultiPoint', 'LineString', 'MultiLineString', 'GeometryCollection', ...areas];

/** Longest name that is kept [character]; what a cell of text may hold. */
const longestWord = 500;

/** A word of a property: single spaces for all that cannot be seen, none round it; null where there is none. */
function wordIn(value: unknown): string | null {
  if (typeof value !== 'string' && typeof value !== 'number') return null;
  const seen = String(value)
    .normalize('NFC')
    .replace(/[\s\p{Cc}]+/gu, ' ');
  const word = seen.trim().slice(0, longestWord);
  return word === '' ? null : word;
}

function property(properties: Fields, names: readonly string[]): string | null {
  for (const name of names) {
    const key = Object.keys(properties).find((one) => one.toLowerCase() === name);
    const word = key === undefined ? null : wordIn(properties[key]);
    if (word !== null) return word;
  }
  return null;
}

function thingOf(feature: Fields, properties: Fields, number: number): MapThing {
  const ids = new Set<string>();
  const own = wordIn(feature['id']);
  if (own !== null) ids.add(own);
  for (const name of idNames) {
    const word = property(properties, [name]);
    if (word !== null) ids.add(word);
  }
  const comment = property(properties, ['cmt']);
  const name = property(properties, ['name', 'title', 'label']);
  return { number, name, ids: [...ids], ...(comment === null ? {} : { comment }) };
}

const isMode = (word: string): word is WayMode => (wayModes as readonly string[]).includes(word);

function modeOf(properties: Fields): WayMode | null {
  for (const name of ['mode', 'type']) {
    const word = property(properties, [name])?.toLowerCase();
    if (word !== undefined && isMode(word)) return word;
  }
  return null;
}

/** Does the file say when it was there? The library keeps the times of a track's positions apart. */
function hasTime(properties: Fields): boolean {
  const inner = properties['coordinateProperties'];
  const times = isFields(inner) && Array.isArray(inner['times']) ? (inner['times'] as readonly unknown[]) : [];
  return (
    timeNames.some((name) => Object.hasOwn(properties, name)) || times.flat().some((time) => wordIn(time) !== null)
  );
}

/** Why a thing cannot be used. */
interface PositionFault {
  readonly code: 'positions.not_a_number' | 'positions.out_of_range' | 'positions.projected' | 'positions.swapped';
  readonly value: string;
  readonly likely?: string;
}

/** Can these be degrees of latitude and longitude? Source: RFC 7946, section 4 (WGS 84, degrees). */
function rangeFault(latitude: number, longitude: number): PositionFault | null {
  const [north, east] = [Math.abs(latitude), Math.abs(longitude)];
  if (north <= 90 && east <= 180) return null;
  const value = `${latitude}, ${longitude}`;
  if (north > 360 || east > 360) return { code: 'positions.projected', value };
  if (north > 90 && north <= 180 && east <= 90)
    return { code: 'positions.swapped', value, likely: `${longitude}, ${latitude}` };
  const likely = north <= 90 ? `${latitude}, ${Number((longitude - Math.sign(longitude) * 360).toFixed(9))}` : '';
  return { code: 'positions.out_of_range', value, likely };
}

const plus = (value: number) => (value === 0 ? 0 : value);

/** Reads one GeoJSON text's things; each fault is written down once, here. */
class ThingsReader {
  readonly points: MapPoint[] = [];
  readonly lines: MapLine[] = [];
  readonly problems: Problem[] = [];
  private readonly place: Place;
  private readonly left = { area: [] as string[], none: [] as string[], heights: 0, times: 0 };

  constructor(file: string) {
    this.place = { file };
  }

  say(code: Parameters<typeof tableProblem>[0], facts: Problem['facts']): void {
    this.problems.push(tableProblem(code, this.place, facts));
  }

  private refuse({ name, number }: MapThing, code: Parameters<typeof tableProblem>[0], facts: Problem['facts']): void {
    this.say(code, { name: shown(name ?? ''), number, ...facts });
  }

  private positionOf(coordinates: unknown): GeoPosition | PositionFault {
    const [first, second] = Array.isArray(coordinates) ? (coordinates as readonly unknown[]) : [];
    const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
    if (!isNumber(first) || !isNumber(second)) {
      const text = JSON.stringify(coordinates) ?? '';
      return { code: 'positions.not_a_number', value: shown(text.slice(0, 200)) };
    }
    const fault = rangeFault(second, first);
    if (fault) return fault;
    if ((coordinates as readonly unknown[]).length > 2) this.left.heights++;
    return { latitude_deg: plus(second), longitude_deg: plus(first) };
  }

  private point(thing: MapThing, properties: Fields, coordinates: unknown): void {
    const position = this.positionOf(coordinates);
    if ('code' in position) {
      const { code, ...facts } = position;
      this.refuse(thing, code, facts);
    } else this.points.push({ ...thing, kind: property(properties, ['kind', 'type']), position });
  }

  private line(thing: MapThing, properties: Fields, coordinates: readonly unknown[]): void {
    const pieces: GeoPosition[][] = [];
    for (const piece of coordinates) {
      const positions: GeoPosition[] = [];
      for (const one of Array.isArray(piece) ? (piece as readonly unknown[]) : [piece]) {
        const position = this.positionOf(one);
        if ('code' in position) {
          const { code, ...facts } = position;
          this.refuse(thing, code, facts);
          return;
        }
        positions.push(position);
      }
      if (positions.length > 1) pieces.push(positions);
    }
    const isLong = pieces.some((piece) => piece.some((one) => greatCircle_km(one, piece[0]!) > 0));
    if (!isLong) {
      this.refuse(thing, 'positions.line_too_short', { value: thing.name ?? '' });
      return;
    }
    const gaps_km = pieces.slice(1).reduce((sum, piece, i) => sum + greatCircle_km(pieces[i]!.at(-1)!, piece[0]!), 0);
    if (gaps_km > leastGap_km)
      this.refuse(thing, 'positions.line_gaps', { value: thing.name ?? '', pieces: pieces.length, gaps_km });
    this.lines.push({ ...thing, mode: modeOf(properties), pieces });
  }

  /** Uses what is a point, gives the pieces of what is a line, names the rest. */
  private pieces(thing: MapThing, properties: Fields, geometry: unknown, depth: number): readonly unknown[] {
    const label = thing.name ?? String(thing.number);
    if (geometry === null || geometry === undefined) {
      this.left.none.push(label);
      return [];
    }
    const { type, coordinates, geometries: inner } = isFields(geometry) ? geometry : ({} as Fields);
    if (areas.includes(String(type))) this.left.area.push(label);
    else if (type === 'Point') this.point(thing, properties, coordinates);
    else if (type === 'MultiPoint' && Array.isArray(coordinates))
      for (const one of coordinates as readonly unknown[]) this.point(thing, properties, one);
    else if (type === 'LineString' && Array.isArray(coordinates)) return [coordinates];
    else if (type === 'MultiLineString' && Array.isArray(coordinates)) return coordinates as readonly unknown[];
    else if (type === 'GeometryCollection' && Array.isArray(inner) && depth < deepestCollection)
      return (inner as readonly unknown[]).flatMap((one) => this.pieces(thing, properties, one, depth + 1));
    else this.refuse(thing, 'positions.not_a_thing', { value: thing.name ?? '', found: shown(String(type)) });
    return [];
  }

  /** Lines of one thing are one line in pieces: KML knows no other way to say so. */
  private geometry(thing: MapThing, properties: Fields, geometry: unknown): void {
    const pieces = this.pieces(thing, properties, geometry, 0);
    const isLine = isFields(geometry) && /LineString$/.test(String(geometry['type']));
    if (pieces.length > 0 || (isLine && Array.isArray(geometry['coordinates']))) this.line(thing, properties, pieces);
  }

  feature(value: unknown, number: number): void {
    const feature = isFields(value) ? value : ({} as Fields);
    const properties = isFields(feature['properties']) ? feature['properties'] : ({} as Fields);
    const thing = thingOf(feature, properties, number);
    if (feature['type'] !== 'Feature') {
      this.refuse(thing, 'positions.not_a_thing', { value: thing.name ?? '', found: shown(String(feature['type'])) });
      return;
    }
    if (hasTime(properties)) this.left.times++;
    this.geometry(thing, properties, feature['geometry']);
  }

  /** False where the coordinates are not degrees of the system all maps here are in. */
  isWorldWide(crs: unknown): boolean {
    if (crs === undefined) return true;
    const properties = isFields(crs) && isFields(crs['properties']) ? crs['properties'] : ({} as Fields);
    const name = wordIn(properties['name']) ?? wordIn(properties['href']) ?? wordIn(properties['code']) ?? 'null';
    const isKnown = worldWide.test(name) || crs === null;
    this.say(isKnown ? 'positions.crs_said' : 'positions.crs_other', { value: shown(name) });
    return isKnown;
  }

  read(value: unknown): void {
    const root = isFields(value) ? value : ({} as Fields);
    const { type, features } = root;
    const isCollection = type === 'FeatureCollection' && Array.isArray(features);
    const isGeometry = geometries.includes(String(type));
    if (!isCollection && !isGeometry && type !== 'Feature') {
      const found = typeof type === 'string' ? type : Array.isArray(value) ? 'a list' : 'no type';
      this.say('positions.not_geojson', { value: this.place.file!, found: shown(found) });
      return;
    }
    if (!this.isWorldWide(root['crs'])) return;
    if (isGeometry) this.geometry({ number: 1, name: null, ids: [] }, {}, root);
    else if (isCollection) (features as readonly unknown[]).forEach((one, i) => void this.feature(one, i + 1));
    else this.feature(root, 1);
    this.sayWhatWasLeft();
  }

  private sayWhatWasLeft(): void {
    const { area, none, heights, times } = this.left;
    if (area.length > 0) this.say('positions.area_left', { value: shown(area[0]!), count: area.length });
    if (none.length > 0) this.say('positions.without_geometry', { value: shown(none[0]!), count: none.length });
    if (heights > 0) this.say('positions.height_left', { value: heights, count: heights });
    if (times > 0) this.say('positions.time_left', { value: times, count: times });
  }
}

/**
 * Which points and lines stand in this GeoJSON? Every fault costs its own thing and no other; areas, heights and times are left
 * out and counted.
 *
 * @param value - the parsed JSON, whatever it is
 * @param file - the file's name, for the places of problems [text]
 * @returns points, lines and problems
 * @problem positions.not_geojson - it is JSON of another kind
 * @problem positions.crs_other - its coordinates are of another system; nothing of it is used
 * @law never throws; every position is -90 to 90 and -180 to 180 degrees
 * @source rfc7946, sections 3 and 4
 */
export function geojsonThings(value: unknown, file: string): MapThings {
  const reader = new ThingsReader(file);
  reader.read(value);
  return { points: reader.points, lines: reader.lines, problems: reader.problems };
}
