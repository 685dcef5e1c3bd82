import { budgetOfTries, planRollout, tripLegs } from '@eavewell/engine';
import { rolloutSheet } from '@eavewell/report';
import { loadLanguage } from '@eavewell/words';
import type { Asks, JobAround } from '@eavewell/work';
import { type HeldRollout, makeRollout, type RolloutAt } from './heldRollout.ts';

/** What is asked for the page of a plan. */
export interface SheetAsked {
  readonly at: RolloutAt;
  readonly planId: string | null;
  readonly language: string;
}

/** The rollout of the state that was asked for last. */
let held: HeldRollout | null = null;

async function rolloutOf(at: RolloutAt, around: JobAround): Promise<HeldRollout> {
  if (held?.at.stamp === at.stamp) return held;
  // The last one goes first: two of a large programme do not fit.
  held = null;
  held = await makeRollout(at, around);
  return held;
}

/** The page of a plan as JSON. */
async function sheet({ at, language }: SheetAsked, around: JobAround): Promise<string> {
  const { ready, facts, sites, kit } = await rolloutOf(at, around);
  const found = planRollout(ready.problem, { budget: budgetOfTries(256), seed: 1 });
  const verdictOf = new Map(sites.map(({ site, verdict }) => [site.siteId, verdict]));
  const peopleOf = new Map(
    sites.flatMap(({ site, people_count }) => (people_count === null ? [] : [[site.siteId, people_count] as const])),
  );
  void kit;
  return JSON.stringify(
    rolloutSheet(
      {
        ...{ eavewell: '', today: at.today, seed: 1, tries_count: found.tries_count, facts, problem: ready.problem },
        ...{ plan: found.plan, outcome: found.outcome, leftOut: ready.leftOut, bounds: null, futures: null },
        legsOf: (crew, trip) => tripLegs(ready, found.outcome, crew, trip),
        aboardOf: () => [],
        ...{ compared: null, problems: ready.problems, version: at.version, stamp: at.stamp, planId: null },
        ...{ past: [], overdue: new Set<string>(), verdictOf, peopleOf, crewsLeftOut: ready.crewsLeftOut },
        ...{ futuresState: 'none', tight: new Map<string, string>(), changedSince: null, linesOf: new Map() },
        ...{ ways: ready.ways, waysWanted: new Set<string>() },
      },
      await loadLanguage(language),
    ),
  );
}

/** What the thread that holds rollouts may be asked, by name. */
export const rolloutAsks = { sheet } satisfies Asks;
