import { type GaugeFacts, type GeoPosition, greatCircle_km, type RainRecord } from '../../kernel/index.ts';
import { neighbourReach_km } from './constants.ts';

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

function positionOf({ latitude_deg, longitude_deg }: GaugeRecord['gauge']): GeoPosition | null {
  return latitude_deg === null || longitude_deg === null ? null : { latitude_deg, longitude_deg };
}
