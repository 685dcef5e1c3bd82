import { expect, it } from 'vitest';
import { exposures, flatTo_m, powerLaw_factor } from './constants.ts';
import { exposureFactor } from './windPressure.ts';

// The law written from memory is held against the three figures that were seen.
it.each([
  ['builtUp', 0.57],
  ['openGround', 0.85],
  ['openWater', 1.03],
] as const)('%s: the law meets the seen figure at 15 ft', (exposure, seen) => {
  const { gradientHeight_m, exponent_factor } = exposures[exposure];
  expect(powerLaw_factor * (flatTo_m / gradientHeight_m) ** (2 / exponent_factor)).toBeCloseTo(seen, 2);
  expect(exposureFactor(exposure, 0)).toBe(seen);
  expect(exposureFactor(exposure, flatTo_m)).toBe(seen);
});

it('grows with height and stops at the gradient height', () => {
  expect(exposureFactor('openGround', 12.192)).toBeCloseTo(1.04, 2);
  expect(exposureFactor('openGround', 5000)).toBe(powerLaw_factor);
});
