import { freeAfterAbsences, isWanted, leastThere } from './carriersAway.ts';
import { fewBlinks_fraction, fewJobs_count } from './constants.ts';
import { evaluatePlan } from './evaluatePlan.ts';
import { retiming } from './makeReady.ts';
import type { Outcome, PlannedTrip, RolloutPlan, RolloutProblem } from './problem.ts';
import type { Retiming } from './retiming.ts';
import { crewNumbers } from './search/crewNumbers.ts';
import { CrewsByWaiting } from './search/crewsByWaiting.ts';
import { CrewsOnStock } from './search/crewsOnStock.ts';
import { CrewsSharing } from './search/crewsSharing.ts';
import { Draws } from './search/draws.ts';
import type { SearchBudget } from './search/searchBudget.ts';
import { crewRules } from './search/searchRules.ts';
import { slackInduction } from './search/slackInduction.ts';

/** What a search for a plan is asked. */
export interface PlanAsked {
  readonly budget: SearchBudget;
  readonly seed: number;
  /** A plan to go on from; its locked trips stay as they are. Null: from nothing. */
  readonly start?: RolloutPlan | null;
}

/** A plan and what comes of it. */
export interface FoundPlan {
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
  readonly tries_count: number;
}

/**
 * Which crew goes where, in which order, so that the sum of weight × first day of service is least? Slack induction on crews with trips;
 * sites that no trip can serve are left out.
 *
 * @param problem - the rollout as numbers [day, kg, L, person]
 * @param asked - what may be spent, the seed, the plan to go on from
 * @returns the best plan found, its outcome, tries [count]
 * @law the same problem, seed and budget of tries give the same plan
 * @law locked trips stay as they are
 * @definition docs/methods/rollout.md
 */
export function planRollout(problem: RolloutProblem, asked: PlanAsked): FoundPlan {
  const { budget, seed, start = null } = asked;
  const draws = new Draws(seed);
  const timing = retiming(problem);
  const state = stateFor(timedForSearch(timing), draws);
  if (start !== null) state.load(problem.crews.map((_, crew) => (start.trips[crew] ?? []).map(asSearched)));
  const rounds = problem.jobs.length <= fewJobs_count ? 3 : 1;
  let tries_count = 0;
  for (let round = 0; round < rounds; round++)
    tries_count += slackInduction(state, crewRules, partOf(budget, round, rounds), draws).tries_count;
  const plan = { trips: state.trips().map((trips) => trips.map(asPlanned)) };
  return { plan, outcome: evaluatePlan(timing, plan), tries_count };
}

/** Absences that only put off a crew's first trip need not be timed with all other crews, where nothing else is shared: who asks first is no matter then. */
export function timedForSearch(timing: Retiming): Retiming {
  const searched = freeAfterAbsences(timing.problem);
  if (searched === timing.problem) return timing;
  const alone = retiming(searched);
  return isShared(alone) ? timing : alone;
}

/** Jobs are numbered from 1 in the search. */
function asSearched({ stops, notBefore, isLocked }: PlannedTrip): PlannedTrip {
  return { stops: stops.map((job) => job + 1), notBefore, isLocked };
}

function asPlanned({ stops, notBefore, isLocked }: PlannedTrip): PlannedTrip {
  return { stops: stops.map((job) => job - 1), notBefore, isLocked };
}

/** One of several equal parts of a budget, one after another. */
function partOf(budget: SearchBudget, part: number, parts: number): SearchBudget {
  if (parts === 1) return budget;
  return {
    left: () => budget.left() * parts - (parts - 1 - part),
    report: (found) => budget.report(found),
    stopped: () => budget.stopped(),
  };
}

/** The plan as the search sees it: what crews share says how much of it must be timed together. */
export function stateFor(timing: Retiming, draws: Draws): CrewsByWaiting {
  const { problem } = timing;
  const numbers = crewNumbers(problem);
  const blink_fraction = problem.jobs.length <= fewJobs_count ? fewBlinks_fraction : crewRules.blink_fraction;
  if (!isShared(timing)) return new CrewsByWaiting(numbers, blink_fraction, draws);
  const hasHauls = problem.stores.some(({ filledBy }) => filledBy !== null);
  const sharesCarriers = problem.pools.some((pool, at) => isWanted(pool, at, problem.crews));
  if (hasHauls || sharesCarriers) return new CrewsSharing(numbers, blink_fraction, draws, timing);
  return new CrewsOnStock(numbers, blink_fraction, draws, timing);
}

/** Does anything but their own days hold crews up: goods that must be there, hauls, carriers that are out? */
export function isShared({ isCoupled, crews, problem }: Retiming): boolean {
  return isCoupled || crews.some(({ isStocked }) => isStocked) || problem.pools.some((pool) => leastThere(pool) <= 0);
}
