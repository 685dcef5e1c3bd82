import type { Crew, RolloutProblem } from './problem.ts';
import type { StockState } from './stockState.ts';
import type { WorkDays } from './workDays.ts';

/** Legs of one period, their limits flat. Where they are of some pairs alone, one more stands at the end that cannot be gone. */
export interface ReadyLegs {
  readonly before_h: Float32Array;
  readonly river_h: Float32Array;
  readonly after_h: Float32Array;
  readonly cost: Float32Array;
  readonly fuel_L: Float32Array;
  readonly limitOf: Uint16Array;
  readonly areaOf: Uint8Array;
  readonly limit_kg: Float64Array;
  readonly limit_L: Float64Array;
  readonly longest_m: Float64Array;
}

/** One crew, ready. */
export interface ReadyCrew {
  readonly crew: Crew;
  readonly calendar: WorkDays;
  /** By period. */
  readonly legs: readonly ReadyLegs[];
  /** Which pairs of nodes the legs are of, sorted by `from * nodes + to`; null: every pair. */
  readonly pairs: Float64Array | null;
  readonly storeNode: number;
  /** Hours of a day on a river: its own or those until boats are ashore. */
  readonly river_h: number;
  /** Does what it takes from its store have to be counted? */
  readonly isStocked: boolean;
}

/** Why something could not be done; `kinds[index]` is the kind of problem.ts. */
export const brokenKinds = [
  'noWay',
  'tooHeavy',
  'tooBulky',
  'tooLong',
  'tooLongAway',
  'noStock',
  'noSkill',
  'notOpen',
  'late',
  'beyondHorizon',
  'sleepsAtSite',
] as const;
export type BrokenKind = (typeof brokenKinds)[number];

/** Why a trip left later than it could have; indexes of this list stand in `TripTimes`. */
export const waits = ['nothing', 'notBefore', 'stock', 'haul', 'carrier', 'way'] as const;

/** Times of the trips of one crew, by trip. */
export interface TripTimes {
  ready: Float64Array;
  leaves: Float64Array;
  back: Float64Array;
  nights: Float64Array;
  kg: Float64Array;
  litres: Float64Array;
  cost: Float64Array;
  fuel_L: Float64Array;
  waitsFor: Uint8Array;
  /** 1 where the trip is made. */
  isMade: Uint8Array;
}

/** A timed trip to fill a forward store, flat. */
export interface HaulTimes {
  readonly store: Int32Array;
  readonly leaves: Float64Array;
  readonly arrives: Float64Array;
  readonly back: Float64Array;
  readonly kg: Float64Array;
  readonly trips_count: Int32Array;
  readonly cost: Float64Array;
  readonly fuel_L: Float64Array;
  readonly forCrew: Int32Array;
  readonly forTrip: Int32Array;
  /** Each run of each haul, one after another: it leaves, is there, leaves for home, is back. */
  readonly runs: number[];
  /** Where the runs of a haul end. */
  readonly runsEnd: Int32Array;
  count: number;
  /** Count with those of the trip that asks. */
  tried: number;
}

/** What is broken, flat: `by` is over how much, `what` the job or the goods (-1: none). */
export interface BrokenFound {
  readonly kind: number[];
  readonly crew: number[];
  readonly trip: number[];
  readonly what: number[];
  readonly by: number[];
  count: number;
}

/** What holds a carrier of a pool: from and to, days both included. First those that are away, then trips and hauls. */
export interface PoolHolds {
  readonly away_count: number;
  from: number[];
  to: number[];
  /** With those of the trip that asks. */
  count: number;
  kept_count: number;
}

/**
 * A problem made ready for timing, with the room the timing works in: made once, used for any number of plans, nothing allocated after.
 * It belongs to one thread of work at a time. What may be drawn (`days`, `pace`, `closed`, `leg_factor`, stock) stands in it as likely until `setDrawn`.
 */
export interface Retiming {
  readonly problem: RolloutProblem;
  readonly horizon_days: number;
  readonly places: number;
  readonly nodes: number;
  readonly goods: number;
  readonly crews: readonly ReadyCrew[];
  readonly periodFrom: Int32Array;
  readonly periodOf: Int32Array;
  readonly windowAt: Int32Array;
  readonly windowFrom: Float64Array;
  readonly windowTo: Float64Array;
  readonly weight: Float64Array;
  readonly people: Float64Array;
  readonly kg: Float64Array;
  readonly litres: Float64Array;
  readonly longest_m: Float64Array;
  readonly needs: Float64Array;
  readonly skills: Int32Array;
  readonly area: Int32Array;
  readonly finishBy: Float64Array;
  readonly wait_days: Float64Array;
  readonly dayOfYear: Uint16Array;
  /** What the n-th job of a crew takes of the first. */
  readonly learned: Float64Array;
  /** Crews whose trips do not touch each other have groups of their own. */
  readonly groupOf: Int32Array;
  readonly isCoupled: boolean;

  readonly days: Float64Array;
  readonly pace: Float64Array;
  readonly closed: (Uint8Array | null)[];
  leg_factor: number;
  /** Goods by store and goods: `stock[store * goods + goods]`. */
  readonly stock: readonly StockState[];

  readonly arrives: Float64Array;
  readonly starts: Float64Array;
  readonly ends: Float64Array;
  readonly handOver: Float64Array;
  readonly service: Float64Array;
  readonly tripTimes: readonly TripTimes[];
  readonly broken: BrokenFound;
  readonly hauls: HaulTimes;
  /** By crew: sum of weight x first day of service, and what its trips and hauls cost. */
  readonly crewWaiting: Float64Array;
  readonly crewCost: Float64Array;

  readonly haulFree: Float64Array;
  readonly haulTried: Float64Array;
  readonly holds: readonly PoolHolds[];
  readonly nextReady: Float64Array;
  readonly nextTrip: Int32Array;
  /** Jobs each crew has done, and will have after the trip timed last. */
  readonly doneJobs: Int32Array;
  readonly doneAfter: Int32Array;
  readonly need: Float64Array;
  readonly aboard_kg: Float64Array;
  readonly aboard_L: Float64Array;
  readonly aboard_m: Float64Array;
  readonly leg: LegFound;
  /** The haul gone last. */
  readonly run: HaulGone;
  /** Legs that were asked for and are not known, since clearShared: travel, from and to one after another. */
  readonly unknown: number[];
}

/** One haul there and back. */
export interface HaulGone {
  leaves: number;
  arrives: number;
  returns: number;
  back: number;
  cost: number;
  fuel_L: number;
}

/** What is known of the leg gone last. */
export interface LegFound {
  /** The time for which it set out, and the legs it was gone by. */
  start: number;
  legs: ReadyLegs | null;
  /** Where it stands in them. */
  at: number;
  /** Is there a way, but no day left to go it? */
  isBeyond: boolean;
}

/** Room for the times of so many trips. */
export function tripTimes(trips_count: number): TripTimes {
  const numbers = () => new Float64Array(trips_count);
  return {
    ready: numbers(),
    leaves: numbers(),
    back: numbers(),
    nights: numbers(),
    kg: numbers(),
    litres: numbers(),
    cost: numbers(),
    fuel_L: numbers(),
    waitsFor: new Uint8Array(trips_count),
    isMade: new Uint8Array(trips_count),
  };
}
