import { crewsTogether, setDrawn } from './crewsTogether.ts';
import { type CrewTrips, crewTripsOf } from './crewTrips.ts';
import { retiming } from './makeReady.ts';
import { brokenFound, outcomeOf, timedHauls, timedTrips } from './planOutcome.ts';
import type { Drawn, Outcome, RolloutPlan, RolloutProblem } from './problem.ts';
import type { Retiming } from './retiming.ts';

/**
 * What comes of a plan: the day each site is handed over and first serves, nights, loads, cost, fuel, and everything that is broken.
 *
 * @param problem - the rollout as numbers, or the same made ready by `retiming` (for many plans) [day, kg, L, person]
 * @param plan - who goes where in which order; each job once at the most [count]
 * @param drawn - what turns out otherwise than likely; null: nothing [day]
 * @returns trips, hauls, sums and what is broken [day, person-day, kg, L]
 * @law the order in which jobs, stores and goods are listed changes nothing
 * @definition docs/methods/rollout.md
 */
export function evaluatePlan(
  problem: RolloutProblem | Retiming,
  plan: RolloutPlan,
  drawn: Drawn | null = null,
): Outcome {
  const ready = 'tripTimes' in problem ? problem : retiming(problem);
  const tripsOf = ready.problem.crews.map((_, crew) => crewTripsOf(plan.trips[crew] ?? []));
  everyJobOnce(ready, tripsOf);
  setDrawn(ready, drawn);
  const crews = tripsOf.map((_, crew) => crew);
  crewsTogether(ready, crews, tripsOf);
  return outcomeOf(ready.problem, {
    trips: tripsOf.map((one, crew) => timedTrips(ready, crew, one)),
    hauls: timedHauls(ready),
    broken: brokenFound(ready),
  });
}

/** Holds that each job is one of the problem and stands in the plan once at the most. */
export function everyJobOnce(ready: Retiming, tripsOf: readonly CrewTrips[]): void {
  const found = new Uint8Array(ready.problem.jobs.length);
  for (const { stops } of tripsOf)
    for (const job of stops) {
      if (!(job < found.length) || job < 0) throw new RangeError(`evaluatePlan: no job ${job}`);
      if (found[job] === 1) throw new RangeError(`evaluatePlan: job ${job} stands twice in the plan`);
      found[job] = 1;
    }
}
