import { expect, it } from 'vitest';
import { againWords, isCupOfBefore } from './ofBefore.tsx';

it('a verdict is of before where facts changed since, where a change waits in this browser, and before the first', () => {
  const now = { version: 7, designVersion: 7, done_fraction: 1 };
  expect(isCupOfBefore(now, false)).toBe(false);
  expect(isCupOfBefore(now, true)).toBe(true);
  expect(isCupOfBefore({ ...now, version: 8, done_fraction: 0.2 }, false)).toBe(true);
  expect(isCupOfBefore({ ...now, designVersion: null, done_fraction: 0.2 }, false)).toBe(true);
  // Worked out, and nothing came of it: its row cannot be used.
  expect(isCupOfBefore({ ...now, designVersion: null }, false)).toBe(false);
});

it('nobody waits for verdicts that failed or were stopped: it is said, and they can be worked out again', () => {
  const state = { done_fraction: 0.4, isFailed: false, isCalledOff: false };
  expect(againWords(state)).toMatchObject({ head: 'safety.paper_again', isStill: true });
  expect(againWords({ ...state, isFailed: true })).toMatchObject({ more: 'safety.again_failed_more', isStill: false });
  expect(againWords({ ...state, isCalledOff: true })).toMatchObject({
    more: 'safety.again_stopped_more',
    isStill: false,
  });
});
