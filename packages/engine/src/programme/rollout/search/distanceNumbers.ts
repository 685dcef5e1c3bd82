import { type CrewNumbers, crewLegs, type OneCrew } from './crewNumbers.ts';

/** Stops that wait for whoever comes, by distance alone. Entry 0 is the base. */
export interface WaitingByDistance {
  /** From stop i to j at i × stops + j, alike in both directions. */
  readonly distance_ratio: Float64Array;
  /** What each stop takes of a trip's load. */
  readonly demand_amount: ArrayLike<number>;
  readonly capacity_amount: number;
  readonly crews_count: number;
  /** Does coming home count as one more stop? */
  readonly countsHome: boolean;
}

/**
 * The problem of least latency as numbers for the search of crews: one trip for each, no work at stops, time as it is.
 *
 * @param facts - distances, loads, crews
 * @returns numbers for `LongTrips` [the distance's unit]
 * @definition
 */
export function distanceNumbers(facts: WaitingByDistance): CrewNumbers {
  const { distance_ratio, demand_amount, capacity_amount, crews_count, countsHome } = facts;
  const stops = demand_amount.length;
  const jobs = stops - 1;
  const none = new Float32Array(stops * stops);
  const table = {
    ...{ landBefore_h: Float32Array.from(distance_ratio), river_h: none, landAfter_h: none, cost: none, fuel_L: none },
    ...{ limitOf: new Uint16Array(stops * stops), areaOf: new Uint8Array(stops * stops) },
    limits: [{ kg: Infinity, litres: Infinity, longest_m: Infinity, porters_count: 0 }],
  };
  const one: OneCrew = {
    ...{ base: 0, store: 0, hours: 1, riverHours: 1, mostAway: Infinity, pace: 1, turnaround: 0 },
    ...{ limitKg: capacity_amount, limitLitres: Infinity, longest: Infinity, learned: null },
    may: new Uint8Array(stops).fill(1),
    ...{ from: 0, dayOf: new Int32Array(1), before: new Int32Array(2), lastBack: new Int32Array(1), stretch: 1 },
    ...{ mostAwayWork: 0, isEveryDay: true },
    ...{ legs: [crewLegs(table, stops, 1, 1)], hasNarrowLegs: false },
  };
  const far = distance_ratio.reduce((most, each) => Math.max(most, each), 0);
  return {
    ...{ jobs, crews: crews_count, nodes: stops, horizon: 1, wholeDays: false },
    nodeOf: Int32Array.from({ length: stops }, (_, stop) => stop),
    weight: new Float64Array(stops).fill(1),
    ...{ days: new Float64Array(stops), litres: new Float64Array(stops), longest: new Float64Array(stops) },
    kg: Float64Array.from(demand_amount),
    value: null,
    isPlain: new Uint8Array(jobs + 1).fill(1),
    ...{ windowAt: new Int32Array(stops + 1), windowFrom: new Int32Array(0), windowTo: new Int32Array(0) },
    periodFrom: [0],
    byCrew: Array.from({ length: crews_count }, () => one),
    leftOut: new Float64Array(stops).fill(stops * far * 2),
    ...{ awayPenalty: 0, homeWeight: countsHome ? 1 : 0, mostTrips: 1, tried_fraction: 0 },
  };
}
