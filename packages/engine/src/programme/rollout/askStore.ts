import { loadSlack_kg, timeSlack_days } from './constants.ts';
import type { CrewTrips } from './crewTrips.ts';
import { hold, lastClash } from './poolHolds.ts';
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
  const { hauls, run } = ready;
  const at = hauls.tried;
  run.back = ready.haulFree[store]!;
  hauls.cost[at] = 0;
  hauls.fuel_L[at] = 0;
  let end = at === 0 ? 0 : hauls.runsEnd[at - 1]!;
  for (let nth = 0; nth < trips_count; nth++) {
    goHaul(ready, haul, Math.max(day, Math.ceil(run.back - timeSlack_days)));
    if (run.arrives === Number.POSITIVE_INFINITY) {
      note(ready, ready.leg.isBeyond ? 'beyondHorizon' : 'noWay', crewAt, trip, -1, 0);
      return run.arrives;
    }
    if (nth === 0) hauls.leaves[at] = run.leaves;
    hauls.cost[at]! += run.cost;
    hauls.fuel_L[at]! += run.fuel_L;
    hauls.runs[end++] = run.leaves;
    hauls.runs[end++] = run.arrives;
    hauls.runs[end++] = run.returns;
    hauls.runs[end++] = run.back;
  }
  hauls.runsEnd[at] = end;
  ready.haulTried[store] = run.back;
  hauls.tried++;
  hauls.store[at] = store;
  hauls.arrives[at] = run.arrives;
  hauls.back[at] = run.back;
  hauls.kg[at] = ready.aboard_kg[0]!;
  hauls.trips_count[at] = trips_count;
  hauls.forCrew[at] = crewAt;
  hauls.forTrip[at] = trip;
  return Math.ceil(run.arrives - timeSlack_days);
}

/** One haul there and back, begun at `time` or, where its carrier is out or away meanwhile, on the day after: what comes of it stands in `ready.run`. */
function goHaul(ready: Retiming, haul: Haul, time: number): void {
  const { run, leg, horizon_days } = ready;
  for (let begins = time; ; ) {
    run.arrives = haulDays(ready, haul.there_days, begins);
    if (run.arrives === Number.POSITIVE_INFINITY) return;
    run.leaves = leg.start;
    run.back = haulDays(ready, haul.back_days, run.arrives);
    const isBack = run.back < Number.POSITIVE_INFINITY;
    run.returns = isBack ? leg.start : Number.POSITIVE_INFINITY;
    payHaul(ready, haul, isBack);
    const last = isBack ? Math.ceil(run.back - timeSlack_days) - 1 : horizon_days - 1;
    if (haul.pool === null || last < run.leaves) return;
    const clash = lastClash(ready, haul.pool, run.leaves, last);
    if (clash < 0) {
      hold(ready.holds[haul.pool]!, run.leaves, last);
      return;
    }
    begins = clash + 1;
  }
}

/** The way there by the period in which it set out, the way back by that in which it does; one that does not come back is not paid back. */
function payHaul(ready: Retiming, haul: Haul, isBack: boolean): void {
  const { run, leg, periodOf, problem } = ready;
  const there = periodOf[Math.floor(run.leaves)]!;
  run.cost = haul.there_cost[there]!;
  run.fuel_L = haul.there_fuel_L[there]!;
  if (isBack) {
    const back = periodOf[Math.floor(leg.start)]!;
    run.cost += haul.back_cost[back]!;
    run.fuel_L += haul.back_fuel_L[back]!;
  }
  run.cost += run.fuel_L * problem.fuelPrice_per_L;
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
