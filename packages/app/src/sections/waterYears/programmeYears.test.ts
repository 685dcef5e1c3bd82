import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { programmeYears, type SiteOfYears, worstYear, yearsByArea } from './programmeYears.ts';

const site = (
  siteId: string,
  people: number | null,
  area: string | null,
  firstYear: number,
  longest: readonly (number | null)[],
  more: { limit_days?: number; isMade?: boolean } = {},
): SiteOfYears => ({
  ...{ key: siteId, siteId, name: siteId, people, area, verdict: 'short' },
  years: {
    ...{ isMade: more.isMade ?? false, limit_days: more.limit_days ?? 7, firstYear },
    longestRun_days: [...longest],
    dryDays: longest.map((days) => (days === null ? null : days + 1)),
  },
});

/** By hand: 2009 A has 7 days (within 7), B is not there; 2010 A 8 and B 30 (limit 14); 2011 A not judged, B 14 (within). */
const sites = [
  site('A', 100, 'North', 2009, [7, 8, null]),
  site('B', 40, 'South', 2010, [30, 14], { limit_days: 14 }),
  site('C', null, 'South', 2010, [9, 0]),
  site('M', 60, 'South', 1, [20, 20], { isMade: true }),
  { ...site('N', 5, null, 2009, []), verdict: 'unknown' as const, years: null },
];

describe('the years of many sites', () => {
  const found = programmeYears(sites);

  it("count those who have enough and those who have not, by each site's own target", () => {
    expect(
      found.years.map(({ year, enough, hurt }) => [year, enough.sites, enough.people, hurt.sites, hurt.people]),
    ).toEqual([
      [2009, 1, 100, 0, 0],
      [2010, 0, 0, 3, 140],
      [2011, 2, 40, 0, 0],
    ]);
    expect(found.years[1]?.hurt.withoutPeople_count).toBe(1);
    expect(found.years[1]?.hurtSites.map(({ site: { siteId }, longestRun_days }) => [siteId, longestRun_days])).toEqual(
      [
        ['B', 30],
        ['C', 9],
        ['A', 8],
      ],
    );
    expect(worstYear(found.years)?.year).toBe(2010);
  });

  it('keep made-up rain and what was not judged apart', () => {
    expect(found.counted).toEqual({ sites: 3, people: 140, withoutPeople_count: 1 });
    expect(found.onMadeRain).toEqual({ sites: 1, people: 60, withoutPeople_count: 0 });
    expect(found.notJudged).toEqual({ sites: 1, people: 5, withoutPeople_count: 0 });
  });

  it('by area: years in which nobody there would have run dry for too long, and the worst', () => {
    const areas = yearsByArea(sites, (a, b) => a.localeCompare(b));
    expect(
      areas.map(({ area, goodYears_count, years_count, worst }) => [area, goodYears_count, years_count, worst?.year]),
    ).toEqual([
      ['North', 1, 2, 2010],
      ['South', 1, 2, 2010],
      [null, 0, 0, undefined],
    ]);
  });

  it('of nobody are none, and a year between two that nobody has judged has nobody in it', () => {
    expect(programmeYears([]).years).toEqual([]);
    const apart = programmeYears([site('A', 1, null, 2000, [0, null, 9])]).years;
    expect(apart.map(({ year, enough, hurt }) => [year, enough.sites, hurt.sites])).toEqual([
      [2000, 1, 0],
      [2001, 0, 0],
      [2002, 0, 1],
    ]);
  });
});

const anySite = fc
  .record({
    people: fc.option(fc.nat(500)),
    area: fc.constantFrom('North', 'South', null),
    firstYear: fc.integer({ min: 1980, max: 1990 }),
    longest: fc.array(fc.option(fc.nat(60)), { maxLength: 12 }),
    isMade: fc.boolean(),
  })
  .map(({ people, area, firstYear, longest, isMade }) => site('S', people, area, firstYear, longest, { isMade }));

it('the areas come to the whole, in every year', () => {
  fc.assert(
    fc.property(fc.array(anySite, { maxLength: 20 }), (many) => {
      const whole = programmeYears(many);
      const areas = yearsByArea(many, (a, b) => a.localeCompare(b));
      const inYear = (year: number) => areas.flatMap(({ years }) => years.years.filter((one) => one.year === year));
      for (const { year, enough, hurt, hurtSites } of whole.years)
        for (const [total, part] of [
          [enough, 'enough'],
          [hurt, 'hurt'],
        ] as const)
          for (const figure of ['sites', 'people', 'withoutPeople_count'] as const) {
            expect(inYear(year).reduce((sum, one) => sum + one[part][figure], 0)).toBe(total[figure]);
            expect(hurtSites.length).toBe(hurt.sites);
          }
      expect(areas.reduce((sum, { years }) => sum + years.counted.sites, 0)).toBe(whole.counted.sites);
    }),
  );
});
