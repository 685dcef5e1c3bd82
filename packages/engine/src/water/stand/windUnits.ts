import { convertedTo } from '../../kernel/index.ts';
import { fastestWind_m_per_s } from './constants.ts';

/** What a figure for the wind would be, were it in another unit. */
export interface WindInOtherUnit {
  readonly asKmh_m_per_s: number;
  readonly asKn_m_per_s: number;
}

/**
 * Can this be a wind speed in metres a second? Above 90 m/s no structure is designed: then it was written in km/h or knots.
 *
 * @param windSpeed_m_per_s - as stated [m/s]
 * @returns null where it can; else what it would be, were it in km/h or in knots [m/s]
 * @definition ours: docs/decisions/0184-wind-on-a-stand.md
 */
export function windInOtherUnit(windSpeed_m_per_s: number): WindInOtherUnit | null {
  if (windSpeed_m_per_s <= fastestWind_m_per_s) return null;
  return {
    asKmh_m_per_s: convertedTo('m/s', 'kmh', windSpeed_m_per_s)!,
    asKn_m_per_s: convertedTo('m/s', 'kn', windSpeed_m_per_s)!,
  };
}
