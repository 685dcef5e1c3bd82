import { loadAppLanguage } from '@eavewell/words/app';
import { expect, it } from 'vitest';
import { traceTitle, yearsTitle } from './chartTitles.ts';

const record = {
  days: 1461,
  judgedYears: 3,
  firstDay: 0,
  lastDay: 1460,
  dryDays: 12,
  longestRun: null,
  runsOver: 0,
  lowest_L: 0,
  filledDays: 0,
  unknownDays: 90,
  madeDays: 0,
  worstMonths: [9],
};
const years = {
  judgedYears: 3,
  goodYears: 3,
  yearsWithoutDryDay: 3,
  notJudgedDryDays: 12,
  worst: null,
  dryDays_per_year: 0,
  likely: { low: 0, high: 1 },
};

it.each([
  ['en', '12 days', /never|in any year/i],
  ['es', '12 días', /nunca|en ningún año\./i],
] as const)('dry days of years that are not judged are never said to be none (%s)', async (code, days, none) => {
  const words = await loadAppLanguage(code);
  for (const title of [traceTitle(record, 7, words), yearsTitle(years, words)]) {
    expect(title).toContain(days);
    expect(title).not.toMatch(none);
  }
  expect(traceTitle({ ...record, dryDays: 0 }, 7, words)).toMatch(none);
  expect(yearsTitle({ ...years, notJudgedDryDays: 0 }, words)).toMatch(none);
});
