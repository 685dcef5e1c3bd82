import {
  costWithin_fraction,
  evaluatePlan,
  namedAfter,
  type PlanCells,
  planRollout,
  type RolloutProblem,
  rowsOfPlan,
  type SearchBudget,
  type WaitingBounds,
  waitingBounds,
} from '@eavewell/engine';
import { loadSolveLinear } from '@eavewell/linear';
import type { JobAround } from '@eavewell/work';
import type { SearchStart } from './rolloutAsks.ts';

/** A search for a plan. */
export interface SearchWanted {
  readonly from: SearchStart;
  readonly planId: string;
  readonly seconds: number;
  readonly seed: number;
}

/** How a search gets on. */
export interface SearchTold {
  /** Of the best plan so far, with priorities [person-day]; null: none yet. */
  readonly waiting: number | null;
  readonly bound: number | null;
}

/** The plan that was found, as the rows it is kept in. */
export interface SearchFound {
  readonly planTrips: readonly PlanCells[];
  readonly planStops: readonly PlanCells[];
  readonly waiting: number;
  readonly bounds: WaitingBounds | null;
}

/** Columns of the linear programme of the bound. Ours, as the command has it. */
const mostColumns = 15_000;
/** Of more sites the bound takes long: it is reckoned once the plan is found. Ours. */
const manyJobs_count = 400;

/** Searches for a plan, and gives it as rows. */
export async function rolloutSearchTask(
  { from, planId, seconds, seed }: SearchWanted,
  around: JobAround,
): Promise<SearchFound> {
  const { problem, start, kept } = from;
  const isLarge = problem.jobs.length > manyJobs_count;
  const early = isLarge ? from.bounds : await boundsOf(problem, from.bounds);
  let told: SearchTold = { waiting: null, bound: early?.best.waiting ?? null };
  around.report(0, told);
  const budget = budgetOf(seconds, around, (done, waiting) => {
    told = { ...told, waiting };
    around.report(done, told);
  });
  const found = planRollout(problem, { budget, seed, start, costWithin_fraction });
  const bounds = await boundsOf(problem, early);
  const { plan, tripIds } = namedAfter(found.plan, kept);
  const outcome = evaluatePlan(problem, plan);
  around.report(1, { waiting: outcome.waiting, bound: bounds?.best.waiting ?? null } satisfies SearchTold);
  const rows = rowsOfPlan(problem, plan, outcome, { ...kept, planId, tripIds });
  return { ...rows, waiting: outcome.waiting, bounds };
}

/** Bounds of the waiting; undefined: not known yet. */
export async function boundsOf(
  problem: RolloutProblem,
  known: WaitingBounds | null | undefined,
): Promise<WaitingBounds | null> {
  return known === undefined ? waitingBounds(problem, { solve: await loadSolveLinear(), mostColumns }) : known;
}

/** How often is told how a search gets on [ms]. Ours. */
const told_ms = 200;

function budgetOf(
  seconds: number,
  around: JobAround,
  tell: (done_fraction: number, waiting: number) => void,
): SearchBudget {
  const began_ms = performance.now();
  let last_ms = Number.NEGATIVE_INFINITY;
  const left = () => 1 - (performance.now() - began_ms) / (1000 * seconds);
  return {
    left,
    report: ({ best_amount }) => {
      const now_ms = performance.now();
      if (now_ms - last_ms < told_ms) return;
      last_ms = now_ms;
      tell(Math.min(1, Math.max(0, 1 - left())), best_amount);
    },
    stopped: () => around.stopped(),
  };
}
