import { earthRadius_km, type GeoPosition, greatCircle_km } from '@eavewell/engine';
import { type GeoProjection, geoMercator, geoStereographic } from 'd3-geo';

/** A point of the map's plane: east and south of its middle [km]. */
export type PlanePoint = readonly [east_km: number, south_km: number];

/** How the earth is laid flat: as seen from a place of the programme, or as files of map tiles have it. */
export type Laid = 'stereographic' | 'mercator';

/** The sheet the earth is laid on: true to shape everywhere, and to length at its middle. */
export interface Plane {
  readonly middle: GeoPosition;
  readonly laid: Laid;
  /** The place at a point of it; null where there is none. */
  placeAt(point: PlanePoint): GeoPosition | null;
  readonly projection: GeoProjection;
  /** Where a place falls; null where that is not on the sheet. */
  at(position: GeoPosition): PlanePoint | null;
  /** How long a kilometre of the plane is on the earth, at a point of it. */
  truth(point: PlanePoint): number;
}

/** How far from the middle the sheet reaches [deg]: a third of the way round. Ours. */
const reach_deg = 120;

/**
 * Lays the earth on a plane whose middle is a place of the programme: the meridian of 180° and the poles are no edges. Under
 * map tiles it is laid as they are, and the poles are not on it.
 *
 * @param middle - what the plane touches
 */
export function planeAt(middle: GeoPosition, laid: Laid = 'stereographic'): Plane {
  const projection = laid === 'mercator' ? mercatorAt(middle) : stereographicAt(middle);
  const at = (position: GeoPosition): PlanePoint | null => {
    if (greatCircle_km(middle, position) > (reach_deg * Math.PI * earthRadius_km) / 180) return null;
    if (laid === 'mercator' && Math.abs(position.latitude_deg) > mercatorReach_deg) return null;
    const point = projection([position.longitude_deg, position.latitude_deg]);
    return point?.every(Number.isFinite) ? point : null;
  };
  const placeAt = (point: PlanePoint): GeoPosition | null => {
    const place = projection.invert?.([point[0], point[1]]);
    return place?.every(Number.isFinite) ? { longitude_deg: place[0], latitude_deg: place[1] } : null;
  };
  const truth = ([east, south]: PlanePoint): number => {
    const [a, b] = [placeAt([east - 0.5, south]), placeAt([east + 0.5, south])];
    return a && b ? greatCircle_km(a, b) : 1;
  };
  return { middle, laid, projection, at, placeAt, truth };
}

/** Seen from the other side of the earth. A kilometre at the middle is one of the plane. */
const stereographicAt = ({ latitude_deg, longitude_deg }: GeoPosition) =>
  geoStereographic()
    .rotate([-longitude_deg, -latitude_deg])
    .scale(earthRadius_km * 2)
    .translate([0, 0])
    .clipAngle(reach_deg)
    .precision(0.5);

/** Beyond it the tiles of maps end [deg]. */
const mercatorReach_deg = 85;

/** As tiles are laid. A kilometre at the middle is one of the plane. */
function mercatorAt({ latitude_deg, longitude_deg }: GeoPosition): GeoProjection {
  const scale = mercatorScale(latitude_deg);
  const projection = geoMercator().rotate([-longitude_deg, 0]).scale(scale).translate([0, 0]);
  const [, south = 0] = projection([longitude_deg, Math.max(-80, Math.min(80, latitude_deg))]) ?? [];
  return projection.translate([0, -south]).precision(0.5);
}

/** How many kilometres of the plane a radian of the equator takes, where a kilometre is true at a latitude. */
export function mercatorScale(latitude_deg: number): number {
  return earthRadius_km * Math.cos((Math.max(-80, Math.min(80, latitude_deg)) * Math.PI) / 180);
}
