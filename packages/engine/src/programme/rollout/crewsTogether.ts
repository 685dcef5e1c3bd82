import { askStore, goodsBehind, takeGoods } from './askStore.ts';
import { timeSlack_days } from './constants.ts';
import type { CrewTrips } from './crewTrips.ts';
import { clearHolds, dropHolds, hold, keepHolds, lastClash } from './poolHolds.ts';
import type { Drawn } from './problem.ts';
import { type Retiming, type TripTimes, tripTimes, waits } from './retiming.ts';
import { loadTrip, note, passOver, rideTrip } from './rideTrip.ts';
import { arriveLate } from './stockState.ts';
import { afterDays, nextOpen } from './workDays.ts';

const [, forNotBefore, forStock, forHaul, forCarrier, forWay] = waits.map((_, at) => at);

/**
 * Times the trips of one crew by themselves: exact where the crew shares neither stock, hauls nor carriers (`groupOf` tells with whom it does),
 * else as if the others had stayed at home. Nothing is allocated.
 *
 * @param ready - the problem made ready; times stand in it afterwards [count]
 * @param crew - which crew [index]
 * @param trips - its trips [count]
 * @returns sum of weight x first day of service of its jobs [person-day]; `crewCost`, `broken` and the times of trips and jobs stand in `ready`
 * @law the same trips give the same times, whatever was timed before
 * @definition docs/methods/rollout.md
 */
export function crewAlone(ready: Retiming, crew: number, trips: CrewTrips): number {
  clearShared(ready);
  begin(ready, crew, trips);
  for (let trip = 0; trip < trips.trips_count; trip++) nextTrip(ready, crew, trips);
  return finishCrew(ready, crew, trips);
}

/**
 * Times the trips of several crews together, who ask for stock and carriers in the order they are ready. Nothing is allocated.
 *
 * @param ready - the problem made ready; times stand in it afterwards [count]
 * @param crews - which crews [index], in the order of the problem
 * @param tripsOf - the trips of every crew of the problem [count]
 * @returns sum of weight x first day of service of their jobs [person-day]
 * @law crews of different groups are timed as each group by itself
 * @definition docs/methods/rollout.md
 */
export function crewsTogether(ready: Retiming, crews: ArrayLike<number>, tripsOf: readonly CrewTrips[]): number {
  clearShared(ready);
  for (let at = 0; at < crews.length; at++) begin(ready, crews[at]!, tripsOf[crews[at]!]!);
  for (;;) {
    let first = -1;
    let soonest = Number.POSITIVE_INFINITY;
    for (let at = 0; at < crews.length; at++) {
      const crew = crews[at]!;
      if (ready.nextTrip[crew]! >= tripsOf[crew]!.trips_count) continue;
      const asks = asksOn(ready, crew, tripsOf[crew]!);
      if (first >= 0 && asks >= soonest) continue;
      first = crew;
      soonest = asks;
    }
    if (first < 0) break;
    nextTrip(ready, first, tripsOf[first]!);
  }
  let waiting = 0;
  for (let at = 0; at < crews.length; at++) waiting += finishCrew(ready, crews[at]!, tripsOf[crews[at]!]!);
  return waiting;
}

/**
 * Says what turns out otherwise than likely in all that is timed from now on.
 *
 * @param ready - the problem made ready [count]
 * @param drawn - what was drawn; null: all goes as likely [day]
 * @definition docs/methods/rollout.md
 */
export function setDrawn(ready: Retiming, drawn: Drawn | null): void {
  const { problem, days, pace } = ready;
  for (const [at, job] of problem.jobs.entries())
    days[at] = drawn === null ? job.install_days.likely : drawn.install_days[at]!;
  for (const [at, crew] of problem.crews.entries())
    pace[at] = crew.pace_factor * (drawn === null ? 1 : drawn.pace_factor[at]!);
  for (let area = 0; area < ready.closed.length; area++) ready.closed[area] = drawn?.closed[area] ?? null;
  ready.leg_factor = drawn?.leg_factor ?? 1;
  for (const [store, { arrivals }] of problem.stores.entries())
    for (let goods = 0; goods < ready.goods; goods++)
      arriveLate(ready.stock[store * ready.goods + goods]!, arrivals, drawn?.slip_days[store] ?? null);
}

function clearShared(ready: Retiming): void {
  ready.broken.count = 0;
  ready.unknown.length = 0;
  ready.hauls.count = 0;
  ready.haulFree.fill(0);
  for (const state of ready.stock) {
    state.asked = 0;
    state.at = 0;
  }
  clearHolds(ready);
}

function begin(ready: Retiming, crewAt: number, trips: CrewTrips): void {
  const { crew } = ready.crews[crewAt]!;
  ready.nextTrip[crewAt] = 0;
  ready.doneJobs[crewAt] = crew.done_count;
  ready.crewCost[crewAt] = 0;
  ready.nextReady[crewAt] = dayStart(ready, crewAt, crew.freeFrom);
  if (ready.tripTimes[crewAt]!.ready.length < trips.trips_count) grow(ready.tripTimes[crewAt]!, trips.trips_count);
}

/** Room for more trips than any plan before had: kept from then on. */
function grow(times: TripTimes, trips_count: number): void {
  Object.assign(times, tripTimes(2 * trips_count));
}

/** The first working day that begins at `time` or later. */
function dayStart(ready: Retiming, crewAt: number, time: number): number {
  const day = Math.max(0, Math.ceil(time - timeSlack_days));
  return nextOpen(ready.crews[crewAt]!.calendar, null, day);
}

