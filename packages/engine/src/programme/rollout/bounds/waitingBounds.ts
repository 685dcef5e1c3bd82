import type { SolveLinear } from '../../../kernel/index.ts';
import { leapDays } from '../leapDays.ts';
import type { RolloutProblem } from '../problem.ts';
import { assignmentBound } from './assignment.ts';
import { boundedLengths, type Lengths, shares } from './boundedLengths.ts';
import { crewsAtWork, earliestEnd, longestSpan } from './crewDays.ts';
import { daysApart, fastMachine } from './fastMachine.ts';
import { arrivalDay, earliestService, type JobLeast, jobLeast } from './jobLengths.ts';
import { type LeastTravel, leastTravel } from './leastTravel.ts';

/** Which bound it is. */
export const boundNames = ['alone', 'fastMachine', 'radial', 'assignment', 'tripPrices'] as const;
export type BoundName = (typeof boundNames)[number];

/** What the waiting cannot be less than, and by which reasoning. */
export interface WaitingBound {
  readonly name: BoundName;
  /** Sum of weight x first day of service, from day 0 [person-day]. */
  readonly waiting: number;
}

/** All bounds that could be reckoned. */
export interface WaitingBounds {
  readonly best: WaitingBound;
  readonly all: readonly WaitingBound[];
  /** Days of a stretch in the linear programme; null where there was none. */
  readonly days_together: number | null;
}

export interface BoundsAsked {
  /** Null: without a linear programme. */
  readonly solve: SolveLinear | null;
  /** Columns of the linear programme, at the most. */
  readonly mostColumns: number;
}

const lastLegFractions = [1, 0.75, 0.5, 0.25, 0] as const;

/**
 * What can the waiting of no plan be less than? The best of several bounds, each valid by itself, for plans that serve every job and break nothing
 * (late is allowed).
 *
 * @param problem - the rollout [day, kg, L, person]
 * @param asked - solver of linear programmes and its size [fraction]
 * @returns bounds [person-day]; `best` is the highest; null where a job can be reached by nobody, so that no such plan is
 * @law never above the waiting of a plan that serves every job and breaks nothing
 * @definition ours: docs/methods/rollout.md, Bounds
 */
export function waitingBounds(problem: RolloutProblem, asked: BoundsAsked): WaitingBounds | null {
  if (problem.crews.length === 0 || problem.jobs.length === 0) return null;
  const least = jobLeast(problem);
  const dayOfYear = leapDays(problem);
  const travel = leastTravel(problem);
  if (travel.out_days.some((days) => !Number.isFinite(days))) return null;
  const alone = servedAlone(problem, least, travel, dayOfYear);
  const waitingAlone = problem.jobs.reduce((sum, { weight }, job) => sum + weight * alone[job]!, 0);
  const all: WaitingBound[] = [{ name: 'alone', waiting: waitingAlone }];
  let tightest: { readonly seen: Seen; readonly waiting: number } | null = null;
  for (const share of shares) {
    for (const lastLeg_fraction of lastLegFractions) {
      if (lastLeg_fraction === 1 && share !== 'kg') continue;
      const lengths = boundedLengths(problem, least, travel, { lastLeg_fraction, share });
      if (lengths === null) continue;
      const seen = seenThrough(problem, lengths, least);
      const waiting = machineBound(problem, seen, least);
      all.push({ name: lastLeg_fraction === 1 ? 'fastMachine' : 'radial', waiting });
      if (tightest === null || waiting > tightest.waiting) tightest = { seen, waiting };
    }
  }
  let days_together: number | null = null;
  if (asked.solve !== null && tightest !== null) {
    for (const floor of [null, alone]) {
      const found = assigned(problem, tightest.seen, least, { ...asked, solve: asked.solve, dayOfYear, floor });
      if (found !== null) all.push({ name: 'assignment', waiting: found.waiting });
      days_together = found?.days_together ?? days_together;
    }
  }
  const kept = boundNames.flatMap((name) => {
    const waitings = all.filter((bound) => bound.name === name).map(({ waiting }) => waiting);
    return waitings.length > 0 ? [{ name, waiting: Math.max(...waitings) }] : [];
  });
  return { best: kept.reduce((a, b) => (b.waiting > a.waiting ? b : a)), all: kept, days_together };
}

/**
 * A further bound beside those there are.
 *
 * @param bounds - those there are; null: none [person-day]
 * @param more - the further one; null: none [person-day]
 * @returns all of them, the best of them anew [person-day]
 * @definition ours
 */
export function withBound(bounds: WaitingBounds | null, more: WaitingBound | null): WaitingBounds | null {
  if (more === null) return bounds;
  const { name, waiting } = more;
  if (bounds === null) return { best: { name, waiting }, all: [{ name, waiting }], days_together: null };
  const best = waiting > bounds.best.waiting ? { name, waiting } : bounds.best;
  return { ...bounds, best, all: [...bounds.all, { name, waiting }] };
}

