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

it('a day of a site is told as what it is: people drink, water runs that nothing treats, or it is handed over', () => {
  const own = (change: object) => {
    const stops = (of: (typeof sheet.crews)[number]['trips'][number]) =>
      of.stops.map((stop) => (stop.siteId === 'A1' ? { ...stop, ...change } : stop));
    const crews = sheet.crews.map((crew) => ({
      ...crew,
      trips: crew.trips.map((trip) => ({ ...trip, stops: stops(trip) })),
    }));
    return becomesWords({ ...sheet, crews }, { kind: 'site', siteId: 'A1' }, answer([]), english)[0];
  };
  const treated = { handOver: '2026-06-18', served: '2026-06-18', isUntreated: false };
  expect(own(treated)).toBe('Site A1 drinks from 20 June 2026, 2 days later.');
  expect(own({ ...treated, isUntreated: true })).toBe('Water runs at Site A1 from 20 June 2026, 2 days later.');
  expect(own({ ...treated, served: null })).toBe('Site A1 is handed over on 20 June 2026, 2 days later.');
});
