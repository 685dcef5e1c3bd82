import { type GeoPosition, greatCircle_km, middleOf } from '@eavewell/engine';
import { type Laid, type Plane, type PlanePoint, planeAt } from './plane.ts';

/** A site as the map is given it. Those that need her most come first. */
export interface MapSite {
  readonly key: string;
  readonly name: string;
  readonly latitude_deg: number | null;
  readonly longitude_deg: number | null;
  readonly verdict: 'holds' | 'tight' | 'short' | 'unknown' | 'notJudged';
}

/** A site with its point on the plane. */
export interface SitePoint extends MapSite {
  readonly point: PlanePoint;
}

/** A site so far off that the picture would be squashed to show it. */
export interface FarSite extends MapSite {
  readonly away_km: number;
}

/** What the picture shows, and what it does not. */
export interface Frame {
  readonly plane: Plane;
  readonly near: readonly SitePoint[];
  readonly far: readonly FarSite[];
  readonly without: readonly MapSite[];
  /** Least and greatest east and south of what is near [km]. */
  readonly box: Box;
}

export interface Box {
  readonly west: number;
  readonly east: number;
  readonly north: number;
  readonly south: number;
}

/** So many of the farthest may be left out of the picture: one in a hundred, but three at least. Ours. */
const [farShare, farLeast] = [0.01, 3] as const;
/** What is left out lies so many times as far from the middle as all the others, and so far at least [km]. Ours. */
const [farTimes, farFrom_km] = [2.5, 25] as const;

const positionOf = ({ latitude_deg, longitude_deg }: MapSite): GeoPosition | null =>
  latitude_deg === null || longitude_deg === null ? null : { latitude_deg, longitude_deg };

/**
 * Which sites make the picture? Positions far from all others (a lost minus sign, two columns changed round) are told in words
 * and do not squash it.
 *
 * @param sites - all sites
 * @param laid - how the earth is laid flat
 * @returns the picture; null where no site has a position
 */
export function frameOf(sites: readonly MapSite[], laid: Laid = 'stereographic'): Frame | null {
  const placed = sites.flatMap((site) => {
    const position = positionOf(site);
    return position ? [{ site, position }] : [];
  });
  const middle = middleOf(placed.map(({ position }) => position)) ?? placed[0]?.position ?? null;
  if (middle === null) return null;
  const away = placed.map(({ position }) => greatCircle_km(middle, position));
  const limit_km = farLimit_km(away);
  const plane = planeAt(middle, laid);
  const near: SitePoint[] = [];
  const far: FarSite[] = [];
  for (const [i, { site, position }] of placed.entries()) {
    const point = away[i]! > limit_km ? null : plane.at(position);
    if (point) near.push({ ...site, point });
    else far.push({ ...site, away_km: away[i]! });
  }
  const without = sites.filter((site) => positionOf(site) === null);
  return { plane, near, far, without, box: boxOf(near.map(({ point }) => point)) };
}

/** Beyond which distance from the middle is a site left out? */
function farLimit_km(away: readonly number[]): number {
  const sorted = [...away].sort((a, b) => a - b);
  const most = Math.min(Math.max(farLeast, Math.ceil(farShare * sorted.length)), Math.floor(sorted.length / 4));
  const kept = sorted[sorted.length - 1 - most] ?? 0;
  return Math.max(kept * farTimes, farFrom_km);
}

/** The box round points; a kilometre wide at least. */
export function boxOf(points: readonly PlanePoint[]): Box {
  let [west, east, north, south] = [
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const [x, y] of points) {
    [west, east] = [Math.min(west, x), Math.max(east, x)];
    [north, south] = [Math.min(north, y), Math.max(south, y)];
  }
  if (west > east) return { west: -1, east: 1, north: -1, south: 1 };
  const [wide, high] = [Math.max(0, 1 - (east - west)) / 2, Math.max(0, 1 - (south - north)) / 2];
  return { west: west - wide, east: east + wide, north: north - high, south: south + high };
}
