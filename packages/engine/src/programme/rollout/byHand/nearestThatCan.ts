import { loadSlack_kg } from '../constants.ts';
import { setDrawn } from '../crewsTogether.ts';
import type { TimedPlan } from '../planChanges.ts';
import type { Broken, RolloutPlan, RolloutProblem } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import { endPlaces, nearPlaces } from './nearPlaces.ts';
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
 * another in the same weeks, then further away, and at last at the end of what a crew does.
 *
 * @param ready - the rollout made ready; with legs of some pairs or of all [day, kg, L]
 * @param before - the plan before the change, with what came of it in this rollout [day]
 * @param job - which site, in a trip of the plan or in none [index]
 * @param wanted - where it was wanted [index]
 * @param most_count - how many places are timed at the most [count]
 * @returns the place, or the commonest reason why there is none [index]
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
  const tried = (places: Iterable<SitePlace>, until_count: number): NearestPlace | null => {
    for (const place of places) {
      const { plan, reason } = move(before.plan, job, place);
      const refusal = reason ?? overLoaded(problem, before.plan, job, place);
      if (plan === null || refusal !== null) {
        no(refusal ?? 'noSuchPlace');
        continue;
      }
      if (tries_count >= until_count) return null;
      tries_count++;
      const { broken } = retimed(ready, before, flat, plan);
      const [first] = newBreaks(known, plan, broken);
      if (ready.unknown.length > 0) no('legUnknown');
      else if (first !== undefined) no(first.broken.kind);
      else return { place, plan, reason: null, tries_count };
    }
    return null;
  };
  const near_count = Math.ceil(near_fraction * most_count);
  return (
    tried(nearPlaces(ready, before, job, wanted), near_count) ??
    tried(endPlaces(ready, before, wanted), most_count) ??
    none(tries_count)
  );
}

/**
 * Is a trip, with one site more, more than its crew's carriers take? Then it is newly too heavy or too bulky whatever the way, and need not be timed.
 */
function overLoaded(
  { jobs, crews }: RolloutProblem,
  { trips }: RolloutPlan,
  job: number,
  place: SitePlace,
): 'tooHeavy' | 'tooBulky' | null {
  if (!('trip' in place)) return null;
  const { stops } = trips[place.crew]![place.trip]!;
  if (stops.includes(job)) return null;
  const { limit_kg, limit_L } = crews[place.crew]!;
  const all = [...stops, job];
  const kg = all.reduce((sum, one) => sum + jobs[one]!.kg, 0);
  const litres = all.reduce((sum, one) => sum + jobs[one]!.litres, 0);
  if (jobs[job]!.kg > loadSlack_kg && kg > limit_kg + loadSlack_kg) return 'tooHeavy';
  return jobs[job]!.litres > loadSlack_kg && litres > limit_L + loadSlack_kg ? 'tooBulky' : null;
}

/** Of the places that are timed so many are the nearest; the others are new trips at the end of what each crew does. Ours. */
const near_fraction = 0.75;

/** Places timed at the most where nothing is said [count]. Ours: a plan of 1,500 sites answers within a second on a slow laptop (bench/rollout/drag.mjs). */
const mostPlaces_count = 80;
