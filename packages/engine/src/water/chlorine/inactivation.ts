import {
  cryptosporidium_mg_min_per_L,
  cryptosporidiumTable_log,
  giardiaTable_log,
  mostVirus_log,
} from './constants.ts';
import { giardiaCt } from './giardiaCt.ts';
import type { OutsideTable } from './reading.ts';
import { virusCt } from './virusCt.ts';

/** Logs of inactivation that chlorine and time earn, or why they cannot be told. */
export interface Inactivation {
  readonly reached_log: number | null;
  readonly outside: OutsideTable | null;
  /** Is it as much as the table tells, so that more may be true? */
  readonly isMost: boolean;
}

/**
 * How much chlorine times minutes does the water get? Free chlorine at the end of the stay × the mean stay × the baffling factor.
 *
 * @param residual_mg_per_L - free chlorine at the end of the stay [mg/L], 0 or more
 * @param stay_min - mean stay: litres ÷ flow, or how long the water stands [min], 0 or more
 * @param baffling_ratio - share of the mean stay after which the first tenth is through [ratio]; 1 for water that stands
 * @returns chlorine times minutes [mg·min/L]
 * @source cfr-141-74, CT by T10; epa-816-r-03-004, baffling factors (from memory)
 * @example
 * contactCt_mg_min_per_L(0.5, 30, 1) // → 15
 * contactCt_mg_min_per_L(1, 60, 0.1) // → 6
 */
export function contactCt_mg_min_per_L(residual_mg_per_L: number, stay_min: number, baffling_ratio: number): number {
  return residual_mg_per_L * stay_min * baffling_ratio;
}

/**
 * How long must the water stay with so much free chlorine to get so much of chlorine times minutes?
 *
 * @param ct_mg_min_per_L - chlorine times minutes wanted [mg·min/L], 0 or more
 * @param residual_mg_per_L - free chlorine at the end of the stay [mg/L], above 0
 * @param baffling_ratio - share of the mean stay after which the first tenth is through [ratio], above 0
 * @returns mean stay [min]
 * @law turns contactCt_mg_min_per_L round
 * @source cfr-141-74, CT by T10
 * @example
 * stayFor_min(15, 0.5, 1) // → 30
 */
export function stayFor_min(ct_mg_min_per_L: number, residual_mg_per_L: number, baffling_ratio: number): number {
  return ct_mg_min_per_L / (residual_mg_per_L * baffling_ratio);
}

/**
 * How many cysts of Giardia does so much chlorine times minutes leave? In proportion to the table's figure for three logs, and not more than that.
 *
 * @param ct_mg_min_per_L - chlorine times minutes [mg·min/L], 0 or more
 * @param temperature_C - of the water [C], 0 to 40
 * @param water_pH - acidity of the water [pH], 5 to 9
 * @param residual_mg_per_L - free chlorine at the end of the stay [mg/L], above 0
 * @returns logs of inactivation [log], 0 to 3; null with what is outside the table
 * @law never falls with the chlorine times minutes
 * @source cfr-141-534, 3 × CT ÷ CT of 99.9 %
 */
export function giardiaInactivation(
  ct_mg_min_per_L: number,
  temperature_C: number,
  water_pH: number,
  residual_mg_per_L: number,
): Inactivation {
  const { ct_mg_min_per_L: whole, outside } = giardiaCt(temperature_C, water_pH, residual_mg_per_L);
  return shareOf(ct_mg_min_per_L, whole, outside, giardiaTable_log);
}

/**
 * How many viruses does so much chlorine times minutes leave? In proportion to the table's figure for four logs, and not more than that.
 *
 * @param ct_mg_min_per_L - chlorine times minutes [mg·min/L], 0 or more
 * @param temperature_C - of the water [C], 0 to 40
 * @param water_pH - acidity of the water [pH], 5 to 10
 * @returns logs of inactivation [log], 0 to 4; null with what is outside the table
 * @law never falls with the chlorine times minutes; never more than the table's figures for two and three logs give
 * @source epa-815-r-20-003, 4 × CT ÷ CT of 99.99 % (from memory)
 */
export function virusInactivation(ct_mg_min_per_L: number, temperature_C: number, water_pH: number): Inactivation {
  const { ct_mg_min_per_L: whole, outside } = virusCt(temperature_C, water_pH);
  return shareOf(ct_mg_min_per_L, whole, outside, mostVirus_log);
}

/**
 * How many oocysts of Cryptosporidium does so much chlorine times minutes leave? Nearly all: chlorine is no barrier to it.
 *
 * @param ct_mg_min_per_L - chlorine times minutes [mg·min/L], 0 or more
 * @returns logs of inactivation [log]
 * @source cdc-crypto, CT of 15,300 for three logs (from memory)
 * @example
 * cryptosporidiumInactivation_log(15) // → 0.00294
 */
export function cryptosporidiumInactivation_log(ct_mg_min_per_L: number): number {
  const whole = cryptosporidium_mg_min_per_L;
  return Math.min(cryptosporidiumTable_log, (cryptosporidiumTable_log * ct_mg_min_per_L) / whole);
}

function shareOf(ct: number, whole: number | null, outside: OutsideTable | null, most_log: number): Inactivation {
  if (whole === null) return { reached_log: null, outside, isMost: false };
  const reached_log = Math.min(most_log, (most_log * ct) / whole);
  return { reached_log, outside: null, isMost: reached_log === most_log };
}
