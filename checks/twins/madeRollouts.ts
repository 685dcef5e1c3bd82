import { type Dice, type LegTable, seededDice } from '../../packages/engine/src/kernel/index.ts';
import type {
  Crew,
  Drawn,
  Job,
  RolloutPlan,
  RolloutProblem,
  Store,
} from '../../packages/engine/src/programme/rollout/index.ts';

/** What a made rollout may have. */
export interface RolloutKind {
  readonly jobs: readonly [number, number];
  readonly crews: readonly [number, number];
  readonly horizon_days: readonly [number, number];
  /** The chance of each hard feature, 0 to 1: closed ways, narrow windows, stock, pools, forward stores, tight limits, weather. */
  readonly trouble_fraction: number;
}

const from = (dice: Dice, [low, high]: readonly [number, number]) => low + dice.next(high - low + 1);
const pick = <T>(dice: Dice, list: readonly T[]): T => list[dice.next(list.length)]!;
const happens = (dice: Dice, fraction: number) => dice.next(1_000_000) < fraction * 1_000_000;
const list = <T>(count: number, of: (at: number) => T): T[] => Array.from({ length: count }, (_, at) => of(at));

/** A small rollout with everything in it that the evaluator knows, made from a seed. Figures are coarse, so that times often meet. */
export function madeRollout(seed: number, kind: RolloutKind): RolloutProblem {
  const dice = seededDice(seed);
  const may = (fraction = kind.trouble_fraction) => happens(dice, fraction);
  const jobs = from(dice, kind.jobs);
  const crews = from(dice, kind.crews);
  const horizon_days = from(dice, kind.horizon_days);
  const places = 2 + dice.next(2);
  const areas = may() ? 1 + dice.next(2) : 0;
  const goods = may() ? 1 + dice.next(2) : 0;
  const pools = may() ? 1 + dice.next(2) : 0;
  const periods = madePeriods(dice, horizon_days);
  const travels = list(1 + dice.next(2), () => ({
    nodes: places + jobs,
    byPeriod: madeLegs(dice, places + jobs, periods.length, areas, kind.trouble_fraction),
  }));
  const stores = madeStores(dice, places, goods, jobs, periods.length, horizon_days, may(), pools);
  return {
    ...{ firstDay: 20_400 + dice.next(1000), horizon_days, periods, travels, stores },
    placeIds: list(places, (at) => `P${at}`),
    jobs: list(jobs, (at) => madeJob(dice, at, horizon_days, goods, areas, kind.trouble_fraction)),
    crews: list(crews, (at) => madeCrew(dice, at, horizon_days, places, stores.length, travels.length, pools, kind)),
    goods: list(goods, (at) => ({ partId: `G${at}` })),
    pools: list(pools, (at) => ({
      ...{ carrierId: `V${at}`, carriers_count: 1 + dice.next(2) },
      away: madeAway(seed + at, horizon_days, kind.trouble_fraction),
    })),
    areaIds: list(areas, (at) => `A${at}`),
    learning_fraction: pick(dice, [1, 1, 0.9]),
    riverEnds_h: pick(dice, [5, 6, 8, 10]),
    fuelPrice_per_L: pick(dice, [0, 2]),
  };
}

/** Absences of carriers, from dice of their own: some overlap, some go on to the end, some are of more than there are. */
function madeAway(seed: number, horizon_days: number, trouble: number) {
  const dice = seededDice(seed);
  return list(happens(dice, trouble) ? 1 + dice.next(3) : 0, () => {
    const first = dice.next(horizon_days);
    const to = happens(dice, 0.2) ? horizon_days - 1 : Math.min(horizon_days - 1, first + dice.next(40));
    return { from: first, to, carriers_count: 1 + dice.next(2) };
  });
}

function madePeriods(dice: Dice, horizon_days: number) {
  const starts = new Set([0, ...list(dice.next(5), () => dice.next(horizon_days))]);
  return [...starts].sort((a, b) => a - b).map((day) => ({ from: day }));
}

