import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type Drawn,
  evaluatePlan,
  type Outcome,
  type RolloutPlan,
  type RolloutProblem,
} from '../../packages/engine/src/programme/rollout/index.ts';
import { bestPlan } from '../twins/everyPlan.ts';
import { madeDrawn, madePlan, madeRollout } from '../twins/madeRollouts.ts';

const numRuns = process.env['EAVEWELL_SOAK'] ? 4000 : 200;
const seeds = fc.integer({ min: 1, max: 1_000_000_000 });
const oneCrew = { jobs: [2, 6], crews: [1, 1], horizon_days: [150, 200], trouble_fraction: 0.25 } as const;

/** Hand-over by job; null where a stop was passed over or a trip not made, as the laws speak of plans that are done. */
function handOvers({ trips, broken }: Outcome, horizon_days: number): Map<number, number> | null {
  const stops = trips.flat().flatMap((trip) => trip.stops);
  if (broken.some(({ kind }) => kind === 'noWay') || stops.some(({ handOverDay }) => handOverDay >= horizon_days))
    return null;
  return new Map(stops.map(({ job, handOverDay }) => [job, handOverDay]));
}

/** Stores that are filled by a carrier the crew or another store wants too are filled by one of their own: a haul may go in the gap a later trip leaves. */
function withCarriersOfTheirOwn(problem: RolloutProblem): RolloutProblem {
  const { crews, stores } = problem;
  const wanted = [...crews.flatMap(({ pools }) => pools), ...stores.map(({ filledBy }) => filledBy?.pool ?? null)];
  const isShared = (pool: number) => wanted.filter((one) => one === pool).length > 1;
  return {
    ...problem,
    stores: stores.map(({ filledBy, ...store }) => {
      const pool = filledBy?.pool ?? null;
      return { ...store, filledBy: filledBy && { ...filledBy, pool: pool === null || isShared(pool) ? null : pool } };
    }),
  };
}

/** Holds that nothing is handed over earlier in the second case; tells how often both could be compared. */
function neverEarlier(
  change: (
    problem: RolloutProblem,
    plan: RolloutPlan,
    by: number,
  ) => { problem?: RolloutProblem; plan?: RolloutPlan; drawn?: Drawn },
): number {
  let compared = 0;
  fc.assert(
    fc.property(seeds, fc.integer({ min: 1, max: 9 }), (seed, by) => {
      const problem = withCarriersOfTheirOwn(madeRollout(seed, oneCrew));
      const plan = madePlan(problem, seed, true);
      const before = handOvers(evaluatePlan(problem, plan), problem.horizon_days);
      const changed = { problem, plan, drawn: null, ...change(problem, plan, by) };
      const after = handOvers(evaluatePlan(changed.problem, changed.plan, changed.drawn), problem.horizon_days);
      if (before === null || after === null) return;
      compared++;
      for (const [job, day] of before) expect(after.get(job)).toBeGreaterThanOrEqual(day);
    }),
    { numRuns, seed: 20261126 },
  );
  return compared;
}

/** Nothing drawn otherwise than likely. */
function likely(problem: RolloutProblem): Drawn {
  return {
    install_days: Float64Array.from(problem.jobs, ({ install_days }) => install_days.likely),
    pace_factor: new Float64Array(problem.crews.length).fill(1),
    slip_days: problem.stores.map(({ arrivals }) => Float64Array.from(arrivals, ({ slip_days }) => slip_days.likely)),
    closed: problem.areaIds.map(() => new Uint8Array(problem.horizon_days)),
    leg_factor: 1,
  };
}

const least = numRuns / 4;

it('a crew that is free later hands nothing over earlier', () => {
  const later = neverEarlier((problem, _, by) => ({
    problem: { ...problem, crews: problem.crews.map((crew) => ({ ...crew, freeFrom: crew.freeFrom + by / 2 })) },
  }));
  expect(later).toBeGreaterThan(least);
});

it('a trip told to wait, and sites ready later, are never earlier', () => {
  const waits = neverEarlier((_, { trips }, by) => ({
    plan: { trips: trips.map((own) => own.map((trip) => ({ ...trip, notBefore: 3 * by }))) },
  }));
  const sites = neverEarlier((problem, _, by) => ({
    problem: {
      ...problem,
      jobs: problem.jobs.map((job) => {
        const windows = job.windows.map(({ from, to }) => ({ from: Math.max(from, 4 * by), to }));
        return { ...job, windows: windows.filter(({ from, to }) => from <= to) };
      }),
    },
  }));
  expect(Math.min(waits, sites)).toBeGreaterThan(least);
});

