import { normalShares } from '../../../kernel/index.ts';
import { crewsTogether, setDrawn } from '../crewsTogether.ts';
import { crewTripsOf } from '../crewTrips.ts';
import { retiming } from '../makeReady.ts';
import type { RolloutPlan, RolloutProblem } from '../problem.ts';
import { type Distribution, type SpreadKind, spreadMoments, spreadOf } from './spread.ts';

/** A cross-check by closed forms. */
export interface PertFinish {
  /** PERT as it is usually reckoned: means and variances added along the crew that is last. Too early where several crews may be last (merge bias). */
  readonly ofLastCrew: { readonly p50_day: number; readonly p90_day: number };
  /** The latest of all crews, each normal and on its own. */
  readonly ofAllCrews: { readonly p50_day: number; readonly p90_day: number };
}

/** When one of several is done: a mean and a standard deviation. */
export interface CrewFinish {
  readonly mean_day: number;
  readonly sd_days: number;
}

/**
 * The finish by PERT's closed form, as a cross-check of `finishDates` and nothing else: it knows no weather, no late goods and no common pace but those given, and takes crews as independent.
 *
 * @param problem - the rollout as numbers [day, kg, L, person]
 * @param plan - the plan [count]
 * @param kind - how install days are spread
 * @param pace - what all work of a crew takes times as long [ratio]
 * @returns finish of the last crew and of the latest of all [day]
 * @source malcolm-1959, PERT (from memory); clark-1961, that the latest of several is later (from memory)
 */
export function pertFinish(
  problem: RolloutProblem,
  plan: RolloutPlan,
  kind: SpreadKind,
  pace: Distribution = { kind: 'fixed', value: 1 },
): PertFinish {
  const ready = retiming(problem);
  const tripsOf = problem.crews.map((_, crew) => crewTripsOf(plan.trips[crew] ?? []));
  const install = problem.jobs.map(({ install_days }) => spreadMoments(spreadOf(install_days, kind)));
  const common = spreadMoments(pace);
  setDrawn(ready, {
    install_days: Float64Array.from(install, ({ mean }) => mean),
    pace_factor: new Float64Array(problem.crews.length).fill(common.mean),
    slip_days: problem.stores.map(({ arrivals }) => Float64Array.from(arrivals, ({ slip_days }) => slip_days.likely)),
    closed: [],
    leg_factor: 1,
  });
  crewsTogether(
    ready,
    tripsOf.map((_, crew) => crew),
    tripsOf,
  );
  const crews = tripsOf.flatMap(({ stops }, crew): CrewFinish[] => {
    if (stops.length === 0) return [];
    const { crew: own, calendar } = ready.crews[crew]!;
    const last = stops.reduce((day, job) => Math.max(day, ready.handOver[job]!), 0);
    let [variance, work_days] = [0, 0];
    for (const [at, job] of stops.entries()) {
      const takes = own.pace_factor * ready.learned[own.done_count + at + 1]!;
      variance += (common.mean * takes) ** 2 * install[job]!.variance;
      work_days += takes * install[job]!.mean;
    }
    // Days of work are told in days of the calendar: rest lies between them.
    const first = Math.min(last, Math.floor(own.freeFrom));
    const worked = Math.max(1, calendar.before[Math.min(last, ready.horizon_days)]! - calendar.before[first]!);
    const stretched = Math.max(1, (last - first) / worked);
    return [{ mean_day: last, sd_days: stretched * Math.sqrt(variance + work_days ** 2 * common.variance) }];
  });
  const late = crews.reduce<CrewFinish>((one, other) => (other.mean_day > one.mean_day ? other : one), {
    mean_day: 0,
    sd_days: 0,
  });
  const spans = (of: readonly CrewFinish[]) => ({ p50_day: latestOf(of, 0.5), p90_day: latestOf(of, 0.9) });
  return { ofLastCrew: spans([late]), ofAllCrews: spans(crews) };
}

/**
 * By which day are all of several done with a given chance, each normal and independent of the others?
 *
 * @param crews - mean and standard deviation of each [day]
 * @param p - the chance [fraction], above 0, below 1
 * @returns the day [day]; 0 where there is nobody
 * @law never earlier than the same of any one of them
 * @source scipy, norm: the chance of the latest is the product of the chances
 */
export function latestOf(crews: readonly CrewFinish[], p: number): number {
  const chance = (day: number) =>
    crews.reduce((product, { mean_day, sd_days }) => {
      if (sd_days === 0) return day >= mean_day ? product : 0;
      return product * normalShares((day - mean_day) / sd_days).below_fraction;
    }, 1);
  if (crews.length === 0) return 0;
  let low = Math.min(...crews.map(({ mean_day, sd_days }) => mean_day - 40 * sd_days)) - 1;
  let high = Math.max(...crews.map(({ mean_day, sd_days }) => mean_day + 40 * sd_days)) + 1;
  while (high - low > 1e-9 * Math.max(1, Math.abs(high))) {
    const middle = (low + high) / 2;
    if (chance(middle) < p) low = middle;
    else high = middle;
  }
  return high;
}
