import { timeSlack_days } from './constants.ts';
import type { ReadyCrew, ReadyLegs, Retiming } from './retiming.ts';
import { placeAmong } from './somePairs.ts';
import { afterDays, afterRiver, endDay, firstHour } from './workDays.ts';

/**
 * When does a crew that may set out at `time` arrive? It sets out at once or on the first day of a later period, whichever arrives earlier; Infinity where it
 * cannot. What was gone, and from when, stands in `leg` afterwards.
 */
export function goLeg(ready: Retiming, crew: ReadyCrew, from: number, to: number, time: number): number {
  const { leg, periodFrom, periodOf, horizon_days } = ready;
  const { calendar } = crew;
  leg.start = time;
  leg.legs = null;
  if (from === to) return time;
  const key = from * ready.nodes + to;
  const at = crew.pairs === null ? key : placeAmong(ready, crew.crew.travel, crew.pairs, key);
  leg.at = at;
  let begins = firstHour(calendar, null, time);
  leg.isBeyond = begins === Number.POSITIVE_INFINITY;
  let best = begins;
  if (begins < Number.POSITIVE_INFINITY) {
    best = straight(ready, crew, at, begins);
    leg.start = begins;
    leg.legs = crew.legs[periodOf[Math.floor(begins)]!]!;
  }
  for (let period = periodOf[Math.min(horizon_days, Math.floor(time))]! + 1; period < periodFrom.length; period++) {
    const opens = periodFrom[period]!;
    if (opens >= best || opens >= horizon_days) break;
    begins = firstHour(calendar, null, opens);
    if (begins === Number.POSITIVE_INFINITY) break;
    const arrives = straight(ready, crew, at, begins);
    if (arrives >= best - timeSlack_days) continue;
    best = arrives;
    leg.start = begins;
    leg.legs = crew.legs[periodOf[Math.floor(begins)]!]!;
  }
  return best;
}

/** When it arrives if it sets out at `start`, on a working day, and waits for no period; Infinity where it cannot. */
function straight(ready: Retiming, crew: ReadyCrew, at: number, start: number): number {
  const { calendar } = crew;
  const { periodOf, leg_factor } = ready;
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
