import type { RolloutProblem } from '../problem.ts';

/** Travel that no plan undercuts, in working days of the crew that works longest a day. Arrays are as the jobs. */
export interface LeastTravel {
  /** From the nearest base, and back to it, by any way round. */
  readonly out_days: Float64Array;
  readonly back_days: Float64Array;
  /** The last leg before a job, from anywhere. */
  readonly in_days: Float64Array;
}

/**
 * How much travel is spent on each job whatever the plan? Of all periods and carriers the quickest; from the bases on by any way round, so that
 * what a leg saves against another leg cannot make it wrong.
 *
 * @param problem - the rollout
 * @returns least days out, back and of the last leg [working day]; Infinity where nobody can come
 * @law no leg of any plan is shorter than these
 * @definition ours: docs/methods/rollout.md, Bounds
 */
export function leastTravel(problem: RolloutProblem): LeastTravel {
  if (problem.travels.some(({ pairs }) => pairs !== undefined)) throw new RangeError('leastTravel: some legs only');
  const places = problem.placeIds.length;
  const nodes = places + problem.jobs.length;
  const least = leastLegs(problem, nodes);
  const bases = [...new Set(problem.crews.map(({ base }) => base))];
  const out = fromAny(least, nodes, bases, false);
  const back = fromAny(least, nodes, bases, true);
  const into = new Float64Array(problem.jobs.length).fill(Infinity);
  for (let from = 0; from < nodes; from++) {
    for (let job = 0; job < into.length; job++) {
      if (from !== places + job) into[job] = Math.min(into[job]!, least[from * nodes + places + job]!);
    }
  }
  return { out_days: out.slice(places), back_days: back.slice(places), in_days: into };
}

/** The quickest of every pair over periods and carriers, nodes x nodes [working day]. */
function leastLegs({ travels, crews }: RolloutProblem, nodes: number): Float64Array {
  const least = new Float64Array(nodes * nodes).fill(Infinity);
  for (const [index, { byPeriod }] of travels.entries()) {
    const hours = Math.max(...crews.filter(({ travel }) => travel === index).map((crew) => crew.work_h_per_day));
    if (!(hours > 0)) continue;
    for (const { landBefore_h, river_h, landAfter_h } of new Set(byPeriod)) {
      for (let leg = 0; leg < least.length; leg++) {
        const days = (landBefore_h[leg]! + river_h[leg]! + landAfter_h[leg]!) / hours;
        if (days < least[leg]!) least[leg] = days;
      }
    }
  }
  return least;
}

/** Shortest from any of some nodes to each (or back), by Dijkstra over all pairs. */
function fromAny(least: Float64Array, nodes: number, starts: readonly number[], isBack: boolean): Float64Array {
  const days = new Float64Array(nodes).fill(Infinity);
  const isDone = new Uint8Array(nodes);
  for (const start of starts) days[start] = 0;
  for (let round = 0; round < nodes; round++) {
    let nearest = -1;
    for (let node = 0; node < nodes; node++) {
      if (isDone[node] === 0 && days[node]! < (nearest < 0 ? Infinity : days[nearest]!)) nearest = node;
    }
    if (nearest < 0) break;
    isDone[nearest] = 1;
    for (let node = 0; node < nodes; node++) {
      const by = days[nearest]! + least[isBack ? node * nodes + nearest : nearest * nodes + node]!;
      if (by < days[node]!) days[node] = by;
    }
  }
  return days;
}
