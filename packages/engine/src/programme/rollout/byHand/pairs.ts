import { crewsTogether, setDrawn } from '../crewsTogether.ts';
import { crewTripsOf } from '../crewTrips.ts';
import { retiming } from '../makeReady.ts';
import type { Crew, RolloutPlan, RolloutProblem } from '../problem.ts';
import type { Retiming } from '../retiming.ts';
import { placeOf } from '../somePairs.ts';

/** A leg by its nodes and by who travels. */
export interface TravelPair {
  readonly travel: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The legs that a plan and what lies next to it are timed with: between stops that follow each other, or would if the one between were taken out,
 * to and from every stop, and from the last stop of a trip to the first of the crew's next.
 *
 * @param problem - the rollout [count]
 * @param plan - the plan
 * @returns legs by travel and nodes, each once, sorted [index]
 * @law the plan is timed by these alone as by all legs
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function pairsOfPlan(problem: RolloutProblem, plan: RolloutPlan): readonly TravelPair[] {
  const found = new Pairs(problem);
  eachCrew(problem, plan, (crew, own) => {
    found.add(crew.travel, crew.base, storeNode(problem, crew));
    for (const [at, { stops }] of own.entries()) {
      const next = own[at + 1]?.stops ?? [];
      for (const [place, job] of stops.entries()) {
        found.toAndFrom(crew, job);
        for (const other of stops.slice(place + 1, place + 3))
          found.add(crew.travel, node(problem, job), node(problem, other));
      }
      if (stops.length > 0 && next.length > 0)
        found.add(crew.travel, node(problem, stops.at(-1)!), node(problem, next[0]!));
    }
  });
  return found.sorted();
}

/**
 * The legs with which a site can be put anywhere in a plan: from and to every stop, store and base, by whoever goes there.
 *
 * @param problem - the rollout [count]
 * @param job - which site [index]
 * @param plan - the plan
 * @returns legs by travel and nodes, each once, sorted [index]; none where there is no such site
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function pairsOfSite(problem: RolloutProblem, job: number, plan: RolloutPlan): readonly TravelPair[] {
  if (problem.jobs[job] === undefined) return [];
  const found = new Pairs(problem);
  const site = node(problem, job);
  eachCrew(problem, plan, (crew, own) => {
    found.add(crew.travel, crew.base, storeNode(problem, crew));
    found.toAndFrom(crew, job);
    for (const other of own.flatMap(({ stops }) => stops)) {
      found.add(crew.travel, node(problem, other), site);
      found.add(crew.travel, site, node(problem, other));
    }
  });
  return found.sorted();
}

/**
 * The legs that are to be asked for before a plan can be timed for certain.
 *
 * @param problem - the rollout, or the same made ready; with legs of some pairs [count]
 * @param plan - the plan
 * @returns legs by travel and nodes, each once, sorted [index]; none where all that timing looks at is known
 * @law a rollout with all its legs lacks none
 * @definition ours: docs/methods/rollout.md, By hand
 */
export function missingPairs(problem: RolloutProblem | Retiming, plan: RolloutPlan): readonly TravelPair[] {
  const ready = 'tripTimes' in problem ? problem : retiming(problem);
  setDrawn(ready, null);
  const tripsOf = ready.problem.crews.map((_, crew) => crewTripsOf(plan.trips[crew] ?? []));
  crewsTogether(ready, [...tripsOf.keys()], tripsOf);
  const met = unknownPairs(ready);
  if (met.length === 0) return met;
  const found = new Pairs(ready.problem);
  for (const { travel, from, to } of [...met, ...pairsOfPlan(ready.problem, plan)])
    if (!isKnown(ready.problem, travel, from, to)) found.add(travel, from, to);
  return found.sorted();
}

/** Legs that the timing looked at last and did not find. */
export function unknownPairs({ problem, unknown }: Retiming): readonly TravelPair[] {
  const found = new Pairs(problem);
  for (let at = 0; at < unknown.length; at += 3) found.add(unknown[at]!, unknown[at + 1]!, unknown[at + 2]!);
  return found.sorted();
}

/** Is it known how a leg is gone, or that it cannot be? */
function isKnown(problem: RolloutProblem, travel: number, from: number, to: number): boolean {
  const { nodes, pairs } = problem.travels[travel]!;
  return pairs === undefined || placeOf(pairs.keys, from * nodes + to) >= 0;
}

function eachCrew(
  { crews }: RolloutProblem,
  { trips }: RolloutPlan,
  tell: (crew: Crew, own: RolloutPlan['trips'][number]) => void,
): void {
  for (const [at, crew] of crews.entries()) tell(crew, trips[at] ?? []);
}

function node({ placeIds }: RolloutProblem, job: number): number {
  return placeIds.length + job;
}

function storeNode({ stores }: RolloutProblem, { store }: Crew): number {
  return stores[store]!.node;
}

/** Pairs, each once. A node and itself are no pair: nothing is gone. */
class Pairs {
  private readonly problem: RolloutProblem;
  private readonly keysOf: readonly Set<number>[];

  constructor(problem: RolloutProblem) {
    this.problem = problem;
    this.keysOf = problem.travels.map(() => new Set());
  }

  add(travel: number, from: number, to: number): void {
    if (from !== to) this.keysOf[travel]!.add(from * this.problem.travels[travel]!.nodes + to);
  }

  /** From where a crew loads to a site, and from there home. */
  toAndFrom(crew: Crew, job: number): void {
    const site = node(this.problem, job);
    this.add(crew.travel, storeNode(this.problem, crew), site);
    this.add(crew.travel, site, crew.base);
  }

  sorted(): readonly TravelPair[] {
    return this.keysOf.flatMap((keys, travel) => {
      const { nodes } = this.problem.travels[travel]!;
      const list = [...keys].sort((a, b) => a - b);
      return list.map((key) => ({ travel, from: Math.floor(key / nodes), to: key % nodes }));
    });
  }
}
