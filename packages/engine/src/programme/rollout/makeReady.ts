import { isWanted } from './carriersAway.ts';
import { leapYear_days } from './constants.ts';
import { leapDays } from './leapDays.ts';
import type { Crew, Job, LegTable, Pool, RolloutProblem, Travel } from './problem.ts';
import { type PoolHolds, type ReadyCrew, type ReadyLegs, type Retiming, tripTimes } from './retiming.ts';
import { stockState } from './stockState.ts';
import { type WorkDays, workDays } from './workDays.ts';

/**
 * Makes a problem ready for timing plans.
 *
 * @param problem - the rollout as numbers [day, kg, L, person]
 * @returns the problem with what timing looks up and the room it works in [day, h]
 * @definition docs/methods/rollout.md
 */
// long: every figure is written out one by one, so that all that is timed from is of one make (docs/decisions/0374)
export function retiming(problem: RolloutProblem): Retiming {
  const { jobs, crews, horizon_days, stores, goods, periods } = problem;
  const places = problem.placeIds.length;
  const calendars = new Map<string, WorkDays>();
  const travels = problem.travels.map(readyTravel);
  const groupOf = coupledGroups(problem);
  const count = new Int32Array(crews.length);
  for (const group of groupOf) count[group]!++;
  const ofJobs = readyJobs(jobs);
  const room = roomFor(problem);
  return {
    problem,
    horizon_days,
    places,
    nodes: places + jobs.length,
    goods: goods.length,
    crews: crews.map((crew) => readyCrew(problem, crew, travels[crew.travel]!, calendars)),
    periodFrom: Int32Array.from(periods, ({ from }) => from),
    periodOf: periodOfDays(problem),
    windowAt: ofJobs.windowAt,
    windowFrom: ofJobs.windowFrom,
    windowTo: ofJobs.windowTo,
    weight: ofJobs.weight,
    people: ofJobs.people,
    kg: ofJobs.kg,
    litres: ofJobs.litres,
    longest_m: ofJobs.longest_m,
    needs: Float64Array.from(jobs.flatMap((job) => goods.map((_, at) => job.needs[at] ?? 0))),
    skills: ofJobs.skills,
    area: ofJobs.area,
    finishBy: ofJobs.finishBy,
    wait_days: waitsOf(jobs),
    dayOfYear: leapDays(problem),
    learned: learnedShares(problem),
    groupOf,
    isCoupled: count.some((one) => one > 1),
    days: Float64Array.from(jobs, (job) => job.install_days.likely),
    pace: Float64Array.from(crews, (crew) => crew.pace_factor),
    closed: problem.areaIds.map(() => null),
    leg_factor: 1,
    stock: stores.flatMap((store) => goods.map((_, at) => stockState(store, at))),
    arrives: room.arrives,
    starts: room.starts,
    ends: room.ends,
    handOver: room.handOver,
    service: room.service,
    tripTimes: room.tripTimes,
    broken: room.broken,
    hauls: room.hauls,
    crewWaiting: room.crewWaiting,
    crewCost: room.crewCost,
    haulFree: room.haulFree,
    haulTried: room.haulTried,
    holds: room.holds,
    nextReady: room.nextReady,
    nextTrip: room.nextTrip,
    doneJobs: room.doneJobs,
    doneAfter: room.doneAfter,
    need: room.need,
    aboard_kg: room.aboard_kg,
    aboard_L: room.aboard_L,
    aboard_m: room.aboard_m,
    leg: room.leg,
    run: room.run,
    unknown: room.unknown,
  };
}

function readyCrew(
  { horizon_days, stores, goods, riverEnds_h }: RolloutProblem,
  crew: Crew,
  travel: ReadyTravel,
  calendars: Map<string, WorkDays>,
): ReadyCrew {
  const works = crew.work_h_per_day > 0 ? crew.works : new Uint8Array(horizon_days);
  const key = works.join('');
  const calendar = calendars.get(key) ?? workDays(works, horizon_days);
  calendars.set(key, calendar);
  const store = stores[crew.store]!;
  return {
    crew: alike(crew),
    calendar,
    legs: travel.legs,
    pairs: travel.pairs,
    storeNode: store.node,
    river_h: Math.min(crew.work_h_per_day, riverEnds_h),
    isStocked: goods.length > 0 || store.filledBy !== null,
  };
}

