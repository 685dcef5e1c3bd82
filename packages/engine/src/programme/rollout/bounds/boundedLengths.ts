import type { RolloutProblem } from '../problem.ts';
import type { JobLeast } from './jobLengths.ts';
import type { LeastTravel } from './leastTravel.ts';

/** What of a trip a job takes its share of: the load in kilograms or litres, or the days away. */
export const shares = ['kg', 'litres', 'days'] as const;
export type Share = (typeof shares)[number];

/** Lengths of jobs, and by how much what they stand for may run after the truth. Arrays are as the jobs. */
export interface Lengths {
  /** Of the length, what is the last leg; the rest is a share of the whole trip. */
  readonly lastLeg_fraction: number;
  readonly share: Share;
  readonly length_days: Float64Array;
  /** Working days by which the end of a job in these lengths may be after its end in truth. */
  readonly after_days: Float64Array;
}

/**
 * How long is each job at the least, its travel counted? As its work and the last leg to it, as its work and its share of a trip out and
 * back, or as a mixture. Shares of a trip are never more than the trip; while a trip is under way they may be ahead of it by the way home and the turnaround.
 *
 * @param problem - the rollout
 * @param least - work of each job [working day]
 * @param travel - travel of each job [working day]
 * @param asked - the mixture, and what a share is of
 * @returns lengths [working day]; null where a job takes more than any crew can
 * @definition ours, after the radial bound of vehicle routing: docs/methods/rollout.md, Bounds
 */
export function boundedLengths(
  problem: RolloutProblem,
  least: JobLeast,
  travel: LeastTravel,
  asked: Pick<Lengths, 'lastLeg_fraction' | 'share'>,
): Lengths | null {
  const { lastLeg_fraction, share } = asked;
  const { jobs, crews } = problem;
  const turnaround_days = Math.min(...crews.map((crew) => crew.turnaround_days));
  const most = mostOf(problem, share);
  const length_days = new Float64Array(jobs.length);
  const after_days = new Float64Array(jobs.length);
  for (const [job, { kg, litres }] of jobs.entries()) {
    const work_days = least.install_days[job]!;
    const round_days = travel.out_days[job]! + travel.back_days[job]!;
    const ofTrip = share === 'days' ? work_days / (most - round_days) : (share === 'kg' ? kg : litres) / most;
    if (!(ofTrip >= 0 && ofTrip <= 1) || !Number.isFinite(round_days)) return null;
    const shared_days = ofTrip * (round_days + turnaround_days);
    length_days[job] = work_days + lastLeg_fraction * travel.in_days[job]! + (1 - lastLeg_fraction) * shared_days;
    after_days[job] = (1 - lastLeg_fraction) * (travel.back_days[job]! + turnaround_days);
  }
  return { lastLeg_fraction, share, length_days, after_days };
}

/** The most of it that any crew takes on one trip; days: those a trip of so many nights touches. */
function mostOf({ crews, horizon_days }: RolloutProblem, share: Share): number {
  const of = crews.map((crew) =>
    share === 'kg' ? crew.limit_kg : share === 'litres' ? crew.limit_L : Math.min(horizon_days, crew.mostDaysAway) + 1,
  );
  return Math.max(...of);
}
