import { N_per_kN, weightOfOneKg_N } from './constants.ts';

/**
 * How much does a mass weigh?
 *
 * @param mass_kg - the mass [kg]
 * @returns its weight [kN]
 * @definition mass × 9.81 N
 * @example
 * weight_kN(1000) // → 9.81
 */
export function weight_kN(mass_kg: number): number {
  return (mass_kg * weightOfOneKg_N) / N_per_kN;
}

/**
 * How hard does a mass press on the ground under its feet, shared evenly among them?
 *
 * @param mass_kg - all that rests on the ground [kg]
 * @param area_m2 - all of the area it rests on [m2], above 0
 * @returns pressure [kPa]; null where there is no area
 * @law more mass never presses less, more area never more
 * @definition weight ÷ area
 * @example
 * bearingPressure_kPa(1000, 2) // → 4.905
 * bearingPressure_kPa(1000, 0) // → null
 */
export function bearingPressure_kPa(mass_kg: number, area_m2: number): number | null {
  return area_m2 > 0 ? weight_kN(mass_kg) / area_m2 : null;
}
