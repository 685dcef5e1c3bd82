import { describe, expect, it } from 'vitest';
import type { DemandPurpose, WorkingLine } from '../../kernel/index.ts';
import { dailyDemand } from './dailyDemand.ts';

const settings = { litres_per_person_per_day: 7.5 };
const drinking: DemandPurpose = { purpose: 'drinking', litres_per_person_per_day: 3, judged: true };
const cooking: DemandPurpose = { purpose: 'cooking', litres_per_person_per_day: 4, judged: true };
const washing: DemandPurpose = { purpose: 'washing', litres_per_person_per_day: 10, judged: false };
const asked = (people: number | null, demand: readonly DemandPurpose[], working: WorkingLine[] = []) =>
  dailyDemand({ siteId: 'S1', people, demand }, settings, working);

describe('dailyDemand', () => {
  it('adds judged and other purposes apart', () => {
    const found = asked(50, [drinking, washing, cooking]);
    expect(found).toEqual({ ok: true, value: { judged_L_per_day: 350, other_L_per_day: 500 }, problems: [] });
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
