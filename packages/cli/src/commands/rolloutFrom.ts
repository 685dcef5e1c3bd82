import {
  evaluatePlan,
  type KeptPlan,
  keptPlan,
  namedAfter,
  type Outcome,
  type PlanAsked,
  type PlanFacts,
  type PlanRows,
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
  /** The rows it is kept in, whatever its id. */
  readonly rows: PlanRows;
  readonly tripIds: readonly (readonly string[])[];
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
  if (followed === null || kept === null) {
    const found = planRollout(problem, asked);
    return { ...found, ...rowsAndIds(problem, found, null), replanned: null, problems: [] };
  }
  const found = isAnew
    ? { ...planRollout(problem, asked), unchanged: evaluatePlan(problem, kept.plan) }
    : replan(problem, kept.plan, asked);
  const { plan, tripIds } = namedAfter(found.plan, kept);
  return {
    ...{ plan, outcome: found.outcome, tries_count: found.tries_count, problems: kept.problems },
    ...rowsAndIds(problem, { plan, outcome: found.outcome }, { ...kept, tripIds }),
    replanned: { facts: followed, kept, unchanged: found.unchanged },
  };
}

/** The rows a plan is kept in, and what its trips are called in them: those that left stand first, then its own, by crew. */
function rowsAndIds(
  problem: ReadyRollout['problem'],
  { plan, outcome }: Pick<Searched, 'plan' | 'outcome'>,
  kept: Parameters<typeof rowsOfPlan>[3] | null,
): Pick<Searched, 'rows' | 'tripIds'> {
  const rows = rowsOfPlan(problem, plan, outcome, kept ?? { planId: '' });
  let at = (kept?.past ?? []).flat().length + (kept?.otherPast ?? []).length;
  const tripIds = plan.trips.map((own) => own.map(() => rows.planTrips[at++]!['tripId']!));
  return { rows, tripIds };
}
