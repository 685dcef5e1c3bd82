/** A job as a bound sees it. */
export interface BoundJob {
  /** What a day of waiting weighs. */
  readonly weight: number;
  /** Working days every plan spends on it [day], above 0. */
  readonly length_days: number;
  /** No part of them is spent before this day. */
  readonly from: number;
}

/**
 * How much waiting could one machine as fast as all crews together not avoid? Each job is spread at will over the crews there are on a day, the job with the
 * most weight for its length first; its mean day is set against its length. A job that takes b days at a rate of one a day at the most ends no earlier than its mean day plus what
 * those days lie apart.
 *
 * @param jobs - weight, length and first day of each
 * @param crewsAtWork - crews that work on each day [count]
 * @param counted - `byDay`: a job ends on a day, its work is counted on whole days; `withinDay`: it ends at a time, and crews share a day one job after the other
 * @returns a value that the sum of weight x last day of work (or time of its end) is not below, for any plan of these lengths [person-day]
 * @law more crews, a shorter job or an earlier first day never raise it
 * @source goemans-2002, section 2: mean busy time with release dates; here day by day, with crews that differ by day
 */
export function fastMachine(
  jobs: readonly BoundJob[],
  crewsAtWork: Float64Array,
  counted: 'byDay' | 'withinDay',
): number {
  const byFirst = jobs.map((_, job) => job).sort((a, b) => jobs[a]!.from - jobs[b]!.from);
  const urgency = (job: number) => jobs[job]!.weight / jobs[job]!.length_days;
  const open = new Heap(urgency);
  let bound = 0;
  for (const { weight, length_days } of jobs)
    bound += weight * (counted === 'byDay' ? daysApart(length_days) : length_days / 2);
  const left = Float64Array.from(jobs, ({ length_days }) => length_days);
  let next = 0;
  for (let day = 0; day < crewsAtWork.length; day++) {
    while (next < byFirst.length && jobs[byFirst[next]!]!.from <= day) open.put(byFirst[next++]!);
    const crews = crewsAtWork[day]!;
    let capacity = crews;
    while (capacity > 0 && open.size > 0) {
      const job = open.first();
      const done = Math.min(capacity, left[job]!);
      const within = counted === 'byDay' ? 0 : (crews - capacity + done / 2) / crews;
      bound += urgency(job) * done * (day + within);
      capacity -= done;
      left[job] = left[job]! - done;
      if (left[job]! <= 1e-12) open.takeFirst();
    }
  }
  // What is left over has no day within the horizon: it is worked on after it.
  for (const [job, rest] of left.entries()) if (rest > 1e-12) bound += urgency(job) * rest * crewsAtWork.length;
  return bound;
}

/**
 * By how many days is the last day of a job after the mean day of its work, at the least? Its work is one day a day at the most: full
 * days from the last one back, and what is left on the first.
 *
 * @param length_days - days of work [day]
 * @returns days between [day]
 * @definition ours: docs/methods/rollout.md, Bounds
 * @example daysApart(3) // 1
 */
export function daysApart(length_days: number): number {
  const full = Math.floor(length_days);
  return (full * (full - 1) * 0.5 + full * (length_days - full)) / length_days;
}

/** Jobs by urgency, the most urgent first. */
class Heap {
  readonly #jobs: number[] = [];
  readonly #urgency: (job: number) => number;

  constructor(urgency: (job: number) => number) {
    this.#urgency = urgency;
  }

  get size(): number {
    return this.#jobs.length;
  }

  first(): number {
    return this.#jobs[0]!;
  }

  put(job: number): void {
    const jobs = this.#jobs;
    let at = jobs.push(job) - 1;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (this.#urgency(jobs[above]!) >= this.#urgency(job)) break;
      jobs[at] = jobs[above]!;
      at = above;
    }
    jobs[at] = job;
  }

  takeFirst(): void {
    const jobs = this.#jobs;
    const last = jobs.pop()!;
    if (jobs.length === 0) return;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= jobs.length) break;
      if (below + 1 < jobs.length && this.#urgency(jobs[below + 1]!) > this.#urgency(jobs[below]!)) below++;
      if (this.#urgency(jobs[below]!) <= this.#urgency(last)) break;
      jobs[at] = jobs[below]!;
      at = below;
    }
    jobs[at] = last;
  }
}
