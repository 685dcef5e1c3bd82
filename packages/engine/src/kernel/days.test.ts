import { expect, it } from 'vitest';
import { calendarDay, dayIndexOf, dayOfPlainYear, dayOnClock, daysOfPlainYear, monthOfPlainYear } from './days.ts';

it('finds the day of a year without 29 February for every day of five centuries, in one go or one by one', () => {
  const first = dayIndexOf(1795, 11, 17);
  const found = daysOfPlainYear(first, 190_000);
  const seen = new Set<number>();
  found.forEach((dayOfYear, i) => {
    const { month, day } = calendarDay(first + i);
    if (dayOfYear !== dayOfPlainYear(month, day)) expect.fail(`day ${i}`);
    if (monthOfPlainYear(dayOfYear) !== month) expect.fail(`month of day ${i}`);
    seen.add(dayOfYear);
  });
  expect([...seen].sort((a, b) => a - b)).toEqual(Array.from({ length: 365 }, (_, i) => i + 1));
});

it('reads the day off a clock where it stands', () => {
  expect(dayOnClock(new Date(2026, 1, 28, 23, 59))).toBe(dayIndexOf(2026, 2, 28));
  expect(dayOnClock(new Date(2026, 2, 1, 0, 1))).toBe(dayIndexOf(2026, 3, 1));
});
