import { describe, expect, it } from 'vitest';
import { ecoliEstimate } from './ecoliEstimate.ts';
import { type Portion, portionFault, presenceAbsence } from './portion.ts';

describe('portionFault', () => {
  it.each([
    [{ kind: 'wells', volume_mL: 10, wells_count: 10, positive_count: 10 }, null],
    [{ kind: 'wells', volume_mL: 0, wells_count: 10, positive_count: 1 }, 'volume'],
    [{ kind: 'wells', volume_mL: Number.NaN, wells_count: 10, positive_count: 1 }, 'volume'],
    [{ kind: 'wells', volume_mL: 10, wells_count: 10, positive_count: 11 }, 'moreThanAll'],
    [{ kind: 'wells', volume_mL: 10, wells_count: 0, positive_count: 0 }, 'count'],
    [{ kind: 'wells', volume_mL: 10, wells_count: 5, positive_count: -1 }, 'count'],
    [{ kind: 'wells', volume_mL: 10, wells_count: 5, positive_count: 1.5 }, 'count'],
    [{ kind: 'plate', volume_mL: 100, colonies_count: 0 }, null],
    [{ kind: 'plate', volume_mL: -1, colonies_count: 3 }, 'volume'],
    [{ kind: 'plate', volume_mL: 100, colonies_count: -3 }, 'count'],
    [{ kind: 'uncountable', volume_mL: 1, limit_count: 0 }, 'count'],
    [{ kind: 'uncountable', volume_mL: 1, limit_count: 200 }, null],
  ] as const)('of %j is %s', (portion, fault) => {
    expect(portionFault(portion as Portion)).toBe(fault);
  });
});

describe('ecoliEstimate', () => {
  it('is null without a portion, and where one of several is faulty', () => {
    expect(ecoliEstimate([])).toBeNull();
    const sound = presenceAbsence(100, false);
    expect(ecoliEstimate([sound, { ...sound, volume_mL: 0 }])).toBeNull();
  });

  it('of ten tubes of 10 mL is −10 ln(1 − k/10)', () => {
    for (const positive_count of [1, 5, 9]) {
      const got = ecoliEstimate([{ kind: 'wells', volume_mL: 10, wells_count: 10, positive_count }])!;
      expect(got.ecoli_per_100mL).toBeCloseTo(-10 * Math.log(1 - positive_count / 10), 9);
      expect(got.rarity_fraction).toBeCloseTo(1, 9);
    }
  });

  it('of 100 mL without any is 0 and at most 3; with some it is more than next to nothing', () => {
    expect(ecoliEstimate([presenceAbsence(100, false)])).toMatchObject({ reach: 'below', ecoli_per_100mL: 0 });
    expect(ecoliEstimate([presenceAbsence(100, false)])!.highest_per_100mL).toBeCloseTo(-Math.log(0.05), 12);
    const found = ecoliEstimate([presenceAbsence(100, true)])!;
    expect(found).toMatchObject({ reach: 'above', ecoli_per_100mL: null, highest_per_100mL: null });
    expect(found.lowest_per_100mL).toBeCloseTo(-Math.log(0.95), 12);
  });

  it('keeps its digits where an uncountable plate is all but impossible', () => {
    const got = ecoliEstimate([
      { kind: 'plate', volume_mL: 100, colonies_count: 0 },
      { kind: 'uncountable', volume_mL: 0.001, limit_count: 300 },
    ])!;
    expect(Number.isFinite(got.ecoli_per_100mL!)).toBe(true);
    expect(got.isRare).toBe(true);
  });

  it('tells plates whose colonies scatter: the same sums, evenly and in clumps', () => {
    const of = (colonies: readonly number[]) =>
      ecoliEstimate(colonies.map((colonies_count) => ({ kind: 'plate', volume_mL: 1, colonies_count })))!;
    expect(of([5, 4, 6, 5])).toMatchObject({ isScattered: false });
    expect(of([0, 0, 19, 1])).toMatchObject({ isScattered: true });
    expect(of([5, 4, 6, 5]).ecoli_per_100mL).toBeCloseTo(of([0, 0, 19, 1]).ecoli_per_100mL!, 9);
  });
});
