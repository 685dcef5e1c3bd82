import { expect, it } from 'vitest';
import { floorToTruck } from './constants.ts';
import { liftFactors, liftingLimit_kg } from './liftingLimit.ts';

const best = {
  reach_cm: 25,
  handHeight_cm: 75,
  travel_cm: 25,
  turn_deg: 0,
  frequency_factor: 1,
  grip_factor: 1,
};

it('lets 23 kg be lifted at best', () => {
  expect(liftingLimit_kg(best)).toBe(23);
  expect(liftingLimit_kg({ ...best, reach_cm: 10, travel_cm: 5 })).toBe(23);
});

// Reference case worked by hand: a carton from the floor to the bed of a truck.
it('lets 9.49 kg be lifted from the floor to a truck', () => {
  expect(Math.abs(liftingLimit_kg(floorToTruck)! / 9.49333 - 1)).toBeLessThan(1e-5);
});

it.each([
  ['reach_cm', 63.1],
  ['handHeight_cm', 176],
  ['travel_cm', 176],
  ['turn_deg', 136],
] as const)('allows nothing beyond the bound of %s', (name, value) => {
  expect(liftingLimit_kg({ ...best, [name]: value })).toBe(0);
});

it.each([Number.NaN, -1, Number.POSITIVE_INFINITY])('has no answer to a measure of %s', (value) => {
  for (const name of Object.keys(best)) expect(liftFactors({ ...best, [name]: value })).toBeNull();
  expect(liftingLimit_kg({ ...best, grip_factor: 1.2 })).toBeNull();
});