/** The same crew as an object of the same make as all others: what is timed looks at one kind of object alone. */
function alike(crew: Crew): Crew {
  const { crewId, base, store, travel, skills, works, work_h_per_day, mostDaysAway, maySleepAtSites, freeFrom } = crew;
  const { pace_factor, turnaround_days, cost_per_day, limit_kg, limit_L, longest_m, pools, done_count } = crew;
  return {
    crewId,
    base,
    store,
    travel,
    skills,
    works,
    work_h_per_day,
    mostDaysAway,
    maySleepAtSites,
    freeFrom,
    pace_factor,
    turnaround_days,
    cost_per_day,
    limit_kg,
    limit_L,
    longest_m,
    pools,
    done_count,
  };
}

type ReadyTravel = Pick<ReadyCrew, 'legs' | 'pairs'>;

function readyTravel({ byPeriod, pairs }: Travel): ReadyTravel {
  const made = new Map([...new Set(byPeriod)].map((table) => [table, readyLegs(table, pairs !== undefined)]));
  return {
    legs: byPeriod.map((table) => made.get(table)!),
    pairs: pairs === undefined ? null : Float64Array.from(pairs.keys),
  };
}

/** Legs of one period may be shared by crews; their limits are copied flat. Of some pairs alone, one that cannot be gone is added. */
function readyLegs(table: LegTable, isOfPairs: boolean): ReadyLegs {
  const { limits } = table;
  const {
    landBefore_h: before_h,
    river_h,
    landAfter_h: after_h,
    cost,
    fuel_L,
    limitOf,
    areaOf,
  } = isOfPairs ? withNoLeg(table) : table;
  return {
    before_h,
    river_h,
    after_h,
    cost,
    fuel_L,
    limitOf,
    areaOf,
    limit_kg: Float64Array.from(limits, ({ kg }) => kg),
    limit_L: Float64Array.from(limits, ({ litres }) => litres),
    longest_m: Float64Array.from(limits, ({ longest_m }) => longest_m),
  };
}

/** The same legs and, last, one that cannot be gone. */
function withNoLeg(table: LegTable): Omit<LegTable, 'limits'> {
  const size = table.landBefore_h.length + 1;
  const hours = (list: Float32Array, last: number) => {
    const longer = new Float32Array(size).fill(last);
    longer.set(list);
    return longer;
  };
  const limitOf = new Uint16Array(size);
  limitOf.set(table.limitOf);
  const areaOf = new Uint8Array(size);
  areaOf.set(table.areaOf);
  return {
    ...{ landBefore_h: hours(table.landBefore_h, Number.POSITIVE_INFINITY), river_h: hours(table.river_h, 0) },
    ...{ landAfter_h: hours(table.landAfter_h, 0), cost: hours(table.cost, 0), fuel_L: hours(table.fuel_L, 0) },
    ...{ limitOf, areaOf },
  };
}

function periodOfDays({ periods, horizon_days }: RolloutProblem): Int32Array {
  const found = new Int32Array(horizon_days + 1);
  for (const [at, { from }] of periods.entries()) found.fill(at, Math.max(0, from));
  return found;
}

function readyJobs(jobs: readonly Job[]) {
  const windowAt = new Int32Array(jobs.length + 1);
  for (const [at, { windows }] of jobs.entries()) windowAt[at + 1] = windowAt[at]! + windows.length;
  const windows = jobs.flatMap((job) => job.windows);
  return {
    windowAt,
    windowFrom: Float64Array.from(windows, ({ from }) => from),
    windowTo: Float64Array.from(windows, ({ to }) => to),
    weight: Float64Array.from(jobs, ({ weight }) => weight),
    people: Float64Array.from(jobs, ({ people }) => people),
    kg: Float64Array.from(jobs, ({ kg }) => kg),
    litres: Float64Array.from(jobs, ({ litres }) => litres),
    longest_m: Float64Array.from(jobs, ({ longest_m }) => longest_m),
    skills: Int32Array.from(jobs, ({ skills }) => skills),
    area: Int32Array.from(jobs, ({ area }) => area),
    finishBy: Float64Array.from(jobs, ({ finishBy }) => finishBy ?? Number.POSITIVE_INFINITY),
  };
}

function waitsOf(jobs: readonly Job[]): Float64Array {
  const found = new Float64Array(jobs.length * leapYear_days);
  for (const [at, { serviceWait_days }] of jobs.entries())
    for (let day = 0; day < leapYear_days; day++) found[at * leapYear_days + day] = serviceWait_days[day] ?? 0;
  return found;
}

