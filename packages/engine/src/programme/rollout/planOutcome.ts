import type { CrewTrips } from './crewTrips.ts';
import type { Broken, Outcome, RolloutProblem, TimedHaul, TimedTrip } from './problem.ts';
import { brokenKinds, type Retiming, waits } from './retiming.ts';

/** What a timed plan is told from: as crews, and whatever was broken in the order it was found. */
export type OutcomeParts = Pick<Outcome, 'trips' | 'hauls' | 'broken'>;

/** The sums of a timed plan; sites in no trip are told as left out. */
export function outcomeOf(problem: RolloutProblem, { trips, hauls, broken: found }: OutcomeParts): Outcome {
  const { jobs, horizon_days } = problem;
  const service = new Float64Array(jobs.length).fill(horizon_days);
  const isIn = new Uint8Array(jobs.length);
  let [finish, burnt_L] = [0, 0];
  for (const own of trips)
    for (const { stops, fuel_L } of own) {
      burnt_L += fuel_L;
      for (const { job, serviceDay, handOverDay } of stops) {
        service[job] = serviceDay;
        isIn[job] = 1;
        if (handOverDay < horizon_days) finish = Math.max(finish, handOverDay);
      }
    }
  const broken = [...found];
  let [waiting, waiting_personDays] = [0, 0];
  for (let job = 0; job < jobs.length; job++) {
    const { weight, people } = jobs[job]!;
    waiting += weight * service[job]!;
    waiting_personDays += people * service[job]!;
    if (isIn[job] === 0) broken.push({ kind: 'leftOut', job });
  }
  const crewCost = trips.map((own) => own.reduce((sum, { cost }) => sum + cost, 0));
  for (const { forCrew, cost } of hauls) crewCost[forCrew]! += cost;
  const hauled_L = hauls.reduce((sum, { fuel_L }) => sum + fuel_L, 0);
  return {
    ...{ trips, hauls, waiting, waiting_personDays, finish, broken },
    cost: crewCost.reduce((sum, cost) => sum + cost, 0),
    fuel_L: hauled_L + burnt_L,
  };
}

/** The trips of a crew as they were timed last. */
export function timedTrips(
  ready: Retiming,
  crew: number,
  { stops, ends, trips_count }: CrewTrips,
): readonly TimedTrip[] {
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

/** The hauls of what was timed last. */
export function timedHauls({ hauls }: Retiming): readonly TimedHaul[] {
  return Array.from({ length: hauls.count }, (_, at) => ({
    store: hauls.store[at]!,
    leaves: hauls.leaves[at]!,
    arrives: hauls.arrives[at]!,
    back: hauls.back[at]!,
    kg: hauls.kg[at]!,
    trips_count: hauls.trips_count[at]!,
    cost: hauls.cost[at]!,
    fuel_L: hauls.fuel_L[at]!,
    forCrew: hauls.forCrew[at]!,
    forTrip: hauls.forTrip[at]!,
    runs: runsOf(hauls, at),
  }));
}

function runsOf({ runs, runsEnd }: Retiming['hauls'], at: number): TimedHaul['runs'] {
  const from = at === 0 ? 0 : runsEnd[at - 1]!;
  return Array.from({ length: (runsEnd[at]! - from) / 4 }, (_, nth) => {
    const [leaves, arrives, returns, back] = runs.slice(from + 4 * nth, from + 4 * nth + 4);
    return { leaves: leaves!, arrives: arrives!, returns: returns!, back: back! };
  });
}

/** What was found broken in what was timed last. */
export function brokenFound({ broken }: Retiming): Broken[] {
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
