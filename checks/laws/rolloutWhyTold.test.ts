import { describe, expect, it } from 'vitest';
import { type WhyThen, whyThen, whyWorking } from '../../packages/engine/src/index.ts';
import {
  evaluatePlan,
  type RolloutPlan,
  type RolloutProblem,
  retiming,
} from '../../packages/engine/src/programme/rollout/index.ts';
import {
  evenLegs,
  tinyCrew,
  tinyJob,
  tinyRollout,
} from '../../packages/engine/src/programme/rollout/tinyRollout.testing.ts';

/** One trip of crew 0 for each list of jobs. */
const tripsOf = (...stops: readonly (readonly number[])[]): RolloutPlan => ({
  trips: [stops.map((jobs) => ({ stops: jobs, notBefore: 0, isLocked: false }))],
});

function why(problem: RolloutProblem, plan: RolloutPlan, job: number): WhyThen | null {
  const ready = retiming(problem);
  return whyThen(ready, { plan, outcome: evaluatePlan(ready, plan) }, job, () => []);
}

/** Days of each reason, those of none left out. */
const daysOf = (found: WhyThen | null) =>
  Object.fromEntries(Object.entries(found?.parts ?? {}).filter(([, days]) => days !== 0));

/** In a leap year, from 0. */
const dayOfYear = (day: Date) =>
  Math.round((Date.UTC(2024, day.getUTCMonth(), day.getUTCDate()) - Date.UTC(2024, 0, 1)) / 86_400_000);

const names = {
  siteOf: (job: number) => `site ${job}`,
  areaOf: () => null,
  crewOf: (crew: number) => `crew ${crew}`,
  tripOf: (crew: number, trip: number) => `trip ${crew} ${trip}`,
  ...{ storeOf: () => 'store', partOf: () => 'tank', currency: 'EUR' },
};

