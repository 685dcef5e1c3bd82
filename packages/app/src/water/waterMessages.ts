import type { BandAtSize, ProgrammeFacts, SiteFacts } from '@eavewell/engine';
import type { Draft, Question } from './draft.ts';
import type { Drafted } from './draftedSite.ts';
import type { Judged, JudgedOf } from './siteJudge.ts';
import type { SiteReport } from './siteReport.ts';

/** What the page asks of the thread that judges one site. Each question has a number; a newer one overtakes those before it. */
export type ToWater =
  | {
      readonly kind: 'load';
      readonly ask: number;
      readonly programmeId: string;
      readonly siteId: string;
      /** The form of answers these pages were built for. */
      readonly form: string;
      readonly language: string;
    }
  /** Facts at hand are used as if they had been fetched. */
  | { readonly kind: 'facts'; readonly ask: number; readonly facts: ProgrammeFacts; readonly siteId: string }
  | {
      readonly kind: 'judge';
      readonly ask: number;
      /** A tag such as `es`. */
      readonly language: string;
      readonly draft: Draft;
      readonly question: Question;
      /** What is wanted, the most urgent first. */
      readonly wanted: readonly JudgedOf[];
    }
  | { readonly kind: 'remedies'; readonly ask: number; readonly language: string; readonly draft: Draft }
  /** What the draft comes to, for keeping it. */
  | { readonly kind: 'drafted'; readonly ask: number; readonly draft: Draft }
  /** A draft was kept: these are the saved facts from now on. */
  | { readonly kind: 'settle'; readonly ask: number; readonly site: SiteFacts };

/** Why a site cannot be judged here. `notYet`: the program has not worked out the facts of this site. */
export type WaterProblem = 'unreachable' | 'refused' | 'notYet' | 'broken';

/** What that thread answers. */
export type FromWater =
  | {
      readonly kind: 'loaded';
      readonly ask: number;
      readonly site: SiteFacts;
      /** Nothing is other than when it was read last: what was judged stands. */
      readonly isSame: boolean;
    }
  | {
      readonly kind: 'notLoaded';
      readonly ask: number;
      readonly problem: WaterProblem;
      /** The program's own words, where it answered with some. */
      readonly body: unknown;
    }
  /** Null: it is the same as the one before, and none is worked out. */
  | { readonly kind: 'judged'; readonly ask: number; readonly of: JudgedOf; readonly judged: Judged | null }
  /** The doubt about every size, for each of the storages that were judged. */
  | {
      readonly kind: 'bands';
      readonly ask: number;
      readonly of: JudgedOf;
      readonly bands: readonly (readonly BandAtSize[])[];
    }
  | { readonly kind: 'remedies'; readonly ask: number; readonly remedies: SiteReport['remedies'] }
  | { readonly kind: 'toKeep'; readonly ask: number; readonly before: SiteFacts; readonly after: Drafted }
  /** All that was asked is answered; or a newer question came, and the rest is not worked out. */
  | { readonly kind: 'end'; readonly ask: number; readonly isOvertaken: boolean };
