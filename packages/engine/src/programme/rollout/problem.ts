import type { DayIndex, DaysAsked, Period, Travel, WaitsByYear } from '../../kernel/index.ts';

export type { LegLimit, LegTable, Period, Travel } from '../../kernel/index.ts';

/**
 * The rollout as numbers: what the evaluator, the search, the bounds and the finish dates all read. Everything is by index; ids stand
 * beside for the way back. Days are counted from `firstDay`, day 0. A time is a real number of *crew days*: its whole part is the
 * day, its fraction the share of that day's working hours that is used; a day wholly used is written as the next whole number.
 */
export interface RolloutProblem {
  readonly firstDay: DayIndex;
  /** Days looked ahead; nothing is timed beyond. */
  readonly horizon_days: number;
  /** Places and jobs: a node each, places first. */
  readonly placeIds: readonly string[];
  readonly jobs: readonly Job[];
  readonly crews: readonly Crew[];
  /** Legs by period and by what travels: `legs[travel][period]`. */
  readonly travels: readonly Travel[];
  readonly periods: readonly Period[];
  readonly goods: readonly Goods[];
  readonly stores: readonly Store[];
  readonly pools: readonly Pool[];
  /** Areas that share their weather, by name; a leg and a job name one or none (-1). */
  readonly areaIds: readonly string[];
  /** A crew's job n takes first x n^log2(learning): 1 means nobody learns (Wright's unit curve). */
  readonly learning_fraction: number;
  /** A boat is ashore so many hours after a crew's day begins, at the latest. */
  readonly riverEnds_h: number;
  readonly fuelPrice_per_L: number;
}

/** A site to be served. */
export interface Job {
  readonly siteId: string;
  /** Its node: `placeIds.length + index`. */
  readonly people: number;
  /** People times priority: what a day of waiting weighs. */
  readonly weight: number;
  /** Days of work for a crew of the usual pace. */
  readonly install_days: DaysAsked;
  /** When work may be done: days, both included, in order, not overlapping. */
  readonly windows: readonly { readonly from: number; readonly to: number }[];
  /** The last day on which it should be handed over; null: none. Later is broken, not forbidden. */
  readonly finishBy: number | null;
  readonly kg: number;
  readonly litres: number;
  readonly longest_m: number;
  /** How many of each of the goods it takes, as `goods`. */
  readonly needs: readonly number[];
  /** Bits of the skills its crew must have. */
  readonly skills: number;
  readonly area: number;
  /**
   * Days from hand-over to the first day of service, by day of a leap year (1 January = 0, 29 February = 59, 1 March = 60 in every year; 366
   * values); all 0 where nothing is known.
   */
  readonly serviceWait_days: ArrayLike<number>;
  /** The same as each year of its rain would have it, for futures; null: nothing is known of it. Of a problem that is packed it stays behind. */
  readonly serviceWaits: WaitsByYear | null;
}

export interface Crew {
  readonly crewId: string;
  /** Nodes. */
  readonly base: number;
  /** Index of `stores`. */
  readonly store: number;
  readonly travel: number;
  readonly skills: number;
  /** 1 on days it works, `horizon_days` long. */
  readonly works: Uint8Array;
  readonly work_h_per_day: number;
  readonly mostDaysAway: number;
  readonly maySleepAtSites: boolean;
  readonly freeFrom: number;
  readonly pace_factor: number;
  readonly turnaround_days: number;
  readonly cost_per_day: number;
  /** What its carriers take on any trip; legs may take less. */
  readonly limit_kg: number;
  readonly limit_L: number;
  readonly longest_m: number;
  /** Indexes of `pools`: what it takes along and others want too. */
  readonly pools: readonly number[];
  /** Jobs done before, for the learning curve. */
  readonly done_count: number;
}

/** Goods that are short at some time: the rest need not be counted. */
export interface Goods {
  readonly partId: string;
}

/** Where trips load. */
export interface Store {
  readonly node: number;
  /** What comes here itself: in order of day. Quantities as `goods`. */
  readonly arrivals: readonly Arrival[];
  /** The store that fills it, how often and with how much at a time; null: goods come here themselves. */
  readonly filledBy: Haul | null;
}

export interface Arrival {
  readonly arrivalId: string;
  readonly day: number;
  readonly goods: number;
  readonly quantity_count: number;
  readonly slip_days: DaysAsked;
}

/** Trips from a store to a forward store. */
export interface Haul {
  readonly store: number;
  /** The pool whose carrier goes, held from the day it leaves to the day it is back; null: one that nobody else wants. */
  readonly pool: number | null;
  /** Days there and back by period; Infinity: cannot be gone. */
  readonly there_days: readonly number[];
  readonly back_days: readonly number[];
  readonly limit_kg: number;
  readonly limit_L: number;
  /** By the period in which it sets out there or back: money without fuel, and fuel; 0 where it cannot be gone. */
  readonly there_cost: readonly number[];
  readonly back_cost: readonly number[];
  readonly there_fuel_L: readonly number[];
  readonly back_fuel_L: readonly number[];
}