/**
 * What the n-th job of a crew takes of the first, by Wright's unit curve: n^log2(learning).
 *
 * @param n - which job, counted from 1 [count]
 * @param learning_fraction - what a job takes each time the jobs done are doubled [fraction]
 * @returns share of the first job [fraction]
 * @definition docs/methods/rollout.md
 * @example
 * learnedShare(4, 0.9) // → 0.81
 */
export function learnedShare(n: number, learning_fraction: number): number {
  return n < 1 || !(learning_fraction > 0) ? 1 : n ** Math.log2(learning_fraction);
}

/** The same of each job. Entry 0 is not used. */
function learnedShares({ crews, jobs, learning_fraction }: RolloutProblem): Float64Array {
  const most = crews.reduce((top, crew) => Math.max(top, crew.done_count), 0) + jobs.length + 1;
  return Float64Array.from({ length: most + 1 }, (_, n) => learnedShare(n, learning_fraction));
}

/** Crews that share stock, a haul's carrier or a pool stand in one group. */
function coupledGroups(problem: RolloutProblem): Int32Array {
  const { crews, stores, goods, pools } = problem;
  const groupOf = Int32Array.from(crews, (_, at) => at);
  const join = (first: Map<number, number>, key: number, crew: number) => {
    const other = first.get(key);
    if (other === undefined) first.set(key, crew);
    else {
      const [one, two] = [groupOf[other]!, groupOf[crew]!];
      for (let at = 0; at < groupOf.length; at++) if (groupOf[at] === two) groupOf[at] = one;
    }
  };
  const byStore = new Map<number, number>();
  const byPool = new Map<number, number>();
  for (const [at, crew] of crews.entries()) {
    for (const pool of crew.pools) {
      if (isWanted(pools[pool]!, pool, problem)) join(byPool, pool, at);
    }
    let store = crew.store;
    for (let deep = 0; deep <= stores.length; deep++) {
      const behind = stores[store]!.filledBy;
      if (goods.length > 0 || behind !== null) join(byStore, store, at);
      if (behind === null) break;
      if (behind.pool !== null && isWanted(pools[behind.pool]!, behind.pool, problem)) join(byPool, behind.pool, at);
      if (deep === stores.length) throw new RangeError('retiming: stores that fill each other in a ring');
      store = behind.store;
    }
  }
  return groupOf;
}

/** Carriers that are away are held from the beginning, each by itself. */
function holdsOf({ carriers_count, away = [] }: Pool): PoolHolds {
  const each = away.flatMap((one) =>
    Array<typeof one>(Math.max(0, Math.min(one.carriers_count, carriers_count))).fill(one),
  );
  const [from, to] = [each.map((one) => one.from), each.map((one) => one.to)];
  return { from, to, away_count: each.length, count: each.length, kept_count: each.length };
}

function roomFor({ jobs, crews, stores, pools, goods }: RolloutProblem) {
  const numbers = (count: number) => new Float64Array(count);
  const hauls = jobs.length * Math.max(1, stores.length);
  return {
    ...{ arrives: numbers(jobs.length), starts: numbers(jobs.length), ends: numbers(jobs.length) },
    ...{ handOver: numbers(jobs.length), service: numbers(jobs.length) },
    tripTimes: crews.map(() => tripTimes(16)),
    broken: { kind: [], crew: [], trip: [], what: [], by: [], count: 0 },
    hauls: {
      store: new Int32Array(hauls),
      leaves: numbers(hauls),
      ...{ arrives: numbers(hauls), back: numbers(hauls), kg: numbers(hauls) },
      cost: numbers(hauls),
      fuel_L: numbers(hauls),
      trips_count: new Int32Array(hauls),
      forCrew: new Int32Array(hauls),
      forTrip: new Int32Array(hauls),
      ...{ runs: [], runsEnd: new Int32Array(hauls) },
      count: 0,
      tried: 0,
    },
    ...{ crewWaiting: numbers(crews.length), crewCost: numbers(crews.length) },
    ...{ haulFree: numbers(stores.length), haulTried: numbers(stores.length) },
    holds: pools.map(holdsOf),
    ...{ nextReady: numbers(crews.length), nextTrip: new Int32Array(crews.length) },
    ...{ doneJobs: new Int32Array(crews.length), doneAfter: new Int32Array(crews.length) },
    need: numbers(goods.length),
    ...{ aboard_kg: numbers(jobs.length), aboard_L: numbers(jobs.length), aboard_m: numbers(jobs.length) },
    leg: { start: 0, legs: null, at: 0, isBeyond: false },
    run: { leaves: 0, arrives: 0, returns: 0, back: 0, cost: 0, fuel_L: 0 },
    unknown: [],
  };
}
