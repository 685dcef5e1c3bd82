import { describe, expect, it } from 'vitest';
import { seededDice, uniformDraw } from '../../kernel/index.ts';
import { mixedExponentialByLikelihood } from './mixedExponentialFit.ts';

/** Amounts drawn from a mixture [mm]. */
function drawn(count: number, seed: number, light: number, lightMean_mm: number, heavyMean_mm: number): number[] {
  const dice = seededDice(seed);
  return Array.from({ length: count }, () => {
    const mean_mm = uniformDraw(dice) < light ? lightMean_mm : heavyMean_mm;
    return -mean_mm * Math.log(uniformDraw(dice));
  });
}

const meanOf = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
const sdOf = (values: readonly number[]) => {
  const mean = meanOf(values);
  return Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1));
};

describe('mixedExponentialByLikelihood', () => {
  it('finds the parameters again: the mean of 60 fits lies within four of its own standard errors', () => {
    const known = { light_fraction: 0.6, lightMean_mm: 3, heavyMean_mm: 20 };
    const fits = Array.from({ length: 60 }, (_, i) => mixedExponentialByLikelihood(drawn(4000, 100 + i, 0.6, 3, 20))!);
    for (const name of ['light_fraction', 'lightMean_mm', 'heavyMean_mm'] as const) {
      const found = fits.map((fit) => fit[name]);
      const error = sdOf(found) / Math.sqrt(fits.length);
      expect(Math.abs(meanOf(found) - known[name]), name).toBeLessThan(4 * error);
      // The spread of the fits themselves is small beside the parameter, so that the check can fail.
      expect(sdOf(found), name).toBeLessThan(0.1 * known[name]);
    }
  });

  it('has the amounts’ mean, and twice the means for twice the amounts', () => {
    const amounts = drawn(500, 7, 0.7, 2, 15);
    const fit = mixedExponentialByLikelihood(amounts)!;
    const { light_fraction: w, lightMean_mm, heavyMean_mm } = fit;
    expect(w * lightMean_mm + (1 - w) * heavyMean_mm).toBeCloseTo(meanOf(amounts), 9);
    const twice = mixedExponentialByLikelihood(amounts.map((one) => 2 * one))!;
    expect(twice.light_fraction).toBeCloseTo(w, 9);
    expect(twice.lightMean_mm).toBeCloseTo(2 * lightMean_mm, 8);
    expect(twice.heavyMean_mm).toBeCloseTo(2 * heavyMean_mm, 8);
    expect(lightMean_mm).toBeLessThan(heavyMean_mm);
  });

  it('is likelier than any fit beside it', () => {
    const amounts = drawn(500, 8, 0.5, 2, 12);
    const likelihood = (w: number, b1: number, b2: number) =>
      amounts.reduce(
        (sum, one) => sum + Math.log((w / b1) * Math.exp(-one / b1) + ((1 - w) / b2) * Math.exp(-one / b2)),
        0,
      );
    const { light_fraction: w, lightMean_mm: b1, heavyMean_mm: b2 } = mixedExponentialByLikelihood(amounts)!;
    const best = likelihood(w, b1, b2);
    for (const step of [-0.02, 0.02]) {
      expect(likelihood(w * (1 + step), b1, b2)).toBeLessThan(best);
      expect(likelihood(w, b1 * (1 + step), b2)).toBeLessThan(best);
      expect(likelihood(w, b1, b2 * (1 + step))).toBeLessThan(best);
    }
  });

  it('gives nothing where one mean does as well, or there is too little to go by', () => {
    expect(mixedExponentialByLikelihood(drawn(19, 1, 0.5, 2, 12))).toBeNull();
    expect(mixedExponentialByLikelihood(Array.from({ length: 50 }, () => 4))).toBeNull();
    // Amounts more alike than an exponential distribution's cannot be a mixture of two.
    expect(mixedExponentialByLikelihood(Array.from({ length: 200 }, (_, i) => 9 + (i % 3)))).toBeNull();
    expect(mixedExponentialByLikelihood([0, ...drawn(50, 1, 0.5, 2, 12)])).toBeNull();
    expect(mixedExponentialByLikelihood([])).toBeNull();
  });

  it('does not stumble over an amount far beyond all others', () => {
    const fit = mixedExponentialByLikelihood([...drawn(50, 3, 0.9, 1, 3), 5000])!;
    expect(Number.isFinite(fit.heavyMean_mm) && Number.isFinite(fit.lightMean_mm)).toBe(true);
  });
});
