import { loadSlack_kg, timeSlack_days } from '../../constants.ts';
import type { Crew, RolloutProblem } from '../../problem.ts';
import { type WorkDays, workDays } from '../../workDays.ts';
import { earliestService, type JobLeast } from '../jobLengths.ts';
import type { LeastTravel } from '../leastTravel.ts';
import { mostShares_count, shareSlack_ratio, stepSlack_ratio, worthMoreShares_ratio } from './constants.ts';
import { type LegSteps, legSteps } from './legSteps.ts';

/** What crews have in common that can go the same trips at the same times. Times are steps of their working days, from the first on. */
export interface CrewKind {
  readonly crews_count: number;
  readonly stepsOfDay: number;
  /** Working days looked at, and the one on which the first trip can leave. */
  readonly days: number;
  readonly firstDay: number;
  readonly legs: LegSteps;
  /** What each job takes of a trip's room, in whole shares, and all of it. */
  readonly takes: Int32Array;
  readonly room: number;
  /** `fits[job * (steps + 1) + step]`: the first step, `step` or later, at which the work at a job can end; -1: none. */
  readonly fits: Int32Array;
  /** Weight x first day of service of work that ends at a step, laid out the same [person-day]. */
  readonly served: Float64Array;
}

/** Crews that are alike, and the calendar they go by. */
export interface AlikeCrews {
  readonly crew: Crew;
  readonly calendar: WorkDays;
  readonly crews_count: number;
  /** Working days up to the last day looked at. */
  readonly days: number;
}

/** What kinds are made from. */
export interface KindGiven {
  readonly problem: RolloutProblem;
  readonly least: JobLeast;
  readonly travel: LeastTravel;
  readonly dayOfYear: ArrayLike<number>;
}

/** Crews that work on some day looked at, those that are alike together. */
export function alikeCrews({ crews, horizon_days }: RolloutProblem, lastDay: number): readonly AlikeCrews[] {
  const found = new Map<string, AlikeCrews>();
  for (const crew of crews) {
    const { crewId: _id, cost_per_day: _cost, pools: _pools, works, ...same } = crew;
    const key = `${JSON.stringify(same)} ${works.join('')}`;
    const before = found.get(key);
    const calendar = before?.calendar ?? workDays(works, horizon_days);
    const days = crew.work_h_per_day > 0 ? calendar.before[Math.min(horizon_days, lastDay + 1)]! : 0;
    if (days > 0) found.set(key, { crew, calendar, days, crews_count: (before?.crews_count ?? 0) + 1 });
  }
  return [...found.values()];
}

/** Makes a kind ready; null where a day has too few steps for each leg with the work after it to take one. */
export function crewKind(given: KindGiven, alike: AlikeCrews, stepsOfDay: number): CrewKind | null {
  const { problem } = given;
  const { crew, calendar, crews_count, days } = alike;
  const work_days = leastWork(problem, crew);
  const legs = legSteps(problem, crew, calendar, { stepsOfDay, days, work_days });
  if (legs === null) return null;
  const free = Math.min(problem.horizon_days, Math.max(0, Math.ceil(crew.freeFrom - timeSlack_days)));
  const { takes, room } = roomOfTrip(given, crew, work_days);
  const { fits, served } = endsOfWork(given, alike, stepsOfDay, work_days);
  return { crews_count, stepsOfDay, days, firstDay: calendar.before[free]!, legs, takes, room, fits, served };
}

/** Days of work of each job after all that a crew may have learned; Infinity where it lacks a skill. */
function leastWork({ jobs, learning_fraction }: RolloutProblem, crew: Crew): Float64Array {
  const power = learning_fraction > 0 ? Math.log2(learning_fraction) : 0;
  const learned = Math.min((crew.done_count + 1) ** power, (crew.done_count + jobs.length) ** power);
  return Float64Array.from(jobs, ({ install_days, skills }) =>
    (skills & ~crew.skills) === 0 ? install_days.likely * crew.pace_factor * learned : Number.POSITIVE_INFINITY,
  );
}

/** Of kilograms, litres and days the one of which the most trips are needed, in whole shares, each rounded down. */
function roomOfTrip({ problem, travel }: KindGiven, crew: Crew, work_days: Float64Array) {
  const { jobs, horizon_days } = problem;
  const rounds = jobs.map((_, job) => travel.out_days[job]! + travel.back_days[job]!);
  const away_days = Math.min(horizon_days, crew.mostDaysAway) + 1 - Math.min(...rounds);
  const loads = [
    { most: crew.limit_kg + loadSlack_kg, amounts: jobs.map(({ kg }) => kg) },
    { most: crew.limit_L + loadSlack_kg, amounts: jobs.map(({ litres }) => litres) },
    { most: away_days + timeSlack_days * jobs.length, amounts: [...work_days] },
  ];
  let found = { takes: new Int32Array(jobs.length), room: 0 };
  let trips_count = 0;
  for (const { most, amounts } of loads)
    for (let room = 1; room <= mostShares_count; room++) {
      const takes = Int32Array.from(amounts, (amount) =>
        amount <= 0 ? 0 : amount > most ? room + 1 : Math.floor((amount / most) * room + shareSlack_ratio),
      );
      const needed = takes.reduce((sum, one) => sum + Math.min(room, one), 0) / room;
      if (needed <= trips_count * worthMoreShares_ratio) continue;
      trips_count = needed;
      found = { takes, room };
    }
  return found;
}

/** When work at each job can end for its windows and its goods, and what it is then worth. */
function endsOfWork(given: KindGiven, { calendar, days }: AlikeCrews, stepsOfDay: number, work_days: Float64Array) {
  const { problem, least, travel, dayOfYear } = given;
  const steps = days * stepsOfDay;
  const fits = new Int32Array(problem.jobs.length * (steps + 1)).fill(-1);
  const served = new Float64Array(fits.length);
  const stepAfter = (day: number, more_days: number) =>
    stepOf(calendar.before[Math.min(problem.horizon_days, Math.max(0, day))]! + more_days, stepsOfDay);
  const dayAt = (step: number) => calendar.dayOf[Math.ceil(step / stepsOfDay) - 1]!;
  for (const [job, { windows, weight, serviceWait_days }] of problem.jobs.entries()) {
    const work = work_days[job]!;
    if (work === Number.POSITIVE_INFINITY) continue;
    const service = earliestService(serviceWait_days, dayOfYear);
    const soonest = stepAfter(least.goodsFrom[job]!, travel.out_days[job]! + work);
    for (let step = 1; step <= steps; step++) {
      const at = job * (steps + 1) + step;
      served[at] = weight * service[dayAt(step)]!;
      const endIn = ({ from }: { readonly from: number }) => Math.max(step, soonest, stepAfter(from, work));
      const window = windows.find((one) => endIn(one) <= steps && dayAt(endIn(one)) <= one.to);
      if (window !== undefined) fits[at] = endIn(window);
    }
  }
  return { fits, served };
}

/** A time in steps, rounded down. */
export function stepOf(days: number, stepsOfDay: number): number {
  return Math.floor(days * stepsOfDay + stepSlack_ratio);
}
