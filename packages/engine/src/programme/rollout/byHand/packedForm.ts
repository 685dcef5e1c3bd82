import type { Crew, Haul, Pool, RolloutProblem, Store } from '../problem.ts';

/**
 * A rollout as JSON carries it: with legs of some pairs alone, sites in columns, and what many share written once. `null` stands for "without
 * end" where a number may be infinite (limits, days away, hours of a leg that cannot be gone).
 */
export interface PackedRollout
  extends Pick<
    RolloutProblem,
    | 'firstDay'
    | 'horizon_days'
    | 'placeIds'
    | 'areaIds'
    | 'learning_fraction'
    | 'riverEnds_h'
    | 'fuelPrice_per_L'
    | 'periods'
    | 'goods'
    | 'pools'
  > {
  readonly pools: readonly Pool[];
  readonly stores: readonly PackedStore[];
  /** Days as a row of 0 and 1, each calendar once. */
  readonly calendars: readonly string[];
  readonly crews: readonly PackedCrew[];
  readonly jobs: PackedJobs;
  readonly legs: PackedLegs;
}

/** As `Store`. */
export interface PackedStore extends Pick<Store, 'node' | 'arrivals'> {
  readonly filledBy: PackedHaul | null;
}

/** As `Haul`; null: without end. */
export interface PackedHaul extends Omit<Haul, 'there_days' | 'back_days' | 'limit_kg' | 'limit_L'> {
  readonly there_days: readonly (number | null)[];
  readonly back_days: readonly (number | null)[];
  readonly limit_kg: number | null;
  readonly limit_L: number | null;
}

/** As `Crew`; null: without end. */
export interface PackedCrew
  extends Omit<Crew, 'works' | 'mostDaysAway' | 'limit_kg' | 'limit_L' | 'longest_m' | 'freeFrom'> {
  /** Index of `calendars`. */
  readonly calendar: number;
  readonly freeFrom: number | null;
  readonly mostDaysAway: number | null;
  readonly limit_kg: number | null;
  readonly limit_L: number | null;
  readonly longest_m: number | null;
}

/** A column for each field of `Job`. */
export interface PackedJobs {
  readonly siteId: readonly string[];
  readonly people: readonly number[];
  readonly weight: readonly number[];
  readonly low_days: readonly number[];
  readonly likely_days: readonly number[];
  readonly high_days: readonly number[];
  readonly finishBy: readonly (number | null)[];
  readonly kg: readonly number[];
  readonly litres: readonly number[];
  readonly longest_m: readonly number[];
  readonly skills: readonly number[];
  readonly area: readonly number[];
  /** Of each of the goods a column. */
  readonly needs: readonly (readonly number[])[];
  /** Index of `windowLists`, each a row of first and last days. */
  readonly windows: readonly number[];
  readonly windowLists: readonly (readonly number[])[];
  /** Index of `waitLists`; null: 0 on every day. Each list is runs: value of the first day, step from day to day, days. */
  readonly waits: readonly (number | null)[];
  readonly waitLists: readonly (readonly number[])[];
}

/** Legs of some pairs, by travel as the problem. */
export interface PackedLegs {
  readonly travels: readonly PackedTravel[];
}

export interface PackedTravel {
  readonly nodes: number;
  /** `from * nodes + to`, sorted: the first, then by how much each is more than the one before. */
  readonly keySteps: readonly number[];
  /** Index of `tables` by period. */
  readonly byPeriod: readonly number[];
  readonly tables: readonly PackedTable[];
}

/** As `LegTable`, of the pairs in `keySteps`; null: it cannot be gone. */
export interface PackedTable {
  readonly landBefore_h: readonly (number | null)[];
  readonly river_h: readonly (number | null)[];
  readonly landAfter_h: readonly (number | null)[];
  readonly cost: readonly (number | null)[];
  readonly fuel_L: readonly (number | null)[];
  readonly limitOf: readonly number[];
  readonly areaOf: readonly number[];
  readonly limits: readonly PackedLimit[];
}

/** As `LegLimit`; null: without end. */
export interface PackedLimit {
  readonly kg: number | null;
  readonly litres: number | null;
  readonly longest_m: number | null;
  readonly porters_count: number | null;
}

/** Null for "without end". */
export function ended(value: number): number | null {
  return value === Number.POSITIVE_INFINITY ? null : value;
}

/** "Without end" for null. */
export function endless(value: number | null): number {
  return value ?? Number.POSITIVE_INFINITY;
}

/** Values by which a list is told, each once, in the order they are met. */
export class Once<T> {
  readonly list: T[] = [];
  private readonly placeOf = new Map<string, number>();

  /** Where the value stands in the list. */
  place(value: T, key: string): number {
    const known = this.placeOf.get(key);
    if (known !== undefined) return known;
    this.placeOf.set(key, this.list.length);
    return this.list.push(value) - 1;
  }
}