/** The first day of service of each job as if it were the only one [day]. */
function servedAlone(
  problem: RolloutProblem,
  least: JobLeast,
  travel: LeastTravel,
  dayOfYear: ArrayLike<number>,
): Float64Array {
  return Float64Array.from(problem.jobs, ({ serviceWait_days }, job) => {
    const end = Math.max(
      earliestEnd(problem, least.goodsFrom[job]!, travel.out_days[job]! + least.install_days[job]!),
      earliestEnd(problem, Math.max(0, least.opens[job]!), least.install_days[job]!),
    );
    const service = earliestService(serviceWait_days, dayOfYear);
    return service[Math.min(end, service.length - 1)] ?? 0;
  });
}

/** Lengths with what follows from them: days by which an end may be late, first days, crews by day for as long as that takes. */
interface Seen {
  readonly lengths: Lengths;
  readonly late_days: Float64Array;
  readonly from: Float64Array;
  readonly atWork: Float64Array;
}

function seenThrough(problem: RolloutProblem, lengths: Lengths, least: JobLeast): Seen {
  const spans = new Map<number, number>();
  const late_days = lengths.after_days.map((days) => {
    const whole = Math.ceil(days * 4) / 4;
    if (!spans.has(whole)) spans.set(whole, whole === 0 ? 0 : longestSpan(problem, whole));
    return spans.get(whole)!;
  });
  const away = Math.max(...problem.crews.map(({ mostDaysAway }) => Math.min(problem.horizon_days, mostDaysAway)));
  const from = least.goodsFrom.map((goods, job) => Math.max(0, goods, least.opens[job]! - away));
  const atWork = crewsAtWork(problem, Math.ceil(Math.max(0, ...lengths.after_days)));
  return { lengths, late_days, from, atWork };
}

/** The better of two ways to count: by whole days, or by the time within them. */
function machineBound({ jobs }: RolloutProblem, { lengths, late_days, from, atWork }: Seen, least: JobLeast): number {
  const machineJobs = jobs.map(({ weight }, job) => ({
    ...{ weight, length_days: lengths.length_days[job]!, from: from[job]! },
  }));
  const total = (of: (job: number) => number) => jobs.reduce((sum, { weight }, job) => sum + weight * of(job), 0);
  const wait = total((job) => least.serviceWait_days[job]!);
  return (
    wait +
    Math.max(
      fastMachine(machineJobs, atWork, 'byDay') - total((job) => Math.ceil(late_days[job]!)),
      fastMachine(machineJobs, atWork, 'withinDay') - total((job) => late_days[job]! + 1),
    )
  );
}

/** With a floor every share is told by the day it would have ended on, and no earlier than the job alone; by the mean that would not hold. */
function assigned(
  problem: RolloutProblem,
  { lengths, late_days, from, atWork }: Seen,
  least: JobLeast,
  {
    solve,
    mostColumns,
    dayOfYear,
    floor,
  }: BoundsAsked & {
    readonly solve: SolveLinear;
    readonly dayOfYear: ArrayLike<number>;
    /** First days of service of each job alone [day]; null: none. */
    readonly floor: Float64Array | null;
  },
) {
  const away = Math.max(...problem.crews.map(({ mostDaysAway }) => Math.min(problem.horizon_days, mostDaysAway)));
  const jobs = problem.jobs.map((job, index) => {
    const late = late_days[index]!;
    const length_days = lengths.length_days[index]!;
    const after = Math.max(daysApart(length_days) - Math.ceil(late), length_days / 2 - 1 - late);
    const service = earliestService(job.serviceWait_days, dayOfYear);
    const swing = Math.max(...service.map((day, from) => day - from)) - least.serviceWait_days[index]!;
    const byDay = (day: number) => service[Math.min(service.length - 1, Math.max(0, Math.floor(day - late)))]!;
    const byMean = (day: number) => day + after + least.serviceWait_days[index]!;
    const byDayOrAlone = (day: number) => Math.max(floor?.[index] ?? 0, byDay(day));
    return {
      weight: job.weight,
      length_days,
      servedFrom: floor !== null ? byDayOrAlone : swing > daysApart(length_days) ? byDay : byMean,
      isOpen: (day: number) =>
        day >= from[index]! && job.windows.some((window) => day >= window.from - away && day <= window.to + late),
      needs: job.needs,
    };
  });
  return assignmentBound({ jobs, crewsAtWork: atWork, cameBy: cameBy(problem, atWork.length), mostColumns }, solve);
}

/** Of each of the goods, what has come to all stores by the end of each day. */
function cameBy({ goods, stores }: RolloutProblem, days: number): Float64Array[] {
  const came = goods.map(() => new Float64Array(days));
  for (const { arrivals } of stores) {
    for (const arrival of arrivals) {
      const { goods: which, quantity_count } = arrival;
      for (let on = arrivalDay(arrival); on < days; on++) came[which]![on] = came[which]![on]! + quantity_count;
    }
  }
  return came;
}
