import type { LegLimit } from '../../kernel/index.ts';
import { type Arcs, arcsOf, FastestTo, slowerIn } from './fastestTo.ts';
import { areasOfWays } from './legTable.ts';
import { tighterOf } from './limitTable.ts';
import { type ReadyParty, readyParty } from './readyParty.ts';
import { shutTo } from './stopEnds.ts';
import type { ExplainedStretch, ExplainedWay, NoWay, Party, ReadyWays, WayState, WayStop } from './waysFacts.ts';

/** From where to where, by whom, and while what holds. */
export interface WayQuestion {
  readonly from: WayStop;
  readonly to: WayStop;
  readonly party: Party;
  /** One of the states that `travelBetween` found. */
  readonly state: WayState;
}

/**
 * By which way does a party go from one stop to another, stretch by stretch, and what bounds what it may take? The way that the tables of `travelBetween`
 * rest on.
 *
 * @param ready - the network
 * @param question - stops with what must come there [kg, L, m], party [count], state
 * @returns stretches with hours [h], fuel [L] and limits [kg, L, m], or why there is none
 * @law its hours are those of the table
 * @definition ours: docs/methods/rollout.md, ways
 */
export function explainedWay(ready: ReadyWays, question: WayQuestion): ExplainedWay | NoWay {
  const { from, to, party, state } = question;
  const [start, end] = [ready.nodeOf.get(from.place), ready.nodeOf.get(to.place)];
  if (start === undefined || end === undefined) return { stretches: null, reason: 'unknownStop', closedBy: [] };
  const arcs = arcsOf(ready);
  const goes = readyParty(ready, party);
  const fastest = new FastestTo(ready, arcs, goes);
  const areaOf = areasOfWays(ready);
  const slower = slowerIn(ready, goes, state);
  const shut = slower.slice();
  for (const at of shutTo(to.load, goes)) shut[at] = Number.POSITIVE_INFINITY;
  for (const hours of [shut, slower]) {
    fastest.search(end, -1, hours, areaOf);
    const first = fastest.best_positions[start]!;
    if (first >= 0) return wayFrom(first, { fastest, ready, goes, arcs, slower, state, carriesLoad: hours === shut });
  }
  fastest.search(end, -1, new Float64Array(slower.length).fill(1), areaOf);
  const first = fastest.best_positions[start]!;
  if (first < 0) return { stretches: null, reason: 'none', closedBy: [] };
  const closed = new Set<number>();
  for (let at = first; fastest.next_positions[at]! >= 0; at = fastest.next_positions[at]!)
    closed.add(arcs.way_positions[fastest.arc_positions[at]!]!);
  return { stretches: null, reason: 'closed', closedBy: closing(ready, state, closed) };
}

/** What of a state closes one of these ways. */
function closing({ causes }: ReadyWays, state: WayState, ways: ReadonlySet<number>): readonly string[] {
  return state.causes_positions.flatMap((position) => {
    const { causeId, slower_factor, ways_positions } = causes[position]!;
    return slower_factor === Number.POSITIVE_INFINITY && ways_positions.some((way) => ways.has(way)) ? [causeId] : [];
  });
}

interface Walk {
  readonly fastest: FastestTo;
  readonly ready: ReadyWays;
  readonly goes: ReadyParty;
  readonly arcs: Arcs;
  readonly slower: Float64Array;
  readonly state: WayState;
  readonly carriesLoad: boolean;
}

function wayFrom(first: number, walk: Walk): ExplainedWay {
  const { fastest, goes, carriesLoad } = walk;
  const stretches: ExplainedStretch[] = [];
  let before = -1;
  for (let at = first; fastest.next_positions[at]! >= 0; at = fastest.next_positions[at]!) {
    stretches.push(stretchAt(at, before, walk));
    before = at;
  }
  const limit = stretches.reduce((all, one) => tighterOf(all, one.limit), goes.limits.limits[0]!);
  return {
    stretches,
    landBefore_h: fastest.before_h[first]!,
    river_h: fastest.river_h[first]!,
    landAfter_h: fastest.after_h[first]!,
    cost_amount: fastest.cost_amount[first]!,
    fuel_L: fastest.fuel_L[first]!,
    limit,
    boundBy: {
      kg: bounding(stretches, (one) => one.kg, limit.kg),
      litres: bounding(stretches, (one) => one.litres, limit.litres),
      longest: bounding(stretches, (one) => one.longest_m, limit.longest_m),
      porters: limit.porters_count > 0 ? bounding(stretches, (one) => one.porters_count, limit.porters_count) : null,
    },
    carriesLoad,
  };
}

/** The first way with the whole way's limit; null where there is none. */
function bounding(
  stretches: readonly ExplainedStretch[],
  of: (limit: LegLimit) => number,
  least: number,
): string | null {
  if (least === Number.POSITIVE_INFINITY) return null;
  return stretches.find(({ limit }) => of(limit) === least)?.wayId ?? null;
}

function stretchAt(at: number, before: number, { fastest, ready, goes, arcs, slower, state }: Walk): ExplainedStretch {
  const slots = goes.carriers.length;
  const slot = at % slots;
  const arc = fastest.arc_positions[at]!;
  const position = arcs.way_positions[arc]!;
  const { way } = ready.ways[position]!;
  const isBack = arcs.isBack_count[arc] === 1;
  const column = position * slots + slot;
  const isChange = before >= 0 && before % slots !== slot;
  const { carrierId } = goes.carriers[slot]!;
  return {
    ...{ wayId: way.wayId, name: way.name, mode: way.mode, carrierId },
    from: isBack ? way.to : way.from,
    to: isBack ? way.from : way.to,
    changeOver_h: isChange ? ready.changeOver_h[Math.floor(at / slots)]! : 0,
    hours_h: (isBack ? goes.back_h : goes.there_h)[column]! * slower[column]!,
    length_km: way.length_km,
    maySleep: ready.maySleep_count[Math.floor(at / slots)] === 1,
    slower_factor: slower[column]!,
    slowerBy: state.causes_positions.flatMap((cause) => {
      const { causeId, ways_positions, slower_factor } = ready.causes[cause]!;
      return slower_factor > 1 && ways_positions.includes(position) ? [causeId] : [];
    }),
    fuel_L: goes.fuel_L[column]!,
    limit: goes.limits.limits[goes.limitOf_positions[column]!]!,
  };
}
