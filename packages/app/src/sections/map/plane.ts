import { earthRadius_km, type GeoPosition, greatCircle_km } from '@eavewell/engine';
import { type GeoProjection, geoStereographic } from 'd3-geo';

/** A point of the map's plane: east and south of its middle [km]. */
export type PlanePoint = readonly [east_km: number, south_km: number];

/** The sheet the earth is laid on: true to shape everywhere, and to length at its middle. */
export interface Plane {
  readonly middle: GeoPosition;
  readonly projection: GeoProjection;
  /** Where a place falls; null where that is not on the sheet. */
  at(position: GeoPosition): PlanePoint | null;
  /** How long a kilometre of the plane is on the earth, at a point of it. */
  truth(point: PlanePoint): number;
}

/** How far from the middle the sheet reaches [deg]: a third of the way round. Ours. */
const reach_deg = 120;

/**
 * Lays the earth on a plane whose middle is a place of the programme: the meridian of 180° and the poles are no edges.
 *
 * @param middle - what the plane touches
 */
export function planeAt(middle: GeoPosition): Plane {
  const projection = geoStereographic()
    .rotate([-middle.longitude_deg, -middle.latitude_deg])
    .scale(earthRadius_km * 2)
    .translate([0, 0])
    .clipAngle(reach_deg)
    .precision(0.5);
  const at = (position: GeoPosition): PlanePoint | null => {
    if (greatCircle_km(middle, position) > (reach_deg * Math.PI * earthRadius_km) / 180) return null;
    const point = projection([position.longitude_deg, position.latitude_deg]);
    return point?.every(Number.isFinite) ? point : null;
  };
  const truth = ([east, south]: PlanePoint): number => {
    const ends = [projection.invert?.([east - 0.5, south]), projection.invert?.([east + 0.5, south])];
    const [a, b] = ends.map((end) => (end ? { longitude_deg: end[0], latitude_deg: end[1] } : null));
    return a && b ? greatCircle_km(a, b) : 1;
  };
  return { middle, projection, at, truth };
}
