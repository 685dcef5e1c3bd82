import { euler_fraction } from './constants.ts';
import { type ExtremeFit, reducedVariate } from './extremes.ts';

/** Mean and standard deviation of a sample. */
export interface SampleMoments {
  readonly mean_mm: number;
  /** Over n − 1. */
  readonly sd_mm: number;
}

/**
 * What are the mean and the standard deviation of these values?
 *
 * @param values_mm - the values [mm], in any order
 * @returns mean and standard deviation over n − 1 [mm]; null where there are not two different values
 * @definition the usual sample moments
 */
export function sampleMoments(values_mm: readonly number[]): SampleMoments | null {
  const n = values_mm.length;
  const mean_mm = values_mm.reduce((sum, value) => sum + value, 0) / n;
  const sd_mm = Math.sqrt(values_mm.reduce((sum, value) => sum + (value - mean_mm) ** 2, 0) / (n - 1));
  return Number.isFinite(sd_mm) && sd_mm > 0 ? { mean_mm, sd_mm } : null;
}

/**
 * Which Gumbel distribution has this mean and standard deviation?
 *
 * @param moments - mean and standard deviation [mm]
 * @returns location and scale [mm], shape 0 [number]
 * @law its mean and standard deviation are those given
 * @source chow-maidment-mays-1988, equations 12.2.2 and 12.2.3 (from memory): scale √6 s ÷ π, location mean − 0.5772 scale
 */
export function gumbelByMoments(moments: SampleMoments): ExtremeFit {
  const { mean_mm, sd_mm } = moments;
  const scale_mm = (Math.sqrt(6) * sd_mm) / Math.PI;
  return { location_mm: mean_mm - euler_fraction * scale_mm, scale_mm, shape: 0 };
}

/**
 * What are the mean and the standard deviation of Gumbel's reduced variate over the plotting positions m ÷ (n + 1) of so many years?
 *
 * @param years_count - years [count], whole, 2 or more
 * @returns reduced mean [number] and reduced standard deviation over n [number]
 * @law near 0.5772 and π ÷ √6 for many years
 * @source gumbel-1958, p. 228
 */
export function reducedMoments(years_count: number): { readonly mean_ratio: number; readonly sd_ratio: number } {
  if (!(Number.isInteger(years_count) && years_count >= 2))
    throw new RangeError('reducedMoments: needs 2 years or more');
  const reduced = Array.from({ length: years_count }, (_, i) => -Math.log(-Math.log((i + 1) / (years_count + 1))));
  const mean_ratio = reduced.reduce((sum, y) => sum + y, 0) / years_count;
  return { mean_ratio, sd_ratio: Math.sqrt(reduced.reduce((sum, y) => sum + (y - mean_ratio) ** 2, 0) / years_count) };
}

/**
 * Which Gumbel distribution fits the mean and standard deviation of so many years, by the reduced moments of their plotting positions? Few years
 * give a wider one than by the moments alone.
 *
 * @param moments - mean and standard deviation of the years' maxima [mm]
 * @param years_count - how many years they are of [count], whole, 2 or more
 * @returns location and scale [mm], shape 0 [number]
 * @law wider than by the moments alone
 * @source punmia-pande-lal, Example 4.34; gumbel-1958, p. 228
 */
export function gumbelChow(moments: SampleMoments, years_count: number): ExtremeFit {
  const { mean_mm, sd_mm } = moments;
  const { mean_ratio, sd_ratio } = reducedMoments(years_count);
  const scale_mm = sd_mm / sd_ratio;
  return { location_mm: mean_mm - mean_ratio * scale_mm, scale_mm, shape: 0 };
}

/** A value that one year in so many exceeds. */
export interface OnceIn {
  readonly returnPeriod_years: number;
  readonly maximum_mm: number;
}

/**
 * Which Gumbel distribution runs through two values at their return periods? For a guide between two values that somebody states.
 *
 * @param one - a value [mm] at a return period [year]
 * @param other - another, at another return period
 * @returns location and scale [mm], shape 0 [number]; null where the rarer value is not the larger
 * @law both values come back at their return periods
 * @source punmia-pande-lal, Examples 4.35 and 4.64
 */
export function gumbelThrough(one: OnceIn, other: OnceIn): ExtremeFit | null {
  const at = reducedVariate(one.returnPeriod_years);
  const scale_mm = (other.maximum_mm - one.maximum_mm) / (reducedVariate(other.returnPeriod_years) - at);
  if (!(scale_mm > 0 && Number.isFinite(scale_mm))) return null;
  return { location_mm: one.maximum_mm - scale_mm * at, scale_mm, shape: 0 };
}
