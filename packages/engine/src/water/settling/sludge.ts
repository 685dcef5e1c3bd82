import { L_per_m3, months_per_year } from '../../kernel/index.ts';
import { sludgeDry_kg_per_m3 } from './constants.ts';

/** How fast sludge rises in a settling tank. */
export interface SludgeRise {
  readonly sludge_L_per_year: number;
  readonly rise_m_per_year: number;
}

/**
 * How much wet sludge does the dirt of roofs make in a year, and how fast does it rise? Every grain is taken to stay.
 *
 * @param solids_kg_per_year - dry dirt that reaches the tank [kg/year], 0 or more
 * @param planArea_m2 - plan area of the tank [m2], above 0
 * @returns sludge [L/year] and its rise [m/year]
 * @definition dry dirt ÷ dry dirt in a cubic metre of wet sludge (ours, docs/decisions/0181-sludge.md)
 */
export function sludgeRise(solids_kg_per_year: number, planArea_m2: number): SludgeRise {
  const sludge_m3_per_year = solids_kg_per_year / sludgeDry_kg_per_m3;
  return {
    sludge_L_per_year: sludge_m3_per_year * L_per_m3,
    rise_m_per_year: sludge_m3_per_year / planArea_m2,
  };
}

/**
 * After how many months is the sludge as near to the draw-off as it may come?
 *
 * @param drawOffHeight_m - height of the draw-off over the floor [m]
 * @param clearance_m - how far under it the sludge is to stay [m]
 * @param rise_m_per_year - how fast the sludge rises [m/year], 0 or more
 * @returns months from a clean floor [month]; Infinity where no sludge comes, else 0 where there is no room for it
 * @definition room for sludge ÷ its rise × 12
 * @example
 * monthsToClean(0.3, 0.1, 0.4) // → 6
 * monthsToClean(0.05, 0.1, 0.4) // → 0
 */
export function monthsToClean(drawOffHeight_m: number, clearance_m: number, rise_m_per_year: number): number {
  if (rise_m_per_year <= 0) return Infinity;
  const room_m = Math.max(0, drawOffHeight_m - clearance_m);
  return (room_m / rise_m_per_year) * months_per_year;
}
