import { Pa_per_kPa, um_per_m, waterSurfaceTension_N_per_m } from '../../kernel/index.ts';

/** How water sits in a hole. */
export interface Wetting {
  /** How far the hole is from a round one: 1 round, less for others. The cautious value is 1. */
  readonly shape_factor: number;
  /** Between water and material; the cautious value is 0. */
  readonly contact_deg: number;
}

/** A round hole in a material that water wets wholly: the cautious case, which asks for the most pressure. */
export const roundAndWetted: Wetting = { shape_factor: 1, contact_deg: 0 };

/**
 * Which pressure of air drives the water out of a hole? The least at which a test with air sees a defect of that size; for the pores of an intact membrane, their bubble point.
 *
 * @param defect_um - diameter of the hole [µm], above 0
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @param wetting - shape [factor] and contact angle [deg]
 * @param back_kPa - the greatest pressure of water on the other side [kPa], 0 or more
 * @returns pressure over the atmosphere [kPa]
 * @law rises as the hole narrows; falls as the water warms
 * @source epa-815-r-06-009, equation 4.1 (from memory); young-laplace, 4 κ σ cos θ ÷ d
 */
export function leastTestPressure_kPa(
  defect_um: number,
  temperature_C: number,
  wetting: Wetting,
  back_kPa: number,
): number {
  return pull_N_per_m(temperature_C, wetting) / (defect_um / um_per_m) / Pa_per_kPa + back_kPa;
}

/**
 * Which is the smallest hole that a test with air at this pressure sees? What is smaller stays full of water and lets no air through.
 *
 * @param test_kPa - pressure of the air over the atmosphere [kPa]
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @param wetting - shape [factor] and contact angle [deg]
 * @param back_kPa - the greatest pressure of water on the other side [kPa], 0 or more
 * @returns diameter of the hole [µm]; Infinity where the air has no more pressure than the water
 * @law falls as the pressure rises
 * @source young-laplace, 4 κ σ cos θ ÷ p (from memory)
 */
export function smallestDefect_um(test_kPa: number, temperature_C: number, wetting: Wetting, back_kPa: number): number {
  if (test_kPa <= back_kPa) return Infinity;
  return (pull_N_per_m(temperature_C, wetting) / ((test_kPa - back_kPa) * Pa_per_kPa)) * um_per_m;
}

function pull_N_per_m(temperature_C: number, { shape_factor, contact_deg }: Wetting): number {
  const wetted = Math.cos((contact_deg * Math.PI) / 180);
  return 4 * shape_factor * waterSurfaceTension_N_per_m(temperature_C) * wetted;
}
