import { timeSlack_days } from './constants.ts';
import type { ReadyCrew, ReadyLegs, Retiming } from './retiming.ts';
import { afterDays, afterRiver, endDay, firstHour } from './workDays.ts';

/**
 * When does a crew that may set out at `time` arrive? It sets out at once or on the first day of a later period, whichever arrives earlier; Infinity where it
 * cannot. What was gone, and from when, stands in `leg` afterwards.
 */
export function goLeg(ready: Retiming, crew: ReadyCrew, from: number, to: number, time: number): number {
  const { leg, periodFrom, periodOf, horizon_days } = ready;
  leg.isBeyond = false;
  leg.start = time;
  leg.legs = null;
  if (from === to) return time;
  const at = from * ready.nodes + to;
  let best = Number.POSITIVE_INFINITY;
  let start = time;
  let period = periodOf[Math.min(horizon_days, Math.floor(time))]!;
  for (;;) {
    const arrives = straight(ready, crew, at, start);
    if (arrives < best - timeSlack_days) {
      best = arrives;
      leg.start = firstHour(crew.calendar, null, start);
      leg.legs = crew.legs[periodOf[Math.floor(leg.start)]!]!;
    }
    period++;
    if (period >= periodFrom.length) break;
    start = periodFrom[period]!;
    if (start >= best || start >= horizon_days) break;
  }
  return best;
}

/** When it arrives if it sets out on the first working day from `time` on and waits for no period; Infinity where it cannot. */
function straight(ready: Retiming, crew: ReadyCrew, at: number, time: number): number {
  const { calendar } = crew;
  const { periodOf, leg_factor } = ready;
  const start = firstHour(calendar, null, time);
  if (start === Number.POSITIVE_INFINITY) {
    ready.leg.isBeyond = true;
    return start;
  }
  const period = periodOf[Math.floor(start)]!;
  const legs = crew.legs[period]!;
  const before_h = legs.before_h[at]! * leg_factor;
  const river_h = legs.river_h[at]! * leg_factor;
  const after_h = legs.after_h[at]! * leg_factor;
  if (!(before_h + river_h + after_h < Number.POSITIVE_INFINITY)) return Number.POSITIVE_INFINITY;
  const closed = closedOf(ready, legs, at);
  const day_h = crew.crew.work_h_per_day;
  let arrives = afterDays(calendar, closed, start, before_h / day_h);
  if (arrives < Number.POSITIVE_INFINITY && river_h > 0)
    arrives = afterRiver(calendar, closed, arrives, river_h, day_h, crew.river_h);
  if (arrives < Number.POSITIVE_INFINITY) arrives = afterDays(calendar, closed, arrives, after_h / day_h);
  const last = arrives < Number.POSITIVE_INFINITY ? endDay(arrives) : ready.horizon_days - 1;
  for (let reached = period + 1; reached <= periodOf[Math.max(0, last)]!; reached++)
    if (!isOpen(crew.legs[reached]!, at)) return Number.POSITIVE_INFINITY;
  if (arrives === Number.POSITIVE_INFINITY) ready.leg.isBeyond = true;
  return arrives;
}

function isOpen(legs: ReadyLegs, at: number): boolean {
  return legs.before_h[at]! + legs.river_h[at]! + legs.after_h[at]! < Number.POSITIVE_INFINITY;
}

/** The days on which the area of a leg is closed; null: none. */
export function closedOf(ready: Retiming, legs: ReadyLegs, at: number): Uint8Array | null {
  const area = legs.areaOf[at]!;
  return area === 0 ? null : ready.closed[area - 1]!;
}
