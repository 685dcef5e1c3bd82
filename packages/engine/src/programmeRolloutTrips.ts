import type { Danger, ProgrammeFacts } from './kernel/index.ts';
import type { KitLine } from './programme/kit/index.ts';
import { pieceLongest_m } from './programme/loads/index.ts';
import { type Outcome, type RolloutProblem, type TimedHaul, workDays } from './programme/rollout/index.ts';
import { type ExplainedWay, explainedWay, type NoWay, type WayStop } from './programme/ways/index.ts';
import { piecesOfKit, type ReadyKit, stowedForStops } from './programmeKit.ts';
import { rolloutWay } from './programmeRollout.ts';
import type { ReadyRollout } from './programmeRolloutFacts.ts';
import { type StretchTimes, stretchTimes } from './programmeRolloutLegTimes.ts';
import type { PastTrip } from './programmeRolloutPast.ts';

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
  /** When each stretch of the way is gone; none where that is not known. */
  readonly times: readonly StretchTimes[];
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
  const { work_h_per_day, works } = problem.crews[crew]!;
  const walker = { work_h_per_day, calendar: workDays(works, problem.horizon_days) };
  let before = timed.leaves;
  return halts.slice(1).map((to, at): TripLeg => {
    const from = halts[at]!;
    const mayBegin = from.ends ?? timed.leaves;
    const arrives = to.arrives ?? halts[at + 2]?.arrives ?? timed.back;
    const found = wayWithin(ready, { crew, from: from.node, to: to.node }, mayBegin, arrives);
    const times =
      found === null ? [] : stretchTimes(problem, walker, found.way, Math.max(found.opens, from.ends ?? before));
    before = times.at(-1)?.ends ?? before;
    const leaves = from.ends === null ? null : (times[0]?.begins ?? from.ends);
    return {
      ...{ from: stops[from.node]!.stopId, to: stops[to.node]!.stopId, leaves, arrives: to.arrives },
      ...{ way: found?.way ?? null, times },
    };
  });
}

/**
 * By which ways does a trip go that has left? As the ways are on the first day planned: on which days each leg is gone is not known.
 *
 * @param ready - the rollout, ready
 * @param facts - the programme
 * @param trip - the trip
 * @returns legs in their order, each with its way [h, kg, L]; none where its crew is not planned with
 * @definition ours: docs/methods/rollout.md, a leg
 */
export function goneTripLegs(
  ready: ReadyRollout,
  { rollout }: ProgrammeFacts,
  { crewId, stops }: PastTrip,
): readonly TripLeg[] {
  const crew = rollout.crews.find((one) => one.crewId === crewId);
  const planned = ready.problem.crews.find((one) => one.crewId === crewId);
  const state = ready.states[0];
  if (crew === undefined || planned === undefined || state === undefined || stops.length === 0) return [];
  const party = ready.parties[planned.travel]!;
  const placeOf = new Map(rollout.work.map(({ siteId, place }) => [siteId, place]));
  const at = (stopId: string): WayStop => ({ stopId, place: placeOf.get(stopId) ?? stopId, load: null });
  const ids = [crew.base, ...(crew.store === crew.base ? [] : [crew.store]), ...stops.map(({ siteId }) => siteId)];
  const halts = [...ids, crew.base].map(at);
  return halts.slice(1).map((to, leg): TripLeg => {
    const from = halts[leg]!;
    const way = explainedWay(ready.ways, { from, to, party, state });
    return {
      ...{ from: from.stopId, to: to.stopId, leaves: null, arrives: null },
      ...{ way: way.stretches === null ? null : way, times: [] },
    };
  });
}

/**
 * By which ways does a haul go: each of its runs there and back, by the ways of the period in which it sets out?
 *
 * @param ready - the rollout, ready
 * @param haul - one of those of a plan that was timed on it
 * @returns legs in the order they are gone, each with its way, stretch by stretch [h, kg, L]; when each stretch is gone is not known
 * @law a run that does not come back within the days looked at has no leg back
 * @definition ours: docs/methods/rollout.md, hauls
 */
