import { lateFactor } from '../constants.ts';
import { leapDays } from '../leapDays.ts';
import type { Crew, Job, LegTable, RolloutProblem } from '../problem.ts';

/**
 * The problem as the search of crews counts it: flat arrays, and time as *working days of a crew*: a number whose whole part is the
 * crew's n-th working day, its fraction the share of it that is used. Days on which a crew rests are not on this line at all.
 * Jobs are numbered from 1.
 */
export interface CrewNumbers {
  readonly jobs: number;
  readonly crews: number;
  readonly nodes: number;
  readonly horizon: number;
  /** Ends count as whole days, trips leave at the start of one; false: time as it is (instances of distance alone). */
  readonly wholeDays: boolean;
  readonly nodeOf: Int32Array;
  readonly weight: Float64Array;
  readonly days: Float64Array;
  readonly kg: Float64Array;
  readonly litres: Float64Array;
  readonly longest: Float64Array;
  /** Value of a hand-over on day d at job × horizon + d; null where it is weight × day for all. */
  readonly value: Float64Array | null;
  /** 1 where that of a job is weight × day on every day: the table need not be read. */
  readonly isPlain: Uint8Array;
  /** Windows of job j: entries windowAt[j] to before windowAt[j + 1], both days included; none: always open. */
  readonly windowAt: Int32Array;
  readonly windowFrom: Int32Array;
  readonly windowTo: Int32Array;
  readonly periodFrom: readonly number[];
  readonly byCrew: readonly OneCrew[];
  /** What leaving a job out costs. */
  readonly leftOut: Float64Array;
  /** What a day too long away costs. */
  readonly awayPenalty: number;
  /** What a day's delay of a crew's last way home costs; 0 as a rule, above 0 where cost is searched for. */
  readonly homeWeight: number;
  /** How often places are tried, not guessed: always where jobs are few, hardly ever where they are many. */
  readonly tried_fraction: number;
  /** The most trips a crew makes. */
  readonly mostTrips: number;
}

/** One crew in numbers. */
export interface OneCrew {
  readonly base: number;
  readonly store: number;
  readonly hours: number;
  readonly riverHours: number;
  readonly mostAway: number;
  readonly pace: number;
  readonly turnaround: number;
  readonly limitKg: number;
  readonly limitLitres: number;
  readonly longest: number;
  /** Days of work times this for its n-th job; null: all alike. */
  readonly learned: Float64Array | null;
  /** 1 where it may do the job at all. */
  readonly may: Uint8Array;
  /** Its first working day, on its own line. */
  readonly from: number;
  /** The day of its n-th working day; after the horizon days go on one by one. */
  readonly dayOf: Int32Array;
  /** Working days before each day. */
  readonly before: Int32Array;
  /** The last working day of a trip that leaves on the n-th and is not away too long. */
  readonly lastBack: Int32Array;
  /** The most working days between the two. */
  readonly mostAwayWork: number;
  /** Days for a working day, in the mean. */
  readonly stretch: number;
  readonly isEveryDay: boolean;
  /** By period. */
  readonly legs: readonly CrewLegs[];
  /** Do legs take less than the crew? */
  readonly hasNarrowLegs: boolean;
}

/** Legs of one period, exact hours and days as they are guessed for ranking. */
export interface CrewLegs {
  readonly table: LegTable;
  /** Days from node a to b at a × nodes + b, whatever is lost before a stretch of river counted in its mean. */
  readonly onward: Float32Array;
  /** From node b to a at a × nodes + b. */
  readonly inward: Float32Array;
}

/** Rest of a day that is lost before a stretch of river, in the mean, where the hour at which one comes to it is any. */
export function riverLoss_h(river_h: number, riverHours: number, hours: number): number {
  if (river_h <= 0) return 0;
  if (river_h <= riverHours) {
    const late = Math.min(1, (hours - riverHours + river_h) / hours);
    return (late * late * hours) / 2;
  }
  return hours / 2 + (Math.ceil(river_h / riverHours - 1e-9) - 1) * (hours - riverHours);
}

