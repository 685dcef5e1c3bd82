import {
  membraneReference_C,
  membraneResistance_per_m,
  unitFlow_L_per_min,
  unitResistance_per_m3,
} from './membrane.ts';
import type { UnitFigures } from './treatmentFacts.ts';
import { min_per_h } from './units.ts';

/** No figure of a unit is larger, nor nearer to 0 than one over it [any unit]. Ours, as kernel/unusableFigures has it. */
const largest_factor = 1e9;

/** A clean set, by what its maker says. */
export interface CleanUnit {
  /** Resistance ÷ area; null where neither a rated flow with its pressure nor area and permeability are known. */
  readonly clean_per_m3: number | null;
  /** At the rated pressure and 20 °C, the two ways: as rated, and by area and permeability; null where not known. */
  readonly rated_L_per_h: number | null;
  readonly byArea_L_per_h: number | null;
  /** At which the lowest useful flow is told. */
  readonly ratedPressure_kPa: number | null;
}

/**
 * Is this a figure one can reckon with?
 *
 * @param value - a figure of a unit [any unit]
 * @returns the figure, where it is above 0 and not beyond all measure [its unit]; null else
 * @definition ours
 * @example
 * usableFigure(0) // → null
 */
export function usableFigure(value: number | null | undefined): number | null {
  return value !== null && value !== undefined && value >= 1 / largest_factor && value <= largest_factor ? value : null;
}

/**
 * Is this a figure one can reckon with, or none?
 *
 * @param value - a figure of a unit [any unit]
 * @returns the figure, 0 among them [its unit]; null else
 * @definition ours
 * @example
 * usableFigureOrNone(0) // → 0
 */
export function usableFigureOrNone(value: number | null | undefined): number | null {
  return value === 0 ? 0 : usableFigure(value);
}

/**
 * What does a clean set of this unit hold back? Where its flow is told in two ways, the lesser counts.
 *
 * @param figures - the unit: rated flow [L/h] and pressure [kPa], area [m2] and permeability [L/m2/h/bar]
 * @returns resistance ÷ area [1/m3], and the flow at the rated pressure and 20 °C told in either way [L/h]; null what is not known
 * @definition ours: docs/decisions/0203-what-a-person-gets-through.md
 */
export function cleanUnit(figures: UnitFigures): CleanUnit {
  const ratedPressure_kPa = usableFigure(figures.ratedPressure_kPa);
  const rated_L_per_h = usableFigure(figures.ratedFlow_L_per_h);
  const area_m2 = usableFigure(figures.membraneArea_m2);
  const permeability = usableFigure(figures.permeability_L_per_m2_h_bar);
  const byArea_per_m3 =
    area_m2 === null || permeability === null ? null : membraneResistance_per_m(permeability) / area_m2;
  const byRating_per_m3 =
    rated_L_per_h === null || ratedPressure_kPa === null
      ? null
      : unitResistance_per_m3(rated_L_per_h / min_per_h, ratedPressure_kPa, membraneReference_C);
  const both = [byArea_per_m3, byRating_per_m3].filter((one) => one !== null);
  return {
    clean_per_m3: both.length === 0 ? null : Math.max(...both),
    rated_L_per_h: byRating_per_m3 === null ? null : rated_L_per_h,
    byArea_L_per_h:
      byArea_per_m3 === null || ratedPressure_kPa === null ? null : flowAt_L_per_h(byArea_per_m3, ratedPressure_kPa),
    ratedPressure_kPa,
  };
}

/**
 * How many times its clean resistance does a set have that passes just the lowest useful flow?
 *
 * @param unit - the clean set [1/m3], [kPa]
 * @param lowestFlow_L_per_h - the lowest useful flow at the rated pressure and 20 °C [L/h]
 * @returns the resistance over the clean one [ratio]; null where that is not known or the flow is no less than the clean one
 * @definition ours
 */
export function wornAtLowest_ratio(unit: CleanUnit, lowestFlow_L_per_h: number | null): number | null {
  const clean_L_per_h = cleanFlow_L_per_h(unit);
  if (clean_L_per_h === null || lowestFlow_L_per_h === null) return null;
  const worn_ratio = clean_L_per_h / lowestFlow_L_per_h;
  return worn_ratio > 1 ? worn_ratio : null;
}

/**
 * What does a clean set pass at its rated pressure and 20 °C?
 *
 * @param unit - the clean set [1/m3], [kPa]
 * @returns the flow [L/h]; null where that is not known
 * @source darcy-1856, flow = pressure × area ÷ (viscosity × resistance) (from memory)
 */
export function cleanFlow_L_per_h(unit: CleanUnit): number | null {
  const { clean_per_m3, ratedPressure_kPa } = unit;
  return clean_per_m3 === null || ratedPressure_kPa === null ? null : flowAt_L_per_h(clean_per_m3, ratedPressure_kPa);
}

function flowAt_L_per_h(clean_per_m3: number, pressure_kPa: number): number {
  return unitFlow_L_per_min(clean_per_m3, pressure_kPa, membraneReference_C, 1) * min_per_h;
}
