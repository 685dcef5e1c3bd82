import {
  type DayIndex,
  engineProblem,
  isoDay,
  type PlanTripFacts,
  type Problem,
  type ProgrammeFacts,
} from './kernel/index.ts';
import type { PlannedTrip, RolloutPlan } from './programme/rollout/index.ts';
import type { LeftOutReason, ReadyRollout } from './programmeRolloutFacts.ts';
import { byOrder, type PastTrip, pastTrips, planOf } from './programmeRolloutPast.ts';

/** A stop of a trip still to go whose site is no job any more. */
export interface DroppedStop {
  readonly tripId: string;
  readonly siteId: string;
  /** Null: there is no such site among those the rollout was made ready with. */
  readonly reason: LeftOutReason | null;
}

/** A kept plan as the evaluator and the search take it, and what of it they do not. */
export interface KeptPlan {
  readonly planId: string;
  readonly plan: RolloutPlan;
  /** Ids of its trips, as `plan.trips`. */
  readonly tripIds: readonly (readonly string[])[];
  /** Trips that left, by the crews of the problem; those of other crews are in `otherPast`. */
  readonly past: readonly (readonly PastTrip[])[];
  readonly otherPast: readonly PastTrip[];
  /** Trips still to go of crews that are not planned with: their sites are not placed. */
  readonly otherTrips: readonly PlanTripFacts[];
  /** Ids of sites that are jobs and stand in no trip of `plan`. */
  readonly notPlaced: readonly string[];
  readonly dropped: readonly DroppedStop[];
  /** Ids of trips that should have left, or be back, before today, and nobody has entered that they did. */
  readonly overdue: readonly string[];
  /** Those of them that may have left: trips still to go. */
  readonly unanswered: readonly PlanTripFacts[];
  readonly problems: readonly Problem[];
}

/**
 * A kept plan, read from its rows: what of it is still to go as a plan that can be timed, and what has happened.
 *
 * @param ready - the rollout, made ready for this plan
 * @param facts - the programme
 * @param planId - the plan
 * @param today - today [day]
 * @returns trips still to go as `evaluatePlan` takes them, their ids, trips that left, and what is not placed, dropped or overdue [day]; null: there is no such plan
 * @problem rollout.left_after_today - a day on which a trip left or came back is still to come: it has not happened
 * @problem rollout.two_under_way - two trips of one crew are under way
 * @problem rollout.not_handed_over - a trip is back, and its sites are not handed over
 * @problem rollout.trips_without_crew - trips of crews that are not planned with
 * @law each site of a trip still to go is placed, or dropped with its reason, or not placed
 * @definition ours: docs/decisions/0351-what-happened-and-what-is-planned.md
 */
export function keptPlan(
  { problem, leftOut }: ReadyRollout,
  facts: ProgrammeFacts,
  planId: string,
  today: DayIndex,
): KeptPlan | null {
  const kept = planOf(facts, planId);
  if (kept === undefined) return null;
  const past = pastTrips(facts, kept, today);
  const gone = new Set(past.map(({ tripId }) => tripId));
  const toGo = kept.trips.filter(({ tripId }) => !gone.has(tripId)).sort(byOrder(({ tripId }) => tripId));
  const jobOf = new Map(problem.jobs.map(({ siteId }, job) => [siteId, job]));
  const reasonOf = new Map(leftOut.map(({ siteId, reason }) => [siteId, reason]));
  const dropped: DroppedStop[] = [];
  const placed = new Set<string>();
  const each = problem.crews.map(({ crewId }) =>
    toGo
      .filter((trip) => trip.crewId === crewId)
      .flatMap((trip) => {
        const stops = jobsOfTrip(trip, jobOf, (siteId) =>
          dropped.push({ tripId: trip.tripId, siteId, reason: reasonOf.get(siteId) ?? null }),
        );
        for (const job of stops) placed.add(problem.jobs[job]!.siteId);
        return stops.length === 0 ? [] : [{ tripId: trip.tripId, planned: plannedTrip(trip, stops, problem.firstDay) }];
      }),
  );
  const unanswered = toGo.filter((trip) => isUnanswered(trip, today));
  const crewIds = new Set(problem.crews.map(({ crewId }) => crewId));
  const otherTrips = toGo.filter(({ crewId }) => !crewIds.has(crewId));
  const told = { past, toGo, otherTrips, today };
  return {
    planId,
    plan: { trips: each.map((trips) => trips.map(({ planned }) => planned)) },
    tripIds: each.map((trips) => trips.map(({ tripId }) => tripId)),
    past: problem.crews.map(({ crewId }) => past.filter((trip) => trip.crewId === crewId)),
    otherPast: past.filter(({ crewId }) => !crewIds.has(crewId)),
    ...{ otherTrips, dropped },
    notPlaced: problem.jobs.flatMap(({ siteId }) => (placed.has(siteId) ? [] : [siteId])),
    overdue: [
      ...past.filter(({ state, kept: { back } }) => state === 'underWay' && back !== null && back < today),
      ...unanswered,
    ].map(({ tripId }) => tripId),
    unanswered,
    problems: problemsOf(told),
  };
}

