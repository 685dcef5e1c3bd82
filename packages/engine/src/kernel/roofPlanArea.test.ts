import { expect, it } from 'vitest';
import { roofPlanArea } from './roofPlanArea.ts';

it('takes the given area before the sides', () => {
  expect(roofPlanArea({ length_m: 10, width_m: 8, roofPlanArea_m2: 62 })).toBe(62);
});

it('multiplies the sides where no area is given', () => {
  expect(roofPlanArea({ length_m: 10, width_m: 8, roofPlanArea_m2: null })).toBe(80);
});

it('does not read an unknown side, zero or nonsense as an area', () => {
  expect(roofPlanArea({ length_m: 10, width_m: null, roofPlanArea_m2: null })).toBeNull();
  expect(roofPlanArea({ length_m: 0, width_m: 8, roofPlanArea_m2: 0 })).toBeNull();
  expect(roofPlanArea({ length_m: Number.NaN, width_m: 8, roofPlanArea_m2: Number.NaN })).toBeNull();
});
