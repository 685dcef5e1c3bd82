import type { ResidualBand } from '../../kernel/index.ts';
import {
  afterSlowWait_mg_per_L,
  afterWait_mg_per_L,
  atUse_mg_per_L,
  bucketDoses_mg_per_L,
  clear_NTU,
  goodUpTo_factor,
  mostDrunk_mg_per_L,
  mostForChlorine_NTU,
  slowFrom_pH,
  slowWait_min,
  tasteAtUse_mg_per_L,
  wait_min,
} from './constants.ts';

/** Where free chlorine was measured: where people drink, or in the water that was treated, after its wait. */
export type ResidualPlace = 'use' | 'treated';

/** Is water clear enough for chlorine: well, just, or not. */
export type ChlorineClarity = 'clear' | 'just' | 'tooTurbid';

/**
 * How long must water stand after the chlorine is in, before anybody drinks it? Longer where it is alkaline.
 *
 * @param water_pH - acidity of the water [pH]
 * @returns the wait [min]: 30, and 60 from pH 8 up
 * @source msf-cholera, appendix 16 (from memory); who-gdwq-2017, chlorine (from memory)
 * @example
 * [7.9, 8, 8.5].map(chlorineWait_min) // → [30, 60, 60]
 */
export function chlorineWait_min(water_pH: number): number {
  return water_pH < slowFrom_pH ? wait_min : slowWait_min;
}

/**
 * How much free chlorine must there be after the wait?
 *
 * @param water_pH - acidity of the water [pH]
 * @returns free chlorine [mg/L]: 0.5, and 1 from pH 8 up
 * @source msf-cholera, appendix 16 (from memory)
 * @example
 * [7.9, 8].map(residualAfterWait_mg_per_L) // → [0.5, 1]
 */
export function residualAfterWait_mg_per_L(water_pH: number): number {
  return water_pH < slowFrom_pH ? afterWait_mg_per_L : afterSlowWait_mg_per_L;
}

/**
 * How much free chlorine is wanted in water that was treated, after its wait?
 *
 * @param water_pH - acidity of the water [pH]; null where not known: as of water that is not alkaline
 * @returns from what to what it is good [mg/L]: what is wanted, and twice that
 * @source msf-cholera, appendix 16 (from memory); gtfcc-2019, appendix 14
 * @example
 * residualWanted_mg_per_L(7) // → { least: 0.5, most: 1 }
 * residualWanted_mg_per_L(8.2) // → { least: 1, most: 2 }
 */
export function residualWanted_mg_per_L(water_pH: number | null): { readonly least: number; readonly most: number } {
  const least = water_pH === null ? afterWait_mg_per_L : residualAfterWait_mg_per_L(water_pH);
  return { least, most: goodUpTo_factor * least };
}

/**
 * What does a measured residual say? Where people drink, 0.2 to 0.5 mg/L is good; in the water that was treated, what is wanted after the wait, up to twice
 * that. Above the guideline's 5 mg/L it must not be drunk.
 *
 * @param residual_mg_per_L - free chlorine [mg/L], 0 or more
 * @param place - where it was measured
 * @param water_pH - acidity of the water [pH]; null where not known: as of water that is not alkaline
 * @returns the band; its ends belong to `good`
 * @source gtfcc-2019, appendix 14: 0.2 to 0.5 mg/L, 1 at the source; who-gdwq-2017, guideline value (from memory); msf-cholera, appendix 16 (from memory)
 * @example
 * [0, 0.1, 0.2, 0.5, 0.6, 5.1].map((mg) => residualBand(mg, 'use', 7)) // → ['none', 'low', 'good', 'good', 'high', 'tooHigh']
 * [0.4, 0.5, 1, 1.1].map((mg) => residualBand(mg, 'treated', 7)) // → ['low', 'good', 'good', 'high']
 * [0.9, 1, 2, 2.1].map((mg) => residualBand(mg, 'treated', 8.2)) // → ['low', 'good', 'good', 'high']
 */
export function residualBand(residual_mg_per_L: number, place: ResidualPlace, water_pH: number | null): ResidualBand {
  if (residual_mg_per_L <= 0) return 'none';
  if (residual_mg_per_L > mostDrunk_mg_per_L) return 'tooHigh';
  const { least, most } =
    place === 'use' ? { least: atUse_mg_per_L, most: tasteAtUse_mg_per_L } : residualWanted_mg_per_L(water_pH);
  if (residual_mg_per_L < least) return 'low';
  return residual_mg_per_L <= most ? 'good' : 'high';
}

/**
 * Is water clear enough to be chlorinated? What is turbid uses chlorine up and hides germs from it.
 *
 * @param turbidity_NTU - of the water before the chlorine [NTU], 0 or more
 * @returns `clear` under 1 NTU, `just` under 5, `tooTurbid` from there: settle or filter it first
 * @source who-turbidity-2017 (from memory); wash-cluster-w4, background
 * @example
 * [0.9, 1, 4.9, 5].map(clarityForChlorine) // → ['clear', 'just', 'just', 'tooTurbid']
 */
export function clarityForChlorine(turbidity_NTU: number): ChlorineClarity {
  if (turbidity_NTU < clear_NTU) return 'clear';
  return turbidity_NTU < mostForChlorine_NTU ? 'just' : 'tooTurbid';
}

/**
 * Which dose does the test with buckets choose? The least one that leaves enough free chlorine after the wait.
 *
 * @param residuals_mg_per_L - free chlorine of each bucket after the wait [mg/L], in the order of the doses; null where not measured
 * @param water_pH - acidity of the water [pH]
 * @param doses_mg_per_L - doses of the buckets, rising [mg/L]
 * @returns the dose [mg/L]; null where none leaves enough: try larger ones, or clearer water
 * @source msf-cholera, appendix 16 (from memory)
 * @example
 * bucketDose_mg_per_L([0.1, 0.3, 0.5, 0.8], 7) // → 1
 * bucketDose_mg_per_L([0.1, 0.3, 0.5, 0.8], 8.2) // → null
 */
export function bucketDose_mg_per_L(
  residuals_mg_per_L: readonly (number | null)[],
  water_pH: number,
  doses_mg_per_L: readonly number[] = bucketDoses_mg_per_L,
): number | null {
  const wanted = residualAfterWait_mg_per_L(water_pH);
  const place = residuals_mg_per_L.findIndex((residual) => residual !== null && residual >= wanted);
  return place < 0 ? null : (doses_mg_per_L[place] ?? null);
}
