import { jarvisErrors_factor, told_mL } from './constants.ts';
import { likeliestLogDensity } from './ecoliEstimate.ts';
import { found_count, gathered, holding_mL } from './likelihood.ts';
import { portionFault, type Wells } from './portion.ts';

/** A count and its limits. */
export interface JarvisLimits {
  readonly ecoli_per_100mL: number;
  readonly lowest_per_100mL: number;
  readonly highest_per_100mL: number;
}

/**
 * How wide are the limits of a count by wells, if its logarithm is taken to be spread as a normal distribution? Jarvis's method, to compare with what
 * laboratories print; ours are those of ecoliEstimate. Printed limits follow with two standard errors.
 *
 * @param wells - wells: volumes [mL] and counts
 * @param errors_factor - standard errors from the count to its limits [number]: 2 as printed
 * @returns count and limits [per 100 mL]; null where none or all were positive, or a portion is faulty
 * @source jarvis-2010, lognormal limits by the observed information
 */
export function jarvisLimits(
  wells: readonly Wells[],
  errors_factor: number = jarvisErrors_factor,
): JarvisLimits | null {
  if (wells.length === 0 || wells.some((one) => portionFault(one) !== null)) return null;
  const seen = gathered(wells) as readonly Wells[];
  if (found_count(seen) === 0 || holding_mL(seen) === 0) return null;
  const likeliest = likeliestLogDensity(seen);
  const information = seen.reduce((sum, { positive_count, volume_mL }) => {
    const mean_count = Math.exp(likeliest) * volume_mL;
    // Σ x u² eᵘ ÷ (eᵘ − 1)², written so that a large u does not overflow.
    return positive_count === 0 ? sum : sum + (positive_count * mean_count ** 2) / (4 * Math.sinh(mean_count / 2) ** 2);
  }, 0);
  const apart = errors_factor / Math.sqrt(information);
  const told = (logDensity: number) => Math.exp(logDensity) * told_mL;
  return {
    ecoli_per_100mL: told(likeliest),
    lowest_per_100mL: told(likeliest - apart),
    highest_per_100mL: told(likeliest + apart),
  };
}
