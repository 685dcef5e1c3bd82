import type { PoolHolds, Retiming } from './retiming.ts';

/** The last day from `from` to `to` on which all carriers of a pool are out or away; -1 where there is none. */
export function lastClash(ready: Retiming, pool: number, from: number, to: number): number {
  const holds = ready.holds[pool]!;
  const most = ready.problem.pools[pool]!.carriers_count;
  if (most <= 0) return ready.horizon_days;
  let last = -1;
  for (let one = 0; one < holds.count; one++) {
    const day = Math.min(to, holds.to[one]!);
    if (day < from || day <= last || holds.from[one]! > day) continue;
    if (outOn(holds, day) >= most) last = day;
  }
  return last;
}

function outOn({ from, to, count }: PoolHolds, day: number): number {
  let found = 0;
  for (let one = 0; one < count; one++) if (from[one]! <= day && to[one]! >= day) found++;
  return found;
}

/** A carrier is out from one day to another, as long as the trip that asks is tried; `keepHolds` keeps it. */
export function hold(holds: PoolHolds, from: number, to: number): void {
  holds.from[holds.count] = from;
  holds.to[holds.count] = to;
  holds.count++;
}

/** What is held for the trip that asks is held for good. */
export function keepHolds({ holds }: Retiming): void {
  for (let pool = 0; pool < holds.length; pool++) holds[pool]!.kept_count = holds[pool]!.count;
}

/** The trip that asked is not made: what was held for it is free. */
export function dropHolds({ holds }: Retiming): void {
  for (let pool = 0; pool < holds.length; pool++) holds[pool]!.count = holds[pool]!.kept_count;
}

/** Only carriers that are away are held. */
export function clearHolds({ holds }: Retiming): void {
  for (let pool = 0; pool < holds.length; pool++) {
    const one = holds[pool]!;
    one.count = one.away_count;
    one.kept_count = one.away_count;
  }
}
