import {
  membraneReference_C,
  membraneResistance_per_m,
  min_per_h,
  type UnitFigures,
  unitFlow_L_per_min,
  unitResistance_per_m3,
} from '../../kernel/index.ts';
import { largest_factor } from './constants.ts';

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

/** A figure one can reckon with: above 0, and not beyond all measure; null else. */
export function usable(value: number | null | undefined): number | null {
  return value !== null && value !== undefined && value >= 1 / largest_factor && value <= largest_factor ? value : null;
}

/** The same, or 0. */
export function usableOrNone(value: number | null | undefined): number | null {
  return value === 0 ? 0 : usable(value);
}

/** What a clean set of this unit holds back. Where its flow is told in two ways, the lesser counts. */
export function cleanUnit(figures: UnitFigures): CleanUnit {
  const ratedPressure_kPa = usable(figures.ratedPressure_kPa);
  const rated_L_per_h = usable(figures.ratedFlow_L_per_h);
  const area_m2 = usable(figures.membraneArea_m2);
  const permeability = usable(figures.permeability_L_per_m2_h_bar);
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

/** How many times its clean resistance a set has that passes just the lowest useful flow; null where that is not known or is no less than the clean flow. */
export function wornAtLowest_ratio(unit: CleanUnit, lowestFlow_L_per_h: number | null): number | null {
  const { clean_per_m3, ratedPressure_kPa } = unit;
  if (clean_per_m3 === null || ratedPressure_kPa === null || lowestFlow_L_per_h === null) return null;
  const worn_ratio = flowAt_L_per_h(clean_per_m3, ratedPressure_kPa) / lowestFlow_L_per_h;
  return worn_ratio > 1 ? worn_ratio : null;
}

function flowAt_L_per_h(clean_per_m3: number, pressure_kPa: number): number {
  return unitFlow_L_per_min(clean_per_m3, pressure_kPa, membraneReference_C, 1) * min_per_h;
}
