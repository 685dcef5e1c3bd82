import { logGamma } from './numericsLogGamma.ts';

/** The two sides of a value in a distribution: they add up to 1, and each keeps its own digits where it is small. */
export interface Shares {
  readonly below_fraction: number;
  readonly above_fraction: number;
}

/**
 * Which share of a gamma distribution of scale 1 lies below a value, and which above? The regularised incomplete gamma
 * functions: a series below the shape, a continued fraction above it.
 *
 * @param x - the value, in scales [number], 0 or more
 * @param shape - the shape [number], above 0
 * @returns shares below and above [fraction]
 * @law below + above = 1; below never falls as x grows
 * @source dlmf, 8.2.4 with 8.11.4 (series) and 8.9.2 (continued fraction)
 * @example
 * gammaShares(0, 3) // → { below_fraction: 0, above_fraction: 1 }
 */
export function gammaShares(x: number, shape: number): Shares {
  if (!(x >= 0 && shape > 0 && Number.isFinite(shape))) throw new RangeError('gammaShares: needs x ≥ 0 and shape > 0');
  if (x === 0) return { below_fraction: 0, above_fraction: 1 };
  if (x === Infinity) return { below_fraction: 1, above_fraction: 0 };
  const front = Math.exp(shape * Math.log(x) - x - logGamma(shape));
  if (x < shape + 1) {
    const below_fraction = Math.min(1, front * lowerSeries(x, shape));
    return { below_fraction, above_fraction: 1 - below_fraction };
  }
  const above_fraction = Math.min(1, front * upperFraction(x, shape));
  return { below_fraction: 1 - above_fraction, above_fraction };
}

/** Σ xⁿ / (a(a + 1)…(a + n)). */
function lowerSeries(x: number, shape: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n < 100_000 && term > sum * 1e-17; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

/** The continued fraction of Γ(a, x) e^x x^−a, by Lentz's method as modified by Thompson and Barnett. */
function upperFraction(x: number, shape: number): number {
  const tiny = 1e-300;
  let b = x + 1 - shape;
  let c = 1 / tiny;
  let d = 1 / b;
  let result = d;
  for (let n = 1; n < 100_000; n++) {
    const an = -n * (n - shape);
    b += 2;
    d = 1 / (an * d + b || tiny);
    c = b + an / c || tiny;
    result *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return result;
}

/**
 * Which share of a standard normal distribution lies below a value, and which above?
 *
 * @param z - the value, in standard deviations from the mean [number], not NaN
 * @returns shares below and above [fraction]
 * @law below + above = 1
 * @source dlmf, 7.11.1 (error function as an incomplete gamma function)
 * @example
 * normalShares(0) // → { below_fraction: 0.5, above_fraction: 0.5 }
 */
export function normalShares(z: number): Shares {
  if (Number.isNaN(z)) throw new RangeError('normalShares: z is NaN');
  const { below_fraction: within, above_fraction: outside } = gammaShares((z * z) / 2, 0.5);
  const small = outside / 2;
  const large = 0.5 + within / 2;
  return z < 0 ? { below_fraction: small, above_fraction: large } : { below_fraction: large, above_fraction: small };
}

/** Rational approximation 26.2.23 of Abramowitz and Stegun, from memory; off by less than 0.00045. Only a first guess here. */
const guessAbove = [2.515517, 0.802853, 0.010328] as const;
const guessBelow = [1.432788, 0.189269, 0.001308] as const;

/**
 * Which value of a standard normal distribution has these shares below and above? A rational first guess, made exact by
 * Newton's steps on the logarithm of the smaller share.
 *
 * @param shares - shares below and above [fraction], adding up to 1
 * @returns the value, in standard deviations from the mean [number]; −Infinity or Infinity where a share is 0
 * @law normalQuantile of the two shares exchanged is the same with the other sign
 * @source abramowitz-stegun-1964, 26.2.23 (first guess, from memory)
 * @example
 * normalQuantile({ below_fraction: 0.5, above_fraction: 0.5 }) // → 0
 * normalQuantile({ below_fraction: 0, above_fraction: 1 }) // → -Infinity
 */
export function normalQuantile(shares: Shares): number {
  const { below_fraction, above_fraction } = shares;
  if (!(below_fraction >= 0 && above_fraction >= 0 && Math.abs(below_fraction + above_fraction - 1) < 1e-9)) {
    throw new RangeError('normalQuantile: needs two shares that add up to 1');
  }
  if (below_fraction === above_fraction) return 0;
  const isUpper = above_fraction < below_fraction;
  const tail = isUpper ? above_fraction : below_fraction;
  const size = tail === 0 ? Infinity : upperQuantile(tail);
  return isUpper ? size : -size;
}

/** The z ≥ 0 with this share above it, 0 < tail < ½. ln of the tail is concave in z, so Newton's steps are tame. */
function upperQuantile(tail: number): number {
  const t = Math.sqrt(-2 * Math.log(tail));
  const [a0, a1, a2] = guessAbove;
  const [b1, b2, b3] = guessBelow;
  let z = t - (a0 + t * (a1 + t * a2)) / (1 + t * (b1 + t * (b2 + t * b3)));
  for (let step = 0; step < 20; step++) {
    const above = normalShares(z).above_fraction;
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const move = (Math.log(above / tail) * above) / density;
    z += move;
    if (Math.abs(move) <= 1e-15 * Math.max(1, z)) break;
  }
  return Math.max(0, z);
}
