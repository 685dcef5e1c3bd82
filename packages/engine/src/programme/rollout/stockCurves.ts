import { arrivalDay } from './bounds/index.ts';
import type { Outcome, RolloutPlan, RolloutProblem } from './problem.ts';

/** Some of one of the goods that come to a store or go from it on a day. */
export interface StockMove {
  readonly store: number;
  readonly goods: number;
  readonly day: number;
  /** Less than 0: it goes. */
  readonly count: number;
  /** The arrival it is, by its id, none where it lay there; else the trip it is for. */
  readonly by:
    | { readonly kind: 'arrival'; readonly arrivalId: string }
    | { readonly kind: 'trip' | 'haul'; readonly crew: number; readonly trip: number };
}

/**
 * What comes to each store and goes from it: what arrives, what trips and hauls take out, what hauls bring.
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param plan - who goes where [count]
 * @param outcome - what came of it [day]
 * @returns moves [count, day], those of arrivals first, then those of trips, then those of hauls
 * @definition ours
 */
export function stockMoves(problem: RolloutProblem, plan: RolloutPlan, outcome: Outcome): readonly StockMove[] {
  const { stores, goods, crews, jobs } = problem;
  const needsOf = (crew: number, trip: number) =>
    goods.map((_, which) =>
      (plan.trips[crew]?.[trip]?.stops ?? []).reduce((sum, job) => sum + (jobs[job]!.needs[which] ?? 0), 0),
    );
  const moves: StockMove[] = [];
  for (const [store, { arrivals }] of stores.entries())
    for (const arrival of arrivals) {
      const by = { kind: 'arrival', arrivalId: arrival.arrivalId } as const;
      moves.push({ store, goods: arrival.goods, day: arrivalDay(arrival), count: arrival.quantity_count, by });
    }
  for (const [crew, trips] of outcome.trips.entries())
    for (const [trip, { leaves }] of trips.entries()) {
      const one = { store: crews[crew]!.store, day: Math.floor(leaves), by: { kind: 'trip', crew, trip } as const };
      for (const [which, need] of needsOf(crew, trip).entries()) moves.push({ ...one, goods: which, count: -need });
    }
  for (const { store, leaves, arrives, forCrew: crew, forTrip: trip } of outcome.hauls) {
    const behind = stores[store]!.filledBy!.store;
    const by = { kind: 'haul', crew, trip } as const;
    for (const [which, need] of needsOf(crew, trip).entries()) {
      moves.push({ store: behind, goods: which, day: Math.floor(leaves), count: -need, by });
      moves.push({ store, goods: which, day: Math.floor(arrives), count: need, by });
    }
  }
  return moves.filter(({ count }) => count !== 0);
}

/** What a store has of one of the goods after a day on which that changes. */
export interface StockPoint {
  readonly day: number;
  readonly in_count: number;
  readonly out_count: number;
  readonly left_count: number;
}

export interface StockCurve {
  readonly store: number;
  readonly goods: number;
  readonly points: readonly StockPoint[];
}

/**
 * What lies in each store from day to day? What arrives, what trips and hauls take out, what hauls bring.
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param plan - who goes where [count]
 * @param outcome - what came of it [day]
 * @returns a curve for each store and each of the goods that moves there [count]
 * @law what is left is never below 0 where the plan breaks nothing; what came less what went is what is left
 * @definition ours
 */
export function stockCurves(problem: RolloutProblem, plan: RolloutPlan, outcome: Outcome): readonly StockCurve[] {
  const byPlace = new Map<string, { in_count: number; out_count: number }>();
  const found = problem.stores.map(() => problem.goods.map(() => [] as number[]));
  for (const { store, goods, day, count } of stockMoves(problem, plan, outcome)) {
    const key = `${store} ${goods} ${day}`;
    const on = byPlace.get(key) ?? { in_count: 0, out_count: 0 };
    if (!byPlace.has(key)) found[store]![goods]!.push(day);
    if (count > 0) on.in_count += count;
    else on.out_count -= count;
    byPlace.set(key, on);
  }
  return found.flatMap((byGoods, store) =>
    byGoods.flatMap((days, goods) => {
      if (days.length === 0) return [];
      let left_count = 0;
      const points = days
        .sort((a, b) => a - b)
        .map((day) => {
          const { in_count, out_count } = byPlace.get(`${store} ${goods} ${day}`)!;
          left_count += in_count - out_count;
          return { day, in_count, out_count, left_count };
        });
      return [{ store, goods, points }];
    }),
  );
}
