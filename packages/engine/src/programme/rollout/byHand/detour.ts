import type { Retiming } from '../retiming.ts';
import { placeOf } from '../somePairs.ts';

/**
 * How much longer is the way of a crew if it comes by a site between two stops (null: from its store, and home)? By the ways as they are on a day [h];
 * Infinity where one of them cannot be gone or is not known.
 */
export function detour_h(
  ready: Retiming,
  crew: number,
  from: number | null,
  job: number,
  to: number | null,
  day: number,
): number {
  const { crew: own, storeNode } = ready.crews[crew]!;
  const start = from === null ? storeNode : ready.places + from;
  const end = to === null ? own.base : ready.places + to;
  const site = ready.places + job;
  const straight = legHours(ready, crew, start, end, day);
  const by = legHours(ready, crew, start, site, day) + legHours(ready, crew, site, end, day);
  return by - (straight < Number.POSITIVE_INFINITY ? straight : 0);
}

function legHours(ready: Retiming, crew: number, from: number, to: number, day: number): number {
  if (from === to) return 0;
  const { legs, pairs } = ready.crews[crew]!;
  const period = ready.periodOf[Math.max(0, Math.min(ready.horizon_days, Math.floor(day)))]!;
  const { before_h, river_h, after_h } = legs[period]!;
  const key = from * ready.nodes + to;
  const at = pairs === null ? key : placeOf(pairs, key);
  return at < 0 ? Number.POSITIVE_INFINITY : before_h[at]! + river_h[at]! + after_h[at]!;
}
