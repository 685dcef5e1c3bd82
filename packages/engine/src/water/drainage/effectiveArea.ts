import { steepestRoof_deg, wallShare_fraction, windDrift_factor } from './constants.ts';

/**
 * How large is a roof to rain that drives in on the wind? Its plan area, larger the steeper it is, as rain is taken to fall 2 down for 1 across; of
 * that the share that has a gutter, and half of the wall that stands above it.
 *
 * @param roof - roofPlanArea_m2 [m2], 0 or more; pitch_deg [deg], 0 or more; gutteredFraction [fraction] 0 to 1; wallAbove_m2 [m2], 0 or more
 * @returns area that brings water to its gutters [m2]; null over 70°, which is a wall to the rain and not judged
 * @law a steeper roof never has less; over a plan of length L and width W to a ridge H higher it is L × (W + H ÷ 2)
 * @source adh-2015, Table 1; ipc-2012, 1106.4 (walls)
 * @example
 * effectiveArea_m2({ roofPlanArea_m2: 60, pitch_deg: 45, gutteredFraction: 1, wallAbove_m2: 0 }) // → 90
 * effectiveArea_m2({ roofPlanArea_m2: 60, pitch_deg: 0, gutteredFraction: 0.5, wallAbove_m2: 8 }) // → 34
 * effectiveArea_m2({ roofPlanArea_m2: 60, pitch_deg: 71, gutteredFraction: 1, wallAbove_m2: 0 }) // → null
 */
export function effectiveArea_m2(roof: {
  readonly roofPlanArea_m2: number;
  readonly pitch_deg: number;
  readonly gutteredFraction: number;
  readonly wallAbove_m2: number;
}): number | null {
  const { roofPlanArea_m2, pitch_deg, gutteredFraction, wallAbove_m2 } = roof;
  if (pitch_deg > steepestRoof_deg) return null;
  return roofPlanArea_m2 * pitchFactor(pitch_deg) * gutteredFraction + wallAbove_m2 * wallShare_fraction;
}

/**
 * How much larger than its plan is a roof of this pitch to driving rain?
 *
 * @param pitch_deg - slope against the level [deg], 0 to 70
 * @returns times the plan area [factor], 1 or more
 * @source adh-2015, Table 1
 * @example
 * pitchFactor(0) // → 1
 * pitchFactor(30) // → 1.289
 */
export function pitchFactor(pitch_deg: number): number {
  return 1 + windDrift_factor * Math.tan((pitch_deg * Math.PI) / 180);
}
