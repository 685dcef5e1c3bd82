import {
  evaluatePlan,
  type KeptPlan,
  keptPlan,
  namedAfter,
  type Outcome,
  type PlanAsked,
  type PlanFacts,
  type Problem,
  type ProgrammeFacts,
  planRollout,
  type ReadyRollout,
  type RolloutPlan,
  replan,
  rowsOfPlan,
} from '@eavewell/engine';
import type { ReplannedGiven } from '@eavewell/report';
import { WrongUse } from '../exitCodes.ts';
import { spoken } from '../language.ts';
import { nearestIds } from './nearestIds.ts';

const { rollout: words } = spoken.commandLine;

/** A plan that was found, and what it went on from. */
interface Searched {
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
  readonly tries_count: number;
  readonly tripIds?: readonly (readonly string[])[];
  readonly replanned: ReplannedGiven | null;
  readonly problems: readonly Problem[];
}

/** The plan that is named, else the one in force; null: there is none. */
export function planFollowed({ rollout: { plans } }: ProgrammeFacts, planId: string | null): PlanFacts | null {
  if (planId === null) return plans.find(({ isInForce }) => isInForce) ?? null;
  const found = plans.find((plan) => plan.planId === planId);
  if (found !== undefined) return found;
  if (plans.length === 0) throw new WrongUse(words.noPlans);
  const ids = plans.map((plan) => plan.planId);
  throw new WrongUse(words.unknownPlan(planId, nearestIds(planId, ids)));
}

/** The trips still to go of the plan that is followed; null: there is none. */
export function keptOf(
  { ready, facts, today }: { readonly ready: ReadyRollout; readonly facts: ProgrammeFacts; readonly today: number },
  followed: PlanFacts | null,
): KeptPlan | null {
  return followed && keptPlan(ready, facts, followed.planId, today);
}

/** Searches from nothing, or goes on from a kept plan; anew, only what has happened of that stays. */
export function searchedFrom(
  { problem }: ReadyRollout,
  from: { readonly followed: PlanFacts | null; readonly kept: KeptPlan | null; readonly isAnew: boolean },
  asked: Omit<PlanAsked, 'start'>,
): Searched {
  const { followed, kept, isAnew } = from;
  if (followed === null || kept === null) return { ...planRollout(problem, asked), replanned: null, problems: [] };
  const found = isAnew
    ? { ...planRollout(problem, asked), unchanged: evaluatePlan(problem, kept.plan) }
    : replan(problem, kept.plan, asked);
  const { plan, tripIds } = namedAfter(found.plan, kept);
  return {
    ...{ plan, outcome: found.outcome, tries_count: found.tries_count, problems: kept.problems },
    tripIds: idsOf(plan, kept, rowsOfPlan(problem, plan, found.outcome, { ...kept, tripIds }).planTrips),
    replanned: { facts: followed, kept, unchanged: found.unchanged },
  };
}

/** Trips that left stand first, then those of the plan, by crew. */
function idsOf({ trips }: RolloutPlan, kept: KeptPlan, rows: ReturnType<typeof rowsOfPlan>['planTrips']) {
  let at = kept.past.flat().length + kept.otherPast.length;
  return trips.map((own) => own.map(() => rows[at++]!['tripId']!));
}
