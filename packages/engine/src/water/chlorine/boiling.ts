import {
  antoine,
  atmosphere,
  bacteriaDie_C,
  boil_min,
  boilHigh_min,
  boilHighFrom_m,
  leastHeight_m,
  mostHeight_m,
  Pa_per_mmHg,
  virusesDie_C,
} from './constants.ts';

/** What boiling at a height does. What it never does: take out metals, salts or chemicals, or keep water clean afterwards. */
export interface BoilingAtHeight {
  readonly boils_C: number;
  /** Hot enough for what the World Health Organization counts on: bacteria from 65 °C, viruses and Cryptosporidium from 70 °C. */
  readonly killsBacteria: boolean;
  readonly killsVirusesAndProtozoa: boolean;
  /** By the more careful advice: a rolling boil for so long. By the other a rolling boil is enough. */
  readonly carefully_min: number;
}

/**
 * How great is the pressure of the air at a height, in the standard atmosphere?
 *
 * @param height_m - over the sea [m], up to 11,000
 * @returns pressure [Pa]
 * @law falls with height
 * @source iso-2533, barometric formula of the lowest layer (from memory)
 * @example
 * airPressure_Pa(0) // → 101325
 */
export function airPressure_Pa(height_m: number): number {
  const { sea_Pa, sea_K, fall_K_per_m, power } = atmosphere;
  return sea_Pa * (1 - (fall_K_per_m * height_m) / sea_K) ** power;
}

/**
 * At what temperature does water boil at a height?
 *
 * @param height_m - over the sea [m], −500 to 9,000
 * @returns boiling point [C]; null outside those heights
 * @law falls with height
 * @source iso-2533, pressure (from memory); antoine-water, vapour pressure (from memory)
 * @example
 * boilingPoint_C(2000) // → 93.36
 * boilingPoint_C(12000) // → null
 */
export function boilingPoint_C(height_m: number): number | null {
  if (!(height_m >= leastHeight_m && height_m <= mostHeight_m)) return null;
  const { a, b, c } = antoine;
  return b / (a - Math.log10(airPressure_Pa(height_m) / Pa_per_mmHg)) - c;
}

/**
 * What does boiling do at a height?
 *
 * @param height_m - over the sea [m], −500 to 9,000
 * @returns boiling point [C], what dies, and the more careful time [min]; null outside those heights
 * @source who-boil-2015, a rolling boil is enough at any height where people live; cdc-boil, 1 min, and 3 min above 2,000 m (from memory)
 */
export function boilingAtHeight(height_m: number): BoilingAtHeight | null {
  const boils_C = boilingPoint_C(height_m);
  if (boils_C === null) return null;
  return {
    boils_C,
    killsBacteria: boils_C >= bacteriaDie_C,
    killsVirusesAndProtozoa: boils_C >= virusesDie_C,
    carefully_min: height_m > boilHighFrom_m ? boilHigh_min : boil_min,
  };
}
