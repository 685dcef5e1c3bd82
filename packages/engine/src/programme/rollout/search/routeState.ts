import type { Draws } from './draws.ts';

/**
 * A plan as the search sees it: jobs on trips, in an order. The search decides which jobs go out, in which order they come back and
 * whether the new plan is kept; everything that depends on what a trip is (load, windows, stock, crews, dates) is behind this.
 *
 * Jobs are numbered 1 to `jobs`; 0 is the base. One call a job, never one a place: loops over places stand inside the state.
 * What `price` says may be an estimate (it only ranks places); `cost` is exact and alone decides what is kept.
 */
export abstract class RouteState {
  /** Jobs there are. */
  abstract readonly jobs: number;
  /** The trip of each job, 0 or more; `out` while it is in no trip; `held` where it may not be moved. Entry 0 is not used. */
  abstract readonly tripOf: Int32Array;
  /** Jobs on each trip, by trip. Trips may be made anew and go away; their numbers are reused. */
  abstract readonly tripSize: Int32Array;
  /** For each job, from entry job × `nearCount`: other jobs, nearest first. The search walks them from a seed to find trips beside it. */
  abstract readonly near: Uint16Array | Uint32Array;
  abstract readonly nearCount: number;

  /** Mean count of jobs on a trip that has any; 0 where there is none. */
  abstract meanTripSize(): number;
  /** Cost of the plan as it is, exact, jobs that are out included at what leaving them out costs. */
  abstract cost(): number;
  /** What the plan will cost at least when all jobs are back; −Infinity where nothing is known. Lets a try be given up early. */
  atLeast(): number {
    return Number.NEGATIVE_INFINITY;
  }
  /** Is no limit broken? Where a limit may be broken at a price while the search goes on, only a plan that breaks none is the best. */
  holds(): boolean {
    return true;
  }
  /** Called at each poll: what a broken limit costs may change. Gives the cost of the plan then, `current` where nothing changes. */
  repriced(current: number): number {
    return current;
  }
  /** By how much the cost of a plan moves when a job goes elsewhere: temperatures are told in it. The mean cost of a job, if nothing better is known. */
  costScale(): number {
    return this.cost() / Math.max(1, this.jobs);
  }
  /** Tries so many moves of stops within trips, each kept by the chance of the temperature, and gives the cost then; nothing where the state knows none. */
  moveWithin(_temperature: number, _moves_count: number): number {
    return this.cost();
  }
  /** The key of each job in this order of coming back, the smallest first (entry 0 not used); null for an order drawn by lot. */
  abstract orderKey(order: string): Float64Array | null;

  /** From here on every change is noted, so that `undo` takes it back. */
  abstract begin(): void;
  /**
   * Takes a string of `length` jobs that follow each other, `job` among them or among those passed over, out of the trip of `job`; with
   * `passedOver` above 0 the string is so much longer and so many in its middle stay. Where it begins is drawn. Writes the jobs taken to
   * `taken` from entry `count`, and gives the count after.
   */
  abstract removeString(
    job: number,
    length: number,
    passedOver: number,
    draws: Draws,
    taken: Int32Array,
    count: number,
  ): number;
  /** Called once when all strings are out, before the first job is priced. */
  abstract removed(): void;
  /**
   * Prices every place a job can go to (each passed over with the chance the state was given, a blink) and remembers the cheapest.
   * Infinity where there is none: the job stays out.
   */
  abstract price(job: number): number;
  /** Puts the job priced last into the place remembered. */
  abstract insertPriced(job: number): void;
  /** Takes back everything since `begin`. */
  abstract undo(): void;
  /** Remembers the plan as it is as the best. */
  abstract saveBest(): void;
  /** Makes the plan remembered the present one. */
  abstract restoreBest(): void;
}

/** `tripOf` of a job in no trip. */
export const out = -1;
/** `tripOf` of a job that may not be moved: of a trip under way, or finished. */
export const held = -2;