function madeLegs(dice: Dice, nodes: number, periods: number, areas: number, trouble: number): LegTable[] {
  const size = nodes * nodes;
  const limits = list(2, () => ({
    ...{ kg: pick(dice, [40, 1000]), litres: pick(dice, [60, 1000]), longest_m: pick(dice, [3, 6]), porters_count: 0 },
  }));
  const base = list(size, () => 1 + dice.next(24) / 2);
  return list(periods, () => {
    const slower = pick(dice, [1, 1, 1.5, 3]);
    const closed = list(size, () => happens(dice, trouble / 4));
    const river = list(size, () => (happens(dice, 0.4) ? 1 + dice.next(20) / 2 : 0));
    return {
      landBefore_h: Float32Array.from(base, (hours, at) =>
        closed[at] ? Number.POSITIVE_INFINITY : dice.next(3) === 0 ? 0 : hours * slower,
      ),
      river_h: Float32Array.from(river, (hours) => hours * slower),
      landAfter_h: Float32Array.from(base, () => dice.next(4) / 2),
      cost: Float32Array.from(base, () => dice.next(5)),
      fuel_L: Float32Array.from(base, () => dice.next(9)),
      limitOf: Uint16Array.from(base, () => (happens(dice, trouble) ? dice.next(2) : 1)),
      areaOf: Uint8Array.from(base, () => dice.next(areas + 1)),
      limits: [limits[0]!, { ...limits[1]!, kg: 1000, litres: 1000, longest_m: 9 }],
    };
  });
}

function madeJob(dice: Dice, at: number, horizon_days: number, goods: number, areas: number, trouble: number): Job {
  const people = 20 + dice.next(300);
  const likely = pick(dice, [0.25, 0.5, 1, 1.5, 2, 3.3]);
  const ends = list(2 * (1 + dice.next(3)), () => dice.next(horizon_days)).sort((a, b) => a - b);
  const narrow = list(ends.length / 2, (one) => ({ from: ends[2 * one]!, to: ends[2 * one + 1]! }));
  const apart = narrow.filter((one, index) => index === 0 || one.from > narrow[index - 1]!.to);
  return {
    ...{ siteId: `S${at}`, people, weight: people * pick(dice, [1, 1, 2]) },
    install_days: { low: likely * 0.7, likely, high: likely * 2 },
    windows: happens(dice, trouble) ? apart : [{ from: 0, to: horizon_days - 1 }],
    finishBy: happens(dice, trouble) ? dice.next(horizon_days) : null,
    ...{ kg: 10 + dice.next(30), litres: 10 + dice.next(40), longest_m: pick(dice, [1, 3, 4]) },
    needs: list(goods, () => dice.next(3)),
    skills: happens(dice, trouble / 2) ? 1 + dice.next(3) : 0,
    area: dice.next(areas + 1) - 1,
    serviceWait_days: Float64Array.from({ length: 366 }, (_, day) => (happens(dice, 0.5) ? 0 : (day * 7) % 23)),
    serviceWaits: null,
  };
}

function madeCrew(
  dice: Dice,
  at: number,
  horizon_days: number,
  places: number,
  stores: number,
  travels: number,
  pools: number,
  { trouble_fraction }: RolloutKind,
): Crew {
  const rest = dice.next(7);
  const works = Uint8Array.from({ length: horizon_days }, (_, day) =>
    happens(dice, trouble_fraction / 2) && (day % 7 === rest || happens(dice, 0.2)) ? 0 : 1,
  );
  const isTight = happens(dice, trouble_fraction);
  return {
    ...{ crewId: `C${at}`, base: dice.next(places), store: dice.next(stores), travel: dice.next(travels), works },
    skills: dice.next(4),
    work_h_per_day: pick(dice, [6, 8, 8, 10]),
    mostDaysAway: isTight ? 4 + dice.next(10) : Number.POSITIVE_INFINITY,
    maySleepAtSites: !happens(dice, trouble_fraction / 2),
    freeFrom: pick(dice, [0, 0, 3, 4.5]),
    pace_factor: pick(dice, [1, 1, 1.25]),
    turnaround_days: pick(dice, [0, 0.5, 1, 2]),
    cost_per_day: dice.next(20),
    ...{ limit_kg: isTight ? 60 : 1000, limit_L: isTight ? 90 : 1000, longest_m: isTight ? 3 : 9 },
    pools: list(pools, (pool) => pool).filter(() => happens(dice, 0.6)),
    done_count: dice.next(3),
  };
}

