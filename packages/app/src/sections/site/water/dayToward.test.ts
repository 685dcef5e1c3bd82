import { expect, test } from 'vitest';
import { dayToward } from './dayToward.ts';

/** A picture whose days lie from 60 to 600 px, one a pixel. */
const dayAt = (at: number) => (at < 60 || at > 600 ? null : Math.round(at) - 60);

test('a day within the picture is the one it was let go at', () => {
  expect(dayToward(100, 300, dayAt)).toBe(240);
  expect(dayToward(300, 100, dayAt)).toBe(40);
});

test('past an end of the picture it is the day at that end, to a step of looking', () => {
  expect(dayToward(300, 5000, dayAt)).toBeGreaterThanOrEqual(538);
  expect(dayToward(300, -400, dayAt)).toBeLessThanOrEqual(2);
});

test('pressed where there is no day, there is none', () => {
  expect(dayToward(10, 10, dayAt)).toBeNull();
});
