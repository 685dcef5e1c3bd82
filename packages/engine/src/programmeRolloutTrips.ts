import type { Danger } from './kernel/index.ts';
import type { KitLine } from './programme/kit/index.ts';
import type { Outcome, RolloutProblem } from './programme/rollout/index.ts';
import type { ExplainedWay } from './programme/ways/index.ts';
import { piecesOfKit, type ReadyKit, stowedForStops } from './programmeKit.ts';
import { rolloutWay } from './programmeRollout.ts';
import type { ReadyRollout } from './programmeRolloutFacts.ts';

/** One leg of a trip: from where to where, when, by which way. */
export interface TripLeg {
  /** Ids of places and sites. */
  readonly from: string;
  readonly to: string;
  /** When it is begun and ended, as a plan tells times; null: not told apart from the next leg. */
  readonly leaves: number | null;
  readonly arrives: number | null;
  /** Null: none is open in the periods it could be gone in. */
  readonly way: ExplainedWay | null;
}

/**
 * By which ways does a trip go: from the base to its store, from stop to stop, and home?
 *
 * @param ready - the rollout, ready
 * @param outcome - what came of the plan
 * @param crew - the crew's place in the problem
 * @param trip - the trip's place among its trips
 * @returns legs in their order, each with its way, stretch by stretch [h, kg, L]
 * @definition ours: docs/methods/rollout.md, a leg
 */
export function tripLegs(ready: ReadyRollout, outcome: Outcome, crew: number, trip: number): readonly TripLeg[] {
  const { problem, stops } = ready;
  const { base, store } = problem.crews[crew]!;
  const timed = outcome.trips[crew]![trip]!;
  if (timed.stops.length === 0) return [];
  const storeNode = problem.stores[store]!.node;
  const halts = [
    { node: base, arrives: null as number | null, ends: timed.leaves as number | null },
    ...(storeNode === base ? [] : [{ node: storeNode, arrives: null, ends: null }]),
    ...timed.stops.map(({ job, arrives, ends }) => ({ node: problem.placeIds.length + job, arrives, ends })),
    { node: base, arrives: timed.back, ends: null },
  ];
  return halts.slice(1).map((to, at): TripLeg => {
    const from = halts[at]!;
    const begins = from.ends ?? timed.leaves;
    const arrives = to.arrives ?? halts[at + 2]?.arrives ?? timed.back;
    return {
      ...{ from: stops[from.node]!.stopId, to: stops[to.node]!.stopId, leaves: from.ends, arrives: to.arrives },
      way: wayWithin(ready, { crew, from: from.node, to: to.node }, begins, arrives),
    };
  });
}

/** The way of the first period between two times in which there is one that is done by then. */
function wayWithin(
  ready: ReadyRollout,
  leg: { readonly crew: number; readonly from: number; readonly to: number },
  begins: number,
  arrives: number,
): ExplainedWay | null {
  const { problem } = ready;
  let last: ExplainedWay | null = null;
  for (let period = periodAt(problem, begins); period < problem.periods.length; period++) {
    const from = problem.periods[period]!.from;
    if (from >= arrives) break;
    const way = rolloutWay(ready, { ...leg, period });
    if (way.stretches === null) continue;
    last = way;
    const days = (way.landBefore_h + way.river_h + way.landAfter_h) / problem.crews[leg.crew]!.work_h_per_day;
    if (Math.max(from, begins) + days <= arrives + slack_days) return way;
  }
  return last;
}

/** Legs are kept in 32 bits. */
const slack_days = 1e-4;

function periodAt({ periods }: RolloutProblem, time: number): number {
  const later = periods.findIndex(({ from }) => from > Math.floor(time));
  return later < 0 ? periods.length - 1 : Math.max(0, later - 1);
}

/** Pieces of one part for one stop, in the order they are put aboard. */
export interface AboardLine {
  readonly siteId: string;
  readonly partId: string;
  readonly name: string;
  /** Pieces; of what is sold by the metre, the kilogram or the litre, each holds `each_count`. */
  readonly count: number;
  readonly each_count: number;
  /** Of all of them; null: not known. */
  readonly mass_kg: number | null;
  /** Chlorine and fuel never go in one load. */
  readonly danger: Danger | null;
}

/**
 * What is put aboard for a trip, in which order?
 *
 * @param problem - the rollout as numbers
 * @param stops - jobs in the order they are served
 * @param linesOf - the kit of each site, by its id
 * @param kit - the programme, ready for kits
 * @returns what is put in, the first first [count, kg]
 * @law every piece of every stop is put in once
 * @definition ours: docs/decisions/0249-order-of-loads.md
 */
export function aboardOfTrip(
  problem: RolloutProblem,
  stops: readonly number[],
  linesOf: ReadonlyMap<string, readonly KitLine[]>,
  kit: ReadyKit,
): readonly AboardLine[] {
  const each = stops.map((job) => {
    const { siteId } = problem.jobs[job]!;
    return { siteId, pieces: piecesOfKit({ lines: linesOf.get(siteId) ?? [] }, kit) };
  });
  const known = new Map(
    each.flatMap(({ pieces }) => pieces.map((one) => [`${one.partId} ${one.each_count}`, one] as const)),
  );
  return stowedForStops(each).map(({ stopId, partId, name, each_count, count }) => {
    const { mass_kg, danger } = known.get(`${partId} ${each_count}`) ?? { mass_kg: null, danger: null };
    return {
      ...{ siteId: stopId, partId, name, each_count, count, danger },
      mass_kg: mass_kg === null ? null : mass_kg * count,
    };
  });
}
