import { calendarDay } from '../../kernel/index.ts';
import type { Outcome, RolloutProblem } from './problem.ts';

/** People who drink from some day on. */
export interface ServedPoint {
  /** Days from the first day planned. */
  readonly day: number;
  readonly people_count: number;
}

/**
 * How many people drink from which day on?
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param serviceDays - first day of service of each job, as the jobs; Infinity: never [day]
 * @returns a point for each day on which somebody begins to drink, people so far [count]
 * @law never falls; the last point is all who are served
 * @definition ours
 */
export function servedCurve(problem: RolloutProblem, serviceDays: ArrayLike<number>): readonly ServedPoint[] {
  const { jobs, horizon_days } = problem;
  const byDay = new Map<number, number>();
  for (const [job, { people }] of jobs.entries()) {
    const day = serviceDays[job]!;
    if (day < horizon_days) byDay.set(day, (byDay.get(day) ?? 0) + people);
  }
  let people_count = 0;
  return [...byDay]
    .sort(([a], [b]) => a - b)
    .map(([day, people]) => {
      people_count += people;
      return { day, people_count };
    });
}

/** How long people of one group wait. */
export interface GroupWaiting<T> {
  readonly group: T;
  readonly people_count: number;
  /** For a person, from the first day planned to the first day of service. */
  readonly mean_days: number;
}

/**
 * Who waits how long? The waiting of a person by group: what a total hides.
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param outcome - what came of the plan [day]
 * @param groupOf - the group of each job, such as its area
 * @returns groups, the longest waiting first [count, day]; sites that nobody serves wait to the horizon
 * @law people x mean days of all groups together are the waiting of the outcome
 * @definition ours
 */
export function waitingByGroup<T>(
  problem: RolloutProblem,
  outcome: Outcome,
  groupOf: (job: number) => T,
): readonly GroupWaiting<T>[] {
  const service = serviceDaysOf(problem, outcome);
  const groups = new Map<T, { people: number; days: number }>();
  for (const [job, { people }] of problem.jobs.entries()) {
    const group = groups.get(groupOf(job)) ?? { people: 0, days: 0 };
    group.people += people;
    group.days += people * service[job]!;
    groups.set(groupOf(job), group);
  }
  return [...groups]
    .map(([group, { people, days }]) => ({ group, people_count: people, mean_days: people === 0 ? 0 : days / people }))
    .sort((a, b) => b.mean_days - a.mean_days);
}

/**
 * On which day is each job first served?
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param outcome - what came of a plan [day]
 * @returns days as the jobs [day]; the horizon where no trip serves it
 * @definition ours
 */
export function serviceDaysOf(problem: RolloutProblem, outcome: Outcome): Float64Array {
  const { jobs, horizon_days } = problem;
  const service = new Float64Array(jobs.length).fill(horizon_days);
  for (const { stops } of outcome.trips.flat())
    for (const { job, serviceDay } of stops) service[job] = Math.min(horizon_days, serviceDay);
  return service;
}

/** What is spent in one month. */
export interface MonthMoney {
  /** YYYY-MM. */
  readonly month: string;
  readonly amount: number;
}

/**
 * How much money does the plan need in each month? Crews for each day they are out, legs and fuel on the day a trip leaves, hauls on
 * the day they leave. What kits cost to buy is not in it.
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param outcome - what came of the plan [day]
 * @returns months in order with something to pay [currency of the problem]
 * @law together they are the cost of the outcome
 * @definition ours
 */
export function moneyByMonth(problem: RolloutProblem, outcome: Outcome): readonly MonthMoney[] {
  const { firstDay, crews } = problem;
  const months = new Map<string, number>();
  const spend = (day: number, amount: number) => {
    const { year, month } = calendarDay(firstDay + Math.floor(day));
    const key = `${year}-${String(month).padStart(2, '0')}`;
    months.set(key, (months.get(key) ?? 0) + amount);
  };
  for (const [crew, trips] of outcome.trips.entries()) {
    const perDay = crews[crew]!.cost_per_day;
    for (const { leaves, back, cost } of trips) {
      const days = daysOut(leaves, back);
      for (const day of days) spend(day, perDay);
      spend(leaves, cost - perDay * days.length);
    }
  }
  for (const { leaves, cost } of outcome.hauls) spend(leaves, cost);
  return [...months]
    .filter(([, amount]) => amount !== 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([month, amount]) => ({ month, amount }));
}

/** Days from the one it leaves to the one it is back, both counted. */
function daysOut(leaves: number, back: number): readonly number[] {
  const first = Math.floor(leaves);
  const last = Math.max(first, Math.ceil(back - 1e-9) - 1);
  return Array.from({ length: last - first + 1 }, (_, day) => first + day);
}
