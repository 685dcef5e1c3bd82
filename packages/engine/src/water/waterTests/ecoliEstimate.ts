import { normalQuantile, risingRoot } from '../../kernel/index.ts';
import { limitsHold_fraction, rareBelow_fraction, scatterBelow_fraction, told_mL } from './constants.ts';
import { found_count, gathered, holding_mL, logLikelihood, looked_mL, score } from './likelihood.ts';
import { type Portion, portionFault } from './portion.ts';
import { rarity_fraction } from './rarity.ts';
import { scatter_fraction } from './scatter.ts';

/** What a sample says of the E. coli in its water. */
export interface EcoliEstimate {
  /** `below`: none were found, so that only a bound from above is known; `above`: all portions had them, so that only one from below is. */
  readonly reach: 'within' | 'below' | 'above';
  /** The likeliest: 0 where none were found, null where all had them. */
  readonly ecoli_per_100mL: number | null;
  readonly lowest_per_100mL: number;
  /** Null where nothing bounds it. */
  readonly highest_per_100mL: number | null;
  /** How likely the pattern is beside the likeliest one at that count. */
  readonly rarity_fraction: number;
  /** A pattern so rare points to a slip, or to germs in clumps: test again. */
  readonly isRare: boolean;
  /** How often the colonies of plates scatter so much, were the germs spread evenly; null with fewer than two plates that could be counted. */
  readonly scatter_fraction: number | null;
  /** A scatter so rare points to clumps, or to plates of different water. */
  readonly isScattered: boolean;
}

/**
 * How many E. coli were there in 100 mL of the water that a sample was taken from? The density at which what was seen is likeliest, from any set of wells,
 * plates, uncountable plates and tests for presence alone; its limits are where the likelihood has fallen by what 95 % of chance explains. Germs are taken
 * to be spread evenly: where they cling together the limits are too narrow.
 *
 * @param portions - what was looked at: volumes [mL] of the sample itself, and counts
 * @returns count and limits [per 100 mL]; null where there is no portion, or one of them is faulty (portionFault says which)
 * @law the order of portions and how wells of one volume are grouped change nothing; ten times the volumes are a tenth of the count
 * @source cochran-1950, likelihood of wells (from memory); haas-heller-1988, uncountable plates; ridout-1994, limits by the likelihood ratio;
 *   blodgett-2002, rarity
 */
export function ecoliEstimate(portions: readonly Portion[]): EcoliEstimate | null {
  if (portions.length === 0 || portions.some((portion) => portionFault(portion) !== null)) return null;
  const seen = gathered(portions);
  const bound = { rarity_fraction: 1, isRare: false, scatter_fraction: null, isScattered: false };
  if (found_count(seen) === 0) {
    const highest_per_100mL = boundWhenNone_per_100mL(seen, 1 - limitsHold_fraction);
    return { reach: 'below', ecoli_per_100mL: 0, lowest_per_100mL: 0, highest_per_100mL, ...bound };
  }
  if (holding_mL(seen) === 0) {
    const lowest_per_100mL = boundWhenAll_per_100mL(seen, 1 - limitsHold_fraction)!;
    return { reach: 'above', ecoli_per_100mL: null, lowest_per_100mL, highest_per_100mL: null, ...bound };
  }
  return estimateWithin(seen, scatter_fraction(portions));
}

function estimateWithin(seen: readonly Portion[], scatter: number | null): EcoliEstimate {
  const likeliest = likeliestLogDensity(seen);
  const most = logLikelihood(seen, likeliest);
  // What 95 % of chance explains: half the square of the normal distribution's place.
  const tail = (1 - limitsHold_fraction) / 2;
  const fall = normalQuantile({ below_fraction: 1 - tail, above_fraction: tail }) ** 2 / 2;
  const fallen = (logDensity: number) => most - logLikelihood(seen, logDensity) - fall;
  let low = likeliest - 1;
  while (fallen(low) < 0) low -= 1;
  let high = likeliest + 1;
  while (fallen(high) < 0) high += 1;
  const rarity = rarity_fraction(seen, likeliest);
  return {
    reach: 'within',
    ecoli_per_100mL: told(likeliest),
    lowest_per_100mL: told(risingRoot((logDensity) => -fallen(logDensity), low, likeliest)),
    highest_per_100mL: told(risingRoot(fallen, likeliest, high)),
    rarity_fraction: rarity,
    isRare: rarity < rareBelow_fraction,
    scatter_fraction: scatter,
    isScattered: scatter !== null && scatter < scatterBelow_fraction,
  };
}

/** ln of the likeliest density [per mL], where some were found and something holds it down. */
export function likeliestLogDensity(seen: readonly Portion[]): number {
  const found = found_count(seen);
  // Each sign weighs at most 1, so that all of them are held down at a density of signs ÷ water that holds down; and not before signs ÷ all water.
  const low = Math.log(found / looked_mL(seen)) - 1;
  const high = Math.log(found / holding_mL(seen)) + 1;
  return risingRoot((logDensity) => -score(seen, logDensity), low, high);
}

/**
 * None were found. How many may there be at most in 100 mL, if what was seen is not to be rarer than a stated chance?
 *
 * @param portions - what was looked at: volumes [mL] and counts
 * @param chance_fraction - the stated chance [fraction], above 0, below 1
 * @returns the bound [per 100 mL]: ln(1 ÷ chance) ÷ water looked at; null where some were found
 * @source jarvis-2010, table 1, all negative; ridout-1994, table 1
 */
export function boundWhenNone_per_100mL(portions: readonly Portion[], chance_fraction: number): number | null {
  if (portions.length === 0 || found_count(portions) > 0) return null;
  return (-Math.log(chance_fraction) / looked_mL(portions)) * told_mL;
}

/**
 * Every portion had them. How many must there be at least in 100 mL, if what was seen is not to be rarer than a stated chance?
 *
 * @param portions - what was looked at: volumes [mL] and counts
 * @param chance_fraction - the stated chance [fraction], above 0, below 1
 * @returns the bound [per 100 mL]; null where something holds the count down: a negative well, a plate that could be counted
 * @source jarvis-2010, table 1, all positive; ridout-1994, table 1
 */
export function boundWhenAll_per_100mL(portions: readonly Portion[], chance_fraction: number): number | null {
  if (portions.length === 0 || holding_mL(portions) > 0) return null;
  const rarer = (logDensity: number) => logLikelihood(portions, logDensity) - Math.log(chance_fraction);
  const found = found_count(portions);
  let low = Math.log(found / looked_mL(portions));
  while (rarer(low) >= 0) low -= 1;
  let high = low + 1;
  while (rarer(high) < 0) high += 1;
  return told(risingRoot(rarer, low, high));
}

function told(logDensity: number): number {
  return Math.exp(logDensity) * told_mL;
}
