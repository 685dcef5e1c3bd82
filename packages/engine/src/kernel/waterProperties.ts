import { zeroCelsius_K } from './units.ts';

/** The temperatures for which the properties of fresh water at the surface are worked out [C]. Ours: what a tank may have without ice or boiling. */
export const leastWaterTemperature_C = 0;
export const mostWaterTemperature_C = 40;

const viscosityScale_K = 300;
/** Terms of the viscosity: factor [µPa·s] and power. Source: iapws-sr6-08, equation for viscosity (from memory). */
const viscosityTerms = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
] as const;
/** Terms of the density, from the power 0 of the temperature up [kg/m3]. Source: kell-1975, equation 16 (from memory). */
const densityTerms = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12] as const;
const densityDivisor_per_C = 16.87985e-3;

/**
 * Is this a temperature for which the properties of water are worked out?
 *
 * @param temperature_C - the temperature [C]
 * @returns true from 0 to 40 °C
 * @definition ours: what a tank may have without ice or boiling
 * @example
 * isWaterTemperature(20) // → true
 * isWaterTemperature(41) // → false
 */
export function isWaterTemperature(temperature_C: number): boolean {
  return temperature_C >= leastWaterTemperature_C && temperature_C <= mostWaterTemperature_C;
}

function demandTemperature(temperature_C: number): void {
  if (!isWaterTemperature(temperature_C)) throw new RangeError('water properties: wants 0 to 40 °C');
}

/**
 * How hard does water resist being sheared? The four terms recommended for liquid water at 0.1 MPa.
 *
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns dynamic viscosity [Pa·s]
 * @law falls as the water warms
 * @source iapws-sr6-08, equation for viscosity (from memory); iapws-r12-08, table 4
 * @example
 * waterViscosity_Pas(20) // → 0.00100157
 */
export function waterViscosity_Pas(temperature_C: number): number {
  demandTemperature(temperature_C);
  const scaled = (temperature_C + zeroCelsius_K) / viscosityScale_K;
  return viscosityTerms.reduce((sum, [factor, power]) => sum + factor * scaled ** power, 0) * 1e-6;
}

/**
 * How heavy is a cubic metre of fresh water?
 *
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns density [kg/m3]
 * @law greatest near 4 °C
 * @source kell-1975, equation 16 (from memory)
 * @example
 * waterDensity_kg_per_m3(20) // → 998.204
 */
export function waterDensity_kg_per_m3(temperature_C: number): number {
  demandTemperature(temperature_C);
  const sum = densityTerms.reduceRight((folded, term) => folded * temperature_C + term, 0);
  return sum / (1 + densityDivisor_per_C * temperature_C);
}

/**
 * How fast does the motion of water die away by its viscosity? Viscosity ÷ density.
 *
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns kinematic viscosity [m2/s]
 * @law falls as the water warms
 * @source iapws-sr6-08, equation for viscosity (from memory); kell-1975, equation 16 (from memory)
 * @example
 * kinematicViscosity_m2_per_s(20) * 1e6 // → 1.00337
 */
export function kinematicViscosity_m2_per_s(temperature_C: number): number {
  return waterViscosity_Pas(temperature_C) / waterDensity_kg_per_m3(temperature_C);
}

/** Where water and steam become one [K], and the surface tension: factor [N/m], power, and the factor of what it bends by. Source: iapws-r1-76. */
const critical_K = 647.096;
const tensionScale_N_per_m = 0.2358;
const tensionPower = 1.256;
const tensionBend = -0.625;

/**
 * How hard does the skin of water pull, against its own vapour or air?
 *
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns surface tension [N/m]
 * @law falls as the water warms
 * @source iapws-r1-76, the equation: 0.2358 τ^1.256 (1 − 0.625 τ), τ = 1 − T ÷ 647.096 K
 * @example
 * waterSurfaceTension_N_per_m(20) // → 0.0727361
 */
export function waterSurfaceTension_N_per_m(temperature_C: number): number {
  demandTemperature(temperature_C);
  const below = 1 - (temperature_C + zeroCelsius_K) / critical_K;
  return tensionScale_N_per_m * below ** tensionPower * (1 + tensionBend * below);
}
