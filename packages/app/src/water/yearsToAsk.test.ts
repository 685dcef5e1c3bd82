import { dayIndexOf, defaultSettings, noKit, noRollout, noStorms, type ProgrammeFacts } from '@eavewell/engine';
import { loadLanguage } from '@eavewell/words';
import { expect, it } from 'vitest';
import { emptyDraft, noQuestion } from './draft.ts';
import { siteWith } from './siteForTests.ts';
import { SiteJudge } from './siteJudge.ts';
import { yearsToAsk } from './yearsToAsk.ts';

const firstDay = dayIndexOf(2001, 1, 1);
const days = dayIndexOf(2013, 1, 1) - firstDay;
const hole = [dayIndexOf(2005, 3, 1) - firstDay, dayIndexOf(2005, 8, 1) - firstDay] as const;
const normals = Array.from({ length: 12 }, (_, i) => ({
  month: i + 1,
  rain_mm: 100,
  wetDays: 12,
  source: null,
  yearFrom: null,
  yearTo: null,
}));

/** Twelve years of rain, five months of one of them not read; or none at all, and what each month usually brings. */
function judgeOf(isMadeUp: boolean): SiteJudge {
  const readings = Array.from({ length: isMadeUp ? 0 : days }, (_, i) => ({
    day: firstDay + i,
    rain_mm: i >= hole[0] && i < hole[1] ? null : i % 4 === 0 ? 12 : 0,
    row: i + 2,
  }));
  const gauge = { gaugeId: 'G1', name: 'Landing', latitude_deg: null, longitude_deg: null, readingTime: null };
  const facts: ProgrammeFacts = {
    settings: { ...defaultSettings, waterYearStartMonth: 1, draws: 20 },
    sites: [siteWith({})],
    gauges: [{ ...noStorms, ...gauge, readings, normals: isMadeUp ? normals : [], file: 'G1.csv' }],
    parts: [],
    prices: [],
    kit: noKit,
    rollout: noRollout,
  };
  return new SiteJudge(facts, 'S1');
}

it('the last years are asked of all whole years, also where one of them is not judged', async () => {
  const judge = judgeOf(false);
  const language = await loadLanguage('en');
  const { judged } = judge.judge(emptyDraft, noQuestion, language);
  expect(judged.report.storages[0]!.judgedYears).toBe(11);
  expect(yearsToAsk(judged)).toBe(12);
  const last = (lastYears: number) =>
    judge.judge(emptyDraft, { ...noQuestion, scenario: { ...noQuestion.scenario, lastYears } }, language).judged;
  // One fewer than may be asked leaves the first year out; as many as may be asked is the record as it is.
  expect(last(11).report.storages[0]!.judgedYears).toBe(10);
  expect(last(12).storages[0]!.years).toEqual(judged.storages[0]!.years);
});

it('years made up have no last ones', async () => {
  const { judged } = judgeOf(true).judge(emptyDraft, noQuestion, await loadLanguage('en'));
  expect(judged.storages.length).toBeGreaterThan(0);
  expect(yearsToAsk(judged)).toBeNull();
});
