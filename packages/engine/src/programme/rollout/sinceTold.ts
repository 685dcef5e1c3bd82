import type { DayIndex } from '../../kernel/index.ts';
import { serviceDaysOf } from './curves.ts';
import { leapDayOf } from './leapDays.ts';
import type { Outcome, RolloutProblem } from './problem.ts';

/** A site that is handed over on another day than it was told. */
export interface ToldOtherwise {
  readonly job: number;
  /** The hand-over it was told [day of the plan]; null: none within the days looked at. */
  readonly toldDay: number | null;
  /** Its hand-over now [day of the plan]; null: in no trip, or not within the days looked at. */
  readonly newDay: number | null;
}

/** What a plan comes to now, against the days that were told of it. */
export interface SinceTold {
  /** Waiting of people now, after less what was told [person-day]. */
  readonly waiting_personDays: number;
  /** Last hand-over of what was told [day of the plan]; null: nothing was. */
  readonly lastToldDay: number | null;
  readonly later_count: number;
  readonly sooner_count: number;
  /** Sites of which no day was told: they are in no sum. */
  readonly untold_count: number;
  /** In the order of the jobs. */
  readonly otherwise: readonly ToldOtherwise[];
}

/**
 * How much longer do people wait than was told? Of sites that have been told a day of hand-over their first day of service then, by the
 * wait that such a day has, against that of the plan as it is timed now.
 *
 * @param problem - the rollout as it is now [day, person]
 * @param outcome - what comes of the plan now [day]
 * @param toldOf - the hand-over a site was told [day]; null: none within the days looked at; undefined: it was told nothing
 * @returns waiting above what was told [person-day], the last day told [day of the plan], how many sites are later, sooner, or were told nothing, and those to be handed over on another day than they were told
 * @law where every site was told its own day, nothing is later or sooner and nobody waits longer
 * @definition ours: docs/decisions/0403-a-plan-made-anew-is-looked-at-first.md
 */
export function sinceTold(
  problem: RolloutProblem,
  outcome: Outcome,
  toldOf: (siteId: string) => DayIndex | null | undefined,
): SinceTold {
  const { jobs, firstDay, horizon_days } = problem;
  const service = serviceDaysOf(problem, outcome);
  const handOvers = handOversOf(problem, outcome);
  const otherwise: ToldOtherwise[] = [];
  let [waiting_personDays, later_count, sooner_count, untold_count] = [0, 0, 0, 0];
  let lastToldDay: number | null = null;
  for (const [job, { siteId, people, serviceWait_days }] of jobs.entries()) {
    const told = toldOf(siteId);
    if (told === undefined) {
      untold_count++;
      continue;
    }
    const handOver = told === null ? null : told - firstDay;
    const newDay = handOvers.get(job) ?? null;
    if (newDay !== handOver) otherwise.push({ job, toldDay: handOver, newDay });
    if (handOver !== null) lastToldDay = Math.max(lastToldDay ?? handOver, handOver);
    const then =
      told === null || handOver === null
        ? horizon_days
        : Math.min(horizon_days, handOver + serviceWait_days[leapDayOf(told)]!);
    const later_days = service[job]! - then;
    waiting_personDays += people * later_days;
    if (later_days > 0) later_count++;
    if (later_days < 0) sooner_count++;
  }
  return { waiting_personDays, lastToldDay, later_count, sooner_count, untold_count, otherwise };
}

/** Days of hand-over by job, of those that are within the days looked at. */
function handOversOf({ horizon_days }: RolloutProblem, { trips }: Outcome): ReadonlyMap<number, number> {
  const stops = trips.flat().flatMap((trip) => trip.stops);
  return new Map(
    stops.flatMap(({ job, handOverDay }) =>
      handOverDay < horizon_days ? [[job, Math.floor(handOverDay)] as const] : [],
    ),
  );
}
