import { expect, test } from 'vitest';
import { placeNames } from './names.ts';

test('names are distinct, one word for the first thousands, and can be said aloud', () => {
  const names = placeNames(1, 9660);
  expect(new Set(names).size).toBe(9660);
  for (const name of names) {
    expect(name).toMatch(/^[A-Z][a-z]{4,13}$/);
    expect(name).not.toMatch(/[^aeiouy]{5}/i);
    expect(name).not.toMatch(/[aeiou]{3}/i);
  }
});

test('a longer list begins as a shorter one', () => {
  expect(placeNames(5, 20000).slice(0, 60)).toEqual(placeNames(5, 60));
});

test('more names than there are is our own mistake', () => {
  expect(() => placeNames(1, 1e6)).toThrow(RangeError);
});
