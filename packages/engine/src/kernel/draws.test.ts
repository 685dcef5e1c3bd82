import { describe, expect, it } from 'vitest';
import { gammaDraw, normalDraw, uniformDraw } from './draws.ts';
import { gammaShares, normalShares } from './numericsGamma.ts';
import { seededDice } from './seeds.ts';

/** The greatest distance between the share of draws and the share below, times √n: above 2.2 once in 8,000 runs (Kolmogorov). */
function distance(draws: readonly number[], below: (x: number) => number): number {
  const sorted = [...draws].sort((a, b) => a - b);
  const gaps = sorted.map((x, i) => Math.max(below(x) - i / sorted.length, (i + 1) / sorted.length - below(x)));
  return Math.max(...gaps) * Math.sqrt(sorted.length);
}

const count = 20_000;
const drawn = (draw: (dice: ReturnType<typeof seededDice>) => number, seed: number) => {
  const dice = seededDice(seed);
  return Array.from({ length: count }, () => draw(dice));
};

describe('draws', () => {
  it('are even between 0 and 1, and never at an end', () => {
    const draws = drawn(uniformDraw, 1);
    expect(draws.every((x) => x > 0 && x < 1)).toBe(true);
    expect(distance(draws, (x) => x)).toBeLessThan(2.2);
  });

  it('are normal', () => {
    expect(distance(drawn(normalDraw, 2), (x) => normalShares(x).below_fraction)).toBeLessThan(2.2);
    expect(distance(drawn(normalDraw, 2), (x) => normalShares(x / 1.05).below_fraction)).toBeGreaterThan(1);
  });

  it.each([0.05, 0.6, 1, 2.5, 40])('are of a gamma distribution of shape %f', (shape) => {
    const draws = drawn((dice) => gammaDraw(dice, shape), 3);
    expect(distance(draws, (x) => gammaShares(x, shape).below_fraction)).toBeLessThan(2.2);
    expect(distance(draws, (x) => gammaShares(x, shape * 1.1).below_fraction)).toBeGreaterThan(2.2);
  });

  it('are the same for the same seed, and refuse what is no shape', () => {
    expect(drawn((dice) => gammaDraw(dice, 0.6), 9)).toEqual(drawn((dice) => gammaDraw(dice, 0.6), 9));
    for (const shape of [0, -1, Number.NaN, Infinity])
      expect(() => gammaDraw(seededDice(1), shape)).toThrow(RangeError);
  });
});
