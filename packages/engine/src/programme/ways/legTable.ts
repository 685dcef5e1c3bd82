import type { LegTable } from '../../kernel/index.ts';
import { square_count } from './constants.ts';
import { type Arcs, FastestTo } from './fastestTo.ts';
import type { ReadyParty } from './readyParty.ts';
import { inTable_h } from './riverDays.ts';
import { type Ends, endsOf, type Hanging } from './stopEnds.ts';
import type { ReadyWays, WayStop } from './waysFacts.ts';

/** What the tables of one party are made from, whatever is closed. */
export class LegTables {
  private readonly fastest: FastestTo;
  private readonly nodeOfStop: Int32Array;
  private readonly areaOfWay: Int16Array;
  private readonly ends: readonly Ends[];
  /** Hours of the legs found so far, without what is waited at landings. */
  private readonly straight_h: Float32Array;
  /** Kept from table to table: it is as large as one. */
  private second: LegTable | null = null;

  constructor(
    private readonly ready: ReadyWays,
    arcs: Arcs,
    private readonly party: ReadyParty,
    stops: readonly WayStop[],
  ) {
    this.fastest = new FastestTo(ready, arcs, party);
    this.nodeOfStop = Int32Array.from(stops, ({ place }) => ready.nodeOf.get(place) ?? -1);
    this.areaOfWay = areasOfWays(ready);
    this.ends = endsOf(stops, ready, arcs, party);
    this.straight_h = new Float32Array(stops.length ** 2);
  }

  /** The best legs between all stops, where hours are multiplied so (Infinity: closed). */
  under(slower: Float64Array): LegTable {
    const table = this.empty();
    const shut = slower.slice();
    for (const ends of this.ends) {
      for (const at of ends.shut_positions) shut[at] = Infinity;
      this.fill(table, ends, shut);
      for (const at of ends.shut_positions) shut[at] = slower[at]!;
    }
    // Where nothing lets the load through, the fastest way all the same: its limit says what passes.
    const tight = this.ends.filter((ends) => ends.shut_positions.length > 0 && this.isOpen(table, ends));
    if (tight.length === 0) return turned(table, this.nodeOfStop.length);
    this.second = this.second === null ? this.empty() : this.emptied(this.second);
    const { second } = this;
    for (const ends of tight) this.fill(second, ends, slower);
    this.complete(table, second);
    return turned(table, this.nodeOfStop.length);
  }

  private empty(): LegTable {
    const { party } = this;
    const nodes = this.nodeOfStop.length;
    const hours = () => new Float32Array(nodes * nodes);
    const table: LegTable = {
      ...{ landBefore_h: hours(), river_h: hours(), landAfter_h: hours() },
      ...{ cost: hours(), fuel_L: hours(), limitOf: new Uint16Array(nodes * nodes), limits: party.limits.limits },
      areaOf: new Uint8Array(nodes * nodes),
    };
    return this.emptied(table);
  }

  /** No way but from each place to itself. */
  private emptied(table: LegTable): LegTable {
    const { nodeOfStop } = this;
    const nodes = nodeOfStop.length;
    this.straight_h.fill(Infinity);
    for (const name of filled) table[name].fill(name === 'landBefore_h' ? Infinity : 0);
    for (let from = 0; from < nodes; from++)
      for (let to = 0; to < nodes; to++)
        if (from === to || (nodeOfStop[from] === nodeOfStop[to] && nodeOfStop[from]! >= 0))
          table.landBefore_h[from * nodes + to] = 0;
    return table;
  }

  /** Is there a stop from which one of these was not reached? */
  private isOpen({ landBefore_h }: LegTable, { hanging }: Ends): boolean {
    const nodes = this.nodeOfStop.length;
    for (const { stops_positions } of hanging)
      for (const to of stops_positions)
        for (let from = 0; from < nodes; from++) if (landBefore_h[to * nodes + from] === Infinity) return true;
    return false;
  }

  /** Takes from the second what the first has no way for. */
  private complete(table: LegTable, second: LegTable): void {
    table.landBefore_h.forEach((hours_h, at) => {
      if (hours_h !== Infinity || second.landBefore_h[at] === Infinity) return;
      for (const name of filled) table[name][at] = second[name][at]!;
    });
  }

  private fill(table: LegTable, ends: Ends, slower: Float64Array): void {
    const { end_position: end, slot_position: slot, hanging } = ends;
    const open = hanging.filter(
      ({ lastWay_position, isLastBack }) => this.last_h(lastWay_position, slot, isLastBack, slower) < Infinity,
    );
    if (open.length === 0) return;
    this.fastest.search(end, slot, slower, this.areaOfWay);
    for (const one of open)
      this.fillStops(table, ends, one, this.last_h(one.lastWay_position, slot, one.isLastBack, slower));
  }

  private last_h(lastWay_position: number, slot: number, isBack: boolean, slower: Float64Array): number {
    if (lastWay_position < 0) return 0;
    const { carriers, there_h, back_h } = this.party;
    const at = lastWay_position * carriers.length + slot;
    const own_h = (isBack ? back_h : there_h)[at]!;
    return own_h === Infinity ? Infinity : own_h * slower[at]!;
  }

