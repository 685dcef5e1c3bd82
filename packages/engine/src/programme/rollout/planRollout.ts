import { freeAfterAbsences, isWanted, leastThere } from './carriersAway.ts';
import { fewBlinks_fraction, fewJobs_count, timeShare_fraction } from './constants.ts';
import { evaluatePlan } from './evaluatePlan.ts';
import { retiming } from './makeReady.ts';
import type { Outcome, PlannedTrip, RolloutPlan, RolloutProblem } from './problem.ts';
import type { Retiming } from './retiming.ts';
import { cheaperPlan, partOf, shareOf, type TriedPlan } from './search/costSecond.ts';
import { crewNumbers } from './search/crewNumbers.ts';
import { CrewsApart } from './search/crewsApart.ts';
import type { CrewsByWaiting } from './search/crewsByWaiting.ts';
import { CrewsOnStock } from './search/crewsOnStock.ts';
import { CrewsSharing } from './search/crewsSharing.ts';
import { Draws } from './search/draws.ts';
import type { SearchBudget } from './search/searchBudget.ts';
import { costTemperature_ratio, crewRules, type SearchRules, sharingRules } from './search/searchRules.ts';
import { slackInduction } from './search/slackInduction.ts';

/** What a search for a plan is asked. */
export interface PlanAsked {
  readonly budget: SearchBudget;
  readonly seed: number;
  /** A plan to go on from; its locked trips stay as they are. Null: from nothing. */
  readonly start?: RolloutPlan | null;
  /**
   * So much more waiting, as a share, may be had for a cheaper plan, searched for in the last quarter of the budget. Null or left out: cost is told alone.
   */
  readonly costWithin_fraction?: number | null;
}

/** A plan and what comes of it. */
export interface FoundPlan {
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
  readonly tries_count: number;
  /** Before cost was searched for: what people waited [person-day] and what it cost; left out where it was not. */
  readonly before?: { readonly waiting: number; readonly cost: number };
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
 * @law where cost is searched for, it is never more than before, and waiting no more than the share allows
 * @definition docs/methods/rollout.md
 */
export function planRollout(problem: RolloutProblem, asked: PlanAsked): FoundPlan {
  const { budget, seed, start = null, costWithin_fraction = null } = asked;
  const draws = new Draws(seed);
  const timing = retiming(problem);
  const forSearch = timedForSearch(timing);
  const numbers = crewNumbers(forSearch.problem);
  const rules = isShared(forSearch) ? sharingRules : crewRules;
  if (costWithin_fraction === null)
    return searched(timing, stateFor(forSearch, draws, numbers), budget, draws, start, rules);
  let best_amount = 0;
  const last = shareOf(budget, timeShare_fraction, 1);
  const timed: SearchBudget = {
    ...budget,
    report: (progress) => {
      best_amount = progress.best_amount;
      budget.report(progress);
    },
  };
  const first = searched(
    timing,
    stateFor(forSearch, draws, numbers),
    shareOf(timed, 0, timeShare_fraction),
    draws,
    start,
    rules,
  );
  const costRules = { ...rules, firstTemperature_ratio: costTemperature_ratio };
  const found = cheaperPlan(timing, first, {
    more_fraction: Math.max(0, costWithin_fraction),
    // What the search counts there is waiting and days away: what is told stays the waiting that was found.
    budget: { ...last, report: (progress) => last.report({ ...progress, best_amount }) },
    searchOn: (from, homeWeight, part) =>
      searched(timing, stateFor(forSearch, draws, { ...numbers, homeWeight }), part, draws, from, costRules),
  });
  return { ...found, before: { waiting: first.outcome.waiting, cost: first.outcome.cost } };
}

/** Goes on from a plan, or begins from nothing. */
function searched(
  timing: Retiming,
  state: CrewsByWaiting,
  budget: SearchBudget,
  draws: Draws,
  start: RolloutPlan | null,
  rules: SearchRules,
): TriedPlan {
  const { problem } = timing;
  if (start !== null) state.load(problem.crews.map((_, crew) => (start.trips[crew] ?? []).map(asSearched)));
  const rounds = problem.jobs.length <= fewJobs_count ? 3 : 1;
  let tries_count = 0;
  for (let round = 0; round < rounds; round++)
    tries_count += slackInduction(state, rules, partOf(budget, round, rounds), draws).tries_count;
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

/** The plan as the search sees it: what crews share says how much of it must be timed together. */
export function stateFor(timing: Retiming, draws: Draws, numbers = crewNumbers(timing.problem)): CrewsByWaiting {
  const { problem } = timing;
  const blink_fraction = problem.jobs.length <= fewJobs_count ? fewBlinks_fraction : crewRules.blink_fraction;
  if (!isShared(timing)) return new CrewsApart(numbers, blink_fraction, draws);
  const hasHauls = problem.stores.some(({ filledBy }) => filledBy !== null);
  const sharesCarriers = problem.pools.some((pool, at) => isWanted(pool, at, problem));
  if (hasHauls || sharesCarriers) return new CrewsSharing(numbers, blink_fraction, draws, timing);
  return new CrewsOnStock(numbers, blink_fraction, draws, timing);
}

/** Does anything but their own days hold crews up: goods that must be there, hauls, carriers that are out? */
export function isShared({ isCoupled, crews, problem }: Retiming): boolean {
  return isCoupled || crews.some(({ isStocked }) => isStocked) || problem.pools.some((pool) => leastThere(pool) <= 0);
}
