import { type GeoPosition, greatCircle_km, middleInSteps } from '@eavewell/engine';
import { type MapSites, type MapVerdict, mapVerdicts } from './mapSites.ts';
import { type Laid, type Plane, type PlanePoint, planeAt } from './plane.ts';

/** A site with its point on the plane: made of those that are looked at. */
export interface SitePoint {
  readonly key: string;
  readonly name: string;
  readonly verdict: MapVerdict;
  readonly point: PlanePoint;
}

/** A site so far off that the picture would be squashed to show it. */
export interface FarSite {
  readonly place: number;
  readonly away_km: number;
}

/** The sites that are in the picture, in their order: the place of each among all, and its point on the plane [km]. */
export class Near {
  constructor(
    readonly sites: MapSites,
    readonly places: Uint32Array,
    readonly east_km: Float64Array,
    readonly south_km: Float64Array,
  ) {}

  get count(): number {
    return this.places.length;
  }

  /** The number of its verdict. */
  verdictAt(i: number): number {
    return this.sites.verdict[this.places[i]!]!;
  }

  keyAt(i: number): string {
    return this.sites.keyAt(this.places[i]!);
  }

  /** One of them as it is looked at; null where there is none. */
  at(i: number): SitePoint | null {
    const place = this.places[i];
    if (place === undefined) return null;
    return {
      ...{ key: this.sites.keyAt(place), name: this.sites.nameAt(place) },
      verdict: mapVerdicts[this.verdictAt(i)]!,
      point: [this.east_km[i]!, this.south_km[i]!],
    };
  }

  /** Which of them has a key; -1: none. */
  indexOf(key: string): number {
    const place = this.sites.placeOf(key);
    return place < 0 ? -1 : this.places.indexOf(place);
  }
}

/** What the picture shows, and what it does not. */
export interface Frame {
  readonly plane: Plane;
  readonly near: Near;
  readonly far: readonly FarSite[];
  /** Places of those without a position. */
  readonly without: Uint32Array;
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
export function frameOf(sites: MapSites, laid: Laid = 'stereographic'): Frame | null {
  const steps = frameInSteps(sites, laid);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same, step by step, so that a page with ten thousand sites stays quick while they are laid. */
export function* frameInSteps(sites: MapSites, laid: Laid = 'stereographic'): Generator<void, Frame | null> {
  const isPlaced = (place: number) =>
    !(Number.isNaN(sites.latitude_deg[place]) || Number.isNaN(sites.longitude_deg[place]));
  const all = Uint32Array.from({ length: sites.count }, (_, place) => place);
  const [placed, without] = [all.filter(isPlaced), all.filter((place) => !isPlaced(place))];
  const positions = new Positions(sites, placed);
  yield;
  const middle = (yield* middleInSteps(positions.latitude_deg, positions.longitude_deg)) ?? positions.at(0);
  if (middle === null) return null;
  yield;
  const away_km = new Float64Array(placed.length);
  for (let i = 0; i < placed.length; i++) {
    away_km[i] = greatCircle_km(middle, positions.at(i)!);
    if (i % step_sites === 0) yield;
  }
  const limit_km = farLimit_km(away_km.slice());
  yield;
  const plane = planeAt(middle, laid);
  const [places, east_km, south_km] = [
    placed.slice(),
    new Float64Array(placed.length),
    new Float64Array(placed.length),
  ];
  const far: FarSite[] = [];
  let [bounds, reach_km, count]: [Box | null, number, number] = [null, 0, 0];
  for (let i = 0; i < placed.length; i++) {
    const point = away_km[i]! > limit_km ? null : plane.at(positions.at(i)!);
    if (point === null) far.push({ place: placed[i]!, away_km: away_km[i]! });
    else {
      places[count] = placed[i]!;
      [east_km[count], south_km[count]] = point;
      count++;
      bounds = boundsWith(point, bounds);
      reach_km = Math.max(reach_km, Math.hypot(...point));
    }
    if (i % step_sites === 0) yield;
  }
  const near = new Near(sites, places.subarray(0, count), east_km.subarray(0, count), south_km.subarray(0, count));
  return { plane, near, far, without, box: boxOf([], bounds), bounds, reach_km };
}

/** Where the sites lie that have a position. */
class Positions {
  readonly latitude_deg: Float64Array;
  readonly longitude_deg: Float64Array;

  constructor(sites: MapSites, places: Uint32Array) {
    this.latitude_deg = Float64Array.from(places, (place) => sites.latitude_deg[place]!);
    this.longitude_deg = Float64Array.from(places, (place) => sites.longitude_deg[place]!);
  }

  at(i: number): GeoPosition | null {
    const [latitude_deg, longitude_deg] = [this.latitude_deg[i], this.longitude_deg[i]];
    return latitude_deg === undefined || longitude_deg === undefined ? null : { latitude_deg, longitude_deg };
  }
}

/** Beyond which distance from the middle is a site left out? */
function farLimit_km(away: Float64Array): number {
  const sorted = away.sort();
  const most = Math.min(Math.max(farLeast, Math.ceil(farShare * sorted.length)), Math.floor(sorted.length / 4));
  const kept = sorted[sorted.length - 1 - most] ?? 0;
  return Math.max(kept * farTimes, farFrom_km);
}

/** Bounds that a point lies in as well: of bounds known before, or its own. */
function boundsWith([x, y]: PlanePoint, known: Box | null): Box {
  if (known === null) return { west: x, east: x, north: y, south: y };
  const { west, east, north, south } = known;
  if (x >= west && x <= east && y >= north && y <= south) return known;
  return { west: Math.min(west, x), east: Math.max(east, x), north: Math.min(north, y), south: Math.max(south, y) };
}

/** The box round points, and round bounds known before; a kilometre wide at least. */
export function boxOf(points: readonly PlanePoint[], known: Box | null = null): Box {
  const bounds = points.reduce<Box | null>((box, point) => boundsWith(point, box), known);
  if (bounds === null) return { west: -1, east: 1, north: -1, south: 1 };
  const { west, east, north, south } = bounds;
  const [wide, high] = [Math.max(0, 1 - (east - west)) / 2, Math.max(0, 1 - (south - north)) / 2];
  return { west: west - wide, east: east + wide, north: north - high, south: south + high };
}
