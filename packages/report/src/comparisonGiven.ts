import type { DayIndex, Outcome, PlanFacts, ProgrammeFacts, RolloutPlan, RolloutProblem } from '@eavewell/engine';
import type { ChangesSince } from './rolloutChanges.ts';

/** Two plans, timed on the same rollout. */
export interface ComparisonGiven {
  readonly stamp: string;
  readonly facts: ProgrammeFacts;
  readonly problem: RolloutProblem;
  readonly a: PlanTimed;
  readonly b: PlanTimed;
  /** The second was found in place of the first and is not kept; null: both are. */
  readonly anew: AnewGiven | null;
}

export interface PlanTimed {
  readonly facts: PlanFacts;
  /** What its trips are called, by crew and trip. */
  readonly tripIds: readonly (readonly string[])[];
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
}

/** What is known of a plan that was found in place of another. */
export interface AnewGiven {
  readonly by: string;
  readonly at: string;
  /** What was entered since it was begun to be searched for. */
  readonly entered: Pick<ChangesSince, 'changes' | 'changes_count'>;
  readonly isPlanChanged: boolean;
  readonly today: DayIndex;
  /** People of every site of which they are known. */
  readonly peopleOf: ReadonlyMap<string, number>;
  /** What changed since the days of the first plan were worked out; null: nobody says when they were. */
  readonly since: Pick<ChangesSince, 'takenOut'> | null;
  /** What the first plan came to before those changes; null: there were none. */
  readonly before: {
    readonly handOvers: ReadonlyMap<string, DayIndex | null>;
    readonly cost: number;
    readonly tripIds: readonly string[];
  } | null;
}
