import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import type { MoveAnswer } from './moveAnswer.ts';
import { becomesWords } from './moveWords.ts';
import { planForTests } from './planForTests.ts';

const english = await loadAppLanguage('en');
await english.more();
const sheet = planForTests();
const answer = (moved: MoveAnswer['moved']): MoveAnswer => ({
  ...{ crews: [], moved, day: '2026-06-20', later_days: 2, waiting_personDays: 0, finish_days: 0, cost: 0, breaks: [] },
});
const othersOf = (moved: MoveAnswer['moved']) =>
  becomesWords(sheet, { kind: 'site', siteId: 'A1' }, answer(moved), english)[1];

it('other sites that move are named, those to whom it does most first, and the rest counted', () => {
  expect(othersOf([{ siteId: 'A1', later_days: 2 }])).toBe('No other site moves.');
  expect(othersOf([{ siteId: 'B1', later_days: 1 }])).toBe('One other site moves: Site B1 1 day later.');
  const many = [
    { siteId: 'A2', later_days: 1 },
    { siteId: 'B1', later_days: -4 },
    { siteId: 'C1', later_days: 9 },
    // It would be in no trip: that is the gravest.
    { siteId: 'C2', later_days: null },
    { siteId: 'L1', later_days: 2 },
  ];
  expect(othersOf(many)).toBe('5 other sites move: Site C2, Site C1 9 days later, Site B1 4 days sooner, and 2 more.');
});
