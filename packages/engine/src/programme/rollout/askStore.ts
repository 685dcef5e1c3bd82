import { loadSlack_kg, timeSlack_days } from './constants.ts';
import type { CrewTrips } from './crewTrips.ts';
import type { Haul } from './problem.ts';
import type { Retiming } from './retiming.ts';
import { note } from './rideTrip.ts';

/**
 * From which day on are the goods of a trip at the store of its crew? Infinity where they never are: what is missing is noted. Nothing is taken yet:
 * `takeGoods` does that, once the trip is known to be made.
 */
export function askStore(
  ready: Retiming,
  crewAt: number,
  trips: CrewTrips,
  trip: number,
  from: number,
  to: number,
): number {
  const { goods, need, hauls } = ready;
  need.fill(0);
  for (let at = from; at < to; at++)
    for (let one = 0; one < goods; one++) need[one]! += ready.needs[trips.stops[at]! * goods + one]!;
  hauls.tried = hauls.count;
  return bring(ready, ready.crews[crewAt]!.crew.store, crewAt, trip);
}

/** What the trip asked for last is its own from now on, and the hauls that bring it are gone. */
export function takeGoods(ready: Retiming, store: number): void {
  const { goods, need, hauls } = ready;
  hauls.count = hauls.tried;
  let last = store;
  for (let behind = filledBy(ready, store); behind !== null; behind = filledBy(ready, last)) {
    ready.haulFree[last] = ready.haulTried[last]!;
    last = behind.store;
  }
  for (let one = 0; one < goods; one++) {
    if (need[one]! <= loadSlack_kg) continue;
    const state = ready.stock[last * goods + one]!;
    state.asked += need[one]!;
    state.at = state.tried;
  }
}

/** The day on which the goods asked for last were where goods come themselves. */
export function goodsBehind(ready: Retiming, store: number): number {
  let last = store;
  for (let behind = filledBy(ready, last); behind !== null; behind = filledBy(ready, last)) last = behind.store;
  let day = 0;
  for (let one = 0; one < ready.goods; one++) {
    const state = ready.stock[last * ready.goods + one]!;
    if (ready.need[one]! > loadSlack_kg) day = Math.max(day, state.day[state.tried]!);
  }
  return day;
}

/** The day from which all of `need` is at a store; hauls to it are tried, not yet kept. */
function bring(ready: Retiming, store: number, crewAt: number, trip: number): number {
  const haul = filledBy(ready, store);
  if (haul === null) return comeTo(ready, store, crewAt, trip);
  const day = bring(ready, haul.store, crewAt, trip);
  if (day === Number.POSITIVE_INFINITY) return day;
  const trips_count = haulTrips(ready, haul);
  ready.haulTried[store] = ready.haulFree[store]!;
  if (trips_count === 0) return day;
  const { hauls } = ready;
  let leaves = 0;
  let arrives = Number.POSITIVE_INFINITY;
  let free = ready.haulFree[store]!;
  for (let at = 0; at < trips_count; at++) {
    const begins = Math.max(day, Math.ceil(free - timeSlack_days));
    arrives = haulDays(ready, haul.there_days, begins);
    if (arrives === Number.POSITIVE_INFINITY) {
      note(ready, ready.leg.isBeyond ? 'beyondHorizon' : 'noWay', crewAt, trip, -1, 0);
      return arrives;
    }
    if (at === 0) leaves = ready.leg.start;
    free = haulDays(ready, haul.back_days, arrives);
  }
  ready.haulTried[store] = free;
  const at = hauls.tried++;
  hauls.store[at] = store;
  hauls.leaves[at] = leaves;
  hauls.arrives[at] = arrives;
  hauls.trips_count[at] = trips_count;
  hauls.forCrew[at] = crewAt;
  hauls.forTrip[at] = trip;
  return Math.ceil(arrives - timeSlack_days);
}

/** How often a haul goes for what is on board; more than the horizon has days where its carrier takes nothing. */
function haulTrips(ready: Retiming, haul: Haul): number {
  const [kg, litres] = [ready.aboard_kg[0]!, ready.aboard_L[0]!];
  const byMass = kg > loadSlack_kg ? Math.max(1, Math.ceil((kg - loadSlack_kg) / haul.limit_kg)) : 0;
  const byBulk = litres > loadSlack_kg ? Math.max(1, Math.ceil((litres - loadSlack_kg) / haul.limit_L)) : 0;
  const needed = Math.max(byMass, byBulk);
  const most = ready.horizon_days + 1;
  return Math.min(needed, most);
}

/** The day on which what came, less what was asked for before, is enough. */
function comeTo(ready: Retiming, store: number, crewAt: number, trip: number): number {
  const { goods, need, horizon_days } = ready;
  let day = 0;
  for (let one = 0; one < goods; one++) {
    if (need[one]! <= loadSlack_kg) continue;
    const state = ready.stock[store * goods + one]!;
    const wanted = state.asked + need[one]! - loadSlack_kg;
    let at = state.at;
    while (at < state.total.length && state.total[at]! < wanted) at++;
    if (at >= state.total.length || state.day[at]! >= horizon_days) {
      note(ready, 'noStock', crewAt, trip, one, 0);
      return Number.POSITIVE_INFINITY;
    }
    state.tried = at;
    day = Math.max(day, state.day[at]!);
  }
  return day;
}

/** When a haul that may begin at `time` is there: at once or on the first day of a later period, whichever is earlier. */
function haulDays(ready: Retiming, days: readonly number[], time: number): number {
  const { periodFrom, periodOf, horizon_days, leg, leg_factor } = ready;
  leg.isBeyond = time >= horizon_days;
  let best = Number.POSITIVE_INFINITY;
  let start = time;
  let period = periodOf[Math.min(horizon_days, Math.floor(time))]!;
  for (;;) {
    const there = start + days[period]! * leg_factor;
    const last = Math.min(horizon_days, Math.max(Math.floor(start), Math.ceil(there - timeSlack_days) - 1));
    let isOpen = there < Number.POSITIVE_INFINITY && start < horizon_days;
    for (let reached = period + 1; isOpen && reached <= periodOf[last]!; reached++)
      isOpen = days[reached]! < Number.POSITIVE_INFINITY;
    if (isOpen && there > horizon_days) leg.isBeyond = true;
    else if (isOpen && there < best - timeSlack_days) {
      best = there;
      leg.start = start;
    }
    period++;
    if (period >= periodFrom.length) return best;
    start = periodFrom[period]!;
    if (start >= best || start >= horizon_days) return best;
  }
}

function filledBy(ready: Retiming, store: number): Haul | null {
  return ready.problem.stores[store]!.filledBy;
}
