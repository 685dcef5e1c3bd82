import { expect, it } from 'vitest';
import {
  crewAlone,
  crewsTogether,
  crewTripsOf,
  evaluatePlan,
  type Outcome,
  retiming,
} from '../../packages/engine/src/programme/rollout/index.ts';
import { madeDrawn, madePlan, madeRollout } from './madeRollouts.ts';
import { SlowRollout } from './slowRollout.ts';

const soak = process.env['EAVEWELL_SOAK'] ? 20 : 1;
const kinds = [0, 0.2, 0.5].map((trouble_fraction) => ({
  ...{ jobs: [2, 9] as const, crews: [1, 3] as const, horizon_days: [60, 130] as const, trouble_fraction },
}));

/** What is broken, as lines. */
function lines({ broken }: Outcome): readonly string[] {
  const told = broken.map((one) => {
    if (one.kind === 'leftOut') return `leftOut ${one.job}`;
    const at = `${one.kind} ${one.crew} ${one.trip}`;
    if (one.kind === 'noStock') return `${at} ${one.goods}`;
    const job = 'job' in one ? ` ${one.job}` : '';
    if (!('by' in one)) return at + job;
    return `${at}${job} by ${one.kind.startsWith('too') && 'job' in one ? one.by.toFixed(6) : one.by}`;
  });
  return told.sort();
}

/** Numbers no further apart than 1e-7, all else the same. */
function same(got: unknown, wanted: unknown, place: string): void {
  if (typeof wanted === 'number') {
    if (!(Math.abs((got as number) - wanted) <= 1e-7 * Math.max(1, Math.abs(wanted)))) expect(got, place).toBe(wanted);
  } else if (wanted !== null && typeof wanted === 'object') {
    expect(Object.keys(got as object).sort(), place).toEqual(Object.keys(wanted).sort());
    for (const [key, value] of Object.entries(wanted))
      same((got as Record<string, unknown>)[key], value, `${place}.${key}`);
  } else expect(got, place).toBe(wanted);
}

it('1,000 drawn plans of drawn programmes: times, loads, stock, cost and what is broken are those of the walk by days', () => {
  let [trips, broken, waited, stops, served] = [0, 0, 0, 0, 0];
  const kindsBroken = new Set<string>();
  const waits = new Set<string>();
  let [keptWaiting, keptByCarriers] = [0, 0];
  for (let seed = 1; seed <= 1000 * soak; seed++) {
    const problem = madeRollout(seed, kinds[seed % kinds.length]!);
    const plan = madePlan(problem, seed);
    const drawn = seed % 2 === 0 ? madeDrawn(problem, seed) : null;
    const got = evaluatePlan(problem, plan, drawn);
    const slow = new SlowRollout(problem, drawn).run(plan);
    const { trips: gotTrips, hauls, broken: _, ...sums } = got;
    if (problem.pools.some(({ away = [] }) => away.length > 0)) {
      const allThere = { ...problem, pools: problem.pools.map((pool) => ({ ...pool, away: [] })) };
      if (evaluatePlan(allThere, plan, drawn).waiting !== got.waiting) keptWaiting++;
    }
    if (problem.stores.some(({ filledBy }) => filledBy !== null && filledBy.pool !== null)) {
      const stores = problem.stores.map((store) => ({
        ...store,
        filledBy: store.filledBy && { ...store.filledBy, pool: null },
      }));
      if (evaluatePlan({ ...problem, stores }, plan, drawn).waiting !== got.waiting) keptByCarriers++;
    }
    expect(lines(got), `seed ${seed}`).toEqual(slow.broken);
    same(gotTrips, slow.trips, `seed ${seed} trips`);
    same(hauls, slow.hauls, `seed ${seed} hauls`);
    same(sums, slow.sums, `seed ${seed}`);
    trips += gotTrips.flat().length;
    broken += got.broken.length;
    for (const { kind } of got.broken) kindsBroken.add(kind);
    for (const trip of gotTrips.flat()) {
      waits.add(trip.waitsFor);
      stops += trip.stops.length;
      served += trip.stops.filter(({ handOverDay }) => handOverDay < problem.horizon_days).length;
      waited += trip.leaves > trip.ready ? 1 : 0;
    }
  }
  // Nothing of it is empty: every kind of break and of wait was met.
  expect(trips).toBeGreaterThan(2000);
  expect(served).toBeGreaterThan(0.6 * stops);
  expect(served).toBeLessThan(0.95 * stops);
  expect(broken).toBeGreaterThan(500);
  expect(waited).toBeGreaterThan(300);
  expect(kindsBroken.size).toBe(12);
  expect(waits.size).toBe(6);
  // Carriers that are away hold some of the plans up.
  expect(keptWaiting).toBeGreaterThan(40);
  // So do hauls and trips that want the same carrier.
  expect(keptByCarriers).toBeGreaterThan(10);
});

it('one crew by itself, and groups by themselves, are timed as all together', () => {
  let alone = 0;
  for (let seed = 1; seed <= 300 * soak; seed++) {
    const problem = madeRollout(seed, { ...kinds[1]!, crews: [2, 4] });
    const plan = madePlan(problem, seed, true);
    const ready = retiming(problem);
    const tripsOf = problem.crews.map((_, crew) => crewTripsOf(plan.trips[crew]!));
    const all = crewsTogether(
      ready,
      problem.crews.map((_, crew) => crew),
      tripsOf,
    );
    const wanted = Float64Array.from(ready.crewWaiting);
    const costs = Float64Array.from(ready.crewCost);
    expect(wanted.reduce((sum, one) => sum + one, 0)).toBeCloseTo(all, 6);
    for (const group of new Set(ready.groupOf)) {
      const crews = problem.crews.map((_, crew) => crew).filter((crew) => ready.groupOf[crew] === group);
      if (crews.length === 1) {
        expect(crewAlone(ready, crews[0]!, tripsOf[crews[0]!]!)).toBe(wanted[crews[0]!]);
        alone++;
      } else crewsTogether(ready, crews, tripsOf);
      for (const crew of crews)
        expect([ready.crewWaiting[crew], ready.crewCost[crew]]).toEqual([wanted[crew], costs[crew]]);
    }
  }
  expect(alone).toBeGreaterThan(100);
});
