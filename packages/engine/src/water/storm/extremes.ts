import { gumbelShape_fraction } from './constants.ts';

/**
 * A distribution of yearly maxima: generalised extreme value, and Gumbel where its shape is 0. The sign of the shape is Hosking's k: under 0 the
 * upper tail is heavy, above 0 there is a greatest value. Many books write ξ = −k.
 */
export interface ExtremeFit {
  readonly location_mm: number;
  readonly scale_mm: number;
  readonly shape: number;
}

/**
 * Which maximum is exceeded in one year of so many? In mm here; any unit will do.
 *
 * @param fit - the distribution of yearly maxima [mm]
 * @param returnPeriod_years - one year in so many has more [year], above 1
 * @returns the maximum [mm]
 * @law never falls as the return period grows
 * @source hosking-1990, quantile of the generalised extreme value distribution: location + scale ÷ k × (1 − (−ln F)^k)
 */
export function maximumOnceIn_mm(fit: ExtremeFit, returnPeriod_years: number): number {
  const { location_mm, scale_mm, shape } = fit;
  const y = reducedVariate(returnPeriod_years);
  if (Math.abs(shape) < gumbelShape_fraction) return location_mm + scale_mm * y;
  return location_mm + (scale_mm * -Math.expm1(-shape * y)) / shape;
}

/**
 * In one year of how many is there more than this?
 *
 * @param fit - the distribution of yearly maxima [mm]
 * @param maximum_mm - the value [mm]
 * @returns the return period [year], 1 or more; null where the distribution never reaches the value
 * @law turns maximumOnceIn_mm round
 * @source hosking-1990, generalised extreme value distribution
 */
export function returnPeriodOf_years(fit: ExtremeFit, maximum_mm: number): number | null {
  const { location_mm, scale_mm, shape } = fit;
  const z = (maximum_mm - location_mm) / scale_mm;
  const isGumbel = Math.abs(shape) < gumbelShape_fraction;
  if (!isGumbel && shape * z >= 1) return shape > 0 ? null : 1;
  const y = isGumbel ? z : -Math.log1p(-shape * z) / shape;
  const period = -1 / Math.expm1(-Math.exp(-y));
  return Number.isFinite(period) ? period : null;
}

/** Gumbel's reduced variate −ln(−ln F) of the value that one year in so many exceeds. */
export function reducedVariate(returnPeriod_years: number): number {
  if (!(returnPeriod_years > 1)) throw new RangeError('a return period is above 1 year');
  return -Math.log(-Math.log1p(-1 / returnPeriod_years));
}
