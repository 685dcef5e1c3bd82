import { expect, it } from 'vitest';
import { calendarDay, dayIndexOf, dayOfPlainYear, daysOfPlainYear, monthOfPlainYear } from './days.ts';

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