/** Carriers that several crews or stores share, or that are away for some days: a trip takes one from its first day to its last. */
export interface Pool {
  readonly carrierId: string;
  readonly carriers_count: number;
  /** Days, both included, on which so many of them are away; they may overlap. Left out: none. */
  readonly away?: readonly { readonly from: number; readonly to: number; readonly carriers_count: number }[];
}

/** Who goes where, in which order. Dates follow from it. */
export interface RolloutPlan {
  /** As `crews`. */
  readonly trips: readonly (readonly PlannedTrip[])[];
}

export interface PlannedTrip {
  /** Jobs in the order they are served. */
  readonly stops: readonly number[];
  /** It leaves no earlier than this day; 0: as soon as it can. */
  readonly notBefore: number;
  /** Is it to stay as it is? Planning leaves it alone. */
  readonly isLocked: boolean;
}

/** What may turn out otherwise than likely; null where all goes as likely. */
export interface Drawn {
  readonly install_days: Float64Array;
  /** Times the pace of each crew. */
  readonly pace_factor: Float64Array;
  /** Days by which each arrival is late: by store, in the order of its arrivals. */
  readonly slip_days: readonly Float64Array[];
  /** 1 where an area is closed on a day: `closed[area][day]`; nobody travels or works there then. */
  readonly closed: readonly Uint8Array[];
  /** Hours of all legs are multiplied by it. */
  readonly leg_factor: number;
}

/** Why a plan cannot be done as it is written. */
export type Broken =
  | { readonly kind: 'noWay'; readonly crew: number; readonly trip: number; readonly job: number | null }
  | {
      readonly kind: 'tooHeavy' | 'tooBulky' | 'tooLong';
      readonly crew: number;
      readonly trip: number;
      readonly job: number;
      readonly by: number;
    }
  | { readonly kind: 'tooLongAway'; readonly crew: number; readonly trip: number; readonly by: number }
  | { readonly kind: 'noStock'; readonly crew: number; readonly trip: number; readonly goods: number }
  | { readonly kind: 'noSkill'; readonly crew: number; readonly trip: number; readonly job: number }
  | { readonly kind: 'notOpen'; readonly crew: number; readonly trip: number; readonly job: number }
  | {
      /** A crew that may not sleep at sites is there overnight. */
      readonly kind: 'sleepsAtSite';
      readonly crew: number;
      readonly trip: number;
      readonly job: number;
      readonly by: number;
    }
  | { readonly kind: 'late'; readonly crew: number; readonly trip: number; readonly job: number; readonly by: number }
  | { readonly kind: 'leftOut'; readonly job: number }
  | { readonly kind: 'beyondHorizon'; readonly crew: number; readonly trip: number };

/** One stop of a trip, timed. Times as in RolloutProblem; where the job is not done (`broken` says why) all of them but `arrives` are the horizon. */
export interface TimedStop {
  readonly job: number;
  readonly arrives: number;
  readonly starts: number;
  /** The day the site is handed over, and the first day it serves. */
  readonly handOverDay: number;
  readonly serviceDay: number;
  readonly ends: number;
}

export interface TimedTrip {
  /** When the crew could have gone, and when it goes; between: what it waits for. */
  readonly ready: number;
  readonly leaves: number;
  readonly waitsFor: 'nothing' | 'stock' | 'way' | 'carrier' | 'notBefore' | 'haul';
  readonly stops: readonly TimedStop[];
  readonly back: number;
  readonly nights_count: number;
  readonly kg: number;
  readonly litres: number;
  readonly cost: number;
  readonly fuel_L: number;
}

/** One go of a haul, there and back. */
export interface HaulRun {
  readonly leaves: number;
  readonly arrives: number;
  /** When it leaves for home, and is there; Infinity: no way back is open. */
  readonly returns: number;
  readonly back: number;
}

/** A trip that fills a forward store. */
export interface TimedHaul {
  readonly store: number;
  readonly leaves: number;
  /** When the last of them is there, and back where it came from; Infinity: no way back is open. */
  readonly arrives: number;
  readonly back: number;
  readonly trips_count: number;
  /** Goods of all of them. */
  readonly kg: number;
  /** Of all of them, there and back, fuel among it. */
  readonly cost: number;
  readonly fuel_L: number;
  readonly forCrew: number;
  readonly forTrip: number;
  /** As many as `trips_count`, in the order they go. */
  readonly runs: readonly HaulRun[];
}

/** What comes of a plan. */
export interface Outcome {
  /** As the plan's crews and trips. */
  readonly trips: readonly (readonly TimedTrip[])[];
  readonly hauls: readonly TimedHaul[];
  /** Sum of weight x first day of service [person-day], of people alone, and the last hand-over of those that are handed over [day]. */
  readonly waiting: number;
  readonly waiting_personDays: number;
  readonly finish: number;
  readonly cost: number;
  readonly fuel_L: number;
  readonly broken: readonly Broken[];
}
