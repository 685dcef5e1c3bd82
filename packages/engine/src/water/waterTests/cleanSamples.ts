import { betaQuantile } from '../../kernel/index.ts';
import { claimCertainty_fraction, claimExceeded_fraction } from './constants.ts';

/**
 * So many samples had no E. coli. How many may there be on average in one, at most? The rule of three.
 *
 * @param samples_count - clean samples, all of one volume [count], 1 or more
 * @param certainty_fraction - how sure one wants to be [fraction], above 0, below 1
 * @returns the bound on the mean [per sample]: −ln(1 − certainty) ÷ samples
 * @law twice the samples, half the bound
 * @source hanley-lippman-hand-1983, rule of three (from memory)
 * @example
 * meanWhenClean_per_sample(12) // → 0.24964
 */
export function meanWhenClean_per_sample(samples_count: number, certainty_fraction = claimCertainty_fraction): number {
  return -Math.log1p(-certainty_fraction) / samples_count;
}

/**
 * How many samples must there be, with so many bad ones among them, before one may claim that no more than a small share of the water is bad? With Jeffreys'
 * prior, as the published table of allowable exceedances has it.
 *
 * @param bad_count - samples that had E. coli [count], whole, 0 or more
 * @param exceeded_fraction - the share of bad water claimed at most [fraction], above 0, below 1
 * @param certainty_fraction - how sure one wants to be [fraction], above 0, below 1
 * @returns the least number of samples [count]
 * @law one more bad sample never needs fewer
 * @source nz-moh-2008, tables A1.3 and A1.4
 * @example
 * samplesForClaim_count(0) // → 38
 * samplesForClaim_count(1) // → 77
 * samplesForClaim_count(0, 0.02) // → 95
 */
export function samplesForClaim_count(
  bad_count: number,
  exceeded_fraction = claimExceeded_fraction,
  certainty_fraction = claimCertainty_fraction,
): number {
  const isEnough = (samples: number) =>
    betaQuantile(certainty_fraction, bad_count + 0.5, samples - bad_count + 0.5) <= exceeded_fraction;
  return leastCount(bad_count + 1, isEnough);
}

/**
 * The same by the classical rule: so many samples that so few bad ones among them would be too rare, were the share of bad water as large as that. It asks for
 * more than the published table.
 *
 * @param bad_count - samples that had E. coli [count], whole, 0 or more
 * @param exceeded_fraction - the share of bad water claimed at most [fraction], above 0, below 1
 * @param certainty_fraction - how sure one wants to be [fraction], above 0, below 1
 * @returns the least number of samples [count]
 * @law never fewer than by samplesForClaim_count
 * @source clopper-pearson-1934, exact binomial bound (from memory)
 * @example
 * samplesByBinomial_count(0) // → 59
 */
export function samplesByBinomial_count(
  bad_count: number,
  exceeded_fraction = claimExceeded_fraction,
  certainty_fraction = claimCertainty_fraction,
): number {
  const isEnough = (samples: number) =>
    betaQuantile(certainty_fraction, bad_count + 1, samples - bad_count) <= exceeded_fraction;
  return leastCount(bad_count + 1, isEnough);
}

/** The least number from here for which it is enough, as it stays enough from there on. */
function leastCount(from: number, isEnough: (samples: number) => boolean): number {
  let below = from - 1;
  let enough = from;
  while (!isEnough(enough)) {
    below = enough;
    enough *= 2;
  }
  while (enough - below > 1) {
    const middle = Math.floor((below + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else below = middle;
  }
  return enough;
}
