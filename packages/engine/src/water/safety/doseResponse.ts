import { risingRoot } from '../../kernel/index.ts';
import { greatestDose_organisms } from './constants.ts';
import { exactBetaPoisson_fraction } from './exactBetaPoisson.ts';
import type { DoseResponse } from './germs.ts';

/**
 * Which share of people does a dose infect, where each organism has the same chance?
 *
 * @param dose_organisms - organisms taken in on average [organisms], 0 or more
 * @param perOrganism_fraction - chance of one organism to infect [fraction], 0 to 1
 * @returns share of people infected [fraction]
 * @law never falls as the dose grows
 * @source haas-2014, exponential dose response (from memory): 1 − e^(−r · dose)
 * @example
 * exponentialInfection_fraction(10, 0.0199) // → 0.18045
 */
export function exponentialInfection_fraction(dose_organisms: number, perOrganism_fraction: number): number {
  return -Math.expm1(-perOrganism_fraction * dose_organisms);
}

/**
 * Which share of people does a dose infect, by the approximate beta-Poisson? Good where β is well over 1 and over α.
 *
 * @param dose_organisms - organisms taken in on average [organisms], 0 or more
 * @param alpha_shape - first shape [number], above 0
 * @param beta_shape - second shape [number], above 0
 * @returns share of people infected [fraction]
 * @law never falls as the dose grows
 * @source haas-2014, approximate beta-Poisson (from memory): 1 − (1 + dose ÷ β)^−α
 * @example
 * betaPoissonInfection_fraction(1, 0.253, 0.426) // → 0.263372
 */
export function betaPoissonInfection_fraction(dose_organisms: number, alpha_shape: number, beta_shape: number): number {
  return -Math.expm1(-alpha_shape * Math.log1p(dose_organisms / beta_shape));
}

/**
 * Which share of people could a dose infect at most, by the exact beta-Poisson: each organism with the mean chance α ÷ (α + β)? The limit for doses far under one.
 *
 * @param dose_organisms - organisms taken in on average [organisms], 0 or more
 * @param alpha_shape - first shape [number], above 0
 * @param beta_shape - second shape [number], above 0
 * @returns share of people infected [fraction]
 * @law never less than the exact beta-Poisson
 * @source teunis-havelaar-2000, maximum risk curve of the mean chance (from memory)
 * @example
 * lowDoseInfection_fraction(1, 0.167, 0.191) // → 0.3728
 */
export function lowDoseInfection_fraction(dose_organisms: number, alpha_shape: number, beta_shape: number): number {
  return exponentialInfection_fraction(dose_organisms, alpha_shape / (alpha_shape + beta_shape));
}

/**
 * Which share of people does a dose infect?
 *
 * @param dose_organisms - organisms taken in on average [organisms], 0 or more
 * @param response - how the germ infects
 * @returns share of people infected [fraction]
 * @law never falls as the dose grows
 * @definition the form the response names
 */
export function infection_fraction(dose_organisms: number, response: DoseResponse): number {
  if (!(dose_organisms >= 0)) throw new RangeError('infection_fraction: needs a dose of 0 or more');
  if (response.form === 'exponential')
    return exponentialInfection_fraction(dose_organisms, response.perOrganism_fraction);
  const { form, alpha_shape, beta_shape } = response;
  const infected = form === 'betaPoisson' ? betaPoissonInfection_fraction : exactBetaPoisson_fraction;
  return infected(dose_organisms, alpha_shape, beta_shape);
}

/**
 * Which dose infects so many?
 *
 * @param infected_fraction - share of people infected [fraction], 0 to 1
 * @param response - how the germ infects
 * @returns organisms taken in on average [organisms]; Infinity where all are infected, or more than any dose a person can drink infects
 * @law infects so many; never falls as the share grows
 * @definition the response turned round; the exact beta-Poisson by bisection
 */
export function doseThatInfects_organisms(infected_fraction: number, response: DoseResponse): number {
  if (!(infected_fraction >= 0 && infected_fraction <= 1))
    throw new RangeError('doseThatInfects_organisms: needs a share of 0 to 1');
  if (infected_fraction === 0) return 0;
  if (infected_fraction === 1) return Infinity;
  const hits = -Math.log1p(-infected_fraction);
  if (response.form === 'exponential') return hits / response.perOrganism_fraction;
  const { form, alpha_shape, beta_shape } = response;
  if (form === 'betaPoisson') return beta_shape * Math.expm1(hits / alpha_shape);
  const infected = (logDose: number) =>
    exactBetaPoisson_fraction(Math.exp(logDose), alpha_shape, beta_shape) - infected_fraction;
  const greatest = Math.log(greatestDose_organisms);
  if (infected(greatest) < 0) return Infinity;
  // No dose under this one can: the low-dose limit lies over the exact curve.
  const least = Math.min(Math.log((hits * (alpha_shape + beta_shape)) / alpha_shape), greatest);
  return Math.exp(risingRoot(infected, least, greatest));
}
