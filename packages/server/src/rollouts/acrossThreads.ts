import type { LegTable, RolloutProblem } from '@eavewell/engine';

type Numbers = Float32Array | Float64Array | Uint16Array | Uint8Array;

/** The same numbers in memory that threads share. */
function shared<T extends Numbers>(numbers: T): T {
  const room = new SharedArrayBuffer(numbers.byteLength);
  const made = new (numbers.constructor as new (room: SharedArrayBuffer) => T)(room);
  made.set(numbers as never);
  return made;
}

/**
 * A rollout whose legs lie in memory that threads share, so that a search in another thread has them at once. The tables of the given one are
 * emptied into it one after the other: two of a large programme do not fit.
 *
 * @param problem - the rollout; it is not to be used any more
 * @returns the same rollout
 * @definition ours: docs/decisions/0353-a-thread-that-stays.md
 */
export function ontoSharedMemory(problem: RolloutProblem): RolloutProblem {
  const made = new Map<LegTable, LegTable>();
  const moved = (table: LegTable): LegTable => {
    const known = made.get(table);
    if (known !== undefined) return known;
    const next: Record<string, unknown> = { limits: table.limits };
    for (const name of columns) {
      next[name] = shared(table[name]);
      Object.assign(table, { [name]: empty });
    }
    const now = next as unknown as LegTable;
    made.set(table, now);
    return now;
  };
  return {
    ...problem,
    jobs: waitsShared(problem.jobs),
    travels: problem.travels.map((travel) => ({ ...travel, byPeriod: travel.byPeriod.map(moved) })),
  };
}

/** Jobs whose waits for water lie one after the other in memory that is shared: some thousand lists would be copied from thread to thread. */
function waitsShared(jobs: RolloutProblem['jobs']): RolloutProblem['jobs'] {
  const count = jobs.reduce((sum, { serviceWait_days }) => sum + serviceWait_days.length, 0);
  const room = new Float64Array(new SharedArrayBuffer(8 * count));
  const yearsCount = jobs.reduce((sum, { serviceWaits }) => sum + (serviceWaits?.wait_days.length ?? 0), 0);
  const yearsRoom = new Uint16Array(new SharedArrayBuffer(2 * yearsCount));
  let [at, yearsAt] = [0, 0];
  return jobs.map((job) => {
    const own = room.subarray(at, at + job.serviceWait_days.length);
    own.set(Array.from(job.serviceWait_days));
    at += own.length;
    if (job.serviceWaits === null) return { ...job, serviceWait_days: own };
    const wait_days = yearsRoom.subarray(yearsAt, yearsAt + job.serviceWaits.wait_days.length);
    wait_days.set(job.serviceWaits.wait_days);
    yearsAt += wait_days.length;
    return { ...job, serviceWait_days: own, serviceWaits: { ...job.serviceWaits, wait_days } };
  });
}

const columns = ['landBefore_h', 'river_h', 'landAfter_h', 'cost', 'fuel_L', 'limitOf', 'areaOf'] as const;
const empty = new Float32Array(0);
