/** A unit under a test of falling pressure: its air is shut in, and the fall of its pressure is read. */
export interface DecayTest {
  /** Flow of the unit when it filters. */
  readonly flow_L_per_min: number;
  /** Litres of air, at the pressure of the atmosphere, that leak in the test for a litre of water that would leak in filtering. */
  readonly airToWater_ratio: number;
  readonly atmosphere_kPa: number;
  /** Litres of air that are shut in. */
  readonly held_L: number;
  /** How much denser germs are at the membrane than in the water that comes: 1 where all that comes goes through, more where water flows along it. */
  readonly concentration_factor: number;
}

/**
 * How much less of what is larger than the test's smallest hole comes through, at the fall of pressure that was read? What the test supports at most, not what the unit does to viruses.
 *
 * @param test - flow [L/min], air to water [ratio], atmosphere [kPa], air shut in [L], concentration [factor]
 * @param decay_kPa_per_min - fall of pressure, less what falls by itself without defects [kPa/min]
 * @returns log₁₀ of what comes ÷ what comes through [log], never under 0; Infinity where nothing falls: then the smallest fall that can be read is to be put in
 * @law falls as the decay rises
 * @source epa-815-r-06-009, log removal value of the direct integrity test (from memory)
 */
export function decayReduction_log10(test: DecayTest, decay_kPa_per_min: number): number {
  if (decay_kPa_per_min <= 0) return Infinity;
  return Math.max(0, Math.log10(decayAtOne_kPa_per_min(test) / decay_kPa_per_min));
}

/**
 * How fast may the pressure fall at most, if the unit is to be believed so much reduction?
 *
 * @param test - flow [L/min], air to water [ratio], atmosphere [kPa], air shut in [L], concentration [factor]
 * @param wanted_log10 - reduction it is to be believed [log], 0 or more
 * @returns control limit of the fall of pressure [kPa/min]
 * @law ten times less for each log more
 * @source epa-815-r-06-009, upper control limit of the direct integrity test (from memory)
 */
export function decayLimit_kPa_per_min(test: DecayTest, wanted_log10: number): number {
  return decayAtOne_kPa_per_min(test) / 10 ** wanted_log10;
}

/** The fall at which all of the water would go through defects. */
function decayAtOne_kPa_per_min(test: DecayTest): number {
  const { flow_L_per_min, airToWater_ratio, atmosphere_kPa, held_L, concentration_factor } = test;
  return (flow_L_per_min * airToWater_ratio * atmosphere_kPa) / (held_L * concentration_factor);
}
