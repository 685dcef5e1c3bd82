import { setDrawn } from '../crewsTogether.ts';
import type { TimedPlan } from '../planChanges.ts';
import type { Broken, RolloutPlan } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import { nearPlaces } from './nearPlaces.ts';
import { breaksBefore, newBreaks } from './newBreaks.ts';
import { type MoveRefusal, type SitePlace, standsAt } from './places.ts';
import { flatTrips, retimed } from './retimed.ts';
import { moveSite, putSiteIn } from './siteMoves.ts';

/** Why a place is none: it is not allowed, something breaks there, or a leg to it is not known. */
export type NoPlaceReason = MoveRefusal | Broken['kind'] | 'legUnknown';

/** A place at which nothing new breaks, or why there is none among those that were looked at. */
export type NearestPlace =
  | { readonly place: SitePlace; readonly plan: RolloutPlan; readonly reason: null; readonly tries_count: number }
  | { readonly place: null; readonly plan: null; readonly reason: NoPlaceReason; readonly tries_count: number };

/**
 * The place nearest to the one that was wanted where a site can stand and nothing new breaks: in the same trip, then with the same crew or with
 * another in the same weeks, then further away.
 *
 * @param ready - the rollout made ready; with legs of some pairs or of all [day, kg, L]
 * @param before - the plan before the change, with what came of it in this rollout [day]
 * @param job - which site, in a trip of the plan or in none [index]
 * @param wanted - where it was wanted [index]
 * @param most_count - how many places are timed at the most [count]
 * @returns the place, or the commonest reason why there is none
 * @law at the place that is found nothing breaks that was not broken before
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function nearestThatCan(
  ready: Retiming,
  before: TimedPlan,
  job: number,
  wanted: SitePlace,
  most_count: number = mostPlaces_count,
): NearestPlace {
  const { problem } = ready;
  const reasons = new Map<NoPlaceReason, number>();
  const no = (reason: NoPlaceReason) => reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
  const none = (tries_count: number): NearestPlace => {
    const [reason] = [...reasons].sort(([, a], [, b]) => b - a)[0] ?? (['noSuchPlace'] as const);
    return { place: null, plan: null, reason, tries_count };
  };
  if (problem.jobs[job] === undefined) return { place: null, plan: null, reason: 'noSuchSite', tries_count: 0 };
  const move = standsAt(before.plan, job) === null ? putSiteIn : moveSite;
  const flat = flatTrips(ready, before.plan);
  const known = breaksBefore(problem.jobs.length, before.plan, before.outcome.broken);
  setDrawn(ready, null);
  let tries_count = 0;
  for (const place of nearPlaces(ready, before, job, wanted)) {
    const { plan, reason } = move(before.plan, job, place);
    if (plan === null) {
      no(reason);
      continue;
    }
    if (tries_count >= most_count) break;
    tries_count++;
    const { broken } = retimed(ready, before, flat, plan);
    if (ready.unknown.length > 0) {
      no('legUnknown');
      continue;
    }
    const [first] = newBreaks(known, plan, broken);
    if (first === undefined) return { place, plan, reason: null, tries_count };
    no(first.broken.kind);
  }
  return none(tries_count);
}

/** Places timed at the most where nothing is said [count]. Ours: a plan of 1,500 sites answers in a blink of the eye. */
const mostPlaces_count = 120;