export function haulRunLegs({ problem, filling, stops }: ReadyRollout, haul: TimedHaul): readonly TripLeg[] {
  const ways = filling[haul.store] ?? null;
  const behind = problem.stores[haul.store]!.filledBy?.store;
  if (ways === null || behind === undefined) return [];
  const [store, from] = [haul.store, behind].map((at) => stops[problem.stores[at]!.node]!.stopId);
  const leg = (
    ends: { from: string; to: string },
    own: readonly (ExplainedWay | NoWay)[],
    leaves: number,
    arrives: number,
  ) => {
    const way = own[periodAt(problem, leaves)]!;
    return { ...ends, leaves, arrives, way: way.stretches === null ? null : way, times: [] };
  };
  return haul.runs.flatMap(({ leaves, arrives, returns, back }): readonly TripLeg[] => [
    leg({ from: from!, to: store! }, ways.there, leaves, arrives),
    ...(back > problem.horizon_days ? [] : [leg({ from: store!, to: from! }, ways.back, returns, back)]),
  ]);
}

/** The way of the first period between two times in which there is one that is done by then, and when the period begins. */
function wayWithin(
  ready: ReadyRollout,
  leg: { readonly crew: number; readonly from: number; readonly to: number },
  begins: number,
  arrives: number,
): { readonly way: ExplainedWay; readonly opens: number } | null {
  const { problem } = ready;
  let last: { readonly way: ExplainedWay; readonly opens: number } | null = null;
  for (let period = periodAt(problem, begins); period < problem.periods.length; period++) {
    const opens = problem.periods[period]!.from;
    if (opens >= arrives) break;
    const way = rolloutWay(ready, { ...leg, period });
    if (way.stretches === null) continue;
    last = { way, opens };
    const days = (way.landBefore_h + way.river_h + way.landAfter_h) / problem.crews[leg.crew]!.work_h_per_day;
    if (Math.max(opens, begins) + days <= arrives + slack_days) return last;
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

/** The same, with what one piece is. */
export interface AboardPiece extends AboardLine {
  /** Of one piece; null: not known. */
  readonly each_kg: number | null;
  /** The longest side of one piece [m]; null: not known. */
  readonly longest_m: number | null;
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
  const siteIds = stops.map((job) => problem.jobs[job]!.siteId);
  return aboardForSites(siteIds, linesOf, kit).map(({ each_kg: _each, longest_m: _longest, ...line }) => line);
}

/**
 * What is put aboard for sites that are served one after the other, in which order?
 *
 * @param siteIds - sites in the order they are served
 * @param linesOf - the kit of each site, by its id
 * @param kit - the programme, ready for kits
 * @returns what is put in, the first first, with what one piece is [count, kg, m]
 * @law every piece of every stop is put in once
 * @definition ours: docs/decisions/0249-order-of-loads.md
 */
export function aboardForSites(
  siteIds: readonly string[],
  linesOf: ReadonlyMap<string, readonly KitLine[]>,
  kit: ReadyKit,
): readonly AboardPiece[] {
  const each = siteIds.map((siteId) => ({ siteId, pieces: piecesOfKit({ lines: linesOf.get(siteId) ?? [] }, kit) }));
  const known = new Map(
    each.flatMap(({ pieces }) => pieces.map((one) => [`${one.partId} ${one.each_count}`, one] as const)),
  );
  return stowedForStops(each).map(({ stopId, partId, name, each_count, count }) => {
    const piece = known.get(`${partId} ${each_count}`) ?? null;
    const each_kg = piece?.mass_kg ?? null;
    return {
      ...{ siteId: stopId, partId, name, each_count, count, danger: piece?.danger ?? null },
      ...{ mass_kg: each_kg === null ? null : each_kg * count, each_kg },
      longest_m: piece === null ? null : pieceLongest_m(piece),
    };
  });
}
