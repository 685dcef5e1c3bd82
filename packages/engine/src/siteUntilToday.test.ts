import { expect, it } from 'vitest';
import { noSafety, noTreatment, type SiteFacts, unmeasuredSite } from './kernel/index.ts';
import { siteUntilToday } from './siteUntilToday.ts';

const today = 20_000;
const facts = (days: readonly number[]) =>
  ({
    ...{ ...unmeasuredSite, siteId: 'S1' },
    safety: {
      ...noSafety,
      tests: days.map((takenOn) => ({ testId: 'W', point: 'tap', portions: [], takenOn })),
      inspections: days.map((inspectedOn) => ({ inspectedOn })),
    },
    treatment: {
      ...noTreatment,
      pressureTests: days.map((testedOn) => ({ testedOn })),
      flowReadings: days.map((readOn) => ({ readOn })),
    },
  }) as unknown as SiteFacts;

it('leaves out what was measured on a day that is still to come, and says how many rows of which table', () => {
  const { site, problems } = siteUntilToday(facts([19_000, today + 2, 25_000]), today);
  const until = facts([19_000]);
  const at = { file: 'waterTests.csv', siteId: 'S1', column: 'takenOn' };
  const unusable = { testId: 'W', because: 'dayToCome', at, point: 'tap', portions: [] };
  expect(site).toEqual({ ...until, safety: { ...until.safety, unusableTests: [unusable, unusable] } });
  expect(problems.map(({ code, place, facts: told }) => [code, place.file, told['count']])).toEqual(
    ['waterTests.csv', 'inspections.csv', 'pressureTests.csv', 'flowReadings.csv'].map((file) => [
      ...['site.dated_ahead', file, 2],
    ]),
  );
});

it('leaves a site as it is where its days are over, or a clock apart, or nobody knows what day it is', () => {
  for (const [site, day] of [
    [facts([19_000, today, today + 1]), today],
    [facts([25_000]), null],
  ] as const)
    expect(siteUntilToday(site, day).site).toBe(site);
});
