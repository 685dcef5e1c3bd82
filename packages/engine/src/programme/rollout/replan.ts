import { evaluatePlan } from './evaluatePlan.ts';
import { type PlanChanges, planChanges } from './planChanges.ts';
import { type FoundPlan, type PlanAsked, planRollout } from './planRollout.ts';
import type { Outcome, RolloutPlan, RolloutProblem } from './problem.ts';

/** A plan made anew, and what is otherwise in it than if nothing had been done. */
export interface Replanned extends FoundPlan {
  readonly changes: PlanChanges;
  /** What comes of the plan in force where nothing is changed. */
  readonly unchanged: Outcome;
}

/**
 * What to do now that something happened (stock is late, a boat is broken, a river closed)? The same search goes on from the plan in
 * force: trips locked in it, those under way among them, stay as they are.
 *
 * @param problem - the rollout as it is now, what happened written into it [day, kg, L, person]
 * @param inForce - the plan there is; locked trips stay
 * @param asked - what may be spent, the seed, and how much more waiting is had for a cheaper plan
 * @returns the new plan, its outcome, what comes of the plan in force if nothing is done, and what changes against the plan in force under the same circumstances [day]
 * @law never more waiting than the plan in force has now, lateness priced, but for the share that is had for a cheaper plan
 * @definition docs/methods/rollout.md
 */
export function replan(problem: RolloutProblem, inForce: RolloutPlan, asked: Omit<PlanAsked, 'start'>): Replanned {
  const unchanged = evaluatePlan(problem, inForce);
  const found = planRollout(problem, { ...asked, start: inForce });
  return { ...found, unchanged, changes: planChanges({ plan: inForce, outcome: unchanged }, found) };
}
