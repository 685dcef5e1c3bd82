import type { TimedPlan } from '../planChanges.ts';
import type { RolloutPlan } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import { type SitePlace, standsAt } from './places.ts';
import { moveSite } from './siteMoves.ts';
import { type Becomes, whatBecomes } from './whatBecomes.ts';

/** So many later days are tried of a trip that breaks something on the first. Ours: a season, day by day. */
const laterDays_count = 90;

/** What would come of a plan if one site of it were gone to first. */
export interface VisitedFirst {
  readonly crew: number;
  /** Its trip in that plan, the crew's first. */
  readonly trip: number;
  readonly plan: RolloutPlan;
  readonly becomes: Becomes;
  /** The day it would be handed over, and the first it would serve. */
  readonly handOverDay: number;
  readonly serviceDay: number;
}

/**
 * What if a crew went to one site before all others: in a trip of its own, or as the first stop of a crew's first trip?
 *
 * @param ready - the rollout made ready [day, kg, L]
 * @param before - the plan, with what came of it in this rollout [day]
 * @param job - which site, in a trip of it [index]
 * @returns of all crews that can the one with which it serves first, with what comes of the whole plan; where something would break on each such trip, its own crew's on the first later day on which nothing does; null: on none [day]
 * @law the outcome is that of `evaluatePlan`
 * @definition ours: of equal days the site's own crew, then the plan in which least else breaks and people wait least; docs/decisions/0405-why-a-village-comes-when-it-does.md
 */
export function visitedFirst(ready: Retiming, before: TimedPlan, job: number): VisitedFirst | null {
  const own = standsAt(before.plan, job);
  if (own === null) return null;
  const unlocked = withoutLock(before.plan, own);
  let best: VisitedFirst | null = null;
  for (const place of firstPlaces(unlocked, own.crew)) {
    const { plan } = moveSite(unlocked, job, place);
    const found = plan === null ? null : visited(ready, before, job, plan);
    if (found !== null && (best === null || isBetter(found, best))) best = found;
  }
  const { handOverDay, serviceDay } = before.outcome.trips[own.crew]![own.trip]!.stops.find(
    (stop) => stop.job === job,
  )!;
  if (best !== null && (best.serviceDay <= serviceDay || handOverDay >= ready.horizon_days)) return best;
  const later = visitedLater(ready, before, job, unlocked);
  return best === null || (later !== null && later.serviceDay < best.serviceDay) ? later : best;
}

/** The same by its own crew in a trip of its own, on the first later day, up to that on which it leaves now, on which nothing breaks on it; null: on none. */
function visitedLater(ready: Retiming, before: TimedPlan, job: number, unlocked: RolloutPlan): VisitedFirst | null {
  const { crew, trip } = standsAt(before.plan, job)!;
  const { plan } = moveSite(unlocked, job, { crew, newTripAt: 0 });
  if (plan === null) return null;
  const own = plan.trips[crew]!;
  const from = before.outcome.trips[crew]![0]!.ready;
  const { leaves } = before.outcome.trips[crew]![trip]!;
  const step = Math.max(1, Math.ceil((leaves - from) / laterDays_count));
  for (let day = from + 1; day < leaves + step; day += step) {
    const held = own.with(0, { ...own[0]!, notBefore: Math.min(day, leaves) });
    const found = visited(ready, before, job, { trips: plan.trips.with(crew, held) });
    if (found !== null) return found;
  }
  return null;
}

/** A lock keeps a site where it is; what if asks of a plan without it. */
function withoutLock({ trips }: RolloutPlan, { crew, trip }: { crew: number; trip: number }): RolloutPlan {
  const own = trips[crew]!;
  return { trips: trips.with(crew, own.with(trip, { ...own[trip]!, isLocked: false })) };
}

/** The crew it is with stands first: of equal places the first is kept. */
function firstPlaces({ trips }: RolloutPlan, ownCrew: number): readonly SitePlace[] {
  const crews = [ownCrew, ...[...trips.keys()].filter((crew) => crew !== ownCrew)];
  return crews.flatMap((crew): readonly SitePlace[] => [
    ...((trips[crew]?.length ?? 0) > 0 ? [{ crew, trip: 0, at: 0 }] : []),
    { crew, newTripAt: 0 },
  ]);
}

function visited(ready: Retiming, before: TimedPlan, job: number, plan: RolloutPlan): VisitedFirst | null {
  const becomes = whatBecomes(ready, before, plan);
  const { crew, trip } = standsAt(plan, job)!;
  const { handOverDay, serviceDay } = becomes.outcome.trips[crew]![trip]!.stops.find((stop) => stop.job === job)!;
  const isBroken = becomes.breaks.some(
    ({ broken }) => 'crew' in broken && broken.crew === crew && broken.trip === trip && broken.kind !== 'late',
  );
  if (isBroken || becomes.missing.length > 0 || handOverDay >= ready.horizon_days) return null;
  return { ...{ crew, trip, plan, becomes, handOverDay, serviceDay } };
}

function isBetter(one: VisitedFirst, best: VisitedFirst): boolean {
  if (one.serviceDay !== best.serviceDay) return one.serviceDay < best.serviceDay;
  if (one.crew !== best.crew) return false;
  const [breaks, most] = [one.becomes.breaks.length, best.becomes.breaks.length];
  if (breaks !== most) return breaks < most;
  return one.becomes.outcome.waiting_personDays < best.becomes.outcome.waiting_personDays;
}
