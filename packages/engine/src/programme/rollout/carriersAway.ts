import type { Pool, RolloutProblem } from './problem.ts';

type Away = NonNullable<Pool['away']>[number];

/**
 * How many carriers of a pool are left on the day on which most of them are away?
 *
 * @param pool - carriers [count] and when how many of them are away [day]
 * @returns how many are there at the least [count]; below 1: on some day none is
 * @definition docs/methods/rollout.md, A trip
 */
export function leastThere(pool: Pool): number {
  const { carriers_count, away = [] } = pool;
  const most = away.reduce((found, { from }) => Math.max(found, awayOn(away, from)), 0);
  return carriers_count - most;
}

/** More are away from some day on than the day before only where one's absence begins: those days alone are looked at. */
function awayOn(away: readonly Away[], day: number): number {
  return away.reduce((sum, { from, to, carriers_count }) => sum + (from <= day && day <= to ? carriers_count : 0), 0);
}

/** May a trip or a haul have to wait for a carrier of a pool: are there, on some day, fewer than crews and stores want? */
export function isWanted(pool: Pool, at: number, { crews, stores }: Pick<RolloutProblem, 'crews' | 'stores'>): boolean {
  const filled = stores.filter(({ filledBy }) => filledBy?.pool === at).length;
  return leastThere(pool) < filled + crews.filter(({ pools }) => pools.includes(at)).length;
}

/**
 * The same rollout for the search: a crew that alone uses a carrier of which none is there from the day it is free on is free when one is there
 * again. So it need not be timed with all others for an absence that only puts its first trip off. Where crews share goods it asks for them later than it
 * would: there it is not the same.
 */
export function freeAfterAbsences(problem: RolloutProblem): RolloutProblem {
  const freeFrom = problem.crews.map((crew) => crew.freeFrom);
  let isSame = true;
  const pools = problem.pools.map((pool, at) => {
    const { carriers_count, away = [] } = pool;
    const users = problem.crews.flatMap((crew, nth) => (crew.pools.includes(at) ? [nth] : []));
    if (problem.stores.some(({ filledBy }) => filledBy?.pool === at)) return pool;
    if (users.length !== 1 || away.length === 0 || carriers_count <= 0) return pool;
    const [user = 0] = users;
    let day = Math.max(0, Math.ceil(freeFrom[user]!));
    while (day < problem.horizon_days && awayOn(away, day) >= carriers_count) day++;
    const left = away.filter(({ to }) => to >= day);
    if (left.length === away.length) return pool;
    isSame = false;
    freeFrom[user] = Math.max(freeFrom[user]!, day);
    return { ...pool, away: left };
  });
  if (isSame) return problem;
  return { ...problem, pools, crews: problem.crews.map((crew, at) => ({ ...crew, freeFrom: freeFrom[at]! })) };
}