/** Should it have left, and has nobody said that it did, or from which day on it may? */
const isUnanswered = ({ leaves, notBefore }: PlanTripFacts, today: DayIndex): boolean =>
  leaves !== null && Math.max(leaves, notBefore ?? leaves) < today;

/** Stops that are jobs, each once, in their order. */
function jobsOfTrip(
  trip: PlanTripFacts,
  jobOf: ReadonlyMap<string, number>,
  drop: (siteId: string) => void,
): readonly number[] {
  return [...trip.stops].sort(byOrder(({ siteId }) => siteId)).flatMap(({ siteId }) => {
    const job = jobOf.get(siteId);
    if (job === undefined) drop(siteId);
    return job ?? [];
  });
}

function plannedTrip(trip: PlanTripFacts, stops: readonly number[], firstDay: DayIndex): PlannedTrip {
  const notBefore = trip.notBefore === null ? 0 : Math.max(0, trip.notBefore - firstDay);
  return { stops, notBefore, isLocked: trip.isLocked };
}

interface Told {
  readonly past: readonly PastTrip[];
  readonly toGo: readonly PlanTripFacts[];
  readonly otherTrips: readonly PlanTripFacts[];
  readonly today: DayIndex;
}

function problemsOf({ past, toGo, otherTrips, today }: Told): readonly Problem[] {
  const trips = { file: 'planTrips.csv' };
  const problems: Problem[] = [];
  for (const { tripId, leftOn, backOn } of [...past.map(({ kept }) => kept), ...toGo]) {
    const day = [leftOn, backOn].find((one) => one !== null && one > today);
    if (day != null)
      problems.push(engineProblem('rollout.left_after_today', trips, { trip: tripId, day: isoDay(day) }));
  }
  const underWay = past.filter(({ state }) => state === 'underWay');
  for (const crew of new Set(underWay.map(({ crewId }) => crewId))) {
    const own = underWay.filter(({ crewId }) => crewId === crew).map(({ tripId }) => tripId);
    if (own.length > 1) problems.push(engineProblem('rollout.two_under_way', trips, { crew, trips: own }));
  }
  for (const { tripId, state, stops } of past) {
    const sites = state === 'done' ? stops.filter(({ handOver }) => handOver === null) : [];
    if (sites.length === 0) continue;
    const names = sites.map(({ siteId }) => siteId);
    problems.push(engineProblem('rollout.not_handed_over', trips, { trip: tripId, sites: names, count: names.length }));
  }
  for (const crew of new Set(otherTrips.map(({ crewId }) => crewId))) {
    const own = otherTrips.filter(({ crewId }) => crewId === crew).map(({ tripId }) => tripId);
    problems.push(engineProblem('rollout.trips_without_crew', trips, { crew, trips: own, count: own.length }));
  }
  return problems;
}
