import { leapYear_days, loadSlack_kg, timeSlack_days } from './constants.ts';
import type { CrewTrips } from './crewTrips.ts';
import { closedOf, goLeg } from './goLeg.ts';
import { type BrokenKind, brokenKinds, type ReadyCrew, type Retiming } from './retiming.ts';
import { afterDays, endDay, firstHour } from './workDays.ts';

const numberOf = Object.fromEntries(brokenKinds.map((kind, at) => [kind, at])) as Record<BrokenKind, number>;

/** Notes that something is broken. */
export function note(ready: Retiming, kind: BrokenKind, crew: number, trip: number, what: number, by: number): void {
  const { broken } = ready;
  const at = broken.count++;
  broken.kind[at] = numberOf[kind];
  broken.crew[at] = crew;
  broken.trip[at] = trip;
  broken.what[at] = what;
  broken.by[at] = by;
}

/** A job that is not done: everything at the horizon. */
export function passOver(ready: Retiming, job: number): void {
  const { horizon_days } = ready;
  ready.arrives[job] = horizon_days;
  ready.starts[job] = horizon_days;
  ready.ends[job] = horizon_days;
  ready.handOver[job] = horizon_days;
  ready.service[job] = horizon_days;
}

/** What is on board from each stop on, as the trip sets out for it. */
export function loadTrip(ready: Retiming, trips: CrewTrips, from: number, to: number): void {
  const { aboard_kg, aboard_L, aboard_m } = ready;
  let [kg, litres, longest_m] = [0, 0, 0];
  for (let at = to - 1; at >= from; at--) {
    const job = trips.stops[at]!;
    kg += ready.kg[job]!;
    litres += ready.litres[job]!;
    longest_m = Math.max(longest_m, ready.longest_m[job]!);
    aboard_kg[at - from] = kg;
    aboard_L[at - from] = litres;
    aboard_m[at - from] = longest_m;
  }
}

/**
 * Times one trip that may leave at `time`, the start of a working day: stops, way home, cost. False where it is not made: no stop can be
 * reached. Needs `loadTrip` before it.
 */
// long: the trip is one walk over its stops; times, loads and what is broken of a stop follow from the same leg
export function rideTrip(
  ready: Retiming,
  crewAt: number,
  trips: CrewTrips,
  trip: number,
  from: number,
  to: number,
  time: number,
): boolean {
  const crew = ready.crews[crewAt]!;
  const { leg, horizon_days, places } = ready;
  const times = ready.tripTimes[crewAt]!;
  const { base } = crew.crew;
  let node = base;
  let now = time;
  let leaves = -1;
  let cost = 0;
  let fuel_L = 0;
  let done = ready.doneJobs[crewAt]!;
  if (crew.storeNode !== base) {
    now = goLeg(ready, crew, base, crew.storeNode, time);
    if (now === Number.POSITIVE_INFINITY) {
      note(ready, leg.isBeyond ? 'beyondHorizon' : 'noWay', crewAt, trip, -1, 0);
      for (let at = from; at < to; at++) passOver(ready, trips.stops[at]!);
      return false;
    }
    leaves = setOut(ready, crew);
    cost += leg.legs!.cost[leg.at]!;
    fuel_L += leg.legs!.fuel_L[leg.at]!;
    node = crew.storeNode;
  }
  for (let at = from; at < to; at++) {
    const job = trips.stops[at]!;
    passOver(ready, job);
    if ((ready.skills[job]! & ~crew.crew.skills) !== 0) note(ready, 'noSkill', crewAt, trip, job, 0);
    const arrives = goLeg(ready, crew, node, places + job, now);
    if (arrives === Number.POSITIVE_INFINITY) {
      note(ready, leg.isBeyond ? 'beyondHorizon' : 'noWay', crewAt, trip, job, 0);
      continue;
    }
    if (leaves < 0) leaves = leg.legs === null ? leg.start : setOut(ready, crew);
    if (leg.legs !== null) {
      cost += leg.legs.cost[leg.at]!;
      fuel_L += leg.legs.fuel_L[leg.at]!;
    }
    checkLoad(ready, crewAt, trip, job, at - from);
    node = places + job;
    ready.arrives[job] = arrives;
    now = work(ready, crewAt, trip, job, arrives, done + 1);
    if (ready.handOver[job]! < horizon_days) done++;
  }
  if (leaves < 0) return false;
  const home = goLeg(ready, crew, node, base, now);
  let back = home;
  if (home === Number.POSITIVE_INFINITY) {
    note(ready, leg.isBeyond ? 'beyondHorizon' : 'noWay', crewAt, trip, -1, 0);
    back = horizon_days;
  } else if (leg.legs !== null) {
    cost += leg.legs.cost[leg.at]!;
    fuel_L += leg.legs.fuel_L[leg.at]!;
  }
  const lastDay = Math.max(leaves, endDay(back));
  const nights = lastDay - leaves;
  if (nights > crew.crew.mostDaysAway) note(ready, 'tooLongAway', crewAt, trip, -1, nights - crew.crew.mostDaysAway);
  times.leaves[trip] = leaves;
  times.back[trip] = back;
  times.nights[trip] = nights;
  times.kg[trip] = ready.aboard_kg[0]!;
  times.litres[trip] = ready.aboard_L[0]!;
  times.cost[trip] = cost + (nights + 1) * crew.crew.cost_per_day + fuel_L * ready.problem.fuelPrice_per_L;
  times.fuel_L[trip] = fuel_L;
  ready.doneAfter[crewAt] = done;
  return true;
}

