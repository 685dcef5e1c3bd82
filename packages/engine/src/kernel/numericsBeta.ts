import { logGamma } from './numericsLogGamma.ts';
import type { Range } from './range.ts';

/**
 * Below which value does a given share of a beta distribution lie: the x with I_x(a, b) = p? Newton's steps on ln I
 * against ln x, kept inside a bracket by halving; above the mean it is solved from the other side.
 *
 * @param p - share below [fraction], 0 to 1
 * @param a - first shape [number], above 0
 * @param b - second shape [number], above 0
 * @returns the quantile x [fraction], 0 to 1
 * @law never falls as p grows; betaQuantile(p, a, b) = 1 − betaQuantile(1 − p, b, a)
 * @source dlmf, 8.17 (regularised incomplete beta function, continued fraction 8.17.22)
 * @example
 * betaQuantile(0, 2, 3) // → 0
 * betaQuantile(1, 2, 3) // → 1
 */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1 && a > 0 && b > 0 && Number.isFinite(a + b))) {
    throw new RangeError('betaQuantile: needs 0 ≤ p ≤ 1 and shapes above 0');
  }
  if (p === 0 || p === 1) return p;
  const shareBelowMean = Math.exp(logBetaShare(Math.log(a / (a + b)), a, b));
  return p <= shareBelowMean ? Math.exp(logLowerRoot(p, a, b)) : 1 - Math.exp(logLowerRoot(1 - p, b, a));
}

/**
 * Seeing k of n years good, in which range does the true share of good years lie? Equal-tailed range of the beta
 * distribution with shapes k + ½ and n − k + ½; the low end is 0 where k = 0 and the high end 1 where k = n.
 *
 * @param k - good ones seen [count], whole, 0 to n
 * @param n - all seen [count], whole, 0 or more
 * @param fraction - how much of the doubt the range holds [fraction], above 0, below 1
 * @returns low [fraction] and high [fraction]; 0 and 1 where nothing was seen
 * @law low ≤ k/n ≤ high
 * @source brown-cai-dasgupta-2001, section 4.3 (Jeffreys interval, with its boundary rule)
 * @example
 * jeffreysRange(0, 0, 0.9) // → { low: 0, high: 1 }
 */
export function jeffreysRange(k: number, n: number, fraction: number): Range {
  const whole = Number.isInteger(k) && Number.isInteger(n) && k >= 0 && k <= n;
  if (!whole || !(fraction > 0 && fraction < 1))
    throw new RangeError('jeffreysRange: needs 0 ≤ k ≤ n, 0 < fraction < 1');
  const tail = (1 - fraction) / 2;
  return {
    low: k === 0 ? 0 : betaQuantile(tail, k + 0.5, n - k + 0.5),
    high: k === n ? 1 : betaQuantile(1 - tail, k + 0.5, n - k + 0.5),
  };
}

/** ln x with I_x(a, b) = p, for a p whose x is not above the mean. ln I is concave in ln x, so Newton's steps are tame. */
function logLowerRoot(p: number, a: number, b: number): number {
  const logP = Math.log(p);
  let high = Math.log(a / (a + b));
  // I_x ≤ x^a·max(1, (1 − x)^(b−1)) / (a B(a, b)): a place certainly at or below the root.
  const leadingTerm = (logP + Math.log(a) + logBeta(a, b)) / a;
  let low = Math.min(leadingTerm + Math.min(0, ((b - 1) * Math.log1p(-Math.exp(high))) / -a), high) - 1e-9;
  while (logBetaShare(low, a, b) > logP) low -= 1;
  let u = Math.min(Math.max(leadingTerm, low), high);
  for (let step = 0; step < 200; step++) {
    const logShare = logBetaShare(u, a, b);
    const miss = logShare - logP;
    if (miss > 0) high = u;
    else low = u;
    // d(ln I)/d(ln x) = x · density / I
    const slope = Math.exp(a * u + (b - 1) * Math.log1p(-Math.exp(u)) - logBeta(a, b) - logShare);
    let next = u - miss / slope;
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    if (Math.abs(next - u) <= 1e-16 * Math.max(1, Math.abs(u))) return next;
    u = next;
  }
  return u;
}

/** ln I_x(a, b) with x = e^u ≤ 1. */
function logBetaShare(u: number, a: number, b: number): number {
  const x = Math.exp(u);
  const logFront = a * u + b * Math.log1p(-x) - logBeta(a, b);
  if (x <= (a + 1) / (a + b + 2)) return logFront - Math.log(a) + Math.log(betaFraction(x, a, b));
  return Math.log1p(-Math.exp(logFront - Math.log(b)) * betaFraction(1 - x, b, a));
}

/** The continued fraction of I_x(a, b), by Lentz's method as modified by Thompson and Barnett. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const away = (value: number): number => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    result *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return result;
}

function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}
