import { expect, test } from 'vitest';
import { chanceFor } from './chance.ts';

const draws = 200_000;

/** Mean and variance of many draws. */
function moments(draw: () => number): { mean: number; variance: number } {
  const values = Float64Array.from({ length: draws }, draw);
  const mean = values.reduce((sum, value) => sum + value, 0) / draws;
  return { mean, variance: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / draws };
}

// Five standard errors of a mean of that many draws; a gamma's variance equals its shape.
test.each([0.25, 0.5, 0.75, 1.6, 4])('a gamma of shape %d has that mean and that variance', (shape) => {
  const { mean, variance } = moments(() => chance.gamma(shape));
  expect(Math.abs(mean - shape)).toBeLessThan(5 * Math.sqrt(shape / draws));
  // Fourth central moment of a gamma of scale 1: 3 shape² + 6 shape.
  expect(Math.abs(variance - shape)).toBeLessThan(5 * Math.sqrt((2 * shape ** 2 + 6 * shape) / draws));
});

const chance = chanceFor(1, 'moments');

test('a normal has mean 0 and variance 1', () => {
  const { mean, variance } = moments(() => chance.normal());
  expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(draws));
  expect(Math.abs(variance - 1)).toBeLessThan(5 * Math.sqrt(2 / draws));
});

test('whole numbers reach both ends and no further', () => {
  const seen = new Set(Array.from({ length: 500 }, () => chance.whole(3, 6)));
  expect([...seen].sort()).toEqual([3, 4, 5, 6]);
});

test('a seed and a name give their own draws', () => {
  expect(chanceFor(1, 'a').share()).toBe(chanceFor(1, 'a').share());
  expect(chanceFor(1, 'a').share()).not.toBe(chanceFor(1, 'b').share());
  expect(chanceFor(1, 'a').share()).not.toBe(chanceFor(2, 'a').share());
});
