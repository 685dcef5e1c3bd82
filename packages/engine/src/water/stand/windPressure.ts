import type { WindExposure } from '../../kernel/index.ts';
import { exposures, flatTo_m, powerLaw_factor, windPressure_factor } from './constants.ts';

/** What the wind's pressure is made of. */
export interface WindOn {
  readonly windSpeed_m_per_s: number;
  /** Kz: how the ground slows it at this height. */
  readonly exposure_factor: number;
  /** Kzt: how hills speed it. */
  readonly topography_factor: number;
  /** Kd: how unlikely it is to come from the worst side. */
  readonly direction_factor: number;
}

/**
 * How much of the wind's full pressure is there so high above the ground?
 *
 * @param exposure - how open the place lies
 * @param height_m - above the ground [m], 0 or more
 * @returns Kz [factor]: one figure up to 15 ft (4.6 m), above it the power law, never less than below
 * @law higher is never less, more open never less
 * @source asce-7, table 29.3-1 (the law above 15 ft from memory)
 * @example
 * exposureFactor('openGround', 3) // → 0.85
 * exposureFactor('builtUp', 4.5) // → 0.57
 */
export function exposureFactor(exposure: WindExposure, height_m: number): number {
  const { nearGround_factor, gradientHeight_m, exponent_factor } = exposures[exposure];
  if (height_m <= flatTo_m) return nearGround_factor;
  const share = Math.min(1, height_m / gradientHeight_m);
  return Math.max(nearGround_factor, powerLaw_factor * share ** (2 / exponent_factor));
}

/**
 * How hard does the wind press at a height?
 *
 * @param wind - its speed [m/s] and the factors of place, hills and direction [factor]
 * @returns velocity pressure [Pa]
 * @law goes with the square of the speed
 * @source asce-7, equation 29.3-1: 0.613 Kz Kzt Kd V²
 * @example
 * velocityPressure_Pa({ windSpeed_m_per_s: 10, exposure_factor: 1, topography_factor: 1, direction_factor: 1 }) // → 61.3
 */
export function velocityPressure_Pa(wind: WindOn): number {
  const { windSpeed_m_per_s, exposure_factor, topography_factor, direction_factor } = wind;
  const still_Pa = windPressure_factor * exposure_factor * topography_factor * direction_factor;
  return still_Pa * windSpeed_m_per_s * windSpeed_m_per_s;
}

/**
 * How hard does the wind push against something stiff?
 *
 * @param pressure_Pa - velocity pressure [Pa]
 * @param gust - gust factor G [factor]
 * @param forceCoefficient - Cf of its form [factor]
 * @param area_m2 - its shadow on a wall behind it [m2]
 * @returns force [N]
 * @source asce-7, equation 29.5-1: F = qz G Cf A
 * @example
 * windForce_N(1000, 0.85, 1, 2) // → 1700
 */
export function windForce_N(pressure_Pa: number, gust: number, forceCoefficient: number, area_m2: number): number {
  return pressure_Pa * gust * forceCoefficient * area_m2;
}
