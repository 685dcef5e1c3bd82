import {
  boreArea_m2,
  kinematicViscosity_m2_per_s,
  L_per_min_per_m3_per_s,
  mm_per_m,
  Pa_per_kPa,
  reynoldsFactor,
  waterViscosity_Pas,
} from '../../kernel/index.ts';
import { smoothUpTo_factor } from './constants.ts';

/** Fibres of a unit that are cut through. */
export interface CutFibres {
  readonly fibres_count: number;
  readonly fibreBore_mm: number;
  /** From the cut to where the fibre ends in clean water. */
  readonly toCut_mm: number;
  readonly across_kPa: number;
  readonly temperature_C: number;
  /** All that the unit gives. */
  readonly unitFlow_L_per_min: number;
}

/** What cut fibres let through, and what is left of the unit for it. */
export interface CutFibreLeak {
  /** Untreated water, of all that are cut. */
  readonly leak_L_per_min: number;
  readonly reynolds_factor: number;
  /** Smooth flow, for which the leak is worked out; where it is not, less leaks than told, and the ceiling is cautious. */
  readonly isSmooth: boolean;
  /** The most reduction of anything the unit can have with them, whatever its membranes do. */
  readonly ceiling_log10: number;
}

/**
 * What does one cut fibre let through, and how much reduction can the unit still have? Water runs through the open bore, untreated.
 *
 * @param cut - how many fibres [count], their bore and length to the cut [mm], pressure across [kPa], temperature [C], flow of the unit [L/min]
 * @returns the leak [L/min], its Reynolds number, whether the law holds for it, and the ceiling of the reduction [log]; Infinity where nothing is cut
 * @law more fibres, a wider bore or a nearer cut never leak less
 * @source poiseuille-1840, π D⁴ p ÷ (128 μ L) (from memory); what goes in and out of the fibre is left out, which leaks more than it would
 */
export function cutFibreLeak(cut: CutFibres): CutFibreLeak {
  const { fibres_count, fibreBore_mm, toCut_mm, across_kPa, temperature_C, unitFlow_L_per_min } = cut;
  const bore_m = fibreBore_mm / mm_per_m;
  const push_Pa = Math.max(0, across_kPa) * Pa_per_kPa;
  const one_m3_per_s =
    (Math.PI * bore_m ** 4 * push_Pa) / (128 * waterViscosity_Pas(temperature_C) * (toCut_mm / mm_per_m));
  const velocity_m_per_s = bore_m > 0 ? one_m3_per_s / boreArea_m2(bore_m) : 0;
  const reynolds_factor = reynoldsFactor(velocity_m_per_s, bore_m, kinematicViscosity_m2_per_s(temperature_C));
  const leak_L_per_min = fibres_count * one_m3_per_s * L_per_min_per_m3_per_s;
  return {
    leak_L_per_min,
    reynolds_factor,
    isSmooth: reynolds_factor <= smoothUpTo_factor,
    ceiling_log10: leak_L_per_min <= 0 ? Infinity : Math.max(0, Math.log10(unitFlow_L_per_min / leak_L_per_min)),
  };
}