describe('why a village comes when it does', () => {
  // A trip to one job: half a day there, a day of work, half a day back, a day ashore: it is out for two days and leaves on every third.
  it('others come first: what going there before them would do, and to whom', () => {
    const found = why(tinyRollout(4), tripsOf([0], [1], [2], [3]), 3)!;
    expect(found).toMatchObject({ most: 'others', serviceDay: 10, crew: 0, trip: 3 });
    expect(daysOf(found)).toEqual({ others: 9, going: 1 });
    expect(found.before).toEqual([0, 1, 2]);
    expect(found.first.handOverDay).toBe(1);
    expect(found.tripsBefore.map(({ people_count, out_days }) => people_count / out_days)).toEqual([50, 50, 50]);
    // As the first stop of the first trip it delays the site there by a day, and the two trips after it by two.
    expect(found.othersWait_personDays).toBe(100 * (1 + 2 + 2));
  });

  it('nobody comes before the first: it is the way there and the work', () => {
    const found = why(tinyRollout(2), tripsOf([0], [1]), 0);
    expect(found).toMatchObject({ most: 'going', othersWait_personDays: 0, before: [] });
    expect(daysOf(found)).toEqual({ going: 1 });
  });

  it('goods come into store later', () => {
    const goods = {
      goods: [{ partId: 'tank' }],
      stores: [
        {
          ...{ node: 0, filledBy: null },
          arrivals: [
            {
              ...{ arrivalId: 'A', day: 20, goods: 0, quantity_count: 9 },
              slip_days: { low: 0, likely: 0, high: 0 },
            },
          ],
        },
      ],
      jobs: [0, 1].map((at) => ({ ...tinyJob, siteId: `J${at}`, needs: [at] })),
    };
    expect(daysOf(why(tinyRollout(2, goods), tripsOf([0], [1]), 1))).toEqual({ stock: 20, going: 1 });
    // As the first it waits as long: the others cost it nothing.
    const found = why(tinyRollout(2, goods), tripsOf([0], [1]), 1)!;
    expect(found.first.handOverDay).toBe(21);
  });

  it('its own days, the days of the crew, and rain are told apart', () => {
    const crew = tinyCrew(100);
    const works = Uint8Array.from(crew.works, (_, day) => (day >= 12 && day < 15 ? 0 : 1));
    const jobs = [
      {
        ...tinyJob,
        windows: [{ from: 10, to: 99 }],
        install_days: { low: 3, likely: 3, high: 3 },
        serviceWait_days: new Float64Array(366).fill(30),
        serviceWaits: { ofYear: [], middle: new Float64Array(366).fill(30) } as never,
      },
    ];
    // Free on day 4, there half a day later; work on days 10, 11 and, after three days of rest, 15. Until day 10 it is its own days that are waited for.
    const found = why(tinyRollout(1, { jobs, crews: [{ ...crew, works, freeFrom: 4 }] }), tripsOf([0]), 0)!;
    expect(found).toMatchObject({ serviceDay: 45, most: 'rain' });
    expect(daysOf(found)).toEqual({ crew: 3, window: 10, rain: 30, going: 2 });
    expect(found?.opensDay).toBe(10);
  });

  it('rain that falls late is what is waited for, however soon a crew comes', () => {
    // Whoever is handed over before day 60 waits until then.
    const { firstDay } = tinyRollout(1);
    const day = (offset: number) => new Date((firstDay + offset) * 86_400_000);
    const serviceWait_days = Float64Array.from({ length: 366 }, (_, at) => Math.max(0, 60 - (at - dayOfYear(day(0)))));
    const jobs = [0, 1, 2].map((at) => ({ ...tinyJob, siteId: `J${at}`, serviceWait_days }));
    const found = why(tinyRollout(3, { jobs }), tripsOf([0], [1], [2]), 2)!;
    expect(found).toMatchObject({ most: 'rain', serviceDay: 60 });
    expect(daysOf(found)).toEqual({ rain: 59, going: 1 });
  });

  it('a way is closed', () => {
    const closed = evenLegs(2, Number.POSITIVE_INFINITY);
    const travels = [{ nodes: 2, byPeriod: [closed, evenLegs(2, 4)] }];
    const problem = tinyRollout(1, { travels, periods: [{ from: 0 }, { from: 25 }] });
    expect(daysOf(why(problem, tripsOf([0]), 0))).toEqual({ way: 25, going: 1 });
  });

  it('somebody set the first day of its trip, or of one before it', () => {
    const plan = { trips: [[0, 1].map((job) => ({ stops: [job], notBefore: job === 0 ? 40 : 0, isLocked: false }))] };
    const found = why(tinyRollout(2), plan, 1);
    expect(daysOf(found)).toEqual({ heldBack: 40, others: 3, going: 1 });
    expect(found?.most).toBe('heldBack');
  });

  it('a trip that left sooner would be away too long: it waits for a day on which it is not', () => {
    // Half a day there, a day of work, half a day back; from day 1 to day 9 the crew rests where it is, and may be away for three nights.
    const crew = tinyCrew(100);
    const works = Uint8Array.from(crew.works, (_, day) => (day >= 1 && day < 10 ? 0 : 1));
    const problem = tinyRollout(1, { crews: [{ ...crew, works, mostDaysAway: 3 }] });
    const plan = { trips: [[{ stops: [0], notBefore: 10, isLocked: false }]] };
    const found = why(problem, plan, 0);
    expect(found).toMatchObject({ most: 'limit', serviceDay: 11 });
    expect(daysOf(found)).toEqual({ limit: 10, going: 1 });
  });

  it('a site that is not ready waits for its own days, whatever limit a trip that left sooner would break', () => {
    // Ready from day 40; a trip that waits there for longer than three nights is away too long.
    const crews = [{ ...tinyCrew(100), mostDaysAway: 3 }];
    const jobs = [tinyJob, { ...tinyJob, siteId: 'J1', windows: [{ from: 40, to: 99 }] }];
    const plan = { trips: [[0, 1].map((job) => ({ stops: [job], notBefore: job * 39, isLocked: false }))] };
    const found = why(tinyRollout(2, { crews, jobs }), plan, 1);
    expect(found).toMatchObject({ most: 'window', opensDay: 40 });
    // Worked at and handed over on the day it opens.
    expect(daysOf(found)).toEqual({ window: 40 });
  });

  it('a lock keeps a site where it is and does not hide why', () => {
    const plan = { trips: [[0, 1, 2].map((job) => ({ stops: [job], notBefore: 0, isLocked: true }))] };
    expect(daysOf(why(tinyRollout(3), plan, 2))).toEqual({ others: 6, going: 1 });
  });

  it('another crew may be there sooner, and its trips are what stands before', () => {
    const crew = tinyCrew(100);
    const crews = [
      { ...crew, freeFrom: 30 },
      { ...crew, crewId: 'D' },
    ];
    const plan = {
      trips: [...tripsOf([0]).trips, [[1], [2]].map((stops) => ({ stops, notBefore: 0, isLocked: false }))],
    };
    const found = why(tinyRollout(3, { crews }), plan, 0)!;
    expect(found.first).toMatchObject({ crew: 1, handOverDay: 1 });
    expect(found.before).toEqual([1, 2]);
    expect(daysOf(found)).toEqual({ others: 30, going: 1 });
  });

  it('nothing is told of a site in no trip, or where going there first breaks its trip', () => {
    expect(why(tinyRollout(2), tripsOf([0]), 1)).toBeNull();
    // No crew has the skill it asks for: its trip is broken as it is, and no worse as the first.
    const skilled = tinyRollout(2, { jobs: [tinyJob, { ...tinyJob, siteId: 'J1', skills: 1 }] });
    expect(why(skilled, tripsOf([0], [1]), 1)).not.toBeNull();
    const late = tinyRollout(2, { jobs: [tinyJob, { ...tinyJob, siteId: 'J1', windows: [] }] });
    expect(why(late, tripsOf([0], [1]), 1)).toBeNull();
  });

  it('each line of the working follows from its inputs', () => {
    const problem = tinyRollout(4);
    const plan = tripsOf([0], [1], [2], [3]);
    const ready = retiming(problem);
    const outcome = evaluatePlan(ready, plan);
    const found = whyThen(ready, { plan, outcome }, 3, () => [])!;
    const lines = whyWorking({ problem, plan, outcome }, found, names);
    const numbers = (at: number) =>
      lines[at]!.inputs.flatMap(({ value }) => (typeof value === 'number' ? [value] : []));
    for (const [at, { code, value }] of lines.entries()) {
      if (code === 'rollout.tripRate') expect(value).toBe(numbers(at)[0]! / numbers(at)[1]!);
      if (code === 'rollout.siteDiffers') expect(value).toBe(numbers(at)[0]! * (numbers(at)[2]! - numbers(at)[1]!));
      if (code === 'rollout.whyThen') expect(value).toBe(numbers(at).reduce((sum, days) => sum + days, 0));
    }
    const sum = lines.reduce((all, { code, value }) => (code === 'rollout.siteDiffers' ? all + Number(value) : all), 0);
    expect(lines.find(({ code }) => code === 'rollout.othersWait')!.value).toBe(sum);
    expect(lines.map(({ code }) => code).slice(-2)).toEqual(['rollout.ifFirst', 'rollout.whyThen']);
  });
});
