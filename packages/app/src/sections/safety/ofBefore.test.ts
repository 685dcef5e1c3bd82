import { expect, it } from 'vitest';
import { isCupOfBefore } from './ofBefore.tsx';

it('a verdict is of before where facts changed since, where a change waits in this browser, and before the first', () => {
  const now = { version: 7, designVersion: 7, done_fraction: 1 };
  expect(isCupOfBefore(now, false)).toBe(false);
  expect(isCupOfBefore(now, true)).toBe(true);
  expect(isCupOfBefore({ ...now, version: 8, done_fraction: 0.2 }, false)).toBe(true);
  expect(isCupOfBefore({ ...now, designVersion: null, done_fraction: 0.2 }, false)).toBe(true);
  // Worked out, and nothing came of it: its row cannot be used.
  expect(isCupOfBefore({ ...now, designVersion: null }, false)).toBe(false);
});
