import { gravity_m_per_s2 } from './hydraulics.ts';
import { L_per_m3, L_per_min_per_m3_per_s, Pa_per_bar, Pa_per_kPa, s_per_h } from './units.ts';
import { waterDensity_kg_per_m3, waterViscosity_Pas } from './waterProperties.ts';

/** The temperature at which what membranes let through is compared [C]. Source: epa-815-r-06-009, flux at 20 °C (from memory). */
export const membraneReference_C = 20;

/**
 * How much does a membrane hold back the water, told by what a square metre of it lets through?
 *
 * @param permeability_L_per_m2_per_h_per_bar - flow through a square metre at one bar and 20 °C [L/m2/h/bar], above 0
 * @returns resistance of the membrane [1/m]
 * @source darcy-1856, flux = pressure ÷ (viscosity × resistance) (from memory)
 * @example
 * membraneResistance_per_m(1000) / 1e11 // → 3.5944
 */
export function membraneResistance_per_m(permeability_L_per_m2_per_h_per_bar: number): number {
  const flux_m_per_s_per_Pa = permeability_L_per_m2_per_h_per_bar / L_per_m3 / s_per_h / Pa_per_bar;
  return 1 / (waterViscosity_Pas(membraneReference_C) * flux_m_per_s_per_Pa);
}

/**
 * How much water does a square metre of membrane let through? Resistances of the membrane, of what lies on it and of what clogs it stand in series.
 *
 * @param pressure_kPa - pressure across it [kPa]; under 0 nothing flows
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @param resistances_per_m - the resistances in series [1/m], together above 0
 * @returns flux [L/m2/h]
 * @law never falls with pressure or warmth, never rises with a resistance
 * @source darcy-1856, with resistances in series (from memory)
 * @example
 * membraneFlux_L_per_m2_per_h(0, 20, [1e12]) // → 0
 */
export function membraneFlux_L_per_m2_per_h(
  pressure_kPa: number,
  temperature_C: number,
  resistances_per_m: readonly number[],
): number {
  const together_per_m = resistances_per_m.reduce((sum, one) => sum + one, 0);
  const flux_m_per_s = (Math.max(0, pressure_kPa) * Pa_per_kPa) / (waterViscosity_Pas(temperature_C) * together_per_m);
  return flux_m_per_s * L_per_m3 * s_per_h;
}

/**
 * How much does a whole unit hold back the water, told by what it lets through? Its membranes' resistance over their area, so that the area need not be known.
 *
 * @param flow_L_per_min - flow measured or rated [L/min], above 0
 * @param pressure_kPa - pressure across the membranes at that flow [kPa], above 0
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns resistance ÷ area [1/m3]
 * @source darcy-1856, flow = pressure × area ÷ (viscosity × resistance) (from memory)
 * @example
 * unitResistance_per_m3(6, 100, 20) / 1e12 // → 0.99844
 */
export function unitResistance_per_m3(flow_L_per_min: number, pressure_kPa: number, temperature_C: number): number {
  const flow_m3_per_s = flow_L_per_min / L_per_min_per_m3_per_s;
  return (pressure_kPa * Pa_per_kPa) / (waterViscosity_Pas(temperature_C) * flow_m3_per_s);
}

/**
 * How much water goes through a unit at a pressure?
 *
 * @param clean_per_m3 - resistance ÷ area of the unit when new [1/m3], above 0
 * @param pressure_kPa - pressure across the membranes [kPa]; under 0 nothing flows
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @param worn_ratio - resistance now ÷ resistance when new [ratio], above 0; 1 when new
 * @returns flow [L/min]
 * @law never falls with pressure or warmth, never rises with wear
 * @source darcy-1856, flow = pressure × area ÷ (viscosity × resistance) (from memory)
 * @example
 * unitFlow_L_per_min(1e12, 0, 20, 1) // → 0
 */
export function unitFlow_L_per_min(
  clean_per_m3: number,
  pressure_kPa: number,
  temperature_C: number,
  worn_ratio: number,
): number {
  const against_Pas_per_m3 = waterViscosity_Pas(temperature_C) * clean_per_m3 * worn_ratio;
  return ((Math.max(0, pressure_kPa) * Pa_per_kPa) / against_Pas_per_m3) * L_per_min_per_m3_per_s;
}

/**
 * Which pressure does a flow through a unit take?
 *
 * @param clean_per_m3 - resistance ÷ area of the unit when new [1/m3], above 0
 * @param flow_L_per_min - the flow [L/min], 0 or more
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @param worn_ratio - resistance now ÷ resistance when new [ratio], above 0; 1 when new
 * @returns pressure across the membranes [kPa]
 * @law never falls with flow or wear, never rises with warmth
 * @source darcy-1856, pressure = viscosity × resistance × flow ÷ area (from memory)
 * @example
 * unitPressure_kPa(1e12, 0, 20, 1) // → 0
 */
export function unitPressure_kPa(
  clean_per_m3: number,
  flow_L_per_min: number,
  temperature_C: number,
  worn_ratio: number,
): number {
  const flow_m3_per_s = flow_L_per_min / L_per_min_per_m3_per_s;
  return (waterViscosity_Pas(temperature_C) * clean_per_m3 * worn_ratio * flow_m3_per_s) / Pa_per_kPa;
}

/**
 * What would a flow that was measured be at 20 °C, the pressure being the same?
 *
 * @param flow - the flow measured [any unit of flow]
 * @param temperature_C - temperature of the water then [C], 0 to 40
 * @returns the flow at 20 °C [the unit of the flow]
 * @source epa-815-r-06-009, flux × viscosity ÷ viscosity at 20 °C (from memory)
 * @example
 * flowAtReference(6, 20) // → 6
 */
export function flowAtReference(flow: number, temperature_C: number): number {
  return (flow * waterViscosity_Pas(temperature_C)) / waterViscosity_Pas(membraneReference_C);
}

/**
 * How high a column of water makes this pressure?
 *
 * @param pressure_kPa - the pressure [kPa]
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns height [m]
 * @definition pressure ÷ (density × gravity)
 * @example
 * headOfPressure_m(0, 20) // → 0
 */
export function headOfPressure_m(pressure_kPa: number, temperature_C: number): number {
  return (pressure_kPa * Pa_per_kPa) / (waterDensity_kg_per_m3(temperature_C) * gravity_m_per_s2);
}

/**
 * Which pressure does a column of water make?
 *
 * @param head_m - its height [m]
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns pressure [kPa]
 * @definition density × gravity × height
 * @example
 * pressureOfHead_kPa(0, 20) // → 0
 */
export function pressureOfHead_kPa(head_m: number, temperature_C: number): number {
  return (head_m * waterDensity_kg_per_m3(temperature_C) * gravity_m_per_s2) / Pa_per_kPa;
}