/** The day on which the next trip of a crew asks for what it needs. */
function asksOn(ready: Retiming, crewAt: number, { notBefore }: CrewTrips): number {
  const soonest = ready.nextReady[crewAt]!;
  const wanted = notBefore === null ? 0 : notBefore[ready.nextTrip[crewAt]!]!;
  return wanted > soonest ? dayStart(ready, crewAt, wanted) : soonest;
}

/** Times the next trip of a crew; one that is not made leaves the crew as it was. */
function nextTrip(ready: Retiming, crewAt: number, trips: CrewTrips): void {
  const times = ready.tripTimes[crewAt]!;
  const trip = ready.nextTrip[crewAt]!;
  const isMade = makeTrip(ready, crewAt, trips, trip, trip === 0 ? 0 : trips.ends[trip - 1]!, trips.ends[trip]!);
  ready.nextTrip[crewAt] = trip + 1;
  times.ready[trip] = ready.nextReady[crewAt]!;
  if (!isMade) {
    dropHolds(ready);
    leaveOut(ready, crewAt, trips, trip);
    return;
  }
  times.isMade[trip] = 1;
  ready.doneJobs[crewAt] = ready.doneAfter[crewAt]!;
  ready.crewCost[crewAt]! += times.cost[trip]!;
  const { crew, calendar } = ready.crews[crewAt]!;
  for (let at = 0; at < crew.pools.length; at++)
    hold(ready.holds[crew.pools[at]!]!, times.leaves[trip]!, lastDayOf(times, trip));
  keepHolds(ready);
  const turned = afterDays(calendar, null, times.back[trip]!, crew.turnaround_days);
  ready.nextReady[crewAt] = turned < ready.horizon_days ? dayStart(ready, crewAt, turned) : ready.horizon_days;
}

/** From asking to its return; each wait is looked at in turn. False where the trip is not made. */
function makeTrip(ready: Retiming, crewAt: number, trips: CrewTrips, trip: number, from: number, to: number): boolean {
  const { horizon_days, broken } = ready;
  const { crew, calendar, isStocked } = ready.crews[crewAt]!;
  const times = ready.tripTimes[crewAt]!;
  const asks = asksOn(ready, crewAt, trips);
  if (from === to) return false;
  let waitsFor = asks > ready.nextReady[crewAt]! ? forNotBefore! : 0;
  let leaves = asks;
  loadTrip(ready, trips, from, to);
  if (isStocked && asks < horizon_days) {
    const there = askStore(ready, crewAt, trips, trip, from, to);
    if (there === Number.POSITIVE_INFINITY) return false;
    if (there > asks) {
      const isHauled = ready.problem.stores[crew.store]!.filledBy !== null && goodsBehind(ready, crew.store) <= asks;
      leaves = dayStart(ready, crewAt, there);
      waitsFor = isHauled ? forHaul! : forStock!;
    }
  }
  const noted = broken.count;
  for (;;) {
    broken.count = noted;
    if (leaves >= horizon_days) {
      note(ready, 'beyondHorizon', crewAt, trip, -1, 0);
      return false;
    }
    if (!rideTrip(ready, crewAt, trips, trip, from, to, leaves)) return false;
    const clash = lastOfPools(ready, crew.pools, times.leaves[trip]!, lastDayOf(times, trip));
    if (clash < 0) break;
    waitsFor = forCarrier!;
    leaves = nextOpen(calendar, null, clash + 1);
  }
  if (isStocked) takeGoods(ready, crew.store);
  times.waitsFor[trip] = times.leaves[trip]! > leaves ? forWay! : waitsFor;
  return true;
}

function lastDayOf({ leaves, nights }: TripTimes, trip: number): number {
  return leaves[trip]! + nights[trip]!;
}

/** A trip that is not made: its jobs are passed over, its crew stays as it was. */
function leaveOut(ready: Retiming, crewAt: number, trips: CrewTrips, trip: number): void {
  const times = ready.tripTimes[crewAt]!;
  for (let at = trip === 0 ? 0 : trips.ends[trip - 1]!; at < trips.ends[trip]!; at++) passOver(ready, trips.stops[at]!);
  times.leaves[trip] = times.ready[trip]!;
  times.back[trip] = times.ready[trip]!;
  times.nights[trip] = 0;
  times.kg[trip] = 0;
  times.litres[trip] = 0;
  times.cost[trip] = 0;
  times.fuel_L[trip] = 0;
  times.waitsFor[trip] = 0;
  times.isMade[trip] = 0;
}

/** The last day from `from` to `to` on which all carriers of one of the pools are out or away; -1 where there is none. */
function lastOfPools(ready: Retiming, pools: readonly number[], from: number, to: number): number {
  let last = -1;
  for (let at = 0; at < pools.length; at++) last = Math.max(last, lastClash(ready, pools[at]!, from, to));
  return last;
}

/** Adds up what a crew's jobs wait and what its hauls cost. */
function finishCrew(ready: Retiming, crewAt: number, trips: CrewTrips): number {
  const { hauls, service, weight } = ready;
  const stops = trips.trips_count === 0 ? 0 : trips.ends[trips.trips_count - 1]!;
  let waiting = 0;
  for (let at = 0; at < stops; at++) waiting += weight[trips.stops[at]!]! * service[trips.stops[at]!]!;
  for (let at = 0; at < hauls.count; at++) {
    if (hauls.forCrew[at] !== crewAt) continue;
    ready.crewCost[crewAt]! += hauls.cost[at]!;
  }
  ready.crewWaiting[crewAt] = waiting;
  return waiting;
}
