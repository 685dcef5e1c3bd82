import { logGamma } from '../../kernel/index.ts';
import { largeDose_organisms, lastTerm_ratio, smallInfection_fraction, weightsOver_ratio } from './constants.ts';

/**
 * Which share of people does a dose infect, where each organism may infect with a chance that differs from person to person as a beta distribution does (the
 * exact beta-Poisson)? P = 1 − ₁F₁(α; α + β; −dose), by Kummer's transformation 1 − e^−dose ₁F₁(β; α + β; dose): both series are added up together term by
 * term, all of them positive, so that small shares keep their digits. Large doses by the series in 1/dose.
 *
 * @param dose_organisms - organisms taken in on average [organisms], 0 or more
 * @param alpha_shape - first shape of the beta distribution [number], above 0
 * @param beta_shape - second shape [number], above 0
 * @returns share of people infected [fraction]
 * @law never more than the low-dose limit 1 − e^(−α ÷ (α + β) · dose); never falls as the dose grows
 * @source teunis-havelaar-2000, hypergeometric form (from memory); dlmf, 13.2.2, 13.2.39 and 13.7.1
 * @example
 * exactBetaPoisson_fraction(1, 0.167, 0.191) // → 0.315347
 * exactBetaPoisson_fraction(0, 0.167, 0.191) // → 0
 */
export function exactBetaPoisson_fraction(dose_organisms: number, alpha_shape: number, beta_shape: number): number {
  if (!(dose_organisms >= 0 && alpha_shape > 0 && beta_shape > 0))
    throw new RangeError('exactBetaPoisson_fraction: needs a dose of 0 or more and shapes above 0');
  if (dose_organisms === Infinity) return 1;
  const large =
    dose_organisms > largeDose_organisms ? infectedByLargeDose(dose_organisms, alpha_shape, beta_shape) : null;
  return large ?? infectedByDose(dose_organisms, alpha_shape, beta_shape);
}

/** Σ Poisson weight of k organisms × chance that one of k infects, over Σ weights. Weights are scaled down before they overflow. */
function infectedByDose(dose: number, alpha: number, beta: number): number {
  let weight = 1;
  let spared = 1;
  let infected = 0;
  let allWeights = 1;
  let allInfected = 0;
  for (let k = 1; ; k++) {
    weight *= dose / k;
    infected += (spared * alpha) / (alpha + beta + k - 1);
    spared *= (beta + k - 1) / (alpha + beta + k - 1);
    allWeights += weight;
    allInfected += weight * infected;
    if (k > dose && weight <= lastTerm_ratio * allInfected) return allInfected / allWeights;
    if (weight > weightsOver_ratio) {
      weight /= weightsOver_ratio;
      allWeights /= weightsOver_ratio;
      allInfected /= weightsOver_ratio;
    }
  }
}

/** One less Γ(α + β)/Γ(β) dose^−α Σ (1 − β)_s (α)_s ÷ s! ÷ dose^s; null where the series is too coarse or the share is small. */
function infectedByLargeDose(dose: number, alpha: number, beta: number): number | null {
  let term = 1;
  let sum = 1;
  for (let s = 1; Math.abs(term) > lastTerm_ratio * Math.abs(sum); s++) {
    const next = (term * (s - beta) * (alpha + s - 1)) / (s * dose);
    if (Math.abs(next) >= Math.abs(term)) return null;
    term = next;
    sum += term;
  }
  const spared = Math.exp(logGamma(alpha + beta) - logGamma(beta) - alpha * Math.log(dose)) * sum;
  return spared <= 1 - smallInfection_fraction ? 1 - spared : null;
}
