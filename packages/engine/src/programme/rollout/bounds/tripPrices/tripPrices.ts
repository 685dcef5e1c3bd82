import { leapDays } from '../../leapDays.ts';
import type { Outcome, RolloutProblem } from '../../problem.ts';
import { earliestService, jobLeast } from '../jobLengths.ts';
import { leastTravel } from '../leastTravel.ts';
import { beyondPlan, coarser_ratio, coarseShare_fraction, leastPace, stepsOfDay } from './constants.ts';
import { type AlikeCrews, alikeCrews, type CrewKind, crewKind, type KindGiven } from './crewKinds.ts';
import { PriceAscent } from './priceAscent.ts';
import { TripProgramme } from './tripProgramme.ts';

/** How far it may go. The caller owns clock and cancel. */
export interface TripPricesBudget {
  /** What is left, 1 at the start, 0 or less when spent. */
  left(): number;
  /** The highest bound so far [person-day]. */
  report(waiting: number): void;
  stopped(): boolean;
}

export interface TripPricesAsked {
  readonly budget: TripPricesBudget;
  /** Pairs of stops that one round may look at: the more, the finer a day is cut [count]. */
  readonly mostPairs_count: number;
}

/** The bound, and how it came about. */
export interface TripPricesBound {
  readonly name: 'tripPrices';
  /** Sum of weight x first day of service, from day 0 [person-day]. */
  readonly waiting: number;
  readonly rounds_count: number;
  /** Into how many steps a working day was cut. */
  readonly steps_count: number;
}

/**
 * The strong bound, for when there is time: each site pays a price for being served, and each crew goes the trips that earn it most, as if it were alone. Of a
 * plan that serves every site once the waiting is never below the prices and the best trips of all crews at them; prices are sought at which that is much.
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param outcome - what came of a plan: first prices, days looked at, and what is aimed at [day]
 * @param asked - budget, and how much one round may look at [count]
 * @returns the bound [person-day]; null where some site can be reached by nobody, or work is too short to be told from none
 * @law never above the waiting of a plan that serves every job and breaks nothing, whatever plan is given
 * @definition ours: docs/methods/rollout.md, Bounds
 */
export function tripPricesBound(
  problem: RolloutProblem,
  outcome: Outcome,
  asked: TripPricesAsked,
): TripPricesBound | null {
  const { budget, mostPairs_count } = asked;
  const { horizon_days, jobs } = problem;
  const travel = leastTravel(problem);
  if (travel.out_days.some((days) => !Number.isFinite(days))) return null;
  const lastDay = Math.min(horizon_days - 1, Math.ceil(beyondPlan.ratio * outcome.finish) + beyondPlan.days);
  const alike = alikeCrews(problem, lastDay);
  const given: KindGiven = { problem, travel, least: jobLeast(problem), dayOfYear: leapDays(problem) };
  const coarse = kindsOf(given, alike, mostPairs_count / coarser_ratio);
  const fine = kindsOf(given, alike, mostPairs_count);
  if (coarse === null || fine === null) return null;
  const afterAll = Float64Array.from(jobs, ({ weight, serviceWait_days }) => {
    const day = earliestService(serviceWait_days, given.dayOfYear)[lastDay + 1];
    return day === undefined ? Number.POSITIVE_INFINITY : weight * day;
  });
  const ascent = new PriceAscent(firstPrices(problem, outcome), afterAll, outcome.waiting);
  const climb = (kinds: readonly CrewKind[], leastLeft: number, least: number) => {
    const programmes = kinds.map((kind) => new TripProgramme(kind));
    do {
      ascent.round(programmes);
      budget.report(ascent.best);
    } while (ascent.pace > least && budget.left() > leastLeft && !budget.stopped());
  };
  if (fine.steps_count > coarse.steps_count) {
    climb(coarse.kinds, 1 - coarseShare_fraction, leastPace.coarse);
    ascent.begin(2 * leastPace.coarse);
  }
  climb(fine.kinds, 0, leastPace.fine);
  return {
    ...{ name: 'tripPrices', waiting: ascent.best, rounds_count: ascent.rounds_count, steps_count: fine.steps_count },
  };
}

/** Kinds of crews with a day cut as fine as it may be; null where no cut is fine enough. */
function kindsOf(given: KindGiven, alike: readonly AlikeCrews[], mostPairs_count: number) {
  const jobs_count = given.problem.jobs.length;
  let found: { readonly kinds: readonly CrewKind[]; readonly steps_count: number } | null = null;
  for (const steps_count of stepsOfDay) {
    if (found !== null) {
      const rooms = found.kinds.map(({ days, room }) => (days * (room + 2)) / 2);
      if (rooms.reduce((sum, one) => sum + one, 0) * jobs_count ** 2 * steps_count > mostPairs_count) break;
    }
    const kinds = alike.map((one) => crewKind(given, one, steps_count)).filter((kind) => kind !== null);
    if (kinds.length === alike.length) found = { kinds, steps_count };
  }
  return found;
}

/** First prices: what a site's place in the plan costs its own people, and those who come after it on its crew. */
function firstPrices({ jobs, crews }: RolloutProblem, { trips, finish }: Outcome): Float64Array {
  const prices = Float64Array.from(jobs, ({ weight }) => weight * finish);
  for (const [crew, own] of trips.entries()) {
    let later = own.flatMap(({ stops }) => stops).reduce((sum, { job }) => sum + jobs[job]!.weight, 0);
    for (const [at, { stops, leaves, back }] of own.entries()) {
      const next = Math.min(own[at + 1]?.leaves ?? Infinity, back + crews[crew]!.turnaround_days);
      const work = stops.reduce((sum, { starts, ends }) => sum + ends - starts, 0);
      const way_days = Math.max(0, next - leaves - work) / Math.max(1, stops.length);
      for (const { job, starts, ends, serviceDay } of stops) {
        later -= jobs[job]!.weight;
        prices[job] = jobs[job]!.weight * serviceDay + (ends - starts + way_days) * later;
      }
    }
  }
  return prices;
}
