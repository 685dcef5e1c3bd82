import { describe, expect, it } from 'vitest';
import { goodYearsNeeded, tankForDays, tankForRuns, yearNeeds } from './curve.ts';

const year = (label: number, from: number, to: number, judged = true) => ({ label, from, to, missing_days: 0, judged });

describe('reading the curve', () => {
  it('rounds the years needed up, and a whole number stays', () => {
    expect([30, 31, 32, 20, 15, 10].map((n) => goodYearsNeeded(n, 0.8))).toEqual([24, 25, 26, 16, 12, 8]);
  });

  it('counts only judged years, and says null where no tank would do', () => {
    const critical = Float64Array.of(4, 8, Infinity, Infinity);
    expect(tankForDays(critical, [year(2001, 0, 2), year(2002, 2, 4, false)], 2, 1)).toBe(8);
    expect(tankForDays(critical, [year(2001, 0, 2), year(2002, 2, 4)], 4, 1)).toBeNull();
    expect(tankForDays(critical, [year(2001, 0, 2), year(2002, 2, 4)], 4, 0.5)).toBe(8);
    // Two of the four days ask for nothing: half of the other two may be dry.
    expect(tankForDays(Float64Array.of(0, 8, 0, 5), [year(2001, 0, 4)], 2, 0.5)).toBe(5);
    expect(tankForDays(critical, [year(2001, 0, 4, false)], 0, 0.5)).toBeNull();
    expect(tankForRuns(Float64Array.of(3, Infinity, 5), 0.8)).toBeNull();
  });

  it('lets a run carry on over the turn of a year and over the seam of the record', () => {
    const critical = Float64Array.of(9, 1, 9, 9, 1, 9);
    const years = [year(2001, 0, 3), year(2002, 3, 6)];
    // A run of two days ends in 2001 on its first day (seam) and in 2002 on its first day (turn of the year).
    expect([...yearNeeds(critical, years, 1)]).toEqual([9, 9]);
    expect([...yearNeeds(critical, years, 2)]).toEqual([1, 1]);
  });

  it('a run can never be longer than the record', () => {
    expect([...yearNeeds(Float64Array.of(9, 9), [year(2001, 0, 2)], 2)]).toEqual([0]);
  });
});
