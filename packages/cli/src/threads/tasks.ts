import {
  budgetOfTries,
  costWithin_fraction,
  planRollout,
  type RolloutPlan,
  type RolloutProblem,
  type SearchBudget,
} from '@eavewell/engine';
import { readProgramme } from '@eavewell/formats';
import type { JobAround, Tasks } from '@eavewell/work';
import { makePacks, type PacksWanted } from '../packs/makePacks.ts';

/** Packs of a programme, to be made in a thread that reads it itself. */
export interface PacksOfFolder extends PacksWanted {
  readonly folder: string;
}

/** A rollout to be planned in a thread: so many seconds, or so many tries. */
export interface PlanWanted {
  readonly problem: RolloutProblem;
  /** A plan to go on from; null: from nothing. */
  readonly start: RolloutPlan | null;
  readonly seed: number;
  readonly seconds: number | null;
  readonly tries: number | null;
}

/** What comes of it. */
export interface PlanMade {
  readonly waiting: number;
  readonly cost: number;
  readonly finish: number;
  readonly leftOut_count: number;
}

/** What a thread of the command line does. */
export const tasks = {
  packs: async ({ folder, ...wanted }: PacksOfFolder, { report }: JobAround) => {
    const { facts } = await readProgramme(folder);
    await makePacks(facts, wanted, (made, nth) => report((nth + 1) / wanted.siteIds.length, made));
  },
  plan: async ({ problem, start, seed, ...spent }: PlanWanted, { stopped }: JobAround): Promise<PlanMade> => {
    const { outcome } = planRollout(problem, { seed, start, budget: budgetOf(spent, stopped), costWithin_fraction });
    const { waiting, cost, finish, broken } = outcome;
    const served = new Set(outcome.trips.flat().flatMap(({ stops }) => stops.map(({ job }) => job)));
    const isUnserved = broken.length > 0 ? problem.jobs.filter((_, job) => !served.has(job)).length : 0;
    return { waiting, cost, finish, leftOut_count: isUnserved };
  },
} satisfies Tasks;

/** So many seconds of the clock, or so many tries. */
function budgetOf({ seconds, tries }: Pick<PlanWanted, 'seconds' | 'tries'>, stopped: () => boolean): SearchBudget {
  if (tries !== null) return budgetOfTries(tries);
  const started = Date.now();
  return { left: () => 1 - (Date.now() - started) / (1000 * seconds!), report: () => {}, stopped };
}
