import { describe, expect, it } from 'vitest';
import type { DemandPurpose, WorkingLine } from '../../kernel/index.ts';
import { dailyDemand } from './dailyDemand.ts';

const settings = { litres_per_person_per_day: 7.5 };
const drinking: DemandPurpose = { purpose: 'drinking', litres_per_person_per_day: 3, judged: true };
const cooking: DemandPurpose = { purpose: 'cooking', litres_per_person_per_day: 4, judged: true };
const washing: DemandPurpose = { purpose: 'washing', litres_per_person_per_day: 10, judged: false };
const asked = (people: number | null, demand: readonly DemandPurpose[], working: WorkingLine[] = []) =>
  dailyDemand({ siteId: 'S1', people, demand, presence: null }, settings, working);

describe('dailyDemand', () => {
  it('adds judged and other purposes apart', () => {
    const found = asked(50, [drinking, washing, cooking]);
    const value = { judged_L_per_day: 350, other_L_per_day: 500, judgedHighest_L_per_day: 350 };
    expect(found).toMatchObject({ ok: true, value, problems: [] });
    expect(found.ok && new Set(found.value.judgedByDay_L)).toEqual(new Set([350]));
  });

  it("takes the programme's litres where no purpose is stated, and says so", () => {
    expect(asked(50, [])).toMatchObject({
      ok: true,
      value: { judged_L_per_day: 375, other_L_per_day: 0 },
      problems: [{ code: 'site.demand_assumed', severity: 'note', facts: { litres_per_person_per_day: 7.5 } }],
    });
  });

  it('has no answer where people are not known', () => {
    for (const people of [null, 0, -3, Number.NaN, Infinity]) {
      expect(asked(people, [drinking])).toMatchObject({ ok: false, problems: [{ code: 'site.people_unknown' }] });
    }
  });

  it('has no answer where nothing is judged', () => {
    for (const demand of [[washing], [{ ...drinking, litres_per_person_per_day: 0 }]]) {
      expect(asked(50, demand)).toMatchObject({ ok: false, problems: [{ code: 'site.no_judged_demand' }] });
    }
  });

  it('finds both blockers at once', () => {
    const codes = asked(null, [washing]).problems.map(({ code }) => code);
    expect(codes).toEqual(['site.no_judged_demand', 'site.people_unknown']);
  });

  it('writes down each figure with its purposes', () => {
    const working: WorkingLine[] = [];
    asked(50, [drinking, cooking, washing], working);
    expect(working.map(({ code, value, source }) => [code, value, source])).toEqual([
      ['people.judgedDemand', 350, 'survey'],
      ['people.otherDemand', 500, 'survey'],
    ]);
    const line: WorkingLine[] = [];
    asked(50, [], line);
    expect(line).toMatchObject([{ code: 'people.judgedDemand', value: 375, source: 'settings' }]);
  });
});

describe('dailyDemand where people come and go', () => {
  // 31 days in January, 59 before 1 March.
  const term = (presentFraction: number, from_dayOfYear: number, to_dayOfYear: number) => ({
    from_dayOfYear,
    to_dayOfYear,
    presentFraction,
    reason: 'term',
  });
  const during = (
    periods: readonly ReturnType<typeof term>[],
    demand: readonly DemandPurpose[],
    working: WorkingLine[] = [],
  ) => dailyDemand({ siteId: 'S1', people: 10, demand, presence: { calendarId: 'C', periods } }, settings, working);

  it('asks for the share that is there, over the year’s end too, and for everyone on days that are not said', () => {
    const working: WorkingLine[] = [];
    const found = during([term(0.5, 32, 59), term(2, 365, 1)], [drinking], working);
    if (!found.ok) throw new Error('no demand');
    const { judgedByDay_L, judged_L_per_day, judgedHighest_L_per_day } = found.value;
    expect([0, 1, 30, 31, 58, 59, 363, 364].map((day) => judgedByDay_L[day])).toEqual([60, 30, 30, 15, 15, 30, 30, 60]);
    // 28 days at half, 2 at double, 335 at one.
    expect(judged_L_per_day).toBeCloseTo((30 * (28 * 0.5 + 2 * 2 + 335)) / 365, 10);
    expect(judgedHighest_L_per_day).toBe(60);
    expect(found.problems.map(({ code, facts }) => [code, facts['days']])).toEqual([['site.presence_gaps', 335]]);
    expect(working.map(({ code }) => code)).toEqual(['people.presence', 'people.judgedDemand', 'people.highestDemand']);
  });

  it('counts a purpose in its months only', () => {
    const found = during([term(1, 1, 365)], [drinking, { ...cooking, months: [2] }, { ...washing, months: [1, 12] }]);
    if (!found.ok) throw new Error('no demand');
    expect(found.problems).toEqual([]);
    expect([30, 31, 58, 59].map((day) => found.value.judgedByDay_L[day])).toEqual([30, 70, 70, 30]);
    expect([30, 31, 333, 334].map((day) => found.value.otherByDay_L[day])).toEqual([100, 0, 0, 100]);
  });

  it('has no answer where nobody is ever there, or never when something is asked', () => {
    const nobody = ['site.nobody_present'];
    expect(during([term(0, 1, 365)], [drinking]).problems.map(({ code }) => code)).toEqual(nobody);
    const away = during([term(0, 1, 31), term(1, 32, 365)], [{ ...drinking, months: [1] }]);
    expect(away.ok).toBe(false);
    expect(away.problems.map(({ code }) => code)).toEqual(nobody);
  });
});