/**
 * Writes a problem as numbers for the search of crews.
 *
 * @param problem - the rollout [day, h, kg, L]
 * @returns the same as flat arrays [working day]
 * @definition
 */
export function crewNumbers(problem: RolloutProblem): CrewNumbers {
  if (problem.travels.some(({ pairs }) => pairs !== undefined)) throw new RangeError('crewNumbers: some legs only');
  const { horizon_days: horizon } = problem;
  const places = problem.placeIds.length;
  const jobs = problem.jobs.length;
  const column = (of: (job: Job) => number) => Float64Array.from([0, ...problem.jobs.map(of)]);
  const weight = column((job) => job.weight);
  const known = new Map<string, CrewLegs>();
  const tableNumbers = new Map<LegTable, number>();
  const windows = problem.jobs.map((job) => openAlways(job, horizon));
  const windowAt = new Int32Array(jobs + 2);
  for (let job = 1; job <= jobs; job++) windowAt[job + 1] = windowAt[job]! + windows[job - 1]!.length;
  const total = weight.reduce((sum, one) => sum + one, 0);
  return {
    ...{ jobs, crews: problem.crews.length, nodes: places + jobs, horizon, wholeDays: true },
    nodeOf: Int32Array.from({ length: jobs + 1 }, (_, job) => places + job - 1),
    weight,
    days: column((job) => job.install_days.likely),
    kg: column((job) => job.kg),
    litres: column((job) => job.litres),
    longest: column((job) => job.longest_m),
    value: handOverValues(problem),
    isPlain: Uint8Array.from([1, ...problem.jobs.map((job) => (isPlainJob(job) ? 1 : 0))]),
    windowAt,
    windowFrom: Int32Array.from(windows.flatMap((some) => some.map(({ from }) => from))),
    windowTo: Int32Array.from(windows.flatMap((some) => some.map(({ to }) => to))),
    periodFrom: problem.periods.map(({ from }) => from),
    byCrew: problem.crews.map((crew) => oneCrew(problem, crew, known, tableNumbers)),
    leftOut: weight.map((one) => (lateFactor + 4) * horizon * (one + total / (100 * Math.max(1, jobs)))),
    awayPenalty: (lateFactor + 2) * total,
    homeWeight: 0,
    tried_fraction: Math.min(1, (12 / Math.max(1, jobs)) ** 2.5),
    mostTrips: jobs + 1,
  };
}

/** No windows where one holds all days looked at. */
function openAlways(job: Job, horizon: number): Job['windows'] {
  return job.windows.length === 1 && job.windows[0]!.from <= 0 && job.windows[0]!.to >= horizon - 1 ? [] : job.windows;
}

function isPlainJob({ finishBy, serviceWait_days }: Job): boolean {
  return finishBy === null && Array.prototype.every.call(serviceWait_days, (one) => one === 0);
}

/** What handing over on a day is worth: weight × first day of service, lateness priced at ten times that; null where that is weight × day. */
function handOverValues(problem: RolloutProblem): Float64Array | null {
  const { horizon_days: horizon, jobs, firstDay } = problem;
  if (jobs.every(isPlainJob)) return null;
  const value = new Float64Array((jobs.length + 1) * horizon);
  const dayOfYear = leapDays({ firstDay, horizon_days: horizon });
  jobs.forEach((job, index) => {
    const at = (index + 1) * horizon;
    const due = job.finishBy ?? horizon;
    for (let day = 0; day < horizon; day++) {
      const late = day > due ? lateFactor * (day - due) : 0;
      value[at + day] = job.weight * (day + job.serviceWait_days[dayOfYear[day]!]! + late);
    }
  });
  return value;
}

