import type { PlanNamed } from './evaluator.ts';
import type { MoveAnswer, NearestFound } from './moveAnswer.ts';
import type { Held, Place } from './places.ts';

/** The state of a programme's plan that questions are asked of. */
export interface PlanAsked {
  readonly programmeId: string;
  /** Of the sheet: numbers of another state are not used. */
  readonly stamp: string;
  readonly plan: PlanNamed;
}

/** What the page asks of the thread that evaluates moves. */
export type ToByHand =
  /** The numbers are to be there, and the legs with which what is held can be put anywhere. */
  | { readonly kind: 'ready'; readonly ask: number; readonly of: PlanAsked; readonly held: Held | null }
  | {
      readonly kind: 'become' | 'whole' | 'nearest';
      readonly ask: number;
      readonly of: PlanAsked;
      readonly held: Held;
      readonly place: Place;
    };

/** What that thread answers. */
export type FromByHand =
  | { readonly kind: 'ready'; readonly ask: number }
  | { readonly kind: 'becomes'; readonly ask: number; readonly answer: MoveAnswer }
  | { readonly kind: 'nearest'; readonly ask: number; readonly found: NearestFound }
  /** The numbers know nothing of it. */
  | { readonly kind: 'unknown'; readonly ask: number }
  /** The numbers there are now are of another state: the sheet is to be asked for anew. */
  | { readonly kind: 'otherState'; readonly ask: number }
  | { readonly kind: 'noAnswer'; readonly ask: number };
