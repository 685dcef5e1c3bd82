import { logGamma } from './numericsLogGamma.ts';
import type { Range } from './range.ts';

/**
 * How many of so many tries come off, where the chance itself is beta distributed: the share of at most each count.
 *
 * @param tries - how many are tried [count], whole, 0 or more
 * @param a - first shape of the chance [number], above 0
 * @param b - second shape of the chance [number], above 0
 * @returns share of at most 0, 1, … tries [fraction]
 * @law never falls from one count to the next
 * @source scipy, betabinom, cdf
 * @example
 * Array.from(betaBinomialShares(1, 1, 1)) // → [0.5, 1]
 */
export function betaBinomialShares(tries: number, a: number, b: number): Float64Array {
  if (!(Number.isInteger(tries) && tries >= 0 && a > 0 && b > 0 && Number.isFinite(a + b)))
    throw new RangeError('betaBinomialShares: needs whole tries of 0 or more and shapes above 0');
  const shares = new Float64Array(tries + 1);
  const all = logGamma(tries + 1) + logGamma(a + b) - logGamma(a) - logGamma(b) - logGamma(tries + a + b);
  let sum = 0;
  for (let count = 0; count <= tries; count++) {
    const ways = logGamma(count + a) + logGamma(tries - count + b) - logGamma(count + 1) - logGamma(tries - count + 1);
    sum += Math.exp(all + ways);
    shares[count] = sum;
  }
  for (let count = 0; count <= tries; count++) shares[count] = Math.min(1, shares[count]! / sum);
  return shares;
}

/**
 * Seeing k of n years good, how many of the next years are likely to be good? The range of the count, where the share of
 * good years has the Jeffreys distribution and every year is drawn by it.
 *
 * @param k - good ones seen [count], whole, 0 to n
 * @param n - all seen [count], whole, 0 or more
 * @param next - how many are to come [count], whole, 0 or more
 * @param fraction - how much of the doubt the range holds at least [fraction], above 0, below 1
 * @returns fewest and most [count]
 * @law no more than a half of what the range leaves out lies at each end
 * @definition the equal-tailed range of the beta-binomial distribution with shapes k + ½ and n − k + ½
 * @example
 * nextCountRange(0, 0, 1, 0.5) // → { low: 0, high: 1 }
 */
export function nextCountRange(k: number, n: number, next: number, fraction: number): Range {
  const whole = Number.isInteger(k) && Number.isInteger(n) && k >= 0 && k <= n;
  if (!whole || !(fraction > 0 && fraction < 1))
    throw new RangeError('nextCountRange: needs 0 ≤ k ≤ n, 0 < fraction < 1');
  const tail = (1 - fraction) / 2;
  const shares = betaBinomialShares(next, k + 0.5, n - k + 0.5);
  const firstFrom = (share: number) => shares.findIndex((atMost) => atMost >= share);
  return { low: firstFrom(tail), high: firstFrom(1 - tail) };
}
