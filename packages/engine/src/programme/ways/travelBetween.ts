import { engineProblem, type LegTable, type Problem } from '../../kernel/index.ts';
import { legBytes_count, legMemory_count, riverSlack_h } from './constants.ts';
import { explainedWay } from './explainedWay.ts';
import { arcsOf, slowerIn } from './fastestTo.ts';
import { areSame, LegTables } from './legTable.ts';
import { type ReadyParty, readyParty } from './readyParty.ts';
import { fewerStates, type PeriodsFound, statePeriods } from './statePeriods.ts';
import type { ExplainedWay, NoWay, Party, ReadyWays, SingleLeg, WayState, WayStop, WaysFound } from './waysFacts.ts';

/**
 * Which is the best way between any two stops, for each party, in each period? The fastest by road, river and on foot with the hours that changing
 * carriers takes, on ways that let through what must come to the stop; where none does, the fastest of all, with what passes.
 *
 * @param ready - the network
 * @param stops - the nodes of the tables, in their order: where each hangs, and its own load [kg, L, m]
 * @param parties - what travels: carriers, and porters [count]
 * @param single - legs of parties that go nowhere else [kg, L, m, count]: a period ends where one of these changes too
 * @returns periods [day], what holds in each, for each party its tables [h, L, kg, m, currency], and the single legs by period
 * @problem ways.carrier_unknown - when a party goes by a carrier that is not there
 * @problem ways.carrier_no_limit - when nobody stated what a boat or truck may carry: nothing is put in it
 * @problem ways.no_hours - when neither hours nor length and speed of a way are known
 * @problem ways.longer_than_day - when a way by river takes longer than boats may be out in a day
 * @problem ways.walking_assumed - when nobody stated how fast people walk
 * @problem ways.fuel_unknown - when nobody stated what a boat or truck burns
 * @problem ways.periods_merged - when periods were put together, so that ways are told worse than they are on some days
 * @problem ways.stop_unknown - when a stop hangs on no place that is there
 * @problem ways.closed_always - when a way can be gone on no day of those looked at
 * @problem ways.in_pieces - when the network is in several pieces
 * @law a closure makes no way shorter; the order of ways changes no hours
 * @definition ours: docs/methods/rollout.md, ways
 */
export function travelBetween(
  ready: ReadyWays,
  stops: readonly WayStop[],
  parties: readonly Party[],
  single: readonly SingleLeg[] = [],
): WaysFound {
  const problems: Problem[] = stops
    .filter(({ place }) => !ready.nodeOf.has(place))
    .map(({ stopId, place }) => engineProblem('ways.stop_unknown', {}, { stop: stopId, place }));
  const arcs = arcsOf(ready);
  const readied = parties.map((party) => readyParty(ready, party));
  problems.push(...readied.flatMap((party) => party.problems));
  const { causes, asked } = ready;
  const all = statePeriods(causes, asked.horizon_days);
  const room_count = Math.floor(legMemory_count / (legBytes_count * stops.length ** 2 * Math.max(1, parties.length)));
  const found = fewerStates(all, causes, asked.horizon_days, room_count);
  problems.push(...periodProblems(found), ...alwaysClosed(ready, found, readied));
  problems.push(...longWays(ready, found, readied), ...pieces(ready, stops));
  const tablesBy = readied.map((party) => tablesOf(ready, new LegTables(ready, arcs, party, stops), party, found));
  const alone = singleLegs(ready, single, found);
  const isNew = (index: number) =>
    tablesBy.some((tables) => tables[index] !== tables[index - 1]) ||
    alone.some((legs) => JSON.stringify(legs[index]) !== JSON.stringify(legs[index - 1]));
  const kept = found.periods.filter((_, index) => index === 0 || isNew(index));
  const at = kept.map((period) => found.periods.indexOf(period));
  return {
    periods: kept.map(({ from }) => ({ from })),
    states: kept.map(({ state }) => state),
    travels: tablesBy.map((tables) => ({ nodes: stops.length, byPeriod: at.map((index) => tables[index]!) })),
    single: alone.map((legs) => at.map((index) => legs[index]!)),
    problems: eachOnce(problems),
  };
}

/** A table for each period; periods of one state, or of equal legs, share one. */
function tablesOf(
  ready: ReadyWays,
  tables: LegTables,
  party: ReadyParty,
  { periods }: PeriodsFound,
): readonly LegTable[] {
  const byState = new Map<WayState, LegTable>();
  const bySlower: { readonly slower: Float64Array; readonly table: LegTable }[] = [];
  for (const { state } of periods) {
    if (byState.has(state)) continue;
    const slower = slowerIn(ready, party, state);
    const known = bySlower.find((one) => one.slower.every((factor, at) => factor === slower[at]));
    const made = known?.table ?? tables.under(slower);
    const table = known?.table ?? bySlower.find((one) => areSame(one.table, made))?.table ?? made;
    if (known === undefined) bySlower.push({ slower, table });
    byState.set(state, table);
  }
  return periods.map(({ state }) => byState.get(state)!);
}