  /** Rows of what is reached, one leg beside the next: `turned` afterwards. */
  private fillStops(
    table: LegTable,
    { end_position: end, slot_position: slot }: Ends,
    hanging: Hanging,
    last_h: number,
  ): void {
    const { fastest, nodeOfStop, party, straight_h } = this;
    const { lastWay_position, stops_positions } = hanging;
    const last =
      lastWay_position < 0 ? noStretch : stretchOf(party, lastWay_position, slot, this.areaOfWay[lastWay_position]!);
    const areas = this.ready.areaIds.length;
    const nodes = nodeOfStop.length;
    const to = stops_positions[0]!;
    const { landBefore_h, river_h, landAfter_h, cost, fuel_L, limitOf, areaOf } = table;
    for (let from = 0; from < nodes; from++) {
      const node = nodeOfStop[from]!;
      const state = node < 0 ? -1 : fastest.best_positions[node]!;
      if (state < 0 || nodeOfStop[to] === node) continue;
      const byRiver = fastest.byRiver_count[state] === 1;
      const before = fastest.before_h[state]! + (last.isRiver || byRiver ? 0 : last_h);
      const river = last.isRiver ? fastest.riverWith_h(state, last_h, end) : fastest.river_h[state]!;
      const after = fastest.after_h[state]! + (byRiver && !last.isRiver ? last_h : 0);
      const at = to * nodes + from;
      const straight = fastest.hours_h[state]! + last_h;
      if (straight_h[at]! <= straight) continue;
      straight_h[at] = straight;
      landBefore_h[at] = before;
      river_h[at] = inTable_h(river);
      landAfter_h[at] = after;
      cost[at] = fastest.cost_amount[state]! + last_h * last.cost_per_h;
      fuel_L[at] = fastest.fuel_L[state]! + last.fuel_L;
      limitOf[at] = party.limits.both(fastest.limitOf_positions[state]!, last.limit);
      areaOf[at] = mainArea(fastest.inArea_h, state * areas, areas, last.area, last_h) + 1;
    }
    // Stops of one place are reached alike.
    for (const other of stops_positions.slice(1))
      for (const name of filled) table[name].copyWithin(other * nodes, to * nodes, (to + 1) * nodes);
  }
}

/** The stretch from where a search ended to the stop. */
interface LastStretch {
  readonly isRiver: boolean;
  readonly cost_per_h: number;
  readonly fuel_L: number;
  readonly limit: number;
  readonly area: number;
}

const noStretch: LastStretch = { isRiver: false, cost_per_h: 0, fuel_L: 0, limit: 0, area: -1 };

function stretchOf(party: ReadyParty, way: number, slot: number, area: number): LastStretch {
  const { mode, cost_amount_per_h } = party.carriers[slot]!;
  const at = way * party.carriers.length + slot;
  return {
    ...{ isRiver: mode === 'river', cost_per_h: cost_amount_per_h, area },
    fuel_L: party.fuel_L[at]!,
    limit: party.limitOf_positions[at]!,
  };
}

/** Rows and columns change places, a square of the table at a time, as far apart in memory as they are. */
function turned(table: LegTable, nodes: number): LegTable {
  for (const name of filled) {
    const column = table[name];
    for (let top = 0; top < nodes; top += square_count)
      for (let left = top; left < nodes; left += square_count)
        for (let row = top; row < Math.min(nodes, top + square_count); row++)
          for (let at = Math.max(left, row + 1); at < Math.min(nodes, left + square_count); at++) {
            const one = column[row * nodes + at]!;
            column[row * nodes + at] = column[at * nodes + row]!;
            column[at * nodes + row] = one;
          }
  }
  return table;
}

const filled = ['landBefore_h', 'river_h', 'landAfter_h', 'cost', 'fuel_L', 'limitOf', 'areaOf'] as const;

/** The area of each way; -1: none. */
export function areasOfWays({ ways, areaIds }: ReadyWays): Int16Array {
  const byId = new Map(areaIds.map((id, index) => [id, index]));
  return Int16Array.from(ways, ({ way }) => byId.get(way.weatherArea ?? '') ?? -1);
}

/** The area in which most hours are spent; -1: none. */
function mainArea(inArea_h: Float64Array, from: number, areas: number, lastArea: number, last_h: number): number {
  let main = -1;
  let most_h = 0;
  for (let area = 0; area < areas; area++) {
    const own_h = inArea_h[from + area]! + (area === lastArea ? last_h : 0);
    if (own_h > most_h) [main, most_h] = [area, own_h];
  }
  return main;
}

/** Do two tables of one party say the same of every leg? */
export function areSame(one: LegTable, other: LegTable): boolean {
  return filled.every((name) => {
    const [a, b] = [one[name], other[name]];
    for (let at = 0; at < a.length; at++) if (a[at] !== b[at]) return false;
    return true;
  });
}
