import {
  betaQuantile,
  type DaysAsked,
  type Dice,
  gammaDraw,
  normalDraw,
  normalQuantile,
  uniformDraw,
} from '../../../kernel/index.ts';

/** How something of which low, likely and high are said is spread. */
export const spreadKinds = ['pert', 'triangular'] as const;
export type SpreadKind = (typeof spreadKinds)[number];

/** A distribution ready to be drawn from. `alpha` and `beta` are shapes of a PERT; `logMean` and `logSd` of a lognormal. */
export type Distribution =
  | { readonly kind: 'fixed'; readonly value: number }
  | {
      readonly kind: 'pert';
      readonly low: number;
      readonly high: number;
      readonly alpha: number;
      readonly beta: number;
    }
  | { readonly kind: 'triangular'; readonly low: number; readonly likely: number; readonly high: number }
  | { readonly kind: 'lognormal'; readonly logMean: number; readonly logSd: number };

/** Mean and variance. */
export interface SpreadMoments {
  readonly mean: number;
  readonly variance: number;
}

/**
 * A distribution by its low, likely and high value. A likely value outside the two ends is moved to the nearer; where the ends meet nothing is drawn.
 *
 * @param asked - low, likely and high [any unit]
 * @param kind - which distribution
 * @returns the distribution [any unit]
 * @source malcolm-1959, PERT: alpha = 1 + 4(m − a)/(b − a), beta = 1 + 4(b − m)/(b − a) (the beta of mean (a + 4m + b)/6; from memory)
 */
export function spreadOf(asked: DaysAsked, kind: SpreadKind): Distribution {
  const low = Math.min(asked.low, asked.high);
  const high = Math.max(asked.low, asked.high);
  const likely = Math.min(high, Math.max(low, asked.likely));
  if (!(high > low)) return { kind: 'fixed', value: Number.isNaN(likely) ? asked.likely : likely };
  if (kind === 'triangular') return { kind, low, likely, high };
  const alpha = 1 + (4 * (likely - low)) / (high - low);
  return { kind, low, high, alpha, beta: 6 - alpha };
}

/**
 * A lognormal distribution by its mean and its standard deviation as a share of it.
 *
 * @param mean - the mean [any unit], above 0
 * @param cv_fraction - standard deviation ÷ mean [fraction], 0 or more
 * @returns the distribution [any unit]
 * @source scipy, lognorm: logSd² = ln(1 + cv²), mean = e^(logMean + logSd²/2)
 */
export function lognormalOfMean(mean: number, cv_fraction: number): Distribution {
  const square = Math.log1p(cv_fraction * cv_fraction);
  return square === 0
    ? { kind: 'fixed', value: mean }
    : { kind: 'lognormal', logMean: Math.log(mean) - square / 2, logSd: Math.sqrt(square) };
}

/**
 * A lognormal distribution by the values under which half and nine tenths lie.
 *
 * @param p50 - the median [any unit], above 0
 * @param p90 - under it lie nine tenths [any unit], p50 or more
 * @returns the distribution [any unit]
 * @source scipy, lognorm: logSd = ln(p90 ÷ p50) ÷ z(0.9)
 */
export function lognormalOfShares(p50: number, p90: number): Distribution {
  if (!(p90 > p50)) return { kind: 'fixed', value: p50 };
  const z = normalQuantile({ below_fraction: 0.9, above_fraction: 0.1 });
  return { kind: 'lognormal', logMean: Math.log(p50), logSd: Math.log(p90 / p50) / z };
}

/**
 * Draws from a distribution: a PERT by two gammas, a triangular one by its inverse, a lognormal one by a normal draw.
 *
 * @param spread - the distribution [unit of the figure]
 * @param dice - a seeded source of whole numbers
 * @returns the value drawn [unit of the distribution]
 * @law never outside low and high where there are such
 * @source marsaglia-tsang-2000, a beta as the share of two gammas
 */
export function spreadDraw(spread: Distribution, dice: Dice): number {
  switch (spread.kind) {
    case 'fixed':
      return spread.value;
    case 'pert': {
      const first = gammaDraw(dice, spread.alpha);
      const second = gammaDraw(dice, spread.beta);
      return spread.low + (spread.high - spread.low) * (first / (first + second));
    }
    case 'triangular':
      return triangularQuantile(spread.low, spread.likely, spread.high, uniformDraw(dice));
    case 'lognormal':
      return Math.exp(spread.logMean + spread.logSd * normalDraw(dice));
  }
}

/**
 * Mean and variance of a distribution. The variance of a PERT is that of its beta, (μ − a)(b − μ)/7, not ((b − a)/6)², which does not belong to it.
 *
 * @param spread - the distribution [unit of the figure]
 * @returns mean [unit of the distribution] and variance [its square]
 * @source scipy, beta, triang, lognorm: stats
 */
export function spreadMoments(spread: Distribution): SpreadMoments {
  switch (spread.kind) {
    case 'fixed':
      return { mean: spread.value, variance: 0 };
    case 'pert': {
      const mean = spread.low + ((spread.high - spread.low) * spread.alpha) / (spread.alpha + spread.beta);
      return { mean, variance: ((mean - spread.low) * (spread.high - mean)) / (spread.alpha + spread.beta + 1) };
    }
    case 'triangular': {
      const { low: a, likely: m, high: b } = spread;
      return { mean: (a + m + b) / 3, variance: (a * a + m * m + b * b - a * m - a * b - m * b) / 18 };
    }
    case 'lognormal': {
      const square = spread.logSd ** 2;
      const mean = Math.exp(spread.logMean + square / 2);
      return { mean, variance: mean * mean * Math.expm1(square) };
    }
  }
}

/**
 * Below which value does a share of a distribution lie?
 *
 * @param spread - the distribution [unit of the figure]
 * @param p - share below [fraction], above 0, below 1
 * @returns the value [unit of the distribution]
 * @law never falls as p grows
 * @source scipy, beta, triang, lognorm: ppf
 */
export function spreadQuantile(spread: Distribution, p: number): number {
  switch (spread.kind) {
    case 'fixed':
      return spread.value;
    case 'pert':
      return spread.low + (spread.high - spread.low) * betaQuantile(p, spread.alpha, spread.beta);
    case 'triangular':
      return triangularQuantile(spread.low, spread.likely, spread.high, p);
    case 'lognormal':
      return Math.exp(spread.logMean + spread.logSd * normalQuantile({ below_fraction: p, above_fraction: 1 - p }));
  }
}

function triangularQuantile(low: number, likely: number, high: number, p: number): number {
  const turn = (likely - low) / (high - low);
  return p < turn
    ? low + Math.sqrt(p * (high - low) * (likely - low))
    : high - Math.sqrt((1 - p) * (high - low) * (high - likely));
}
