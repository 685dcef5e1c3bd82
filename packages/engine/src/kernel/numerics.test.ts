import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kthSmallest, median, quantile, quantileReordering } from './numerics.ts';

describe('quantile', () => {
  // SciPy 1.17.1: scipy.stats.mstats.mquantiles([2, 3.5, 7, 11, 13, 17, 40], [0.05, 0.31, 0.95], alphap=1, betap=1)
  it('agrees with type 7 of another program', () => {
    const values = [40, 2, 13, 7, 3.5, 17, 11];
    expect(quantile(values, 0.05)).toBeCloseTo(2.45, 12);
    expect(quantile(values, 0.31)).toBeCloseTo(6.51, 12);
    expect(quantile(values, 0.95)).toBeCloseTo(33.1, 12);
  });

  it('leaves the given numbers in their order', () => {
    const values = [3, 1, 2];
    quantile(values, 0.5);
    expect(values).toEqual([3, 1, 2]);
  });

  it('never gives NaN beside an endless value', () => {
    expect(quantile([1, Infinity, Infinity], 0.5)).toBe(Infinity);
    expect(quantile([1, 2, Infinity], 0.5)).toBe(2);
    expect(quantile([Infinity, Infinity], 0.3)).toBe(Infinity);
  });

  it('refuses no values and shares outside 0 to 1', () => {
    expect(() => quantile([], 0.5)).toThrow(RangeError);
    expect(() => quantile([1], 1.5)).toThrow(RangeError);
    expect(() => quantile([1], Number.NaN)).toThrow(RangeError);
  });
});

describe('median', () => {
  it('is the middle one, or the mean of the middle two', () => {
    expect(median([9, 1, 5])).toBe(5);
    expect(median([9, 1, 5, 6])).toBe(5.5);
  });
});

describe('kthSmallest', () => {
  it('is the entry of the sorted array, with ties and endless values', () => {
    const someNumber = fc.oneof(fc.integer({ min: -5, max: 5 }), fc.constant(Infinity), fc.double({ noNaN: true }));
    fc.assert(
      fc.property(fc.array(someNumber, { minLength: 1, maxLength: 60 }), fc.nat(), (values, n) => {
        const k = (n % values.length) + 1;
        const sorted = Float64Array.from(values).sort();
        // −0 and 0 are one number here.
        expect(kthSmallest(Float64Array.from(values), k) + 0).toBe(sorted[k - 1]! + 0);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  it('refuses a place that is not there', () => {
    expect(() => kthSmallest(Float64Array.of(1, 2), 0)).toThrow(RangeError);
    expect(() => kthSmallest(Float64Array.of(1, 2), 3)).toThrow(RangeError);
  });
});

describe('quantileReordering', () => {
  it('equals the quantile of the sorted numbers, equal and endless ones among them', () => {
    const value = fc.oneof(fc.integer({ min: 0, max: 9 }), fc.double({ noNaN: true, min: 0 }));
    const share = fc.oneof(fc.constantFrom(0, 0.05, 0.5, 1), fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 60 }), share, (values, p) => {
        expect(quantileReordering(Float64Array.from(values), p)).toBe(quantile(values, p));
      }),
      { numRuns: 1000, seed: 20261126 },
    );
  });

  it('refuses what has no quantile', () => {
    expect(() => quantileReordering(new Float64Array(0), 0.5)).toThrow(RangeError);
    expect(() => quantileReordering(Float64Array.of(1), 1.5)).toThrow(RangeError);
  });
});
