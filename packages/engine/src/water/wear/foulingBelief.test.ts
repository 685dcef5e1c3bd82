import { describe, expect, it } from 'vitest';
import { foulingAtShare_ratio, foulingBelief } from './foulingBelief.ts';

const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);

describe('before any reading', () => {
  it('the wear is lognormal about 1 with the spread stated', () => {
    const belief = foulingBelief(1, [], 0.6);
    expect(sum(belief.weight_fraction)).toBeCloseTo(1, 12);
    expect(foulingAtShare_ratio(belief, 0.5)).toBeCloseTo(1, 6);
    // Quantiles of the standard normal distribution at 0.9 and 0.975.
    expect(Math.log(foulingAtShare_ratio(belief, 0.9)) / 0.6).toBeCloseTo(1.281552, 3);
    expect(Math.log(foulingAtShare_ratio(belief, 0.025)) / 0.6).toBeCloseTo(-1.959964, 3);
    expect(belief.lnLikelihood_ratio).toBe(0);
    expect(belief.atEdge).toBe(false);
  });

  it('keeps its ends finite', () => {
    const belief = foulingBelief(1, [], 0.6);
    expect(foulingAtShare_ratio(belief, 0)).toBeGreaterThan(0);
    expect(foulingAtShare_ratio(belief, 1)).toBeLessThan(Infinity);
  });
});

describe('readings', () => {
  // After a great load r is wear × load to many digits, so that its logarithm is normal and both weights multiply in closed form.
  it('of sets worn many times over give the mean of prior and readings, each by its precision', () => {
    const [spread, error, load] = [0.6, 0.2, 1e9];
    const readings = [1.3, 1.8, 1.5].map((wear) => ({
      load_L_NTU: load,
      resistance_ratio: wear * load,
      error_fraction: error,
    }));
    const belief = foulingBelief(1, readings, spread);
    const precision = 1 / spread ** 2 + 3 / error ** 2;
    const mean = (Math.log(1.3) + Math.log(1.8) + Math.log(1.5)) / error ** 2 / precision;
    expect(Math.log(foulingAtShare_ratio(belief, 0.5))).toBeCloseTo(mean, 4);
    expect(Math.log(foulingAtShare_ratio(belief, 0.9)) - mean).toBeCloseTo(1.281552 / Math.sqrt(precision), 4);
  });

  it('of a set nothing passed say nothing', () => {
    const before = foulingBelief(1, [], 0.6);
    const after = foulingBelief(1, [{ load_L_NTU: 0, resistance_ratio: 1.4, error_fraction: 0.1 }], 0.6);
    expect(after.weight_fraction.every((one, place) => Math.abs(one - before.weight_fraction[place]!) < 1e-12)).toBe(
      true,
    );
  });

  it('may come in any order', () => {
    const readings = [1.2, 1.9, 2.2].map((r, i) => ({
      load_L_NTU: i + 1,
      resistance_ratio: r,
      error_fraction: 0.1 * (i + 1),
    }));
    const [one, other] = [foulingBelief(0.5, readings, 0.6), foulingBelief(0.5, readings.toReversed(), 0.6)];
    for (const share of [0.1, 0.5, 0.9])
      expect(foulingAtShare_ratio(one, share)).toBeCloseTo(foulingAtShare_ratio(other, share), 10);
  });

  it('that no wear of the grid explains are told, and leave no NaN', () => {
    const belief = foulingBelief(1, [{ load_L_NTU: 1, resistance_ratio: 1e9, error_fraction: 1e-4 }], 0.6);
    expect(belief.atEdge).toBe(true);
    expect(sum(belief.weight_fraction)).toBeCloseTo(1, 12);
    expect(Number.isFinite(foulingAtShare_ratio(belief, 0.5))).toBe(true);
  });
});
