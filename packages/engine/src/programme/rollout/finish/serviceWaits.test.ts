import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendarDay, dayIndexOf, daysInMonth, notJudged_days, type WaitsByYear } from '../../../kernel/index.ts';
import type { Job } from '../problem.ts';
import { tinyCrew, tinyJob, tinyRollout } from '../tinyRollout.testing.ts';
import { finishDates } from './index.ts';

const begins = dayIndexOf(2001, 1, 1);
const length_days = dayIndexOf(2009, 1, 1) - begins;
/** Rain fills the tank on one day of March of each year, and the morning after it serves. What is handed over after the last rain of the record is not known. */
const marchRain = (dayOf: (year: number) => number): WaitsByYear => {
  const years = [2001, 2002, 2003, 2004, 2005, 2006, 2007, 2008];
  const rains = years.map((year) => dayIndexOf(year, 3, dayOf(year)));
  const wait_days = Array.from({ length: 366 }, (_, ofYear) => {
    const { month, day } = calendarDay(dayIndexOf(2000, 1, 1) + ofYear);
    return years.map((year) => {
      const handOver = dayIndexOf(year, month, Math.min(day, daysInMonth(year, month)));
      const next = rains.find((rain) => rain >= handOver);
      return next === undefined ? notJudged_days : next + 1 - handOver;
    });
  });
  return { firstYear: 2001, years_count: 8, wait_days: Uint16Array.from(wait_days.flat()) };
};

/** As many crews as sites; each hands its site over on 2 March 2027, day 1, and by the middle year it is served three days later. */
const rolloutOf = (...waits: readonly (WaitsByYear | null)[]) => {
  const jobs = waits.map(
    (serviceWaits, at): Job => ({
      ...{ ...tinyJob, siteId: `S${at}`, serviceWaits },
      serviceWait_days: new Float64Array(366).fill(3),
    }),
  );
  const crews = waits.map((_, at) => ({ ...tinyCrew(100), crewId: `C${at}` }));
  return tinyRollout(waits.length, { jobs, crews, firstDay: dayIndexOf(2027, 3, 1) });
};
const plan = (sites: number) => ({
  trips: Array.from({ length: sites }, (_, at) => [{ stops: [at], notBefore: 0, isLocked: false }]),
});
const datesOf = (problem: ReturnType<typeof rolloutOf>, replicates_count = 2000) =>
  finishDates(problem, plan(problem.jobs.length), { seed: 1, replicates_count });
const values = ({ p10, p50, p90 }: ReturnType<typeof datesOf>['allServed']) => [p10.value, p50.value, p90.value];

describe('a site that is handed over waits for the rain of a year that was', () => {
  it('as reckoned by hand: of seven years that are as likely, the first, the fourth and the last', () => {
    // Handed over on 2 March; rain on the 5th, 7th, … 17th fills the tank, and on the morning after it serves: on day 5, 7, … 17.
    const own = marchRain((year) => 5 + 2 * (year - 2001));
    const { bySite, byWeek } = datesOf(rolloutOf(own));
    expect(values(bySite[0]!.handOver)).toEqual([1, 1, 1]);
    expect(values(bySite[0]!.service)).toEqual([5, 11, 17]);
    // In the first week, to day 6, it serves in one year of seven.
    expect(byWeek[0]!.sites.p90.value).toBe(1);
    expect(byWeek[0]!.sites.p50.value).toBe(0);
    expect(byWeek[2]!.sites.p10.value).toBe(1);
  });

  it('by the middle wait, whatever is drawn, where no record tells of years', () => {
    const { bySite, allServed } = datesOf(rolloutOf(null));
    expect([values(bySite[0]!.service), values(allServed)]).toEqual([
      [4, 4, 4],
      [4, 4, 4],
    ]);
  });

  it('the same year for all sites, so that neighbours are late together and what is late here is early there', () => {
    const early = marchRain((year) => 5 + 2 * (year - 2001));
    // By themselves the later of two would be served by day 11 in 16 of 49 cases; together it is in 4 of 7.
    expect(values(datesOf(rolloutOf(early, early)).allServed)).toEqual([5, 11, 17]);
    // The other way about the later of two is served on day 11 in one year, 13, 15 and 17 in two each.
    const late = marchRain((year) => 17 - 2 * (year - 2001));
    expect(values(datesOf(rolloutOf(early, late)).allServed)).toEqual([11, 15, 17]);
  });

  it('and the same as that of an area whose ways its rain closes', () => {
    // In odd years March is closed to the 20th, and the tanks are full from the first hour on; in even years it is dry to the 25th.
    const isOdd = (at: number) => new Date((begins + at) * 86_400_000).getUTCFullYear() % 2 === 1;
    const state = Uint8Array.from({ length: length_days }, (_, at) => {
      const date = new Date((begins + at) * 86_400_000);
      return isOdd(at) && date.getUTCMonth() === 2 && date.getUTCDate() <= 20 ? 1 : 0;
    });
    const own = marchRain((year) => (year % 2 === 1 ? 21 : 25));
    const problem = rolloutOf(own);
    const weather = [{ days: { firstDay: begins, state }, chain: null }];
    const areas = { ...problem, areaIds: ['A'], jobs: problem.jobs.map((job) => ({ ...job, area: 0 })) };
    const { bySite } = finishDates(areas, plan(1), { seed: 1, replicates_count: 2000, weather });
    // Handed over on the 21st, day 20, served on the 22nd, day 21; or on the 2nd and the 26th, day 25: never on the 21st and 26th.
    expect(values(bySite[0]!.handOver)).toEqual([1, 20, 20]);
    expect(values(bySite[0]!.service)).toEqual([21, 21, 25]);
  });

  it('a year of which it is not said takes the middle wait', () => {
    const own = marchRain((year) => 5 + 2 * (year - 2001));
    const wait_days = own.wait_days.slice();
    // 2 March of the year that waits longest.
    wait_days[61 * own.years_count + 6] = notJudged_days;
    expect(values(datesOf(rolloutOf({ ...own, wait_days })).bySite[0]!.service)).toEqual([4, 9, 15]);
  });

  it('years that are all alike give the dates of the middle wait, and no order of the three is ever broken', () => {
    const waits = fc.array(fc.nat({ max: 300 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(waits, fc.nat({ max: 30 }), (years, alike) => {
        const of = (list: readonly number[]): WaitsByYear => ({
          ...{ firstYear: 1990, years_count: list.length + 1 },
          // The year after the last is there for the months of winter.
          wait_days: Uint16Array.from(
            { length: 366 * (list.length + 1) },
            (_, at) => list[at % (list.length + 1)] ?? 0,
          ),
        });
        const { bySite, allServed } = datesOf(rolloutOf(of(years), of(years.map(() => alike))), 200);
        const [one, other] = bySite.map(({ service }) => values(service));
        for (const [p10, p50, p90] of [one!, values(allServed)]) {
          expect(p10!).toBeLessThanOrEqual(p50!);
          expect(p50!).toBeLessThanOrEqual(p90!);
        }
        // Nobody waits longer or shorter than in some year.
        expect(one![0]).toBeGreaterThanOrEqual(1 + Math.min(...years));
        expect(one![2]).toBeLessThanOrEqual(1 + Math.max(...years));
        expect(other).toEqual([1 + alike, 1 + alike, 1 + alike]);
      }),
      { numRuns: 30, seed: 20261127 },
    );
  });
});
