import { describe, expect, it } from 'vitest';
import { calendarDay, dayIndexOf, isoDay } from '../../kernel/index.ts';
import { askedAhead_L, yearsAhead } from './daysAhead.ts';

describe('yearsAhead', () => {
  it('begins within a water year and goes on from year to year, leap years included', () => {
    const firstDay = dayIndexOf(2027, 3, 10);
    const ahead = yearsAhead(firstDay, 11, 1000);
    expect(ahead[0]).toEqual({ from: 0, to: 236, skipped_days: 129 });
    expect(ahead.map(({ from }) => isoDay(firstDay + from))).toEqual([
      '2027-03-10',
      '2027-11-01',
      '2028-11-01',
      '2029-11-01',
    ]);
    expect(ahead[1]!.to - ahead[1]!.from).toBe(366);
    expect(ahead.at(-1)!.to).toBe(1000);
    expect(ahead.slice(1).every(({ skipped_days }) => skipped_days === 0)).toBe(true);
  });

  it('is empty where no day is looked at', () => {
    expect(yearsAhead(0, 5, 0)).toEqual([]);
  });
});

describe('askedAhead_L', () => {
  const byDay_L = Float64Array.from({ length: 365 }, (_, day) => day + 1);

  it('asks what each calendar day does, grown by whole years of the calendar', () => {
    const firstDay = dayIndexOf(2027, 12, 30);
    const asked = askedAhead_L(byDay_L, 2025, 0.02, firstDay, 800);
    expect(asked[0]).toBeCloseTo(364 * 1.02 ** 2, 9);
    expect(asked[2]).toBeCloseTo(1.02 ** 3, 9);
    expect(asked[2 + 366]).toBeCloseTo(1.02 ** 4, 9);
  });

  it('gives 29 February what 28 February asks', () => {
    const firstDay = dayIndexOf(2028, 2, 28);
    expect([...askedAhead_L(byDay_L, 2028, 0, firstDay, 3)]).toEqual([59, 59, 60]);
    expect(calendarDay(firstDay + 1).day).toBe(29);
  });
});
