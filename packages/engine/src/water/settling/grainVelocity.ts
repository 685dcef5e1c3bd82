import { gravity_m_per_s2, um_per_m, waterDensity_kg_per_m3, waterViscosity_Pas } from '../../kernel/index.ts';
import { laminarFactor, turbulentFactor } from './constants.ts';

/** A grain and the water it sinks in. */
export interface GrainInWater {
  /** Diameter of the grain. */
  readonly grain_m: number;
  readonly grainDensity_kg_per_m3: number;
  readonly waterDensity_kg_per_m3: number;
  readonly viscosity_Pas: number;
}

/**
 * A grain in water of a temperature.
 *
 * @param grain_um - diameter of the grain [µm], 0 or more
 * @param grainDensity_kg_per_m3 - density of the grain [kg/m3], 0 or more
 * @param temperature_C - temperature of the water [C], 0 to 40
 * @returns the grain in SI units with the water's density [kg/m3] and viscosity [Pa·s]
 * @source kell-1975, equation 16; iapws-sr6-08, equation for viscosity
 */
export function grainInWater(grain_um: number, grainDensity_kg_per_m3: number, temperature_C: number): GrainInWater {
  return {
    grain_m: grain_um / um_per_m,
    grainDensity_kg_per_m3,
    waterDensity_kg_per_m3: waterDensity_kg_per_m3(temperature_C),
    viscosity_Pas: waterViscosity_Pas(temperature_C),
  };
}

/**
 * How fast does a small sphere sink in still water, by Stokes' law? Good while its Reynolds number is well under 1.
 *
 * @param grain - the grain and the water: diameter [m], densities [kg/m3], viscosity [Pa·s]
 * @returns speed [m/s]; 0 where the grain is no heavier than the water
 * @law four times faster at twice the diameter
 * @source stokes-1851, sphere at a small Reynolds number (from memory)
 */
export function stokesVelocity_m_per_s(grain: GrainInWater): number {
  const over_kg_per_m3 = grain.grainDensity_kg_per_m3 - grain.waterDensity_kg_per_m3;
  if (over_kg_per_m3 <= 0) return 0;
  return (gravity_m_per_s2 * grain.grain_m * grain.grain_m * over_kg_per_m3) / (18 * grain.viscosity_Pas);
}

/**
 * How fast does a grain sink in still water, from clay to gravel? Ferguson and Church's curve: that of Stokes for small grains, that of constant drag
 * for large ones.
 *
 * @param grain - the grain and the water: diameter [m], densities [kg/m3], viscosity [Pa·s]
 * @param shape - a natural grain measured by sieve, or a smooth sphere
 * @returns speed [m/s]; 0 where the grain is no heavier than the water
 * @law never falls with the size or the density of the grain, or the warmth of the water
 * @source ferguson-church-2004, equation 4, C1 = 18, C2 = 1.0 for natural grains and 0.4 for spheres
 */
export function fergusonChurchVelocity_m_per_s(grain: GrainInWater, shape: 'grain' | 'sphere' = 'grain'): number {
  const submerged = grain.grainDensity_kg_per_m3 / grain.waterDensity_kg_per_m3 - 1;
  if (submerged <= 0 || grain.grain_m <= 0) return 0;
  const kinematic_m2_per_s = grain.viscosity_Pas / grain.waterDensity_kg_per_m3;
  const pull = submerged * gravity_m_per_s2 * grain.grain_m * grain.grain_m;
  const inertia = Math.sqrt(0.75 * turbulentFactor[shape] * pull * grain.grain_m);
  return pull / (laminarFactor * kinematic_m2_per_s + inertia);
}
