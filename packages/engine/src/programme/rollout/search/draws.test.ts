import { expect, it } from 'vitest';
import { Draws } from './draws.ts';

it('draws the same from the same seed, and other numbers from another', () => {
  const first = Array.from(
    { length: 20 },
    (
      (draws) => () =>
        draws.whole()
    )(new Draws(7)),
  );
  const again = Array.from(
    { length: 20 },
    (
      (draws) => () =>
        draws.whole()
    )(new Draws(7)),
  );
  const other = Array.from(
    { length: 20 },
    (
      (draws) => () =>
        draws.whole()
    )(new Draws(8)),
  );
  expect(again).toEqual(first);
  expect(other.filter((number) => first.includes(number))).toEqual([]);
});

it('draws each of six numbers as often as the others, and fractions with the mean and variance of an even spread', () => {
  const draws = new Draws(1);
  const counts = [0, 0, 0, 0, 0, 0];
  const n = 60_000;
  for (let i = 0; i < n; i++) counts[draws.below(6)]!++;
  // Chi-square of five degrees of freedom: 20.5 is passed once in a thousand.
  expect(counts.reduce((sum, count) => sum + (count - n / 6) ** 2 / (n / 6), 0)).toBeLessThan(20.5);
  const drawn = Array.from({ length: n }, () => draws.fraction());
  const mean = drawn.reduce((sum, one) => sum + one, 0) / n;
  const variance = drawn.reduce((sum, one) => sum + (one - mean) ** 2, 0) / n;
  expect(Math.abs(mean - 0.5)).toBeLessThan(4 / Math.sqrt(12 * n));
  expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / n));
});

it('misses a chance of one in a hundred 99 times on average', () => {
  const draws = new Draws(3);
  const n = 20_000;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += draws.missed(0.01);
  expect(Math.abs(sum / n - 99)).toBeLessThan((4 * Math.sqrt(0.99)) / 0.01 / Math.sqrt(n));
  expect(draws.missed(1)).toBe(0);
  expect(draws.missed(0)).toBeGreaterThan(1e9);
});
