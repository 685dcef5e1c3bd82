import { downpipeFlow } from './constants.ts';

/**
 * How much water does an upright pipe take down, filled by this share? It runs along the wall with air in the middle: a pipe that is asked to carry
 * more begins to suck and to knock.
 *
 * @param bore_mm - inside diameter [mm], above 0
 * @param fill_fraction - share of the pipe that is water [fraction], above 0; 0.33 where nothing else is said
 * @returns flow [L/s]
 * @law a wider pipe never takes less
 * @source en-12056-3, Table 8 (from memory); sri-lanka-sheet (the formula, with its decimals); wyly-eaton-1961
 * @example
 * downpipeCapacity_L_per_s(100) // → 10.7114130067
 */
export function downpipeCapacity_L_per_s(bore_mm: number, fill_fraction: number = downpipeFlow.fill_fraction): number {
  const { flow_factor, roughness_mm, roughness_exponent, bore_exponent, fill_exponent } = downpipeFlow;
  return flow_factor * roughness_mm ** roughness_exponent * bore_mm ** bore_exponent * fill_fraction ** fill_exponent;
}
