import { L_per_m3 } from '../../kernel/index.ts';
import { waterAt20degC_kg_per_m3 } from './constants.ts';

/**
 * How heavy is so much water?
 *
 * @param volume_L - litres of it [L]
 * @returns its mass at 20 °C [kg]
 * @source iapws-95, density at 20 °C and one atmosphere
 * @example
 * waterMass_kg(1000) // → 998.207
 */
export function waterMass_kg(volume_L: number): number {
  return (volume_L / L_per_m3) * waterAt20degC_kg_per_m3;
}

/**
 * How many litres of water are so heavy?
 *
 * @param mass_kg - their mass [kg]
 * @returns litres at 20 °C [L]
 * @source iapws-95, density at 20 °C and one atmosphere
 * @example
 * litresOfMass_L(998.207) // → 1000
 */
export function litresOfMass_L(mass_kg: number): number {
  return (mass_kg / waterAt20degC_kg_per_m3) * L_per_m3;
}
