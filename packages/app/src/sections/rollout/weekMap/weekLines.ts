import type { GeoPosition } from '@eavewell/engine';
import type { RolloutSheet, SheetTrip } from '@eavewell/tables';
import type { MapSites, WayLine } from '../../map/index.ts';
import { meets, type Week } from './weeks.ts';

/** Where places and sites lie; undefined where that is not known. */
export type PositionOf = (id: string) => GeoPosition | undefined;

/** A stretch of a trip on the map. */
export interface LegLine {
  readonly line: readonly GeoPosition[];
  /** Does the crew go it in this week? */
  readonly isOfWeek: boolean;
}

/** Where the places of a plan and its sites lie. */
export function positionsOf({ places }: Pick<RolloutSheet, 'places'>, sites: MapSites | null): PositionOf {
  const known = new Map<string, GeoPosition>();
  for (const { placeId, latitude_deg, longitude_deg } of places)
    if (latitude_deg !== null && longitude_deg !== null) known.set(placeId, { latitude_deg, longitude_deg });
  return (id) => known.get(id) ?? positionIn(sites, id);
}

function positionIn(sites: MapSites | null, siteId: string): GeoPosition | undefined {
  const place = sites?.placeOf(siteId) ?? -1;
  const [latitude_deg, longitude_deg] = [sites?.latitude_deg[place], sites?.longitude_deg[place]];
  if (latitude_deg === undefined || longitude_deg === undefined) return undefined;
  return Number.isNaN(latitude_deg) || Number.isNaN(longitude_deg) ? undefined : { latitude_deg, longitude_deg };
}

/** The ways of a plan with their lines; straight from end to end where no line is known. */
export function wayLines({ ways }: Pick<RolloutSheet, 'ways'>, positionOf: PositionOf): readonly WayLine[] {
  return ways.map(({ wayId, name, mode, from, to, line_deg }) => {
    const line = (line_deg ?? []).flatMap(([longitude_deg, latitude_deg]): readonly GeoPosition[] =>
      longitude_deg === undefined || latitude_deg === undefined ? [] : [{ longitude_deg, latitude_deg }],
    );
    return { key: wayId, name, mode, pieces: [line.length > 1 ? line : straight(positionOf, from, to)] };
  });
}

function straight(positionOf: PositionOf, from: string, to: string): readonly GeoPosition[] {
  const ends = [positionOf(from), positionOf(to)];
  return ends.every((end) => end !== undefined) ? (ends as readonly GeoPosition[]) : [];
}

/** What a trip is drawn from: its ways by their ids, with their ends. */
export interface WaysKnown {
  readonly lines: ReadonlyMap<string, readonly GeoPosition[]>;
  readonly ends: ReadonlyMap<string, { readonly from: string; readonly to: string }>;
}

/** Ways by their ids. */
export const waysKnown = (sheet: Pick<RolloutSheet, 'ways'>, lines: readonly WayLine[]): WaysKnown => ({
  lines: new Map(lines.map(({ key, pieces }) => [key, pieces[0] ?? []])),
  ends: new Map(sheet.ways.map(({ wayId, from, to }) => [wayId, { from, to }])),
});

/**
 * The way of a trip along the lines of the ways, leg by leg.
 *
 * @param trip - its legs, in the order they are gone
 * @param ways - lines and ends of the ways
 * @param week - which legs are of the week; one whose days are not told is, where the trip is out
 */
export function tripLines(
  trip: Pick<SheetTrip, 'legs' | 'leaves' | 'back'>,
  ways: WaysKnown,
  positionOf: PositionOf,
  week: Week,
): readonly LegLine[] {
  return trip.legs.flatMap(({ from, to, wayIds, leaves, arrives }): readonly LegLine[] => {
    const along = alongWays(from, wayIds, ways, positionOf);
    const line = along.length > 1 ? along : straight(positionOf, from, to);
    if (line.length < 2) return [];
    const [begins, ends] = [leaves ?? trip.leaves, arrives ?? leaves ?? trip.back];
    return [{ line, isOfWeek: meets(week, begins, ends) }];
  });
}

/** The lines of ways one after the other, each turned so that it goes on where the one before ended. */
function alongWays(
  from: string,
  wayIds: readonly string[],
  { lines, ends }: WaysKnown,
  positionOf: PositionOf,
): readonly GeoPosition[] {
  const along: GeoPosition[] = [];
  let at = from;
  for (const wayId of wayIds) {
    const line = lines.get(wayId) ?? [];
    const end = ends.get(wayId);
    const isBack =
      end === undefined ? false : end.to === at || (end.from !== at && isNearer(line, along.at(-1) ?? positionOf(at)));
    along.push(...(isBack ? [...line].reverse() : line));
    if (end !== undefined) at = isBack ? end.from : end.to;
  }
  return along;
}

/** Is the end of a line nearer to a place than its beginning? */
function isNearer(line: readonly GeoPosition[], place: GeoPosition | undefined): boolean {
  const [first, last] = [line[0], line.at(-1)];
  return place !== undefined && first !== undefined && last !== undefined && away(last, place) < away(first, place);
}

/** Which of two is farther is asked, no more; near to each other a degree east is shorter by the cosine. */
function away(a: GeoPosition, b: GeoPosition): number {
  const east = (a.longitude_deg - b.longitude_deg) * Math.cos((a.latitude_deg * Math.PI) / 180);
  return Math.hypot(east, a.latitude_deg - b.latitude_deg);
}

/** The middle of a line by its points; undefined where it has none. */
export const middleOf = (line: readonly GeoPosition[]): GeoPosition | undefined =>
  line[Math.floor((line.length - 1) / 2)];
