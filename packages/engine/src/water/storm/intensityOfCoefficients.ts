import type { StormCoefficients } from '../../kernel/index.ts';

/**
 * How hard does it rain for so long, once in so many years, by a place's coefficients? i = λ T^κ ÷ (d + θ)^η.
 *
 * @param coefficients - λ [mm/h], κ [number], θ [h] and η [number], for d in hours
 * @param returnPeriod_years - one year in so many has more [year], above 0
 * @param duration_h - how long it rains [h], 0 or more
 * @returns the mean intensity over that time [mm/h]
 * @law grows with the return period where κ is above 0, falls as it lasts longer where η is
 * @source msma-2011, equation 2.2
 */
export function intensityOfCoefficients_mm_per_h(
  coefficients: Pick<StormCoefficients, 'lambda' | 'kappa' | 'theta_h' | 'eta'>,
  returnPeriod_years: number,
  duration_h: number,
): number {
  const { lambda, kappa, theta_h, eta } = coefficients;
  return (lambda * returnPeriod_years ** kappa) / (duration_h + theta_h) ** eta;
}