/** Single legs by period, each looked up once for a state. */
function singleLegs(
  ready: ReadyWays,
  single: readonly SingleLeg[],
  { periods }: PeriodsFound,
): readonly (readonly (ExplainedWay | NoWay)[])[] {
  return single.map((leg) => {
    const byState = new Map<WayState, ExplainedWay | NoWay>();
    return periods.map(({ state }) => {
      const found = byState.get(state) ?? explainedWay(ready, { ...leg, state });
      byState.set(state, found);
      return found;
    });
  });
}

function periodProblems({ periods, worse_days }: PeriodsFound): readonly Problem[] {
  if (worse_days === 0) return [];
  return [engineProblem('ways.periods_merged', {}, { periods: periods.length, days: worse_days })];
}

/** Ways that some party could go, and none can in any period. */
function alwaysClosed(ready: ReadyWays, { periods }: PeriodsFound, parties: readonly ReadyParty[]): readonly Problem[] {
  const states = [...new Set(periods.map(({ state }) => state))];
  const isGone = new Uint8Array(ready.ways.length);
  const isOpen = new Uint8Array(ready.ways.length);
  for (const party of parties) {
    const slots = party.carriers.length;
    for (const state of states) {
      const slower = slowerIn(ready, party, state);
      slower.forEach((factor, at) => {
        if (party.there_h[at] === Number.POSITIVE_INFINITY) return;
        const way = Math.floor(at / slots);
        isGone[way] = 1;
        if (factor < Number.POSITIVE_INFINITY) isOpen[way] = 1;
      });
    }
  }
  return ready.ways.flatMap(({ way }, index) =>
    isGone[index] === 1 && isOpen[index] === 0
      ? [engineProblem('ways.closed_always', { file: 'ways.csv' }, { way: way.wayId })]
      : [],
  );
}

/** Ways by river that take longer than boats may be out in a day, in some state, by the fastest boat of some party. */
function longWays(ready: ReadyWays, { periods }: PeriodsFound, parties: readonly ReadyParty[]): readonly Problem[] {
  const states = [...new Set(periods.map(({ state }) => state))];
  const longest = new Map<number, { readonly hours_h: number; readonly most_h: number }>();
  for (const party of parties) {
    const { carriers, there_h, back_h, riverDay_h: most_h } = party;
    for (const state of states) {
      const slower = slowerIn(ready, party, state);
      ready.ways.forEach(({ way: { mode } }, way) => {
        if (mode !== 'river') return;
        const hoursBy = [there_h, back_h].map((own_h) =>
          carriers.reduce((least, _, slot) => {
            const at = way * carriers.length + slot;
            return own_h[at] === Infinity || slower[at] === Infinity
              ? least
              : Math.min(least, own_h[at]! * slower[at]!);
          }, Infinity),
        );
        const hours_h = Math.max(...hoursBy.filter((hours) => hours < Infinity), 0);
        if (hours_h > most_h + riverSlack_h && hours_h > (longest.get(way)?.hours_h ?? 0))
          longest.set(way, { hours_h, most_h });
      });
    }
  }
  return [...longest].map(([at, { hours_h, most_h }]) => {
    const { wayId, from, to } = ready.ways[at]!.way;
    return engineProblem('ways.longer_than_day', { file: 'ways.csv' }, { way: wayId, from, to, hours_h, most_h });
  });
}

/** Pieces of the network that hold a stop, where there are several: whatever is closed, no way leads from one to the other. */
function pieces({ nodeIds, nodeOf, ways }: ReadyWays, stops: readonly WayStop[]): readonly Problem[] {
  const piece = Int32Array.from(nodeIds, (_, index) => index);
  const rootOf = (node: number): number => {
    let at = node;
    while (piece[at] !== at) at = piece[at] = piece[piece[at]!]!;
    return at;
  };
  for (const { from, to } of ways) piece[rootOf(from)] = rootOf(to);
  const members = new Map<number, Set<string>>();
  for (const { place } of stops) {
    const node = nodeOf.get(place);
    if (node === undefined) continue;
    const root = rootOf(node);
    members.set(root, (members.get(root) ?? new Set()).add(place));
  }
  const sorted = [...members.values()]
    .map((set) => [...set].sort())
    .sort((a, b) => b.length - a.length || (a[0]! < b[0]! ? -1 : 1));
  return sorted
    .slice(1)
    .map((apart) =>
      engineProblem(
        'ways.in_pieces',
        { file: 'ways.csv' },
        { places: apart, count: apart.length, pieces: sorted.length },
      ),
    );
}

function eachOnce(problems: readonly Problem[]): readonly Problem[] {
  return [...new Map(problems.map((one) => [JSON.stringify(one), one])).values()];
}
