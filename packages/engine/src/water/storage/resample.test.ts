import { describe, expect, it } from 'vitest';
import { drawYears, resampledDryDays } from './resample.ts';

describe('drawYears', () => {
  it('draws blocks of two years that follow each other in the list', () => {
    const { positions, length } = drawYears(5, 200, 3);
    for (let i = 0; i < positions.length; i += length) {
      expect(positions[i + 1]).toBe((positions[i]! + 1) % 5);
      expect(positions[i + 3]).toBe((positions[i + 2]! + 1) % 5);
    }
    expect(new Set(positions)).toEqual(new Set([0, 1, 2, 3, 4]));
  });

  it('gives the same draws for the same seed and others for another', () => {
    expect(drawYears(30, 50, 1)).toEqual(drawYears(30, 50, 1));
    expect(drawYears(30, 50, 1)).not.toEqual(drawYears(30, 50, 2));
  });
});

describe('resampledDryDays', () => {
  it('has no spread where every year is the same', () => {
    const year = [9, 0, 0, 0];
    const balance = {
      inflow_L: Float64Array.from([...year, ...year, ...year]),
      judged_L: new Float64Array(12).fill(3),
      other_L: new Float64Array(12),
    };
    const years = [0, 1, 2].map((i) => ({
      label: 2001 + i,
      from: 4 * i,
      to: 4 * i + 4,
      missing_days: 0,
      judged: true,
    }));
    const range = resampledDryDays(balance, years, 100, drawYears(3, 100, 1), 0.9);
    // 9 L come a year and 12 L are asked: one day of four is dry, whichever years are drawn.
    expect(range).toEqual({ low: 1, high: 1 });
  });

  it('widens where years differ', () => {
    const balance = {
      inflow_L: Float64Array.of(9, 9, 9, 9, 0, 0, 0, 0),
      judged_L: new Float64Array(8).fill(3),
      other_L: new Float64Array(8),
    };
    const years = [0, 1, 2, 3].map((i) => ({
      label: 2001 + i,
      from: 2 * i,
      to: 2 * i + 2,
      missing_days: 0,
      judged: true,
    }));
    const range = resampledDryDays(balance, years, 3, drawYears(4, 500, 1), 0.9);
    expect(range.low).toBeLessThan(range.high);
  });
});
