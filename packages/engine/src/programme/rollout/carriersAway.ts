import type { Crew, Pool } from './problem.ts';

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

/** May a trip of one crew have to wait for a carrier of a pool: are there, on some day, fewer than crews want? */
export function isWanted(pool: Pool, at: number, crews: readonly Pick<Crew, 'pools'>[]): boolean {
  return leastThere(pool) < crews.filter(({ pools }) => pools.includes(at)).length;
}
