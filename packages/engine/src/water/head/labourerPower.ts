import { horsepower_W, labourerMinute_factor, labourerTenfold_factor } from './constants.ts';

/**
 * How hard does a trained labourer of 35 work for so long? More than may be asked of those who come for water: to compare with, not to design by.
 *
 * @param duration_min - how long [min], 1 or more
 * @returns power [W], never under 0
 * @source belonio, human power: hp = 0.35 − 0.092 log₁₀ of the minutes
 * @example
 * labourerPower_W(12) // → 186.96
 */
export function labourerPower_W(duration_min: number): number {
  return horsepower_W * Math.max(0, labourerMinute_factor - labourerTenfold_factor * Math.log10(duration_min));
}
