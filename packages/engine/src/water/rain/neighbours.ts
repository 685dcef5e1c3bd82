import type { GaugeFacts, RainRecord } from '../../kernel/index.ts';
import { earthRadius_km, neighbourReach_km } from './constants.ts';

/** A place on the earth. */
export interface GaugePosition {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

/** Another gauge's record as it was measured, and how far away it is. */
export interface Neighbour {
  readonly record: RainRecord;
  readonly distance_km: number;
}

/** A gauge with what was measured there. */
export interface GaugeRecord {
  readonly gauge: Pick<GaugeFacts, 'gaugeId' | 'latitude_deg' | 'longitude_deg'>;
  readonly record: RainRecord;
}

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
export function greatCircle_km(a: GaugePosition, b: GaugePosition): number {
  const north = Math.sin(((b.latitude_deg - a.latitude_deg) * radians_per_deg) / 2) ** 2;
  const east = Math.sin(((b.longitude_deg - a.longitude_deg) * radians_per_deg) / 2) ** 2;
  const both = Math.cos(a.latitude_deg * radians_per_deg) * Math.cos(b.latitude_deg * radians_per_deg);
  return 2 * earthRadius_km * Math.asin(Math.min(1, Math.sqrt(north + both * east)));
}

/**
 * Which gauges are near enough to speak for this one? Those within 100 km whose position is known; nearest first, of two as
 * near the one whose id comes first.
 *
 * @param own - the gauge
 * @param all - every gauge with its record; the gauge itself may be among them
 * @param reach_km - how far away one may be [km]
 * @returns the neighbours with their distance [km]; none where the gauge's own position is not known
 * @law the order of the gauges changes nothing
 * @definition ours: a reach of 100 km
 */
export function neighboursOf(
  own: GaugeRecord['gauge'],
  all: readonly GaugeRecord[],
  reach_km: number = neighbourReach_km,
): readonly Neighbour[] {
  const here = positionOf(own);
  if (!here) return [];
  const near = all.flatMap(({ gauge, record }) => {
    const there = gauge.gaugeId === own.gaugeId ? null : positionOf(gauge);
    return there ? [{ record, distance_km: greatCircle_km(here, there) }] : [];
  });
  return near
    .filter(({ distance_km }) => distance_km <= reach_km)
    .sort((a, b) => a.distance_km - b.distance_km || (a.record.gaugeId < b.record.gaugeId ? -1 : 1));
}

function positionOf({ latitude_deg, longitude_deg }: GaugeRecord['gauge']): GaugePosition | null {
  return latitude_deg === null || longitude_deg === null ? null : { latitude_deg, longitude_deg };
}
