import type { DayIndex, Problem, SiteFacts, Verdict } from './kernel/index.ts';
import type { KitLine } from './programme/kit/index.ts';
import type { RolloutProblem } from './programme/rollout/index.ts';
import type { ExplainedWay, NoWay, Party, ReadyWays, WayState, WayStop } from './programme/ways/index.ts';
import type { SiteWaits } from './siteService.ts';

/** Why a site is not planned. */
export const leftOutReasons = [
  'handedOver',
  'underWay',
  'notAsked',
  'short',
  'unknown',
  'noPeople',
  'notAgreed',
  'noKit',
  'noWindow',
  'noSkill',
  'noWay',
  'tooHeavy',
  'tooBulky',
  'tooLong',
] as const;
export type LeftOutReason = (typeof leftOutReasons)[number];

/** A site that is not planned, and why. Too heavy, bulky or long: by how much more than the most that passes to it [kg, L, m]; else null. */
export interface LeftOutSite {
  readonly siteId: string;
  readonly reason: LeftOutReason;
  readonly over_kg: number | null;
  readonly over_L: number | null;
  readonly over_m: number | null;
}

/** What the rollout wants to know of a site that is not handed over. */
export interface RolloutSite {
  readonly site: SiteFacts;
  readonly verdict: Verdict;
  /** As counted, or made from the households; null: not known. */
  readonly people_count: number | null;
  readonly lines: readonly KitLine[];
  /** Days from hand-over to the first day of service; null: not known. */
  readonly serviceWaits: SiteWaits | null;
}

/** What is asked of the rollout beyond the facts. */
export interface RolloutAsked {
  readonly today: DayIndex;
  /** Null or left out: as the settings say, else today. */
  readonly firstDay?: DayIndex | null;
  /** Null or left out: as the settings say [day]. */
  readonly horizon_days?: number | null;
  /** Ids of sites; null or left out: all. */
  readonly siteIds?: ReadonlySet<string> | null;
  /** A kept plan: what is planned goes on from what has happened of it, today at the earliest. Null or left out: nothing has. */
  readonly planId?: string | null;
  /** Are stores in it that could be: places that can be filled, at which no crew loads? */
  readonly hasPossibleStores?: boolean;
}

/** By which ways a store is filled: there and back, each by period. */
export interface FillingWays {
  readonly there: readonly (ExplainedWay | NoWay)[];
  readonly back: readonly (ExplainedWay | NoWay)[];
}

/** A rollout, ready to be planned. */
export interface ReadyRollout {
  readonly problem: RolloutProblem;
  readonly leftOut: readonly LeftOutSite[];
  /** Crews that are not planned with, by their ids: a problem says why. */
  readonly crewsLeftOut: readonly string[];
  readonly problems: readonly Problem[];
  readonly ways: ReadyWays;
  /** As the nodes of the problem. */
  readonly stops: readonly WayStop[];
  /** As its `travels`. */
  readonly parties: readonly Party[];
  /** As its `periods`. */
  readonly states: readonly WayState[];
  /** As its stores: the ways by which each is filled, there and back, each by period; null: goods come there themselves. */
  readonly filling: readonly (FillingWays | null)[];
}
