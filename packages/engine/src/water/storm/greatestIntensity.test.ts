import { expect, it } from 'vitest';
import { greatestIntensity_mm_per_h } from './greatestIntensity.ts';

it('finds the fullest window wherever it stands', () => {
  expect(greatestIntensity_mm_per_h([1, 2, 3], 5, 5)).toBe(36);
  expect(greatestIntensity_mm_per_h([3, 0, 2, 2], 1, 2)).toBe(120);
  expect(greatestIntensity_mm_per_h([0, 0], 5, 10)).toBe(0);
});

it('says nothing of windows that no intervals make', () => {
  expect(greatestIntensity_mm_per_h([1, 2, 3], 2, 5)).toBeNull();
  expect(greatestIntensity_mm_per_h([1], 5, 10)).toBeNull();
  expect(greatestIntensity_mm_per_h([], 5, 5)).toBeNull();
});