it('slower legs, longer work and later goods are never earlier', () => {
  const legs = neverEarlier((problem, _, by) => ({ drawn: { ...likely(problem), leg_factor: 1 + by / 5 } }));
  const work = neverEarlier((problem, _, by) => {
    const same = likely(problem);
    return { drawn: { ...same, install_days: same.install_days.map((days) => days * (1 + by / 5)) } };
  });
  const goods = neverEarlier((problem, _, by) => {
    const same = likely(problem);
    return { drawn: { ...same, slip_days: same.slip_days.map((slip) => slip.map((days) => days + by)) } };
  });
  expect(Math.min(legs, work, goods)).toBeGreaterThan(least);
});

it('weather is never earlier than none', () => {
  let closed = 0;
  const compared = neverEarlier((problem, _, by) => {
    const drawn = { ...likely(problem), closed: madeDrawn(problem, by).closed };
    closed += drawn.closed.length;
    return { drawn };
  });
  expect(compared).toBeGreaterThan(least);
  expect(closed).toBeGreaterThan(numRuns / 8);
});

it('one crew more never makes the best plan wait longer', () => {
  let compared = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const kind = { jobs: [3, 3], crews: [1, 2], horizon_days: [60, 90], trouble_fraction: 0.25 } as const;
    const problem = madeRollout(seed, kind);
    const before = bestPlan(problem);
    if (before === null) continue;
    const more = { ...problem, crews: [...problem.crews, { ...problem.crews[0]!, crewId: 'more' }] };
    compared++;
    expect(bestPlan(more)!.waiting).toBeLessThanOrEqual(before.waiting + 1e-6);
  }
  expect(compared).toBeGreaterThan(25);
});

it('the order in which jobs, stores, goods and pools are listed changes nothing', () => {
  const kind = { jobs: [3, 8], crews: [1, 3], horizon_days: [60, 130], trouble_fraction: 0.4 } as const;
  fc.assert(
    fc.property(seeds, (seed) => {
      const problem = madeRollout(seed, kind);
      const plan = madePlan(problem, seed);
      const got = evaluatePlan(problem, plan);
      const turned = turnedRound(problem);
      const last = problem.jobs.length - 1;
      const trips = plan.trips.map((own) =>
        own.map((trip) => ({ ...trip, stops: trip.stops.map((job) => last - job) })),
      );
      const again = evaluatePlan(turned, { trips });
      const days = ({ trips: timed }: Outcome, job: (one: number) => number) =>
        timed
          .flat()
          .flatMap(({ leaves, back, stops }) => [
            leaves,
            back,
            ...stops.map((stop) => [job(stop.job), stop.serviceDay]),
          ]);
      expect(days(again, (job) => last - job)).toEqual(days(got, (job) => job));
      expect(again.waiting).toBeCloseTo(got.waiting, 6);
      expect(again.broken.map(({ kind: broke }) => broke).sort()).toEqual(
        got.broken.map(({ kind: broke }) => broke).sort(),
      );
    }),
    { numRuns, seed: 20261126 },
  );
});

/** The same rollout with jobs, stores, goods and pools listed the other way round. */
function turnedRound(problem: RolloutProblem): RolloutProblem {
  const places = problem.placeIds.length;
  const nodes = places + problem.jobs.length;
  const nodeOf = (node: number) => (node < places ? node : places + nodes - 1 - node);
  const turn = <T extends Float32Array | Uint16Array | Uint8Array>(one: T): T =>
    one.map((_, at) => one[nodeOf(Math.floor(at / nodes)) * nodes + nodeOf(at % nodes)]!) as T;
  const lastOf = (list: readonly unknown[], at: number) => list.length - 1 - at;
  return {
    ...problem,
    jobs: problem.jobs.toReversed().map((job) => ({ ...job, needs: job.needs.toReversed() })),
    goods: problem.goods.toReversed(),
    pools: problem.pools.toReversed(),
    crews: problem.crews.map((crew) => ({
      ...{ ...crew, store: lastOf(problem.stores, crew.store) },
      pools: crew.pools.map((pool) => lastOf(problem.pools, pool)),
    })),
    stores: problem.stores.toReversed().map((store) => ({
      ...store,
      arrivals: store.arrivals.map((arrival) => ({ ...arrival, goods: lastOf(problem.goods, arrival.goods) })),
      filledBy: store.filledBy && {
        ...{ ...store.filledBy, store: lastOf(problem.stores, store.filledBy.store) },
        pool: store.filledBy.pool === null ? null : lastOf(problem.pools, store.filledBy.pool),
      },
    })),
    travels: problem.travels.map(({ byPeriod }) => ({
      nodes,
      byPeriod: byPeriod.map((legs) => ({
        ...{ ...legs, landBefore_h: turn(legs.landBefore_h), river_h: turn(legs.river_h) },
        ...{ landAfter_h: turn(legs.landAfter_h), cost: turn(legs.cost), fuel_L: turn(legs.fuel_L) },
        ...{ limitOf: turn(legs.limitOf), areaOf: turn(legs.areaOf) },
      })),
    })),
  };
}
