import { describe, expect, it } from 'vitest';
import { readIsoDay } from '../../kernel/index.ts';
import { headcount } from './headcount.ts';

const settings = { people_per_household: null, growthFraction_per_year: null, designAfterHandOver_years: 5 };
const plain = {
  siteId: 'S1',
  people: 100,
  households_count: null,
  peopleCountedOn: readIsoDay('2026-08-01'),
  growthFraction_per_year: null,
  designYear: null,
  handOverDay: readIsoDay('2027-03-01'),
};
const codes = (problems: readonly { code: string }[]) => problems.map(({ code }) => code);

describe('headcount', () => {
  it('takes the people given as those of the design year where no growth is stated', () => {
    expect(headcount(plain, settings)).toEqual({
      ...{ counted_people: 100, design_people: 100, grows: null },
      problems: [],
      working: [],
    });
  });

  it('lets people grow from the year they were counted to five years after hand-over, or to the year stated', () => {
    // 2026 to 2032: 1.02 ^ 6 = 1.126162…; to 2028: 1.0404.
    expect(headcount({ ...plain, growthFraction_per_year: 0.02 }, settings).design_people).toBe(113);
    const stated = { ...plain, designYear: 2028 };
    expect(headcount(stated, { ...settings, growthFraction_per_year: 0.02 }).design_people).toBe(105);
    expect(headcount({ ...stated, growthFraction_per_year: 0.1 }, settings).design_people).toBe(121);
    expect(headcount({ ...stated, growthFraction_per_year: 0.1 }, settings).counted_people).toBe(100);
  });

  it('says how they grow wherever the year of the count is known, with a year to design for or not', () => {
    const grows = { growthFraction_per_year: 0.02, countYear: 2026 };
    expect(headcount({ ...plain, growthFraction_per_year: 0.02 }, settings).grows).toEqual(grows);
    const noYear = { ...plain, growthFraction_per_year: 0.02, designYear: null, handOverDay: null };
    expect(headcount(noYear, settings).grows).toEqual(grows);
    expect(headcount({ ...noYear, peopleCountedOn: null }, settings).grows).toBeNull();
  });

  it('lets them grow fewer, and the site’s own growth stands before the programme’s', () => {
    const shrinking = { ...plain, designYear: 2027, growthFraction_per_year: -0.1 };
    expect(headcount(shrinking, { ...settings, growthFraction_per_year: 0.1 }).design_people).toBe(90);
  });

  it('says where growth could not be reckoned, and takes the people as counted', () => {
    const growing = { ...plain, growthFraction_per_year: 0.03 };
    const uncounted = headcount({ ...growing, peopleCountedOn: null }, settings);
    expect([uncounted.design_people, uncounted.problems[0]?.facts['missing']]).toEqual([100, 'peopleCountedOn']);
    const undated = headcount({ ...growing, handOverDay: null }, settings);
    expect([undated.design_people, undated.problems[0]?.facts['missing']]).toEqual([100, 'designYear']);
    const past = headcount({ ...growing, designYear: 2020 }, settings);
    expect([past.design_people, codes(past.problems)]).toEqual([100, ['site.design_year_before_count']]);
  });

  it('counts households only where the programme says how many people one has', () => {
    const uncounted = { ...plain, people: null, households_count: 11 };
    expect(headcount(uncounted, settings)).toMatchObject({ counted_people: null, design_people: null, problems: [] });
    const found = headcount(
      { ...uncounted, growthFraction_per_year: 0.1, designYear: 2027 },
      {
        ...settings,
        people_per_household: 4.5,
      },
    );
    expect(found).toMatchObject({ counted_people: 50, design_people: 55 });
    expect(codes(found.problems)).toEqual(['site.people_from_households']);
  });
});
