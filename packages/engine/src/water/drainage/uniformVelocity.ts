/**
 * How fast does water run down an even slope, in a channel that neither gains nor loses any? Manning's formula. A gutter gains water all along: this
 * is told beside its rating and never credited.
 *
 * @param hydraulicRadius_m - area of the water ÷ wetted edge [m], 0 or more
 * @param fall_mm_per_m - fall along the channel [mm/m], 0 or more
 * @param roughness_factor - Manning's roughness [factor], above 0
 * @returns speed [m/s]
 * @source cengel-cimbala-2006, open-channel flow
 * @example
 * uniformVelocity_m_per_s(0.025, 0, 0.015) // → 0
 * uniformVelocity_m_per_s(0.2859, 5.236, 0.03) // → 1.0467781958
 */
export function uniformVelocity_m_per_s(
  hydraulicRadius_m: number,
  fall_mm_per_m: number,
  roughness_factor: number,
): number {
  return (hydraulicRadius_m ** (2 / 3) * Math.sqrt(fall_mm_per_m / 1000)) / roughness_factor;
}

/**
 * How much does a gutter fall from its far end to its outlet?
 *
 * @param run_m - the way along it [m], 0 or more
 * @param fall_mm_per_m - fall on each metre [mm/m]
 * @returns fall in all [mm]
 * @source iisc-wgbis, gutters and downpipes
 * @example
 * fallOverRun_mm(30, 3) // → 90
 */
export function fallOverRun_mm(run_m: number, fall_mm_per_m: number): number {
  return run_m * fall_mm_per_m;
}
