import { setDrawn } from '../crewsTogether.ts';
import { everyJobOnce } from '../evaluatePlan.ts';
import { type PlanChanges, planChanges, type TimedPlan } from '../planChanges.ts';
import { outcomeOf, timedHauls, timedTrips } from '../planOutcome.ts';
import type { Outcome, RolloutPlan } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import { breaksBeside, type NewBreak } from './newBreaks.ts';
import { type TravelPair, unknownPairs } from './pairs.ts';
import { flatTrips, retimed } from './retimed.ts';

/** What comes of a change by hand. */
export interface Becomes {
  readonly outcome: Outcome;
  /** What is broken that was not, or by more than it was; what was broken before is not told again. */
  readonly breaks: readonly NewBreak[];
  /** Sites whose day or crew changed, and what it means for all [day, person-day, money]. */
  readonly changes: PlanChanges;
  /** Legs that the timing looked at and that are not known: with any of them, days may be told later than they are. Ask for them. */
  readonly missing: readonly TravelPair[];
}

/**
 * What comes of a plan that was changed by hand, against the plan before? Crews that the change cannot reach are not timed again.
 *
 * @param ready - the rollout made ready; with legs of some pairs or of all [day, kg, L]
 * @param before - the plan before, with what came of it in this rollout [day]
 * @param plan - the changed plan
 * @returns its outcome, what is newly broken, what changed, and legs that are to be asked for [day, person-day, kg, L]
 * @law the outcome is that of `evaluatePlan`
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function whatBecomes(ready: Retiming, before: TimedPlan, plan: RolloutPlan): Becomes {
  const { problem } = ready;
  const flat = flatTrips(ready, plan);
  everyJobOnce(ready, flat);
  setDrawn(ready, null);
  const { isNew, broken } = retimed(ready, before, flat, plan);
  const missing = unknownPairs(ready);
  const untouched = before.outcome.hauls.filter(({ forCrew }) => isNew[forCrew] === 0);
  const outcome = outcomeOf(problem, {
    trips: flat.map((own, crew) => (isNew[crew] === 1 ? timedTrips(ready, crew, own) : before.outcome.trips[crew]!)),
    hauls: [...untouched, ...timedHauls(ready)],
    broken,
  });
  return {
    ...{ outcome, missing },
    breaks: breaksBeside(problem.jobs.length, before, { plan, outcome }),
    changes: planChanges(before, { plan, outcome }),
  };
}