function madeStores(
  dice: Dice,
  places: number,
  goods: number,
  jobs: number,
  periods: number,
  horizon_days: number,
  hasForward: boolean,
  pools: number,
): Store[] {
  const own = (): Store => ({
    node: dice.next(places),
    filledBy: null,
    arrivals: list(goods, (one) =>
      list(1 + dice.next(4), (at) => ({
        ...{ arrivalId: `R${one}-${at}`, goods: one, day: at === 0 ? 0 : dice.next(horizon_days / 2) },
        ...{ quantity_count: 1 + dice.next(jobs), slip_days: { low: 0, likely: pick(dice, [0, 0, 2.5]), high: 9 } },
      })),
    )
      .flat()
      .sort((a, b) => a.day - b.day),
  });
  const days = () =>
    list(periods, () => (happens(dice, 0.15) ? Number.POSITIVE_INFINITY : pick(dice, [0, 0.5, 1, 2.25, 2.25])));
  const perPeriod = () => list(periods, () => dice.next(9));
  const forward = (store: number): Store => ({
    ...{ node: dice.next(places), arrivals: [] },
    filledBy: {
      ...{ store, there_days: days(), back_days: days(), limit_kg: pick(dice, [15, 50, 500]) },
      ...{ limit_L: pick(dice, [30, 500]), pool: pools > 0 && happens(dice, 0.7) ? dice.next(pools) : null },
      ...{ there_cost: perPeriod(), back_cost: perPeriod(), there_fuel_L: perPeriod(), back_fuel_L: perPeriod() },
    },
  });
  const stores = [own()];
  if (hasForward) stores.push(forward(0), ...(happens(dice, 0.4) ? [forward(1)] : []));
  return stores;
}

/** A plan drawn for a rollout: jobs in any order on any crew, some left out, some trips told to wait. */
export function madePlan(problem: RolloutProblem, seed: number, isWhole = false): RolloutPlan {
  const dice = seededDice(seed);
  const trips = problem.crews.map((): { stops: number[]; notBefore: number; isLocked: boolean }[] => []);
  const order = problem.jobs.map((_, job) => job);
  for (let at = order.length - 1; at > 0; at--) {
    const other = dice.next(at + 1);
    [order[at], order[other]] = [order[other]!, order[at]!];
  }
  for (const job of order) {
    if (!isWhole && happens(dice, 0.05)) continue;
    const own = pick(dice, trips);
    const notBefore = !isWhole && happens(dice, 0.1) ? dice.next(problem.horizon_days / 3) + pick(dice, [0, 0.5]) : 0;
    if (own.length === 0 || happens(dice, 0.4)) own.push({ stops: [job], notBefore, isLocked: false });
    else own.at(-1)!.stops.push(job);
  }
  if (!isWhole && happens(dice, 0.1)) pick(dice, trips).push({ stops: [], notBefore: 0, isLocked: false });
  return { trips };
}

/** What is drawn for a rollout: everything otherwise than likely. */
export function madeDrawn(problem: RolloutProblem, seed: number): Drawn {
  const dice = seededDice(seed);
  const wet = dice.next(50) / 100;
  return {
    install_days: Float64Array.from(problem.jobs, ({ install_days }) => install_days.likely * (0.6 + dice.next(9) / 8)),
    pace_factor: Float64Array.from(problem.crews, () => 0.8 + dice.next(5) / 10),
    slip_days: problem.stores.map(({ arrivals }) => Float64Array.from(arrivals, () => dice.next(20) / 2)),
    closed: problem.areaIds.map(() =>
      Uint8Array.from({ length: problem.horizon_days }, () => (happens(dice, wet) ? 1 : 0)),
    ),
    leg_factor: pick(dice, [1, 1.25, 0.9]),
  };
}
