import { dualBound, type LinearProgramme, type SolveLinear } from '../../../kernel/index.ts';

/** A job as the linear programme sees it. */
export interface AssignedJob {
  readonly weight: number;
  readonly length_days: number;
  /** What a share of its work on each day costs at the least, before the weight: a day of service [day]. */
  readonly servedFrom: (day: number) => number;
  /** May work be spent on it on this day? */
  readonly isOpen: (day: number) => boolean;
  readonly needs: readonly number[];
}

/** What the rows of the linear programme hold to. */
export interface AssignmentGiven {
  readonly jobs: readonly AssignedJob[];
  /** Crews that work on each day [count]. */
  readonly crewsAtWork: Float64Array;
  /** Of each of the goods, what has come by the end of each day, in all stores together. */
  readonly cameBy: readonly Float64Array[];
  /** Columns at the most; days are taken together until they fit. */
  readonly mostColumns: number;
}

/** The bound of a linear programme, and of what size it was. */
export interface AssignmentBound {
  readonly waiting: number;
  readonly days_together: number;
  readonly columns_count: number;
}

/**
 * How much waiting could crews not avoid that share each job at will, day by day, but hold to calendars, windows and goods? The share of each job that is
 * worked on in each stretch of days is a column; a share costs what its job would be served at had it ended then.
 *
 * @param given - jobs, crews and goods by day
 * @param solve - solves a linear programme
 * @returns a value the waiting of any plan is not below, reckoned from the solver's prices; null where it cannot be solved
 * @law never above the waiting of a plan that breaks nothing
 * @definition ours: docs/methods/rollout.md, Bounds
 */
export function assignmentBound(given: AssignmentGiven, solve: SolveLinear): AssignmentBound | null {
  const together = daysTogether(given);
  const programme = asProgramme(given, together);
  if (programme === null) return null;
  const { status, duals } = solve(programme);
  if (status !== 'optimal') return null;
  return {
    waiting: dualBound(programme, duals),
    days_together: together,
    columns_count: programme.cost.length,
  };
}

function daysTogether({ jobs, crewsAtWork, mostColumns }: AssignmentGiven): number {
  const needed = jobs.reduce((sum, { length_days }) => sum + length_days, 0);
  let lastDay = 0;
  for (let done = 0; lastDay < crewsAtWork.length && done < needed; lastDay++) done += crewsAtWork[lastDay]!;
  return Math.max(1, Math.ceil((jobs.length * lastDay) / mostColumns));
}

/** Columns are jobs by stretches; rows are one for each job, one for each stretch, and one for each stretch and each of the goods. */
// long: columns, rows and entries are written in one pass
function asProgramme(given: AssignmentGiven, together: number): LinearProgramme | null {
  const { jobs, crewsAtWork, cameBy } = given;
  const stretches = Math.ceil(crewsAtWork.length / together);
  const goodsRows = cameBy.length * stretches;
  const capacity = new Float64Array(stretches);
  for (const [day, crews] of crewsAtWork.entries()) {
    const stretch = Math.floor(day / together);
    capacity[stretch] = capacity[stretch]! + crews;
  }
  const cost: number[] = [];
  const starts = [0];
  const rows: number[] = [];
  const values: number[] = [];
  for (const [job, { weight, length_days, servedFrom, isOpen, needs }] of jobs.entries()) {
    const before = cost.length;
    for (let stretch = 0; stretch < stretches; stretch++) {
      const from = stretch * together;
      const days = Array.from({ length: Math.min(together, crewsAtWork.length - from) }, (_, day) => from + day);
      const first = days.find(isOpen);
      if (first === undefined || capacity[stretch] === 0) continue;
      cost.push(weight * servedFrom(first));
      rows.push(job, jobs.length + stretch);
      values.push(1, length_days);
      for (const [goods, need] of needs.entries()) {
        if (need === 0) continue;
        // What is drawn by the end of a stretch counts in its row and in all later ones: rows hold what is drawn in one stretch, minus what the row before left.
        rows.push(jobs.length + stretches + goods * stretches + stretch);
        values.push(need);
      }
      starts.push(rows.length);
    }
    if (cost.length === before) return null;
  }
  // A column of what is left in the store from one stretch to the next, for each of the goods: keeps the rows of goods short.
  const rowLow = [...jobs.map(() => 1), ...capacityLow(stretches, goodsRows)];
  const rowHigh = [...jobs.map(() => 1), ...capacity];
  for (const [goods, came] of cameBy.entries()) {
    for (let stretch = 0; stretch < stretches; stretch++) {
      const row = jobs.length + stretches + goods * stretches + stretch;
      const end = Math.min(came.length, (stretch + 1) * together) - 1;
      const before = stretch === 0 ? 0 : came[stretch * together - 1]!;
      rowHigh.push(came[end]! - before);
      cost.push(0);
      rows.push(row);
      values.push(1);
      if (stretch + 1 < stretches) {
        rows.push(row + 1);
        values.push(-1);
      }
      starts.push(rows.length);
    }
  }
  return {
    cost: Float64Array.from(cost),
    low: new Float64Array(cost.length),
    high: Float64Array.from(cost, (_, column) =>
      column < cost.length - goodsRows
        ? 1
        : cameBy[Math.floor((column - cost.length + goodsRows) / stretches)]!.at(-1)!,
    ),
    rowLow: Float64Array.from(rowLow),
    rowHigh: Float64Array.from(rowHigh),
    starts: Int32Array.from(starts),
    rows: Int32Array.from(rows),
    values: Float64Array.from(values),
  };
}

const capacityLow = (stretches: number, goodsRows: number) =>
  Array.from({ length: stretches + goodsRows }, () => -Infinity);
