import type { Outcome, RolloutPlan } from './problem.ts';

/** One site whose day or crew is another than before. Null: in no trip. */
export interface MovedSite {
  readonly job: number;
  readonly crewBefore: number | null;
  readonly crewAfter: number | null;
  readonly handOverBefore: number | null;
  readonly handOverAfter: number | null;
  /** Days later (below 0: sooner); null where it was or is in no trip. */
  readonly later_days: number | null;
}

/** What is otherwise in a new plan: sites that move, and what it means for all. */
export interface PlanChanges {
  /** In the order of the jobs. */
  readonly sites: readonly MovedSite[];
  /** Waiting of people, after less before [person-day]. */
  readonly waiting_personDays: number;
  /** Last hand-over, after less before [day]. */
  readonly finish_days: number;
  readonly cost: number;
}

/** A plan with what came of it. */
export interface TimedPlan {
  readonly plan: RolloutPlan;
  readonly outcome: Outcome;
}

/**
 * Which sites move from one plan to another, by how many days, and to whom?
 *
 * @param before - the plan there was, with its outcome
 * @param after - the plan there is now, with its outcome
 * @returns sites whose day or crew changed, and the sums' differences [day, person-day, money]
 * @law a plan compared with itself changes nothing
 * @definition ours: docs/methods/rollout.md, The search for plans of crews
 */
export function planChanges(before: TimedPlan, after: TimedPlan): PlanChanges {
  const was = servedBy(before);
  const is = servedBy(after);
  const jobs = [...new Set([...was.keys(), ...is.keys()])].sort((a, b) => a - b);
  const sites = jobs.flatMap((job) => {
    const [old, now] = [was.get(job) ?? null, is.get(job) ?? null];
    if (old !== null && now !== null && old.crew === now.crew && old.day === now.day) return [];
    return [
      {
        ...{ job, crewBefore: old?.crew ?? null, crewAfter: now?.crew ?? null },
        ...{ handOverBefore: old?.day ?? null, handOverAfter: now?.day ?? null },
        later_days: old === null || now === null ? null : now.day - old.day,
      },
    ];
  });
  return {
    sites,
    waiting_personDays: after.outcome.waiting_personDays - before.outcome.waiting_personDays,
    finish_days: after.outcome.finish - before.outcome.finish,
    cost: after.outcome.cost - before.outcome.cost,
  };
}

function servedBy({ outcome }: TimedPlan): ReadonlyMap<number, { readonly crew: number; readonly day: number }> {
  return new Map(
    outcome.trips.flatMap((trips, crew) =>
      trips.flatMap(({ stops }) => stops.map(({ job, handOverDay }) => [job, { crew, day: handOverDay }] as const)),
    ),
  );
}