/** The day a trip's first leg is begun: the first on which its hours count. */
function setOut(ready: Retiming, crew: ReadyCrew): number {
  const { start, legs, at } = ready.leg;
  const hours = legs!.before_h[at]! + legs!.river_h[at]! + legs!.after_h[at]!;
  return Math.floor(hours > 0 ? firstHour(crew.calendar, closedOf(ready, legs!, at), start) : start);
}

/** Does what is on board pass the leg to this stop? */
function checkLoad(ready: Retiming, crewAt: number, trip: number, job: number, stop: number): void {
  const { crew } = ready.crews[crewAt]!;
  const { legs, at } = ready.leg;
  const limit = legs === null ? -1 : legs.limitOf[at]!;
  const most_kg = limit < 0 ? crew.limit_kg : Math.min(crew.limit_kg, legs!.limit_kg[limit]!);
  const most_L = limit < 0 ? crew.limit_L : Math.min(crew.limit_L, legs!.limit_L[limit]!);
  const longest_m = limit < 0 ? crew.longest_m : Math.min(crew.longest_m, legs!.longest_m[limit]!);
  const over_kg = ready.aboard_kg[stop]! - most_kg;
  const over_L = ready.aboard_L[stop]! - most_L;
  const over_m = ready.aboard_m[stop]! - longest_m;
  if (over_kg > loadSlack_kg) note(ready, 'tooHeavy', crewAt, trip, job, over_kg);
  if (over_L > loadSlack_kg) note(ready, 'tooBulky', crewAt, trip, job, over_L);
  if (over_m > loadSlack_kg) note(ready, 'tooLong', crewAt, trip, job, over_m);
}

/** The work at a stop, in the first window that holds all of it; gives when the crew goes on. */
function work(ready: Retiming, crewAt: number, trip: number, job: number, arrives: number, nth: number): number {
  const { calendar, crew } = ready.crews[crewAt]!;
  const { windowFrom, windowTo, horizon_days } = ready;
  const days = ready.days[job]! * ready.pace[crewAt]! * ready.learned[nth]!;
  const area = ready.area[job]!;
  const closed = area < 0 ? null : ready.closed[area]!;
  const last = ready.windowAt[job + 1]!;
  let isBeyond = false;
  for (let window = ready.windowAt[job]!; window < last; window++) {
    const until = windowTo[window]!;
    if (until < Math.floor(arrives)) continue;
    const starts = firstHour(calendar, closed, Math.max(arrives, windowFrom[window]!));
    const ends = starts === Number.POSITIVE_INFINITY ? starts : afterDays(calendar, closed, starts, days);
    const day = ends === Number.POSITIVE_INFINITY ? horizon_days : Math.max(Math.floor(starts), endDay(ends));
    if (day <= until && day < horizon_days) {
      handOver(ready, crewAt, trip, job, starts, ends, day);
      if (!crew.maySleepAtSites) {
        const came = ready.leg.legs === null ? Math.floor(arrives) : endDay(arrives);
        const nights = Math.floor(ends) - came;
        if (nights > 0) note(ready, 'sleepsAtSite', crewAt, trip, job, nights);
      }
      return ends;
    }
    isBeyond ||= until >= horizon_days - 1;
  }
  note(ready, isBeyond || arrives >= horizon_days - timeSlack_days ? 'beyondHorizon' : 'notOpen', crewAt, trip, job, 0);
  return arrives;
}

function handOver(
  ready: Retiming,
  crewAt: number,
  trip: number,
  job: number,
  starts: number,
  ends: number,
  day: number,
): void {
  ready.starts[job] = starts;
  ready.ends[job] = ends;
  ready.handOver[job] = day;
  ready.service[job] = day + ready.wait_days[job * leapYear_days + ready.dayOfYear[day]!]!;
  const late = day - ready.finishBy[job]!;
  if (late > 0) note(ready, 'late', crewAt, trip, job, late);
}
