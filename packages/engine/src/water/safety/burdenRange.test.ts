import { describe, expect, it } from 'vitest';
import { burdenRange, rawWithin_per_L } from './burdenRange.ts';
import { referencePathogens } from './constants.ts';

const raw = { low_per_L: 0.01, typical_per_L: 0.1, high_per_L: 10 };

describe('rawWithin_per_L', () => {
  it('lies at low, at a third of the way by share at typical, and at high', () => {
    expect(rawWithin_per_L(raw, 0)).toBeCloseTo(0.01, 12);
    expect(rawWithin_per_L(raw, 1 / 3)).toBeCloseTo(0.1, 12);
    expect(rawWithin_per_L(raw, 1)).toBeCloseTo(10, 12);
  });

  it('takes a low of 0 as far under typical as high is over it', () => {
    const from0 = { low_per_L: 0, typical_per_L: 0.1, high_per_L: 10 };
    expect(rawWithin_per_L(from0, 0)).toBeCloseTo(0.001, 12);
    expect(rawWithin_per_L(from0, 1 / 2)).toBeCloseTo(0.1, 12);
  });

  it('falls from 0 to high where as a rule there is nothing', () => {
    const rare = { low_per_L: 0, typical_per_L: 0, high_per_L: 4 };
    expect(rawWithin_per_L(rare, 0)).toBe(0);
    expect(rawWithin_per_L(rare, 0.75)).toBeCloseTo(2, 12);
    expect(rawWithin_per_L(rare, 1)).toBe(4);
    expect(rawWithin_per_L({ ...rare, high_per_L: 0 }, 0.9)).toBe(0);
  });

  it('is the one value where all three are the same', () => {
    expect(rawWithin_per_L({ low_per_L: 3, typical_per_L: 3, high_per_L: 3 }, 0.3)).toBe(3);
  });

  it('refuses a range that falls, or that is none', () => {
    expect(() => rawWithin_per_L({ ...raw, low_per_L: 1 }, 0.5)).toThrow(RangeError);
    expect(() => rawWithin_per_L({ ...raw, high_per_L: Infinity }, 0.5)).toThrow(RangeError);
    expect(() => rawWithin_per_L({ ...raw, typical_per_L: Number.NaN }, 0.5)).toThrow(RangeError);
  });
});

describe('burdenRange', () => {
  const given = {
    reduction_log10: 4,
    off_days: 0,
    dirtied: null,
    groups: [{ people_factor: 1, untreated_fraction: 0 }],
    pathogen: referencePathogens.cryptosporidium,
  };

  it('has its judged end where nineteen in twenty raw values lie under it, at one litre', () => {
    const litre = { low_L_per_day: 1, high_L_per_day: 1 };
    const { judged_DALY_per_person_per_year: judged, typical_DALY_per_person_per_year: typical } = burdenRange(
      { ...given, reduction_log10: 8 },
      raw,
      litre,
      7,
    )!;
    // Small doses: in proportion to the raw water, whose triangle is 3 decades wide, 2 of them over its peak: x from the top where x² ÷ 6 = 0.05.
    expect(judged / typical / 10 ** (2 - Math.sqrt(0.3))).toBeCloseTo(1, 2);
  });

  it('is the same for the same seed, wider for a wider range of litres, and the one value where nothing is in doubt', () => {
    const litres = { low_L_per_day: 0.5, high_L_per_day: 3 };
    expect(burdenRange(given, raw, litres, 7)).toEqual(burdenRange(given, raw, litres, 7));
    expect(burdenRange(given, raw, litres, 8)).not.toEqual(burdenRange(given, raw, litres, 7));
    const sure = { low_per_L: 1, typical_per_L: 1, high_per_L: 1 };
    const one = burdenRange(given, sure, { low_L_per_day: 2, high_L_per_day: 2 }, 7, 10)!;
    expect(one.judged_DALY_per_person_per_year).toBe(one.typical_DALY_per_person_per_year);
    expect(one.middle_DALY_per_person_per_year).toBe(one.typical_DALY_per_person_per_year);
  });

  it('has no answer without people', () => {
    expect(burdenRange({ ...given, groups: [] }, raw, { low_L_per_day: 1, high_L_per_day: 2 }, 7)).toBeNull();
  });
});
