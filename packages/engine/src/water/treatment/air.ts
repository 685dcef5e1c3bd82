import { Pa_per_kPa, zeroCelsius_K } from '../../kernel/index.ts';
import { airGas_m2_per_s2, sutherland_C, sutherland_Pas } from './constants.ts';

/**
 * How hard does dry air resist being sheared?
 *
 * @param temperature_C - temperature of the air [C]
 * @returns dynamic viscosity [Pa·s]
 * @law rises as the air warms
 * @source us-standard-atmosphere-1976, Sutherland's law: 1.458e-6 T^1.5 ÷ (T + 110.4) (from memory)
 * @example
 * airViscosity_Pas(15) * 1e5 // → 1.78938
 */
export function airViscosity_Pas(temperature_C: number): number {
  const warmth_K = temperature_C + zeroCelsius_K;
  return (sutherland_Pas * warmth_K * Math.sqrt(warmth_K)) / (warmth_K + sutherland_C);
}

/**
 * How heavy is a cubic metre of dry air?
 *
 * @param temperature_C - temperature of the air [C]
 * @param pressure_kPa - its pressure, not over that of the atmosphere but all of it [kPa]
 * @returns density [kg/m3]
 * @source us-standard-atmosphere-1976, pressure ÷ (gas constant × temperature) (from memory)
 * @example
 * airDensity_kg_per_m3(15, 101.325) // → 1.2250
 */
export function airDensity_kg_per_m3(temperature_C: number, pressure_kPa: number): number {
  return (pressure_kPa * Pa_per_kPa) / (airGas_m2_per_s2 * (temperature_C + zeroCelsius_K));
}
