import { leastWetDays_count, likelihoodGain_fraction, likelihoodRounds_count } from './constants.ts';

/** Light rain of one mean and heavy rain of another. */
export interface MixedExponentialFit {
  /** Share of the amounts that are light rain. */
  readonly light_fraction: number;
  readonly lightMean_mm: number;
  readonly heavyMean_mm: number;
}

/**
 * Which mixture of two exponential distributions makes these amounts likeliest? By expectation and maximisation, from half the
 * amounts at half their mean and half at one and a half times it: each amount is shared between light and heavy rain by how
 * likely each is, the means are taken anew, and so on until the likelihood grows no more.
 *
 * @param amounts_mm - rain [mm], each above 0, in any order
 * @returns share of light rain [fraction], above 0, below 1, and both means [mm], the light one the smaller; null where there are fewer than 20 amounts, or where one mean fits them as well as two
 * @law the mean of the mixture is the mean of the amounts; twice the amounts give twice the means
 * @source dempster-laird-rubin-1977, expectation and maximisation (from memory); woolhiser-roldan-1982, mixed exponential distribution (from memory)
 */
export function mixedExponentialByLikelihood(amounts_mm: readonly number[]): MixedExponentialFit | null {
  const count = amounts_mm.length;
  const mean_mm = amounts_mm.reduce((sum, one) => sum + one, 0) / count;
  if (count < leastWetDays_count || !amounts_mm.every((one) => one > 0 && Number.isFinite(one))) return null;
  let fit: MixedExponentialFit = { light_fraction: 0.5, lightMean_mm: mean_mm / 2, heavyMean_mm: 1.5 * mean_mm };
  let before = Number.NEGATIVE_INFINITY;
  for (let round = 0; round < likelihoodRounds_count; round++) {
    const { next, logLikelihood } = oneRound(amounts_mm, fit);
    if (!(next.light_fraction > 0 && next.light_fraction < 1 && next.lightMean_mm < next.heavyMean_mm)) return null;
    fit = next;
    if (logLikelihood - before < likelihoodGain_fraction * count) break;
    before = logLikelihood;
  }
  return isBetterThanOne(amounts_mm, fit, mean_mm) ? fit : null;
}

/** Shares the amounts out under the fit so far, and takes the means anew. The likelihood is that of the fit so far. */
function oneRound(amounts_mm: readonly number[], { light_fraction, lightMean_mm, heavyMean_mm }: MixedExponentialFit) {
  let [light, light_mm, heavy_mm, logLikelihood] = [0, 0, 0, 0];
  for (const amount of amounts_mm) {
    const ofLight = (light_fraction / lightMean_mm) * Math.exp(-amount / lightMean_mm);
    const ofHeavy = ((1 - light_fraction) / heavyMean_mm) * Math.exp(-amount / heavyMean_mm);
    const both = ofLight + ofHeavy;
    // Where both underflow the amount is far beyond the light mean: heavy rain.
    const share = both > 0 ? ofLight / both : 0;
    light += share;
    light_mm += share * amount;
    heavy_mm += (1 - share) * amount;
    logLikelihood += both > 0 ? Math.log(both) : Math.log((1 - light_fraction) / heavyMean_mm) - amount / heavyMean_mm;
  }
  const { length } = amounts_mm;
  return {
    next: { light_fraction: light / length, lightMean_mm: light_mm / light, heavyMean_mm: heavy_mm / (length - light) },
    logLikelihood,
  };
}

/** Does the mixture beat one exponential distribution of the same mean, by more than the last digits of the sum? */
function isBetterThanOne(amounts_mm: readonly number[], fit: MixedExponentialFit, mean_mm: number): boolean {
  const { logLikelihood } = oneRound(amounts_mm, fit);
  const ofOne = -amounts_mm.length * (Math.log(mean_mm) + 1);
  return logLikelihood > ofOne + likelihoodGain_fraction * amounts_mm.length;
}
