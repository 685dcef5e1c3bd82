import { describe, expect, it } from 'vitest';
import { evaluatePlan } from './evaluatePlan.ts';
import type { RolloutPlan, RolloutProblem } from './problem.ts';
import { evenLegs, tinyCrew, tinyJob, tinyRollout } from './tinyRollout.testing.ts';

const plan = (...trips: readonly (readonly number[])[]): RolloutPlan => ({
  trips: [trips.map((stops) => ({ stops, notBefore: 0, isLocked: false }))],
});
const stopsOf = (problem: RolloutProblem, one: RolloutPlan) =>
  evaluatePlan(problem, one)
    .trips.flat()
    .flatMap(({ stops }) => stops);

describe('evaluatePlan', () => {
  it('uses hours of working days: half a day there, a day of work over night, half a day home', () => {
    const found = evaluatePlan(tinyRollout(1), plan([0]));
    expect(found.trips[0]![0]).toMatchObject({ ready: 0, leaves: 0, back: 2, nights_count: 1, waitsFor: 'nothing' });
    expect(found.trips[0]![0]!.stops[0]).toMatchObject({ arrives: 0.5, starts: 0.5, ends: 1.5, handOverDay: 1 });
    expect(found).toMatchObject({ waiting: 100, finish: 1, fuel_L: 4, cost: 2 * 10 + 2 + 4 * 3, broken: [] });
  });

  it('turns round for a working day and starts with a day', () => {
    const found = evaluatePlan(tinyRollout(2), plan([0], [1]));
    expect(found.trips[0]![1]).toMatchObject({ ready: 3, leaves: 3 });
  });

  it('rests on days without work', () => {
    const problem = tinyRollout(1);
    const works = new Uint8Array(100).fill(1).fill(0, 1, 3);
    const [stop] = stopsOf({ ...problem, crews: [{ ...tinyCrew(100), works }] }, plan([0]));
    expect(stop).toMatchObject({ starts: 0.5, ends: 3.5, handOverDay: 3 });
  });

  it('does not begin a river that would not end that day, and begins a longer one in a morning', () => {
    const short = tinyRollout(1, { travels: [{ nodes: 2, byPeriod: [evenLegs(2, 3, 4)] }] });
    expect(stopsOf(short, plan([0]))[0]).toMatchObject({ arrives: 1.5 });
    const long = tinyRollout(1, { travels: [{ nodes: 2, byPeriod: [evenLegs(2, 3, 13)] }] });
    // Three hours by land; then six of a river on each of two days, and one on the third.
    expect(stopsOf(long, plan([0]))[0]).toMatchObject({ arrives: 3 + 1 / 8 });
  });

  it('waits at the base for a way to open', () => {
    const byPeriod = [evenLegs(2, Number.POSITIVE_INFINITY), evenLegs(2, 4)];
    const problem = tinyRollout(1, { travels: [{ nodes: 2, byPeriod }], periods: [{ from: 0 }, { from: 20 }] });
    expect(evaluatePlan(problem, plan([0])).trips[0]![0]).toMatchObject({
      leaves: 20,
      waitsFor: 'way',
      nights_count: 1,
    });
    const closed = { ...problem, travels: [{ nodes: 2, byPeriod: [byPeriod[0]!, byPeriod[0]!] }] };
    expect(evaluatePlan(closed, plan([0])).broken).toEqual([{ kind: 'noWay', crew: 0, trip: 0, job: 0 }]);
  });

  it('waits for a faster season where that arrives earlier', () => {
    const byPeriod = [evenLegs(2, 80), evenLegs(2, 8)];
    const problem = tinyRollout(1, { travels: [{ nodes: 2, byPeriod }], periods: [{ from: 0 }, { from: 5 }] });
    expect(evaluatePlan(problem, plan([0])).trips[0]![0]).toMatchObject({ leaves: 5, waitsFor: 'way' });
  });

  it('starts in the first window that holds the work', () => {
    const jobs = [
      {
        ...tinyJob,
        windows: [
          { from: 0, to: 0 },
          { from: 4, to: 4 },
          { from: 9, to: 30 },
        ],
      },
    ];
    expect(stopsOf(tinyRollout(1, { jobs }), plan([0]))[0]).toMatchObject({ starts: 4, ends: 5, handOverDay: 4 });
    const shut = tinyRollout(1, { jobs: [{ ...tinyJob, windows: [{ from: 0, to: 0 }] }] });
    expect(evaluatePlan(shut, plan([0])).broken).toEqual([{ kind: 'notOpen', crew: 0, trip: 0, job: 0 }]);
    expect(evaluatePlan(shut, plan([0])).waiting).toBe(100 * 100);
  });

  it('gives stock to who asks first, and does not make a trip whose goods never come', () => {
    const arrival = { arrivalId: 'A', goods: 0, quantity_count: 1, slip_days: { low: 0, likely: 0.5, high: 2 } };
    const problem = tinyRollout(3, {
      goods: [{ partId: 'P' }],
      jobs: Array.from({ length: 3 }, () => ({ ...tinyJob, needs: [1] })),
      stores: [
        {
          node: 0,
          arrivals: [
            { ...arrival, day: 0 },
            { ...arrival, day: 10 },
          ],
          filledBy: null,
        },
      ],
      crews: [tinyCrew(100), { ...tinyCrew(100), crewId: 'D' }],
    });
    const trip = (stops: number[]) => ({ stops, notBefore: 0, isLocked: false });
    const found = evaluatePlan(problem, { trips: [[trip([0]), trip([2])], [trip([1])]] });
    expect(found.trips[0]![0]).toMatchObject({ leaves: 1, waitsFor: 'stock' });
    expect(found.trips[1]![0]).toMatchObject({ leaves: 11, waitsFor: 'stock' });
    expect(found.broken).toEqual([{ kind: 'noStock', crew: 0, trip: 1, goods: 0 }]);
  });

  it('brings goods to a forward store by as many hauls as they need', () => {
    const haul = {
      store: 0,
      there_days: [1],
      back_days: [1],
      limit_kg: 10,
      limit_L: 1000,
      ...{ there_cost: [2], back_cost: [3], there_fuel_L: [0.5], back_fuel_L: [0.5], pool: null },
    };
    const problem = tinyRollout(2, {
      stores: [
        { node: 0, arrivals: [], filledBy: null },
        { node: 0, arrivals: [], filledBy: haul },
      ],
      crews: [{ ...tinyCrew(100), store: 1 }],
    });
    const found = evaluatePlan(problem, plan([0, 1]));
    expect(found.hauls).toEqual([
      // Twice 2 there, 3 back and a litre at 3.
      // Out on days 0 and 2, a day each way; ten kilograms of each of two sites.
      {
        ...{ store: 1, leaves: 0, arrives: 3, back: 4, trips_count: 2, kg: 20 },
        ...{ cost: 16, fuel_L: 2, forCrew: 0, forTrip: 0 },
        runs: [
          { leaves: 0, arrives: 1, returns: 1, back: 2 },
          { leaves: 2, arrives: 3, returns: 3, back: 4 },
        ],
      },
    ]);
    expect(found.trips[0]![0]).toMatchObject({ leaves: 3, waitsFor: 'haul' });
  });

  it('pays each haul by the periods in which it goes there and back', () => {
    const haul = {
      ...{ store: 0, pool: null, there_days: [1, 1], back_days: [1, 1], limit_kg: 10, limit_L: 1000 },
      ...{ there_cost: [2, 20], back_cost: [3, 30], there_fuel_L: [1, 10], back_fuel_L: [0, 5] },
    };
    const legs = evenLegs(3, 4);
    const problem = tinyRollout(2, {
      periods: [{ from: 0 }, { from: 3 }],
      travels: [{ nodes: 3, byPeriod: [legs, legs] }],
      stores: [
        { node: 0, arrivals: [], filledBy: null },
        { node: 0, arrivals: [], filledBy: haul },
      ],
      crews: [{ ...tinyCrew(100), store: 1 }],
    });
    // There on days 0 and 2, back on days 1 and 3: the last alone is in the second period. A litre is 3.
    const [only, ...others] = evaluatePlan(problem, plan([0, 1])).hauls;
    expect([only, others]).toMatchObject([
      { leaves: 0, arrives: 3, fuel_L: 1 + 0 + 1 + 5, cost: 2 + 3 + 2 + 30 + 7 * 3 },
      [],
    ]);
  });

  describe('a boat that fills a store and goes with a crew', () => {
    const haul = {
      ...{ store: 0, pool: 0, there_days: [1], back_days: [1], limit_kg: 100, limit_L: 1000 },
      ...{ there_cost: [0], back_cost: [0], there_fuel_L: [0], back_fuel_L: [0] },
    };
    const filled = { ...tinyCrew(100), store: 1 };
    const byBoat = { ...tinyCrew(100), crewId: 'D', pools: [0] };
    const timed = (crews: (typeof filled)[], boat: object = {}) =>
      evaluatePlan(
        tinyRollout(2, {
          ...{ crews, pools: [{ carrierId: 'boat', carriers_count: 1, ...boat }] },
          stores: [
            { node: 0, arrivals: [], filledBy: null },
            { node: 0, arrivals: [], filledBy: haul },
          ],
        }),
        { trips: [[0], [1]].map((stops) => [{ stops, notBefore: 0, isLocked: false }]) },
      );

    it('is out with who asks first: the haul, until it is back', () => {
      const { hauls, trips } = timed([filled, byBoat]);
      expect(hauls).toMatchObject([{ leaves: 0, arrives: 1 }]);
      expect(trips.flat()).toMatchObject([
        { leaves: 1, waitsFor: 'haul' },
        { leaves: 2, waitsFor: 'carrier' },
      ]);
    });

    it('or the crew: the haul waits, and so does the trip it is for', () => {
      const { hauls, trips } = timed([byBoat, filled]);
      expect(hauls).toMatchObject([{ leaves: 2, arrives: 3 }]);
      expect(trips.flat()).toMatchObject([
        { leaves: 0, waitsFor: 'nothing' },
        { leaves: 3, waitsFor: 'haul' },
      ]);
    });

    it('fills nothing while it is away, and both at once where there are two', () => {
      const away = [{ from: 0, to: 4, carriers_count: 1 }];
      expect(timed([filled, byBoat], { away }).hauls).toMatchObject([{ leaves: 5, arrives: 6 }]);
      const { trips } = timed([byBoat, filled], { carriers_count: 2 });
      expect(trips.flat().map(({ leaves }) => leaves)).toEqual([0, 1]);
    });
  });

  it('shares a boat: the second goes when the first is back', () => {
    const problem = tinyRollout(2, {
      pools: [{ carrierId: 'boat', carriers_count: 1 }],
      crews: ['C', 'D'].map((crewId) => ({ ...tinyCrew(100), crewId, pools: [0] })),
    });
    const trip = (stops: number[]) => [{ stops, notBefore: 0, isLocked: false }];
    expect(evaluatePlan(problem, { trips: [trip([0]), trip([1])] }).trips[1]![0]).toMatchObject({
      ...{ ready: 0, leaves: 2, waitsFor: 'carrier' },
    });
  });

  it('lists what is broken and times it all the same', () => {
    const jobs = [{ ...tinyJob, kg: 150, longest_m: 7, skills: 1, finishBy: 0 }, { ...tinyJob }];
    const problem = tinyRollout(2, { jobs, crews: [{ ...tinyCrew(100), mostDaysAway: 0, maySleepAtSites: false }] });
    expect(evaluatePlan(problem, plan([0])).broken).toEqual([
      { kind: 'noSkill', crew: 0, trip: 0, job: 0 },
      { kind: 'tooHeavy', crew: 0, trip: 0, job: 0, by: 50 },
      { kind: 'tooLong', crew: 0, trip: 0, job: 0, by: 1 },
      { kind: 'late', crew: 0, trip: 0, job: 0, by: 1 },
      { kind: 'sleepsAtSite', crew: 0, trip: 0, job: 0, by: 1 },
      { kind: 'tooLongAway', crew: 0, trip: 0, by: 1 },
      { kind: 'leftOut', job: 1 },
    ]);
  });

  it('refuses a job that stands twice', () => {
    expect(() => evaluatePlan(tinyRollout(1), plan([0, 0]))).toThrow(RangeError);
  });
  it('answers where nobody works, nothing is planned or a haul takes nothing', () => {
    const never = tinyRollout(1, { crews: [{ ...tinyCrew(100), work_h_per_day: 0 }] });
    expect(evaluatePlan(never, plan([0]))).toMatchObject({
      ...{ waiting: 100 * 100, cost: 0 },
      broken: [{ kind: 'beyondHorizon', crew: 0, trip: 0 }],
    });
    expect(evaluatePlan(tinyRollout(1, { crews: [] }), { trips: [] }).broken).toEqual([{ kind: 'leftOut', job: 0 }]);
    expect(evaluatePlan(tinyRollout(0), { trips: [[]] }).waiting).toBe(0);
    const haul = {
      store: 0,
      there_days: [1],
      back_days: [1],
      limit_kg: 0,
      limit_L: 9,
      ...{ there_cost: [2], back_cost: [3], there_fuel_L: [0.5], back_fuel_L: [0.5], pool: null },
    };
    const stores = [
      { node: 0, arrivals: [], filledBy: null },
      { node: 0, arrivals: [], filledBy: haul },
    ];
    const hauled = evaluatePlan(tinyRollout(1, { stores, crews: [{ ...tinyCrew(100), store: 1 }] }), plan([0]));
    expect([hauled.hauls, hauled.broken]).toEqual([[], [{ kind: 'beyondHorizon', crew: 0, trip: 0 }]]);
  });
});