// long: a record of a crew, a line or two each, written out: docs/decisions/0374
function oneCrew(
  problem: RolloutProblem,
  crew: Crew,
  known: Map<string, CrewLegs>,
  tableNumbers: Map<LegTable, number>,
): OneCrew {
  const { jobs, horizon_days: horizon, learning_fraction } = problem;
  const beyond = horizon + 2 * jobs.length + 64;
  const before = new Int32Array(horizon + 1);
  const dayOf = new Int32Array(beyond);
  let count = 0;
  for (let day = 0; day < horizon; day++) {
    before[day] = count;
    if (crew.works[day] === 1) dayOf[count++] = day;
  }
  before[horizon] = count;
  for (let n = count; n < beyond; n++) dayOf[n] = horizon + n - count;
  const legs = problem.travels[crew.travel]!.byPeriod.map((table) => {
    const number = tableNumbers.get(table) ?? tableNumbers.size;
    tableNumbers.set(table, number);
    const key = `${number} ${crew.work_h_per_day} ${problem.riverEnds_h}`;
    const found =
      known.get(key) ??
      crewLegs(
        table,
        problem.placeIds.length + jobs.length,
        crew.work_h_per_day,
        Math.min(crew.work_h_per_day, problem.riverEnds_h),
      );
    known.set(key, found);
    return found;
  });
  const power = Math.log2(learning_fraction);
  const start = Math.max(0, crew.freeFrom);
  const day = Math.floor(start);
  const fraction = start - day;
  const lastBack = lastBacks(dayOf, crew.mostDaysAway);
  return {
    base: crew.base,
    store: problem.stores[crew.store]!.node,
    hours: crew.work_h_per_day,
    riverHours: Math.min(crew.work_h_per_day, problem.riverEnds_h),
    mostAway: crew.mostDaysAway,
    pace: crew.pace_factor,
    turnaround: crew.turnaround_days,
    limitKg: crew.limit_kg,
    limitLitres: crew.limit_L,
    longest: crew.longest_m,
    learned:
      learning_fraction === 1
        ? null
        : Float64Array.from({ length: jobs.length + 1 }, (_, n) => (crew.done_count + n + 1) ** power),
    may: Uint8Array.from([0, ...jobs.map((job) => mayDo(crew, job))]),
    from: day < horizon ? before[day]! + (fraction > 0 && crew.works[day] === 1 ? 1 : 0) : count,
    lastBack,
    mostAwayWork: lastBack.reduce((most, last, leave) => Math.max(most, last - leave), 0),
    dayOf,
    before,
    stretch: horizon / Math.max(1, count),
    isEveryDay: count === horizon,
    legs,
    hasNarrowLegs: legs.some(({ table }) =>
      table.limits.some((one) => one.kg < crew.limit_kg || one.litres < crew.limit_L || one.longest_m < crew.longest_m),
    ),
  };
}

/** For each working day the last one that is no more than so many nights later. */
export function lastBacks(dayOf: Int32Array, mostAway: number): Int32Array {
  let last = 0;
  return dayOf.map((leave) => {
    while (last + 1 < dayOf.length && dayOf[last + 1]! - leave <= mostAway) last++;
    return last;
  });
}

function mayDo(crew: Crew, job: Job): number {
  const fits = job.kg <= crew.limit_kg && job.litres <= crew.limit_L && job.longest_m <= crew.longest_m;
  return fits && (job.skills & ~crew.skills) === 0 ? 1 : 0;
}

/** Legs as they are guessed for ranking, for a crew of such hours. */
export function crewLegs(table: LegTable, nodes: number, hours: number, river: number): CrewLegs {
  const onward = new Float32Array(nodes * nodes);
  const inward = new Float32Array(nodes * nodes);
  for (let from = 0; from < nodes; from++)
    for (let to = 0; to < nodes; to++) {
      const at = from * nodes + to;
      const river_h = table.river_h[at]!;
      const gone_h = table.landBefore_h[at]! + river_h + riverLoss_h(river_h, river, hours) + table.landAfter_h[at]!;
      onward[at] = gone_h / hours;
      inward[to * nodes + from] = gone_h / hours;
    }
  return { table, onward, inward };
}
