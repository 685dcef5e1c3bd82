import type { DayIndex } from './days.ts';
import type { EngineProblemCode } from './engineProblems.ts';

/** What brings a set of cartridges to its end: rated litres passed, too little flow, its age, or a failure at random. */
export const wearEnds = ['litres', 'flow', 'age', 'failure'] as const;
export type WearEnd = (typeof wearEnds)[number];

/** The tenth, middle and ninetieth of a hundred futures. */
export interface Spread {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** When a set of cartridges is due. */
export interface WearFinding {
  readonly serial: string;
  readonly partId: string | null;
  /** The day the set was new; null where not known. */
  readonly setSince: DayIndex | null;
  /** Why no date is given: the code of its problem; null where one is. */
  readonly unknownBy: EngineProblemCode | null;
  /** Day indexes. */
  readonly endsOn: Spread | null;
  /** Passed until then. */
  readonly litres_L: Spread | null;
  /** Passed until the day it is asked on, in the middle future; null where the set is not in use yet. */
  readonly passedSoFar_L: number | null;
  /** Share of futures in which each end comes first. */
  readonly endsBy_fraction: Readonly<Record<WearEnd, number>>;
  /** How fast its flow falls beside what its rating says: 1 as rated; by what was assumed and what was read. */
  readonly fouling_ratio: Spread;
  readonly readings_count: number;
  readonly futures_count: number;
}
