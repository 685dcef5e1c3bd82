import { type ChangesSince, rolloutComparison } from '@eavewell/report';
import { loadLanguage } from '@eavewell/words';
import { type Held, type HeldRollouts, planShown, timedOn } from './heldRollouts.ts';

/** Two plans that are to be set side by side. */
export interface PlansAsked {
  readonly a: string;
  readonly b: string;
  readonly language: string;
  /** The second was found in place of the first, and is not kept. Null: both are. */
  readonly anew: AnewAsked | null;
}

/** What is known of a plan that was found beside the one it would take the place of. */
export interface AnewAsked {
  /** Who asked for it, and when. */
  readonly by: string;
  readonly at: string;
  /** What was entered since. */
  readonly entered: Pick<ChangesSince, 'changes' | 'changes_count'>;
  /** The plan itself was changed since: what was found is kept beside it. */
  readonly isPlanChanged: boolean;
  /** What changed since the days of the first plan were worked out; null: nobody says when they were. */
  readonly since: ChangesSince | null;
}

/** Two plans side by side, as JSON, both timed from what has happened of the first; null: one of them is not there. */
export async function comparedOf(
  holding: HeldRollouts,
  held: Held,
  { a, b, anew, language }: PlansAsked,
): Promise<{ readonly text: string } | null> {
  const [planA, planB] = [planShown(held.facts, a), planShown(held.facts, b)];
  if (!planA || !planB) return null;
  const ready = holding.readyFor(held, planA.planId);
  const timed = (plan: typeof planA) => {
    const { kept, plan: trips, outcome } = timedOn(held, ready, plan.planId);
    return { facts: plan, plan: trips, outcome, tripIds: kept?.tripIds ?? [] };
  };
  const since = anew?.since ?? null;
  const hasChanged = since !== null && since.changes_count > 0;
  const before = hasChanged ? await holding.planBefore(held, planA.planId, since.version) : null;
  const given = {
    ...{ stamp: held.at.stamp, facts: held.facts, problem: ready.ready.problem, a: timed(planA), b: timed(planB) },
    anew: anew && { ...anew, before, today: held.at.today, peopleOf: held.peopleOf },
  };
  return { text: JSON.stringify(rolloutComparison(given, await loadLanguage(language))) };
}
