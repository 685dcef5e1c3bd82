import type { KeptAt } from '../recordsOf.ts';

/** The state of a programme that something is asked of. */
export interface RolloutAt extends KeptAt {
  /** Names all of it: the programme, the version, the day, the program. */
  readonly stamp: string;
  /** Names the facts beside its plans: what is made of them serves as long as it is the same. */
  readonly factsStamp: string;
  /** Rows of the tables of plans, as JSON: by table, keys with their cells. */
  readonly planRows: string;
  /** A folder to write tables into; who asks takes it away. */
  readonly passing: string;
  /** Where its design is kept, and by which program. */
  readonly designs: string;
  readonly build: string;
  /** The day it is asked on [day]. */
  readonly today: number;
}

/** Tables of kept plans: a change of these alone leaves all that is planned from as it is. */
export const planTables = ['plans', 'planTrips', 'planStops'] as const;
type PlanTable = (typeof planTables)[number];

/** Rows of the tables of plans. */
export type PlanRowsSent = Readonly<
  Record<PlanTable, readonly (readonly [string, Readonly<Record<string, string>>])[]>
>;
