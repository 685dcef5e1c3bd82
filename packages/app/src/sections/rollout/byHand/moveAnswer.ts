import type { Held, Place } from './places.ts';

/** Why something is broken, as the evaluator says it. */
export type BreakKind =
  | 'noWay'
  | 'tooHeavy'
  | 'tooBulky'
  | 'tooLong'
  | 'tooLongAway'
  | 'noStock'
  | 'noSkill'
  | 'notOpen'
  | 'sleepsAtSite'
  | 'late'
  | 'leftOut'
  | 'beyondHorizon';

/** What would break that is not broken now. */
export interface BreakTold {
  readonly kind: BreakKind;
  /** The site it is about; null: a trip as a whole. */
  readonly siteId: string | null;
  /** By how much: kg, L, m, days or nights; null: not a matter of how much. */
  readonly by: number | null;
  readonly partId: string | null;
}

/** A site as it would be: in which crew's trip, from when to when. */
export interface StopAsMoved {
  readonly siteId: string;
  readonly arrives: string | null;
  /** Null: it is not done; what breaks says why. */
  readonly handOver: string | null;
}

/** A trip as it would be. */
export interface TripAsMoved {
  /** Null: a trip that is not there yet. */
  readonly tripId: string | null;
  readonly notBefore: string | null;
  readonly isLocked: boolean;
  /** Null: it is not made; what breaks says why. */
  readonly leaves: string | null;
  readonly back: string | null;
  readonly nights_count: number;
  readonly stops: readonly StopAsMoved[];
}

/** The planned trips of a crew as they would be. */
export interface CrewAsMoved {
  readonly crewId: string;
  readonly trips: readonly TripAsMoved[];
}

/** What would become of the plan if what is in hand were laid down where it is. */
export interface MoveAnswer {
  readonly crews: readonly CrewAsMoved[];
  /** Sites whose hand-over would be another day, and by how many days later; null: it was or would be in no trip. */
  readonly moved: readonly { readonly siteId: string; readonly later_days: number | null }[];
  /** What is in hand: the day its site would drink, or its trip would leave; null: never. */
  readonly day: string | null;
  /** That day against now; null where there is none to compare with. */
  readonly later_days: number | null;
  /** The plan after it less before. */
  readonly waiting_personDays: number;
  readonly finish_days: number;
  readonly cost: number;
  /** What would break that is not broken now. */
  readonly breaks: readonly BreakTold[];
}

/** Why something cannot be taken up, or laid down where it is. */
export type Cannot =
  /** It has left or is done, or lies in a trip that has: what happened stays. */
  | { readonly why: 'done' | 'underWay' }
  | { readonly why: 'locked' }
  /** The program says why it is not to be planned at all. */
  | { readonly why: 'notToBePlanned'; readonly said: string }
  | { readonly why: 'breaks'; readonly breaks: readonly BreakTold[] }
  /** It is not in the plan any more. */
  | { readonly why: 'gone' }
  /** The numbers of the plan could not be had. */
  | { readonly why: 'noAnswer' };

/** Late is told and may be; out of the plan is what was asked. All else cannot be done as it would be written. */
const mayBe: ReadonlySet<BreakKind> = new Set(['late', 'leftOut']);

/** What of the breaks forbids laying it down. */
export const forbidding = (breaks: readonly BreakTold[]): readonly BreakTold[] =>
  breaks.filter(({ kind }) => !mayBe.has(kind));

/** A place near the one wanted at which nothing breaks, or why there is none. */
export interface NearestFound {
  readonly place: Place | null;
  /** The commonest reason against the places looked at. */
  readonly commonest: BreakKind | null;
}

/** A move that was laid down. */
export interface Laid {
  readonly held: Held;
  readonly at: Place;
  readonly answer: MoveAnswer;
}
