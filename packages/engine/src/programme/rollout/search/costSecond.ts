import { lateFactor } from '../constants.ts';
import { evaluatePlan } from '../evaluatePlan.ts';
import type { Outcome, RolloutPlan } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import type { SearchBudget } from './searchBudget.ts';

/** A plan, what comes of it, and how many tries it took. */
export interface TriedPlan {
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
  readonly tries_count: number;
}

/** What is asked of a search for a cheaper plan. */
export interface CostAsked {
  readonly budget: SearchBudget;
  /** How much more waiting a cheaper plan may have, as a share of the plan's. */
  readonly more_fraction: number;
  /** Searches on from a plan, a crew's day away counting as so much waiting. */
  readonly searchOn: (from: RolloutPlan, homeWeight: number, budget: SearchBudget) => TriedPlan;
}

/** Searches in turn [count]; each weighs days away by what the one before found. Ours. */
const rounds_count = 4;

/** A day of a crew's weighs at first this share of what a day of all its sites weighs. Ours. */
const firstWeight_fraction = 0.5;

/** By so much a day weighs more where there is waiting to spare, and less where there is not. Ours. */
const step_ratio = 2;

/**
 * The cheapest plan that makes people wait hardly longer. Days that crews are under way stand for cost in the search; what a plan costs in money and what it
 * makes people wait is told by the evaluator, which alone decides what is kept.
 */
export function cheaperPlan(timing: Retiming, first: TriedPlan, asked: CostAsked): TriedPlan {
  const { problem } = timing;
  const total = problem.jobs.reduce((sum, { weight }) => sum + weight, 0);
  const most = priced(timing, first.outcome) * (1 + asked.more_fraction);
  const allowed_count = graveOf(first.outcome);
  let homeWeight = (firstWeight_fraction * total) / Math.max(1, problem.crews.length);
  let [best, tries_count] = [first, first.tries_count];
  for (let round = 0; round < rounds_count; round++) {
    const found = asked.searchOn(best.plan, homeWeight, partOf(asked.budget, round, rounds_count));
    tries_count += found.tries_count;
    const isAllowed =
      priced(timing, found.outcome) <= most &&
      found.outcome.waiting <= first.outcome.waiting * (1 + asked.more_fraction) &&
      graveOf(found.outcome) <= allowed_count;
    if (isAllowed && found.outcome.cost < best.outcome.cost) best = found;
    homeWeight *= isAllowed ? step_ratio : 1 / step_ratio;
  }
  return { plan: best.plan, outcome: evaluatePlan(timing, best.plan), tries_count };
}

/** Waiting, a day late counting as ten (docs/decisions/0336). */
function priced({ problem }: Retiming, { waiting, broken }: Outcome): number {
  return broken.reduce(
    (sum, one) => (one.kind === 'late' ? sum + lateFactor * one.by * problem.jobs[one.job]!.weight : sum),
    waiting,
  );
}

/** How much is broken beside lateness, which has its price. */
function graveOf({ broken }: Outcome): number {
  return broken.filter(({ kind }) => kind !== 'late').length;
}

/** One of several equal parts of a budget, one after another. */
export function partOf(budget: SearchBudget, part: number, parts: number): SearchBudget {
  return shareOf(budget, part / parts, (part + 1) / parts);
}

/** A share of a budget, from one part spent to another; what is told of it counts for the whole. */
export function shareOf(budget: SearchBudget, from_fraction: number, to_fraction: number): SearchBudget {
  if (from_fraction <= 0 && to_fraction >= 1) return budget;
  const size = to_fraction - from_fraction;
  return {
    left: () => (budget.left() - (1 - to_fraction)) / size,
    report: (found) =>
      budget.report({ ...found, left_fraction: 1 - to_fraction + size * Math.min(1, found.left_fraction) }),
    stopped: () => budget.stopped(),
  };
}
