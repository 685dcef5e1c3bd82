import { waterDensity_kg_per_m3, waterViscosity_Pas } from '../../kernel/index.ts';
import { airDensity_kg_per_m3, airViscosity_Pas } from './air.ts';

/** A test with air and the filtering it stands for. */
export interface AirTest {
  /** Pressure of the air over the atmosphere. */
  readonly test_kPa: number;
  /** Pressure of the water on the other side during the test, over the atmosphere. */
  readonly back_kPa: number;
  /** Pressure across the membranes when they filter. */
  readonly across_kPa: number;
  readonly temperature_C: number;
  /** The atmosphere at the site: 101.325 at the sea, some 80 at 2,000 m. */
  readonly atmosphere_kPa: number;
}

/**
 * How much air leaks in the test where so much water would leak in filtering, through defects that are long and narrow, as a cut fibre is? Smooth flow of both.
 *
 * @param test - pressures of air, water behind, filtering and atmosphere [kPa], temperature of water and air [C]
 * @returns litres of air, at the pressure of the atmosphere, to a litre of water [ratio]; 0 where the air has no more pressure than the water
 * @law rises with the test's pressure, falls with the filtering's
 * @source poiseuille-1840, with air that expands along the way: (p₁² − p₂²) ÷ 2p; epa-815-r-06-009, appendix C (from memory)
 */
export function airToWaterSmooth_ratio(test: AirTest): number {
  const { test_kPa, back_kPa, across_kPa, temperature_C, atmosphere_kPa } = test;
  if (test_kPa <= back_kPa) return 0;
  const [before_kPa, behind_kPa] = [test_kPa + atmosphere_kPa, back_kPa + atmosphere_kPa];
  const driving_kPa = ((test_kPa - back_kPa) * (before_kPa + behind_kPa)) / 2 / atmosphere_kPa;
  return ((waterViscosity_Pas(temperature_C) / airViscosity_Pas(temperature_C)) * driving_kPa) / across_kPa;
}

/**
 * How much air leaks in the test where so much water would leak in filtering, through defects that are short and wide, as a bad seal is? Stirred flow of both.
 *
 * @param test - pressures of air, water behind, filtering and atmosphere [kPa], temperature of water and air [C]
 * @param expansion_factor - what the widening of the air takes off [number], above 0, at most 1; 1 flatters the unit
 * @returns litres of air, at the pressure of the atmosphere, to a litre of water [ratio]; 0 where the air has no more pressure than the water
 * @law rises with the test's pressure, falls with the filtering's
 * @source crane-tp410, flow of a gas through a hole with its expansion factor (from memory); epa-815-r-06-009, appendix C (from memory)
 */
export function airToWaterStirred_ratio(test: AirTest, expansion_factor: number): number {
  const { test_kPa, back_kPa, across_kPa, temperature_C, atmosphere_kPa } = test;
  if (test_kPa <= back_kPa) return 0;
  const heavier = waterDensity_kg_per_m3(temperature_C) / airDensity_kg_per_m3(temperature_C, atmosphere_kPa);
  const pressed = (test_kPa + atmosphere_kPa) / atmosphere_kPa;
  return expansion_factor * Math.sqrt((heavier * pressed * (test_kPa - back_kPa)) / across_kPa);
}
