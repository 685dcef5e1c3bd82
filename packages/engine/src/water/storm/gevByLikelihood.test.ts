import { describe, expect, it } from 'vitest';
import { maximumOnceIn_mm } from './extremes.ts';
import { gevByLikelihood } from './gevByLikelihood.ts';

/** Fort Collins, Colorado: the most rain in a day of each year from 1900 to 1999 [in]. */
const fortCollins = [
  2.39, 2.32, 4.34, 0.85, 3.02, 1.74, 1.7, 1.21, 1.93, 1.68, 1.48, 1.16, 1.32, 1.32, 1.44, 1.83, 2.23, 0.96, 2.98, 0.97,
  1.16, 1.46, 0.84, 2.3, 1.38, 1.7, 1.17, 1.15, 1.32, 1.25, 1.56, 1.24, 1.89, 1.93, 0.71, 1.76, 1.05, 0.93, 3.54, 0.6,
  1.51, 1.6, 2.19, 1.42, 1.17, 0.87, 2.23, 2.15, 1.08, 3.54, 2.13, 3.06, 1.69, 1.84, 0.71, 0.98, 0.96, 2.18, 1.76, 1.21,
  1.61, 3.21, 1.02, 2.69, 0.98, 2.71, 0.95, 2.12, 1.51, 1.36, 2.4, 1.62, 0.71, 1.1, 2.85, 2.15, 1.03, 4.43, 1.85, 1.99,
  1.15, 1.34, 2.97, 1.87, 2.03, 1.46, 0.94, 1.29, 1.62, 1.12, 3.48, 0.95, 2.49, 1.03, 1.81, 1.52, 1.35, 4.63, 1.83,
  2.41,
];

describe('the likeliest distribution', () => {
  it('of 100 years at Fort Collins is that of katz-parlange-naveau-2002 (its parameters from memory)', () => {
    const fit = gevByLikelihood(fortCollins)!;
    expect(Math.abs(fit.location_mm - 1.347)).toBeLessThan(0.0005);
    expect(Math.abs(fit.scale_mm - 0.533)).toBeLessThan(0.0005);
    // The paper's ξ is −k.
    expect(Math.abs(-fit.shape - 0.174)).toBeLessThan(0.0005);
    expect(Math.abs(maximumOnceIn_mm(fit, 100) - 5.1)).toBeLessThan(0.05);
  });

  it('is not found where nothing can be fitted', () => {
    expect(gevByLikelihood([1, 2, 3])).toBeNull();
    expect(gevByLikelihood([4, 4, 4, 4, 4, 4])).toBeNull();
    expect(gevByLikelihood([0, 0, 0, 0, 0, 9])).toBeNull();
  });
});
