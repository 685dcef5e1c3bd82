import { basename, join } from 'node:path';
import { distanceNumbers } from '../../packages/engine/dist/programme/rollout/search/distanceNumbers.js';
import { LongTrips } from '../../packages/engine/dist/programme/rollout/search/longTrips.js';
import { longTripRules, oneTripRules } from '../../packages/engine/dist/programme/rollout/search/searchRules.js';
import { costsOf, instancesIn, readSections } from './read.mjs';

/**
 * Kinds of instances in which those wait who are served late. Values are the best known to the literature, from memory; all but those
 * of rat99 and CMT12 were reached by runs of our own or of another solver beside (docs/methods/rollout.md).
 */

/** One trip through all stops of a TSPLIB file, base first, the way home counted as one more. */
const latencyKnown = {
  ...{ eil51: 10178, berlin52: 143721, st70: 20557, rat99: 57986, kroA100: 983128, eil101: 27513, lin105: 603910 },
  pr107: 2026626,
};

/** CMT files with straight distances and so many trips, the way home not counted. */
const cumulativeKnown = {
  ...{ CMT1: [5, 2230.35], CMT2: [10, 2391.63], CMT3: [8, 4045.42], CMT4: [12, 4987.52], CMT5: [17, 5806.02] },
  ...{ CMT11: [7, 7314.55], CMT12: [10, 3558.92] },
};

const nameOf = (path) => basename(path).replace(/\.[^.]+$/, '');

/** The kinds as bench/rollout/instances.mjs runs them. */
export function waitingKinds(folder) {
  const latency = instancesIn(join(folder, 'tsplib'), '.tsp');
  const cumulative = instancesIn(join(folder, 'latency'), '.vrp');
  return [
    {
      ...{ kind: 'latency', rules: longTripRules, recount: recountedWaiting },
      files: latency?.filter((path) => nameOf(path) in latencyKnown) ?? null,
      read: readLatency,
      known: (path) => latencyKnown[nameOf(path)],
      state: stateOf,
    },
    {
      ...{ kind: 'cumulative', rules: oneTripRules, recount: recountedWaiting },
      files: cumulative?.filter((path) => nameOf(path) in cumulativeKnown) ?? null,
      read: readCumulative,
      known: (path) => cumulativeKnown[nameOf(path)][1],
      state: stateOf,
    },
  ];
}

function readLatency(path) {
  const file = readSections(path);
  const stops = Number(file.header.DIMENSION);
  return {
    name: file.name,
    cost: costsOf(file),
    demand: new Int32Array(stops),
    capacity: 1,
    crews: 1,
    countsHome: true,
  };
}

function readCumulative(path) {
  const file = readSections(path);
  const demand = new Int32Array(Number(file.header.DIMENSION));
  for (const [stop, amount] of file.sections.DEMAND_SECTION) demand[stop - 1] = amount;
  const crews = cumulativeKnown[nameOf(path)][0];
  const capacity = Number(file.header.CAPACITY);
  return { name: nameOf(path), cost: costsOf(file, { round: false }), demand, capacity, crews, countsHome: false };
}

function stateOf({ cost, demand, capacity, crews, countsHome }, draws) {
  const numbers = distanceNumbers({
    ...{ distance_ratio: cost, demand_amount: demand, capacity_amount: capacity, crews_count: crews, countsHome },
  });
  return new LongTrips(numbers, longTripRules.blink_fraction, draws);
}

/** Sum of the times at which stops are come to, counted again from the lists; every stop once, no load broken, no trip too many. */
function recountedWaiting({ name, cost, demand, capacity, countsHome }, crews) {
  const stops = demand.length;
  const seen = new Set();
  let sum = 0;
  for (const trips of crews) {
    if (trips.length > 1) throw new Error(`${name}: more than one trip`);
    let [load, time, at] = [0, 0, 0];
    for (const job of trips[0]?.stops ?? []) {
      time += cost[at * stops + job];
      load += demand[job];
      sum += time;
      if (seen.has(job)) throw new Error(`${name}: ${job} twice`);
      seen.add(job);
      at = job;
    }
    if (countsHome) sum += time + cost[at * stops];
    if (load > capacity) throw new Error(`${name}: overloaded`);
  }
  if (seen.size !== stops - 1) throw new Error(`${name}: stops left out`);
  return sum;
}
