import { describe, expect, it } from 'vitest';
import { isoDay } from '../../kernel/index.ts';
import { doubleMass, doubleMassProblems, slopeRatio } from './doubleMass.ts';
import type { MonthTotal } from './monthTotals.ts';

/** Months from January 2000. */
function months(count: number, total_mm: (i: number) => number | null): readonly MonthTotal[] {
  return Array.from({ length: count }, (_, i) => ({
    year: 2000 + Math.floor(i / 12),
    month: (i % 12) + 1,
    total_mm: total_mm(i),
  }));
}

const season = (i: number) => 20 + 15 * Math.sin((i * Math.PI) / 6) + ((i * 37) % 11);

describe('slopeRatio', () => {
  it('turns round with the halves, and leaves out the middle of an odd number', () => {
    const own = [3, 5, 4, 9, 7, 8];
    const base = [4, 4, 5, 5, 4, 6];
    const ratio = slopeRatio(own, base)!;
    const turned = slopeRatio([...own.slice(3), ...own.slice(0, 3)], [...base.slice(3), ...base.slice(0, 3)])!;
    expect(ratio * turned).toBeCloseTo(1, 12);
    expect(slopeRatio([1, 999, 3], [1, 1, 1])).toBe(3);
  });

  it('is null where a half is dry or nothing is there', () => {
    expect(slopeRatio([0, 1], [1, 1])).toBeNull();
    expect(slopeRatio([1, 1], [1, 0])).toBeNull();
    expect(slopeRatio([], [])).toBeNull();
    expect(slopeRatio([5], [5])).toBeNull();
  });
});

describe('doubleMass', () => {
  it('sees a gauge that measures less than it did, and when', () => {
    const own = months(240, (i) => season(i) * (i < 120 ? 1 : 0.7));
    const found = doubleMass(own, [months(240, season), months(240, (i) => 3 * season(i))])!;
    expect(found.slopeRatio_fraction).toBeCloseTo(0.7, 12);
    expect(found.months).toBe(240);
    expect(isoDay(found.bendDay)).toBe('2010-01-01');
  });

  it('sees no bend where a wet gauge begins half way', () => {
    const late = months(240, (i) => (i < 120 ? null : 10 * season(i % 12)));
    const steady = months(240, (i) => season(i % 12));
    const found = doubleMass(steady, [steady, late])!;
    expect(found.slopeRatio_fraction).toBeCloseTo(1, 9);
  });

  it('wants ten years in common', () => {
    const other = months(240, season);
    expect(doubleMass(months(119, season), [other])).toBeNull();
    expect(doubleMass(months(120, season), [other])).not.toBeNull();
    expect(
      doubleMass(
        months(240, (i) => (i % 2 === 0 ? season(i) : null)),
        [months(240, (i) => (i % 2 === 1 ? season(i) : null))],
      ),
    ).toBeNull();
    expect(doubleMass(months(240, season), [])).toBeNull();
  });

  it('names a change by more than a fifth, up or down', () => {
    const note = (slopeRatio_fraction: number) =>
      doubleMassProblems('G1', { slopeRatio_fraction, months: 240, bendDay: 0 }, ['G2']).length;
    expect([0.83, 0.84, 1.19, 1.21].map(note)).toEqual([1, 0, 0, 1]);
    expect(doubleMassProblems('G1', null, [])).toEqual([]);
  });
});
