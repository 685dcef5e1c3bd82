import { membraneReference_C, min_per_h, unitFlow_L_per_min, unitResistance_per_m3 } from '../../kernel/index.ts';
import { turbidityPower_factor } from './constants.ts';

/** What a set of cartridges is rated for. All cartridges of a set work side by side and are changed together. */
export interface CartridgeRating {
  /** Litres the set is said to pass at the rated turbidity, above 0. */
  readonly ratedLitres_L: number;
  /** Turbidity the litres are rated at, above 0; null where nobody says: no date is then known, only the latest one. */
  readonly ratedTurbidity_NTU: number | null;
  /** What it passes clean and may pass at least; null where that is not known: the end by its flow is then not looked for. */
  readonly flow: FlowRating | null;
  /** Days from installation after which it is changed whatever it passed; Infinity where there is no such limit. */
  readonly ageLimit_days: number;
}

/** The flow of a set: clean, and the lowest that is still of use, both of the whole set. */
export interface FlowRating {
  /** Clean, at the rated pressure and 20 °C, above the lowest. */
  readonly cleanFlow_L_per_h: number;
  /** The lowest that is of use, above 0. */
  readonly lowestFlow_L_per_h: number;
  /** Pressure across the set at which the clean flow is rated, above 0. */
  readonly ratedPressure_kPa: number;
  /** Pressure across the set at which it works at the site, above 0. */
  readonly workingPressure_kPa: number;
}

/**
 * How many rated litres does a litre of this turbidity wear a cartridge by? One, up to the rated turbidity; above it in proportion.
 *
 * @param turbidity_NTU - turbidity of the water [NTU], 0 or more
 * @param ratedTurbidity_NTU - turbidity the cartridge is rated at [NTU], above 0; null: litres count as they are
 * @returns worn litres of one litre [factor], 1 or more
 * @law never falls with the turbidity
 * @definition ours: docs/decisions/0207-what-wears-a-cartridge.md
 * @example
 * wornLitres_factor(2, 5) // → 1
 * wornLitres_factor(20, 5) // → 4
 * wornLitres_factor(20, null) // → 1
 */
export function wornLitres_factor(turbidity_NTU: number, ratedTurbidity_NTU: number | null): number {
  if (ratedTurbidity_NTU === null) return 1;
  return Math.max(1, turbidity_NTU / ratedTurbidity_NTU) ** turbidityPower_factor;
}

/**
 * By how much does the resistance of a set grow, at a fouling of 1, with each litre of one NTU? So that rated litres at the rated turbidity bring the clean flow to
 * the lowest.
 *
 * @param rating - the set: ratedLitres_L [L], ratedTurbidity_NTU [NTU], clean and lowest flow [L/h]
 * @returns growth of the resistance against the clean one [ratio/(L·NTU)]; null where turbidity or flow is not rated
 * @definition ours: (clean ÷ lowest flow − 1) ÷ (rated litres × rated turbidity), docs/decisions/0207-what-wears-a-cartridge.md
 * @example
 * growthOfLoad({ ratedLitres_L: 100, ratedTurbidity_NTU: 5, ageLimit_days: Infinity, flow: { cleanFlow_L_per_h: 300, lowestFlow_L_per_h: 100, ratedPressure_kPa: 50, workingPressure_kPa: 50 } }) // → 0.004
 */
export function growthOfLoad(rating: CartridgeRating): number | null {
  const { ratedLitres_L, ratedTurbidity_NTU, flow } = rating;
  if (ratedTurbidity_NTU === null || flow === null) return null;
  if (!(flow.cleanFlow_L_per_h > flow.lowestFlow_L_per_h && flow.lowestFlow_L_per_h > 0))
    throw new RangeError('growthOfLoad: wants a clean flow above the lowest, and that above 0');
  return (flow.cleanFlow_L_per_h / flow.lowestFlow_L_per_h - 1) / (ratedLitres_L * ratedTurbidity_NTU);
}

/**
 * How many times its clean resistance may a set have before it passes less than the lowest flow, at the site's pressure in water of this temperature?
 *
 * @param flow - clean and lowest flow [L/h], rated and working pressure [kPa]
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns resistance ÷ clean resistance [ratio]; under 1 where even a clean set passes less
 * @law never falls with the temperature or the working pressure
 * @source darcy-1856, flow in proportion to pressure ÷ (viscosity × resistance) (from memory); iapws-sr6-08, equation for viscosity
 * @example
 * mostResistance_ratio({ cleanFlow_L_per_h: 300, lowestFlow_L_per_h: 100, ratedPressure_kPa: 50, workingPressure_kPa: 25 }, 20) // → 1.5
 */
export function mostResistance_ratio(flow: FlowRating, temperature_C: number): number {
  return flowAtResistance_L_per_h(flow, flow.workingPressure_kPa, temperature_C, 1) / flow.lowestFlow_L_per_h;
}

/**
 * What does a reading of the flow say of the resistance of a set?
 *
 * @param flow - clean flow at the rated pressure and 20 °C [L/h], and that pressure [kPa]
 * @param read_L_per_h - flow read [L/h], above 0
 * @param pressure_kPa - pressure across the set while it was read [kPa], above 0
 * @param temperature_C - temperature of the water then [C], 0 to 40
 * @returns resistance ÷ clean resistance [ratio]; under 1 where more flowed than a clean set is rated for
 * @law falls as the flow read rises
 * @source darcy-1856, flow in proportion to pressure ÷ (viscosity × resistance) (from memory); iapws-sr6-08, equation for viscosity
 * @example
 * resistanceRead_ratio({ cleanFlow_L_per_h: 300, ratedPressure_kPa: 50 }, 100, 50, 20) // → 3
 */
export function resistanceRead_ratio(
  flow: Pick<FlowRating, 'cleanFlow_L_per_h' | 'ratedPressure_kPa'>,
  read_L_per_h: number,
  pressure_kPa: number,
  temperature_C: number,
): number {
  return flowAtResistance_L_per_h(flow, pressure_kPa, temperature_C, 1) / read_L_per_h;
}

/**
 * What does a set pass, worn so far?
 *
 * @param flow - clean flow at the rated pressure and 20 °C [L/h], and that pressure [kPa]
 * @param pressure_kPa - pressure across the set [kPa], 0 or more
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @param resistance_ratio - resistance ÷ clean resistance [ratio], above 0
 * @returns flow of the set [L/h]
 * @law never rises with the resistance, never falls with pressure or temperature
 * @source darcy-1856, flow in proportion to pressure ÷ (viscosity × resistance) (from memory); iapws-sr6-08, equation for viscosity
 * @example
 * flowAtResistance_L_per_h({ cleanFlow_L_per_h: 300, ratedPressure_kPa: 50 }, 25, 20, 3) // → 50
 */
export function flowAtResistance_L_per_h(
  flow: Pick<FlowRating, 'cleanFlow_L_per_h' | 'ratedPressure_kPa'>,
  pressure_kPa: number,
  temperature_C: number,
  resistance_ratio: number,
): number {
  const { cleanFlow_L_per_h, ratedPressure_kPa } = flow;
  const clean_per_m3 = unitResistance_per_m3(cleanFlow_L_per_h / min_per_h, ratedPressure_kPa, membraneReference_C);
  return unitFlow_L_per_min(clean_per_m3, pressure_kPa, temperature_C, resistance_ratio) * min_per_h;
}
