import { quantileReordering } from './numerics.ts';

/** A place on the earth, north and east positive, WGS 84. */
export interface GeoPosition {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

/** Mean radius of the earth [km]. Source: IUGG 1980, from memory. */
export const earthRadius_km = 6371.0088;

const radians_per_deg = Math.PI / 180;

/**
 * How far apart are two places, along the earth's surface? Half-versed sines on a sphere of the earth's mean radius, which
 * is out by half a hundredth at most.
 *
 * @param a - the one place, latitude_deg and longitude_deg [deg]
 * @param b - the other [deg]
 * @returns the distance [km], 0 or more
 * @law the same both ways; 0 from a place to itself, also across the 180° meridian
 * @source sinnott-1984, haversine (from memory)
 */
export function greatCircle_km(a: GeoPosition, b: GeoPosition): number {
  const north = Math.sin(((b.latitude_deg - a.latitude_deg) * radians_per_deg) / 2) ** 2;
  const east = Math.sin(((b.longitude_deg - a.longitude_deg) * radians_per_deg) / 2) ** 2;
  const both = Math.cos(a.latitude_deg * radians_per_deg) * Math.cos(b.latitude_deg * radians_per_deg);
  return 2 * earthRadius_km * Math.asin(Math.min(1, Math.sqrt(north + both * east)));
}

/**
 * How long is a line over the earth's surface? The great circles between its positions, one after the other. A line in several
 * pieces is as long as its pieces; the gaps between them are not counted. Heights are not counted either.
 *
 * @param pieces - the positions of each piece, in order [deg]
 * @returns the length [km], 0 or more
 * @law the same from either end; a line cut in two at one of its positions is as long as before
 * @definition ours: docs/decisions/0077-what-a-way-is.md
 */
export function lineLength_km(pieces: readonly (readonly GeoPosition[])[]): number {
  let length_km = 0;
  for (const piece of pieces)
    for (let i = 1; i < piece.length; i++) length_km += greatCircle_km(piece[i - 1]!, piece[i]!);
  return length_km;
}

/**
 * Round which place do these lie? The medians of their directions from the middle of the earth, so that a few wrong ones do not
 * shift it and the 180° meridian is no edge.
 *
 * @param positions - the places [deg]
 * @returns the place in their middle [deg]; null where there are none, or they lie all round the earth
 * @law the order of the places changes nothing
 * @definition ours
 */
export function middleOf(positions: readonly GeoPosition[]): GeoPosition | null {
  const steps = middleInSteps(
    Float64Array.from(positions, ({ latitude_deg }) => latitude_deg),
    Float64Array.from(positions, ({ longitude_deg }) => longitude_deg),
  );
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** So many directions are worked out in one step. Ours. */
const step_positions = 2000;

/**
 * The same, step by step, so that others may have their turn in between: ten thousand places take a slow computer 40 ms.
 *
 * @param latitude_deg - of each place [deg]
 * @param longitude_deg - of each place, in the same order [deg]
 * @returns the steps; their result is the place in the middle [deg], null where there are none, or they lie all round the earth
 * @law what `middleOf` gives
 * @definition ours
 */
export function* middleInSteps(
  latitude_deg: Float64Array,
  longitude_deg: Float64Array,
): Generator<void, GeoPosition | null> {
  const count = latitude_deg.length;
  if (count === 0) return null;
  const [xs, ys, zs] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i++) {
    const [north, east] = [latitude_deg[i]! * radians_per_deg, longitude_deg[i]! * radians_per_deg];
    xs[i] = Math.cos(north) * Math.cos(east);
    ys[i] = Math.cos(north) * Math.sin(east);
    zs[i] = Math.sin(north);
    if (i % step_positions === step_positions - 1) yield;
  }
  const x = quantileReordering(xs, 0.5);
  yield;
  const y = quantileReordering(ys, 0.5);
  yield;
  const z = quantileReordering(zs, 0.5);
  if (Math.hypot(x, y, z) < 1e-6) return null;
  return {
    latitude_deg: Math.atan2(z, Math.hypot(x, y)) / radians_per_deg,
    longitude_deg: Math.atan2(y, x) / radians_per_deg,
  };
}
