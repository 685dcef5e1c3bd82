import { describe, expect, it } from 'vitest';
import { firstTenth_fraction, settledFraction } from './settledFraction.ts';

describe('settledFraction', () => {
  it('is 0.5, 0.5556, 0.5904, 0.6103 and 0.6321 with 1, 2, 4, 8 and endless cells, where the grain sinks as fast as the water rises', () => {
    const shares = [1, 2, 4, 8, Infinity].map((cells) => settledFraction(1, 1, cells));
    for (const [index, wanted] of [0.5, 5 / 9, 0.5904, 0.6103, 1 - 1 / Math.E].entries())
      expect(shares[index]).toBeCloseTo(wanted, 4);
  });

  it('keeps its digits where next to nothing settles', () => {
    expect(settledFraction(1e-12, 1, 1) / 1e-12).toBeCloseTo(1, 10);
    expect(settledFraction(1e-12, 1, Infinity) / 1e-12).toBeCloseTo(1, 10);
  });

  it('is everything that sinks where nothing flows, and nothing of what does not sink', () => {
    expect(settledFraction(1e-9, 0, 1)).toBe(1);
    expect(settledFraction(0, 0, 1)).toBe(0);
    expect(settledFraction(0, 1, 1)).toBe(0);
  });
});

describe('firstTenth_fraction', () => {
  it('is that of a stirred tank, −ln 0.9, with one cell, and 1 without mixing', () => {
    expect(firstTenth_fraction(1)).toBeCloseTo(-Math.log(0.9), 12);
    expect(firstTenth_fraction(Infinity)).toBe(1);
  });

  it('is where one tenth of an Erlang distribution lies, for two cells: (1 + 2t) e^−2t = 0.9', () => {
    const t = firstTenth_fraction(2);
    expect((1 + 2 * t) * Math.exp(-2 * t)).toBeCloseTo(0.9, 12);
  });
});
