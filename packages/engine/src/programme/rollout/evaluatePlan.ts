import { crewsTogether, setDrawn } from './crewsTogether.ts';
import { type CrewTrips, crewTripsOf } from './crewTrips.ts';
import { retiming } from './makeReady.ts';
import type { Broken, Drawn, Outcome, RolloutPlan, RolloutProblem, TimedHaul, TimedTrip } from './problem.ts';
import { brokenKinds, type Retiming, waits } from './retiming.ts';
import { passOver } from './rideTrip.ts';

/**
 * What comes of a plan: the day each site is handed over and first serves, nights, loads, cost, fuel, and everything that is broken.
 *
 * @param problem - the rollout as numbers, or the same made ready by `retiming` (for many plans) [day, kg, L, person]
 * @param plan - who goes where in which order; each job once at the most [count]
 * @param drawn - what turns out otherwise than likely; null: nothing [day]
 * @returns trips, hauls, sums and what is broken [day, person-day, kg, L]
 * @law the order in which jobs, stores and goods are listed changes nothing
 * @definition docs/methods/rollout.md
 */
export function evaluatePlan(
  problem: RolloutProblem | Retiming,
  plan: RolloutPlan,
  drawn: Drawn | null = null,
): Outcome {
  const ready = 'tripTimes' in problem ? problem : retiming(problem);
  const tripsOf = ready.problem.crews.map((_, crew) => crewTripsOf(plan.trips[crew] ?? []));
  const inPlan = jobsOf(ready, tripsOf);
  setDrawn(ready, drawn);
  const crews = tripsOf.map((_, crew) => crew);
  crewsTogether(ready, crews, tripsOf);
  return outcomeOf(ready, tripsOf, inPlan);
}

/** Which jobs the trips serve: 1 each. */
function jobsOf(ready: Retiming, tripsOf: readonly CrewTrips[]): Uint8Array {
  const found = new Uint8Array(ready.problem.jobs.length);
  for (const { stops } of tripsOf)
    for (const job of stops) {
      if (!(job < found.length) || job < 0) throw new RangeError(`evaluatePlan: no job ${job}`);
      if (found[job] === 1) throw new RangeError(`evaluatePlan: job ${job} stands twice in the plan`);
      found[job] = 1;
    }
  return found;
}

function outcomeOf(ready: Retiming, tripsOf: readonly CrewTrips[], inPlan: Uint8Array): Outcome {
  const { problem, horizon_days } = ready;
  const broken = brokenFound(ready);
  for (const [job, isIn] of inPlan.entries()) {
    if (isIn === 1) continue;
    passOver(ready, job);
    broken.push({ kind: 'leftOut', job });
  }
  let [waiting, waiting_personDays, finish] = [0, 0, 0];
  for (let job = 0; job < problem.jobs.length; job++) {
    waiting += ready.weight[job]! * ready.service[job]!;
    waiting_personDays += ready.people[job]! * ready.service[job]!;
    if (ready.handOver[job]! < horizon_days) finish = Math.max(finish, ready.handOver[job]!);
  }
  const trips = tripsOf.map((one, crew) => timedTrips(ready, crew, one));
  const hauls = timedHauls(ready);
  const hauled_L = hauls.reduce(
    (sum, { store, trips_count }) => sum + trips_count * problem.stores[store]!.filledBy!.fuel_L_per_trip,
    0,
  );
  return {
    ...{ trips, hauls, waiting, waiting_personDays, finish, broken },
    cost: ready.crewCost.reduce((sum, cost) => sum + cost, 0),
    fuel_L: hauled_L + trips.flat().reduce((sum, trip) => sum + trip.fuel_L, 0),
  };
}

function timedTrips(ready: Retiming, crew: number, { stops, ends, trips_count }: CrewTrips): readonly TimedTrip[] {
  const times = ready.tripTimes[crew]!;
  return Array.from({ length: trips_count }, (_, trip) => ({
    ready: times.ready[trip]!,
    leaves: times.leaves[trip]!,
    waitsFor: waits[times.waitsFor[trip]!]!,
    stops: Array.from(stops.subarray(trip === 0 ? 0 : ends[trip - 1]!, ends[trip]!), (job) => ({
      job,
      arrives: ready.arrives[job]!,
      starts: ready.starts[job]!,
      ends: ready.ends[job]!,
      handOverDay: ready.handOver[job]!,
      serviceDay: ready.service[job]!,
    })),
    back: times.back[trip]!,
    nights_count: times.nights[trip]!,
    kg: times.kg[trip]!,
    litres: times.litres[trip]!,
    cost: times.cost[trip]!,
    fuel_L: times.fuel_L[trip]!,
  }));
}

function timedHauls({ hauls }: Retiming): readonly TimedHaul[] {
  return Array.from({ length: hauls.count }, (_, at) => ({
    store: hauls.store[at]!,
    leaves: hauls.leaves[at]!,
    arrives: hauls.arrives[at]!,
    trips_count: hauls.trips_count[at]!,
    forCrew: hauls.forCrew[at]!,
    forTrip: hauls.forTrip[at]!,
  }));
}

function brokenFound({ broken }: Retiming): Broken[] {
  const found: Broken[] = [];
  for (let at = 0; at < broken.count; at++) {
    const kind = brokenKinds[broken.kind[at]!]!;
    const [crew, trip, what, by] = [broken.crew[at]!, broken.trip[at]!, broken.what[at]!, broken.by[at]!];
    if (kind === 'noWay') found.push({ kind, crew, trip, job: what < 0 ? null : what });
    else if (kind === 'tooLongAway') found.push({ kind, crew, trip, by });
    else if (kind === 'noStock') found.push({ kind, crew, trip, goods: what });
    else if (kind === 'noSkill' || kind === 'notOpen') found.push({ kind, crew, trip, job: what });
    else if (kind === 'beyondHorizon') {
      if (!found.some((one) => one.kind === kind && one.crew === crew && one.trip === trip))
        found.push({ kind, crew, trip });
    } else found.push({ kind, crew, trip, job: what, by });
  }
  return found;
}
