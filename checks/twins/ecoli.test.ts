import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ecoliEstimate, type Portion } from '../../packages/engine/src/water/waterTests/index.ts';
import { somePortions } from '../laws/ranges/portions.ts';

// The count and its limits once more, slowly and by another way: the chance itself is written out as products and sums over counts, laid over a fine grid of
// densities, and its highest place and the places where it has fallen are narrowed down by golden section and by thirds.

const numRuns = process.env['EAVEWELL_SOAK'] ? 5000 : 500;
const golden = (Math.sqrt(5) - 1) / 2;
/** Half of the place in a chi-square distribution with one degree of freedom that 95 % lie below. */
const fall = 3.841458820694124 / 2;

/** ln of the chance of what was seen at so many in a mL, counted out one by one. */
function logChance(portions: readonly Portion[], perMl: number): number {
  let sum = 0;
  for (const one of portions) {
    const mean = perMl * one.volume_mL;
    if (one.kind === 'wells') {
      const empty = Math.exp(-mean);
      for (let i = 0; i < one.wells_count; i++)
        sum += i < one.positive_count ? Math.log(mean < 1e-5 ? mean - mean ** 2 / 2 : 1 - empty) : -mean;
    } else if (one.kind === 'plate') sum += logPoisson(one.colonies_count, mean);
    else sum += logAtLeast(one.limit_count, mean);
  }
  return sum;
}

/** ln of the product of the numbers up to each. */
const logFactorial = [0];
for (let k = 1; k <= 5000; k++) logFactorial.push(logFactorial[k - 1]! + Math.log(k));

function logPoisson(count: number, mean: number): number {
  return count * Math.log(mean) - mean - logFactorial[count]!;
}

/** ln of Σ of the chances of the limit and more, from the largest of them on both sides. */
function logAtLeast(limit: number, mean: number): number {
  // So far over the limit that a plate is uncountable for certain: what is left is less than a double can add to 1.
  if (mean > 4 * limit + 200) return 0;
  const top = Math.max(limit, Math.floor(mean));
  let sum = 1;
  for (let k = top + 1, term = 1; term > 1e-18; k++) {
    term *= mean / k;
    sum += term;
  }
  for (let k = top, term = 1; k > limit && term > 1e-18; k--) {
    term *= k / mean;
    sum += term;
  }
  return logPoisson(top, mean) + Math.log(sum);
}

/** The highest place of a function with one hill, between two ends. */
function hilltop(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  for (let step = 0; step < 60; step++) {
    const [left, right] = [b - golden * (b - a), a + golden * (b - a)];
    if (f(left) < f(right)) a = left;
    else b = right;
  }
  return (a + b) / 2;
}

/** Where a function passes zero between a place under it and one over it. */
function crossing(f: (x: number) => number, under: number, over: number): number {
  let [a, b] = [under, over];
  for (let step = 0; step < 60; step++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

function slowly(portions: readonly Portion[]) {
  const at = (power: number) => logChance(portions, 10 ** power);
  const grid = Array.from({ length: 31 }, (_, i) => -8 + i * 0.5);
  const best = grid.reduce((top, power) => (at(power) > at(top) ? power : top));
  const top = hilltop(at, best - 0.5, best + 0.5);
  const short = (power: number) => at(top) - at(power) - fall;
  let [low, high] = [top - 0.5, top + 0.5];
  while (short(low) < 0) low -= 0.5;
  while (short(high) < 0) high += 0.5;
  return {
    count: 100 * 10 ** top,
    low: 100 * 10 ** crossing((power) => -short(power), low, top),
    high: 100 * 10 ** crossing(short, top, high),
  };
}

describe('E. coli of a sample', () => {
  it(`is found by another way too, with its limits, in ${numRuns} made-up designs`, () => {
    const designs = fc.sample(somePortions, { numRuns: numRuns * 2, seed: 20261126 });
    const within = designs.filter((portions) => ecoliEstimate(portions)!.reach === 'within').slice(0, numRuns);
    expect(within.length).toBe(numRuns);
    for (const portions of within) {
      const [quick, slow] = [ecoliEstimate(portions)!, slowly(portions)];
      // A hill is flat on top: its place is known to half the digits that its height has.
      expect(Math.abs(quick.ecoli_per_100mL! / slow.count - 1)).toBeLessThan(1e-5);
      expect(Math.abs(quick.lowest_per_100mL / slow.low - 1)).toBeLessThan(1e-7);
      expect(Math.abs(quick.highest_per_100mL! / slow.high - 1)).toBeLessThan(1e-7);
    }
  });
});
