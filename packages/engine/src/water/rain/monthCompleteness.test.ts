import { expect, it } from 'vitest';
import { monthCompleteness } from './monthCompleteness.ts';

it('counts a day named twice once, in any order', () => {
  expect(monthCompleteness([5, 5, 4, 3, 2, 2]).meanValid).toBe(true);
  expect(monthCompleteness([5, 4, 3, 2, 1]).meanValid).toBe(false);
});

it('voids a mean at eleven missing days and not at ten', () => {
  const everyOther = Array.from({ length: 11 }, (_, i) => 2 * i + 1);
  expect(monthCompleteness(everyOther).meanValid).toBe(false);
  expect(monthCompleteness(everyOther.slice(1)).meanValid).toBe(true);
});
