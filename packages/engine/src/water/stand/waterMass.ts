import { L_per_m3, waterDensity_kg_per_m3 } from '../../kernel/index.ts';
import { heldWater_C } from './constants.ts';

/**
 * How heavy is so much water?
 *
 * @param volume_L - litres of it [L]
 * @returns its mass at 20 °C [kg]
 * @source kell-1975, density at 20 °C
 * @example
 * waterMass_kg(1000) // → 998.204
 */
export function waterMass_kg(volume_L: number): number {
  return (volume_L / L_per_m3) * waterDensity_kg_per_m3(heldWater_C);
}

/**
 * How many litres of water are so heavy?
 *
 * @param mass_kg - their mass [kg]
 * @returns litres at 20 °C [L]
 * @source kell-1975, density at 20 °C
 * @example
 * litresOfMass_L(0) // → 0
 */
export function litresOfMass_L(mass_kg: number): number {
  return (mass_kg / waterDensity_kg_per_m3(heldWater_C)) * L_per_m3;
}
