import { type GeoPosition, greatCircle_km, middleInSteps } from '@eavewell/engine';
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
  /** The same, before it is made a kilometre wide at least; null where nothing is near. */
  readonly bounds: Box | null;
  /** How far from the middle what is near reaches [km]. */
  readonly reach_km: number;
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

/** A site that has a position. Of ten thousand no others are made for it. */
type Placed = MapSite & GeoPosition;

const isPlaced = (site: MapSite): site is Placed => site.latitude_deg !== null && site.longitude_deg !== null;

/** Sites that are laid on the plane before others may have their turn: half a millisecond of a slow computer, and several where it is done for the first time. Ours. */
const step_sites = 60;

/**
 * Which sites make the picture? Positions far from all others (a lost minus sign, two columns changed round) are told in words
 * and do not squash it.
 *
 * @param sites - all sites
 * @param laid - how the earth is laid flat
 * @returns the picture; null where no site has a position
 */
export function frameOf(sites: readonly MapSite[], laid: Laid = 'stereographic'): Frame | null {
  const steps = frameInSteps(sites, laid);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same, step by step, so that a page with ten thousand sites stays quick while they are laid. */
export function* frameInSteps(sites: readonly MapSite[], laid: Laid = 'stereographic'): Generator<void, Frame | null> {
  const placed: Placed[] = [];
  const without: MapSite[] = [];
  for (const [i, site] of sites.entries()) {
    if (isPlaced(site)) placed.push(site);
    else without.push(site);
    if (i % step_sites === 0) yield;
  }
  yield;
  const middle = (yield* middleInSteps(placed)) ?? placed[0] ?? null;
  if (middle === null) return null;
  yield;
  const away_km = new Float64Array(placed.length);
  for (const [i, site] of placed.entries()) {
    away_km[i] = greatCircle_km(middle, site);
    if (i % step_sites === 0) yield;
  }
  const limit_km = farLimit_km(away_km.slice());
  yield;
  const plane = planeAt(middle, laid);
  const near: SitePoint[] = [];
  const far: FarSite[] = [];
  let [bounds, reach_km]: [Box | null, number] = [null, 0];
  for (let from = 0; from < placed.length; from += step_sites) {
    const points: PlanePoint[] = [];
    for (let i = from; i < Math.min(from + step_sites, placed.length); i++) {
      const site = placed[i]!;
      const point = away_km[i]! > limit_km ? null : plane.at(site);
      if (point) points.push(point);
      if (point) near.push({ ...site, point });
      else far.push({ ...site, away_km: away_km[i]! });
    }
    bounds = boundsOf(points, bounds);
    reach_km = points.reduce((most, point) => Math.max(most, Math.hypot(...point)), reach_km);
    yield;
  }
  return { plane, near, far, without, box: boxOf([], bounds), bounds, reach_km };
}

/** Beyond which distance from the middle is a site left out? */
function farLimit_km(away: Float64Array): number {
  const sorted = away.sort();
  const most = Math.min(Math.max(farLeast, Math.ceil(farShare * sorted.length)), Math.floor(sorted.length / 4));
  const kept = sorted[sorted.length - 1 - most] ?? 0;
  return Math.max(kept * farTimes, farFrom_km);
}

/** Least and greatest east and south of points, and of bounds known before; null where there are none. */
function boundsOf(points: readonly PlanePoint[], known: Box | null = null): Box | null {
  let { west, east, north, south } = known ?? {
    ...{ west: Number.POSITIVE_INFINITY, east: Number.NEGATIVE_INFINITY },
    ...{ north: Number.POSITIVE_INFINITY, south: Number.NEGATIVE_INFINITY },
  };
  for (const [x, y] of points) {
    west = Math.min(west, x);
    east = Math.max(east, x);
    north = Math.min(north, y);
    south = Math.max(south, y);
  }
  return west > east ? null : { west, east, north, south };
}

/** The box round points, and round bounds known before; a kilometre wide at least. */
export function boxOf(points: readonly PlanePoint[], known: Box | null = null): Box {
  const bounds = boundsOf(points, known);
  if (bounds === null) return { west: -1, east: 1, north: -1, south: 1 };
  const { west, east, north, south } = bounds;
  const [wide, high] = [Math.max(0, 1 - (east - west)) / 2, Math.max(0, 1 - (south - north)) / 2];
  return { west: west - wide, east: east + wide, north: north - high, south: south + high };
}
