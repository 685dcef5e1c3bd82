import { describe, expect, it } from 'vitest';
import { gammaShares, normalQuantile, normalShares } from './numericsGamma.ts';

describe('gammaShares', () => {
  // R 4.2.2: pgamma(50, 3, lower.tail = FALSE)
  it('keeps its digits where what is above is very small', () => {
    expect(gammaShares(50, 3).above_fraction / 2.50930355220106e-19).toBeCloseTo(1, 13);
  });

  // SciPy 1.17.1: python3 -c "from scipy.special import gammainc, gammaincc; print(gammainc(A, X), gammaincc(A, X))"
  const rows = [
    [0.001, 0.05, 0.7271792290529225, 0.27282077094707735],
    [1e-8, 0.5, 0.00011283791633342464, 0.9998871620836666],
    [0.5, 0.5, 0.6826894921370859, 0.31731050786291115],
    [1.7, 1.79, 0.5730368360553175, 0.4269631639446825],
    [4.5, 3, 0.8264219290899639, 0.17357807091003602],
    [30, 10, 0.9999928782491372, 7.121750862815593e-6],
    [95, 100, 0.3173568111698001, 0.6826431888301999],
    [130, 100, 0.9972495916326934, 0.002750408367306518],
    [1000, 1020, 0.2676584391142954, 0.7323415608857047],
    [0.2, 40, 1.1087134276149818e-76, 1],
    [200, 2, 1, 2.781632018740826e-85],
  ] as const;
  it.each(rows)('x %f, shape %f', (x, shape, below, above) => {
    const shares = gammaShares(x, shape);
    expect(shares.below_fraction / below).toBeCloseTo(1, 11);
    expect(shares.above_fraction / above).toBeCloseTo(1, 11);
  });

  // Closed forms: shape 1 is 1 − e^−x; shape 2 is 1 − (1 + x)e^−x.
  it('agrees with the closed forms, and on both sides of the change of method', () => {
    for (const x of [1e-9, 0.3, 1.999999, 2.000001, 2.999999, 3.000001, 40]) {
      expect(gammaShares(x, 1).below_fraction / -Math.expm1(-x)).toBeCloseTo(1, 13);
      expect(gammaShares(x, 2).above_fraction / ((1 + x) * Math.exp(-x))).toBeCloseTo(1, 13);
    }
  });

  it('never gives NaN: it refuses what is no value or no shape', () => {
    expect(gammaShares(Infinity, 2)).toEqual({ below_fraction: 1, above_fraction: 0 });
    for (const [x, shape] of [
      [-1, 2],
      [Number.NaN, 2],
      [1, 0],
      [1, Infinity],
    ] as const) {
      expect(() => gammaShares(x, shape)).toThrow(RangeError);
    }
  });
});

describe('normalShares and normalQuantile', () => {
  // SciPy 1.17.1: scipy.special.ndtr
  it.each([
    [-8, 6.22096057427174e-16],
    [-3, 0.0013498980316300933],
    [-1.959963984540054, 0.025],
    [-0.1, 0.460172162722971],
    [0.3, 0.6179114221889526],
    [2.5, 0.9937903346742238],
    [5, 0.9999997133484281],
  ] as const)('below %f', (z, below) => {
    expect(normalShares(z).below_fraction / below).toBeCloseTo(1, 11);
    expect(normalShares(-z).above_fraction / below).toBeCloseTo(1, 11);
  });

  // SciPy 1.17.1: scipy.special.ndtri
  it.each([
    [1e-300, -37.0470962993612],
    [1e-20, -9.262340089798409],
    [1e-6, -4.753424308822899],
    [0.0228, -1.99907721497177],
    [0.1587, -0.9998150936147444],
    [0.4, -0.2533471031357997],
  ] as const)('quantile of %f', (p, z) => {
    expect(normalQuantile({ below_fraction: p, above_fraction: 1 - p })).toBeCloseTo(z, 11);
    expect(normalQuantile({ below_fraction: 1 - p, above_fraction: p })).toBeCloseTo(-z, 11);
  });

  it('undo each other', () => {
    for (let z = -20; z <= 20; z += 0.37) expect(normalQuantile(normalShares(z))).toBeCloseTo(z, 11);
  });

  it('refuses shares that do not add up', () => {
    expect(() => normalQuantile({ below_fraction: 0.5, above_fraction: 0.4 })).toThrow(RangeError);
    expect(() => normalShares(Number.NaN)).toThrow(RangeError);
  });
});
