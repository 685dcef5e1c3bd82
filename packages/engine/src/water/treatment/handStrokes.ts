import { boreArea_m2, L_per_m3, mm_per_m, Pa_per_kPa } from '../../kernel/index.ts';

/**
 * How much water does one stroke of a piston pump give?
 *
 * @param bore_mm - inside diameter of the cylinder [mm], 0 or more
 * @param stroke_mm - way of the piston [mm], 0 or more
 * @param filled_fraction - share of the swept volume that comes out [fraction], 0 to 1: what leaks back past piston and valves does not
 * @returns litres a stroke [L]
 * @law never falls with bore, stroke or share
 * @definition π ÷ 4 × bore² × stroke × share
 * @example
 * strokeVolume_L(50, 150, 0.9) // → 0.26507188
 */
export function strokeVolume_L(bore_mm: number, stroke_mm: number, filled_fraction: number): number {
  return boreArea_m2(bore_mm / mm_per_m) * (stroke_mm / mm_per_m) * filled_fraction * L_per_m3;
}

/**
 * How much water do so many strokes a minute give?
 *
 * @param strokes_per_min - strokes that give water [1/min], 0 or more
 * @param stroke_L - litres a stroke [L], 0 or more
 * @returns flow [L/min]
 * @definition strokes × litres a stroke
 * @example
 * strokeFlow_L_per_min(40, 0.25) // → 10
 */
export function strokeFlow_L_per_min(strokes_per_min: number, stroke_L: number): number {
  return strokes_per_min * stroke_L;
}

/**
 * How hard is the handle to be pushed?
 *
 * @param pressure_kPa - pressure the piston works against [kPa]; under 0 none
 * @param bore_mm - inside diameter of the cylinder [mm], 0 or more
 * @param lever_ratio - length of the handle to the pivot ÷ that of the piston's side [ratio], above 0
 * @param efficiency_fraction - share of the work that reaches the water [fraction], above 0, at most 1; 1 is without friction
 * @returns force at the handle [N]
 * @law rises with the square of the bore, falls with the lever
 * @definition pressure × area of the piston ÷ (lever × efficiency)
 * @example
 * handleForce_N(0, 50, 4, 1) // → 0
 */
export function handleForce_N(
  pressure_kPa: number,
  bore_mm: number,
  lever_ratio: number,
  efficiency_fraction: number,
): number {
  const piston_N = Math.max(0, pressure_kPa) * Pa_per_kPa * boreArea_m2(bore_mm / mm_per_m);
  return piston_N / (lever_ratio * efficiency_fraction);
}
