import { loadSlack_kg } from '../constants.ts';
import type { TimedPlan } from '../planChanges.ts';
import type { Broken, RolloutPlan } from '../problem.ts';

/** Something that is broken now and was not, or is broken by more than it was. */
export interface NewBreak {
  readonly broken: Broken;
  /** By how much it was broken before; null: it was not [day, kg, L, m]. */
  readonly before_by: number | null;
}

/** What was broken before, ready to be looked up. */
export interface BreaksBefore {
  readonly ofJobs: ReadonlyMap<string, number>;
  /** By trip, counted through all crews: kind to how much. */
  readonly ofTrips: readonly ReadonlyMap<string, number>[];
  /** The trip of each job, counted through all crews; -1: in none. */
  readonly tripOf: Int32Array;
}

/** Makes what is broken in a plan ready to be compared with. */
export function breaksBefore(jobs_count: number, plan: RolloutPlan, broken: readonly Broken[]): BreaksBefore {
  const tripOf = new Int32Array(jobs_count).fill(-1);
  const firstOf: number[] = [];
  let count = 0;
  for (const own of plan.trips) {
    firstOf.push(count);
    for (const { stops } of own) {
      for (const job of stops) tripOf[job] = count;
      count++;
    }
  }
  const ofJobs = new Map<string, number>();
  const ofTrips = Array.from({ length: count }, () => new Map<string, number>());
  for (const one of broken) {
    const job = jobOf(one);
    if (job !== null) ofJobs.set(`${one.kind} ${job}`, Math.max(by(one), ofJobs.get(`${one.kind} ${job}`) ?? 0));
    else if ('trip' in one) ofTrips[firstOf[one.crew]! + one.trip]!.set(tripKey(one), by(one));
  }
  return { ofJobs, ofTrips, tripOf };
}

/**
 * What is broken that was not before, or is by more. A site is known by itself; a trip by its sites: it is the one before that shares the most with
 * it, and of several that share as many each must have been broken so.
 */
export function newBreaks(before: BreaksBefore, plan: RolloutPlan, broken: readonly Broken[]): readonly NewBreak[] {
  return broken.flatMap((one): readonly NewBreak[] => {
    const job = jobOf(one);
    const before_by = job === null ? tripBefore(before, plan, one) : (before.ofJobs.get(`${one.kind} ${job}`) ?? null);
    return before_by !== null && by(one) <= before_by + loadSlack_kg ? [] : [{ broken: one, before_by }];
  });
}

/**
 * What does not hold under a plan that holds under another, or is broken by more there?
 *
 * @param jobs_count - jobs of the rollout both are timed on [count]
 * @param before - the plan there is, with what came of it [day, kg, L]
 * @param after - the other, with what came of it [day, kg, L]
 * @returns what is newly broken, and by how much it was broken before [day, kg, L, m]
 * @law beside itself nothing of a plan is newly broken
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function breaksBeside(jobs_count: number, before: TimedPlan, after: TimedPlan): readonly NewBreak[] {
  return newBreaks(breaksBefore(jobs_count, before.plan, before.outcome.broken), after.plan, after.outcome.broken);
}

function tripBefore({ ofTrips, tripOf }: BreaksBefore, plan: RolloutPlan, broken: Broken): number | null {
  if (!('trip' in broken)) return null;
  const shares = new Map<number, number>();
  for (const job of plan.trips[broken.crew]![broken.trip]!.stops)
    if (tripOf[job]! >= 0) shares.set(tripOf[job]!, (shares.get(tripOf[job]!) ?? 0) + 1);
  const most = Math.max(0, ...shares.values());
  const alike = [...shares].flatMap(([trip, count]) => (count === most ? [ofTrips[trip]!.get(tripKey(broken))] : []));
  return alike.reduce<number | null>(
    (least, one) => (one === undefined || least === null ? null : Math.min(least, one)),
    alike.length === 0 ? null : Number.POSITIVE_INFINITY,
  );
}

function jobOf(broken: Broken): number | null {
  return 'job' in broken ? broken.job : null;
}

function by(broken: Broken): number {
  return 'by' in broken ? broken.by : 0;
}

function tripKey(broken: Broken): string {
  return 'goods' in broken ? `${broken.kind} ${broken.goods}` : broken.kind;
}
