import { expect, it } from 'vitest';
import { intensityOfCoefficients_mm_per_h } from './intensityOfCoefficients.ts';

it('gives the intensities worked out by hand for coefficients as those of Kuala Lumpur (msma-2011, from memory)', () => {
  const coefficients = { lambda: 63.483, kappa: 0.146, theta_h: 0.21, eta: 0.83 };
  for (const [period, duration, expected] of [
    [2, 1, 59.96],
    [10, 1, 75.85],
    [10, 1 / 12, 245.89],
    [100, 24, 8.83],
  ] as const)
    expect(Math.abs(intensityOfCoefficients_mm_per_h(coefficients, period, duration) - expected)).toBeLessThan(0.01);
});
