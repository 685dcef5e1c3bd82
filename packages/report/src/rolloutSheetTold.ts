import type { DayIndex, PastTrip, PlanFacts, SiteFacts, TightTrip, Verdict } from '@eavewell/engine';
import type { RolloutSheet } from '@eavewell/tables';
import type { StripsGiven } from './rolloutStrips.ts';
import type { RolloutGiven, Told } from './rolloutTold.ts';

/** What was found of one plan for its page. */
export interface SheetGiven extends RolloutGiven, StripsGiven {
  /** Of the facts. */
  readonly version: number;
  readonly stamp: string;
  /** Null: there is none. */
  readonly planId: string | null;
  /** Trips that left. */
  readonly past: readonly PastTrip[];
  /** Trips of which nobody entered that they left, though they should have. */
  readonly overdue: ReadonlySet<string>;
  readonly verdictOf: ReadonlyMap<string, Verdict>;
  /** People of sites, as far as they are known. */
  readonly peopleOf: ReadonlyMap<string, number>;
  readonly crewsLeftOut: readonly string[];
  readonly futuresState: RolloutSheet['futures'];
  /** Trips that must not leave later, and why. */
  readonly tight: readonly TightTrip[];
  readonly changedSince: RolloutSheet['changedSince'];
  /** Lines of ways, longitude and latitude [deg]. */
  readonly linesOf: ReadonlyMap<string, readonly (readonly number[])[]>;
}

/** The sheet's own, with all that its sentences are made with. */
export interface SheetTold extends SheetGiven, Told {
  readonly inForce: PlanFacts | null;
  readonly siteOf: ReadonlyMap<string, SiteFacts>;
}

/** Is a site handed over by a day? */
export const isHandedOver = (site: SiteFacts | undefined, today: DayIndex): boolean =>
  site !== undefined && site.handOverDay !== null && site.handOverDay <= today;
