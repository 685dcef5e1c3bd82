import { describe, expect, it } from 'vitest';
import { burdenRange, valueWithin } from './burdenRange.ts';
import { referencePathogens } from './constants.ts';
import { yearOfDrinking } from './yearOfDrinking.ts';

const end = 1.6448536269514722;

describe('valueWithin', () => {
  it('is the middle, and the ends where one in twenty lies beyond, each side by its own end', () => {
    expect(valueWithin(1, 10, 1000, 0)).toBe(10);
    expect(valueWithin(1, 10, 1000, -end)).toBeCloseTo(1, 9);
    expect(valueWithin(1, 10, 1000, end)).toBeCloseTo(1000, 6);
    expect(valueWithin(1, 10, 1000, end / 2)).toBeCloseTo(100, 6);
  });

  it('takes an end that is not known, or a low end of 0, as far off as the other', () => {
    for (const low of [null, 0]) expect(valueWithin(low, 10, 1000, -end)).toBeCloseTo(0.1, 9);
    expect(valueWithin(1, 10, null, end)).toBeCloseTo(100, 9);
    expect(valueWithin(null, 10, null, 3)).toBe(10);
    expect(valueWithin(0, 10, null, 3)).toBe(10);
  });

  it('rises from 0 to the high end where half is 0', () => {
    expect(valueWithin(0, 0, 4, -1)).toBe(0);
    expect(valueWithin(null, 0, 4, end / 2)).toBeCloseTo(2, 12);
    expect(valueWithin(null, 0, null, 2)).toBe(0);
  });

  it('refuses ends on the wrong side, and what is none', () => {
    for (const [low, middle, high] of [
      [11, 10, 20],
      [1, 10, 9],
      [-1, 10, 20],
      [1, 10, Infinity],
      [1, Number.NaN, 20],
    ] as const)
      expect(() => valueWithin(low, middle, high, 0)).toThrow(RangeError);
  });
});

describe('burdenRange', () => {
  const given = {
    off_days: 3,
    dirtied: null,
    groups: [
      { people_factor: 9, reduction_log10: 4, untreated_fraction: 0 },
      { people_factor: 1, reduction_log10: 0, untreated_fraction: 1 },
    ],
    pathogen: referencePathogens.campylobacter,
  };
  const raw = { low_per_L: 0.01, typical_per_L: 0.1, high_per_L: 10 };
  const litre = { usual_L_per_day: 1, high_L_per_day: 1 };
  const burdenAt = (raw_per_L: number) =>
    yearOfDrinking({ ...given, raw_per_L, drunk_L_per_day: 1 })!.burden_DALY_per_person_per_year;

  it('is judged at the high end of raw water where the litres are sure', () => {
    const { judged_DALY_per_person_per_year: judged, middle_DALY_per_person_per_year: middle } = burdenRange(
      ...([given, raw, litre, 7] as const),
    )!;
    expect(judged / burdenAt(10)).toBeCloseTo(1, 2);
    expect(middle / burdenAt(0.1)).toBeCloseTo(1, 2);
  });

  it('adds the doubts of raw water and litres as logarithms', () => {
    const wide = { usual_L_per_day: 1, high_L_per_day: 10 };
    const range = { low_per_L: null, typical_per_L: 1e-3, high_per_L: 1e-1 };
    const small = { ...given, off_days: 0, groups: [{ people_factor: 1, reduction_log10: 4, untreated_fraction: 0 }] };
    const { judged_DALY_per_person_per_year: judged } = burdenRange(small, range, wide, 7)!;
    const point = yearOfDrinking({ ...small, raw_per_L: 1e-3, drunk_L_per_day: 1 })!.burden_DALY_per_person_per_year;
    // Two decades and one decade to the 95th of a hundred: √(2² + 1²) together, within what 1,000 draws can tell.
    expect(Math.abs(Math.log10(judged / point) - Math.sqrt(5))).toBeLessThan(0.05);
  });

  it('is the same for the same seed and differs for another, and comes to the same draw by draw', () => {
    const wide = { usual_L_per_day: 1, high_L_per_day: 3 };
    const once = burdenRange(given, raw, wide, 7)!;
    const other = burdenRange(given, raw, wide, 8);
    expect(other).not.toEqual(once);
    expect(burdenRange(given, raw, wide, 7)).toEqual(once);
    const added = { growth_factor: 1, comesBack_fraction: 0, added_per_L: 1e-300 };
    const drawByDraw = burdenRange({ ...given, dirtied: added }, raw, wide, 7)!;
    expect(drawByDraw.judged_DALY_per_person_per_year / once.judged_DALY_per_person_per_year).toBeCloseTo(1, 3);
  });

  it('has no answer without people', () => {
    expect(burdenRange({ ...given, groups: [] }, raw, litre, 7)).toBeNull();
  });
});
