import type { ReadyParty } from './readyParty.ts';
import { type RiverStretch, riverPart_h, withStretch } from './riverDays.ts';
import { StateHeap } from './stateHeap.ts';
import type { ReadyWays, WayState } from './waysFacts.ts';

/** The ways as they come to each node: arcs of the nodes one after another, from `start` of it. */
export interface Arcs {
  readonly start_positions: Int32Array;
  readonly from_positions: Int32Array;
  readonly way_positions: Int32Array;
  /** 1: against the way's own direction. */
  readonly isBack_count: Uint8Array;
}

/** Every way twice, there and back, by the node it comes to. */
export function arcsOf({ nodeIds, ways }: ReadyWays): Arcs {
  const start_positions = new Int32Array(nodeIds.length + 1);
  for (const { from, to } of ways) {
    start_positions[from + 1]!++;
    start_positions[to + 1]!++;
  }
  for (let node = 0; node < nodeIds.length; node++) start_positions[node + 1]! += start_positions[node]!;
  const next = start_positions.slice();
  const from_positions = new Int32Array(2 * ways.length);
  const way_positions = new Int32Array(2 * ways.length);
  const isBack_count = new Uint8Array(2 * ways.length);
  ways.forEach(({ from, to }, way) => {
    const there = next[to]!++;
    const back = next[from]!++;
    from_positions[there] = from;
    from_positions[back] = to;
    way_positions[there] = way;
    way_positions[back] = way;
    isBack_count[back] = 1;
  });
  return { start_positions, from_positions, way_positions, isBack_count };
}

/** What hours are multiplied by, by way x carriers of a party; Infinity: closed. */
export function slowerIn(
  { causes, ways }: ReadyWays,
  { carriers }: ReadyParty,
  { causes_positions }: WayState,
): Float64Array {
  const slower = new Float64Array(ways.length * carriers.length).fill(1);
  for (const position of causes_positions) {
    const { ways_positions, carrierIds, slower_factor } = causes[position]!;
    ways_positions.forEach((way, index) => {
      carriers.forEach(({ carrierId }, slot) => {
        if (carrierIds !== null && carrierIds[index] !== carrierId) return;
        const at = way * carriers.length + slot;
        slower[at] = Math.max(slower[at]!, slower_factor);
      });
    });
  }
  return slower;
}

/**
 * The fastest ways from everywhere to one node. A state is a node that is left by one of the carriers: node x carriers. Searched from
 * the end, so that what must arrive decides which ways count.
 */
export class FastestTo {
  /** Hours to the end. */
  readonly hours_h: Float64Array;
  /** Of these: before the first stretch of river (all, where there is none), from there to the last, and after. */
  readonly before_h: Float64Array;
  readonly river_h: Float64Array;
  readonly after_h: Float64Array;
  /** 1: it goes by river somewhere. */
  readonly byRiver_count: Uint8Array;
  readonly cost_amount: Float64Array;
  readonly fuel_L: Float64Array;
  readonly limitOf_positions: Uint16Array;
  /** Hours in each area, state-major. */
  readonly inArea_h: Float64Array;
  /** The first stretch from a state, and the state after it; -1: it is the end. */
  readonly arc_positions: Int32Array;
  readonly next_positions: Int32Array;
  /** The state by which a node is left the fastest; -1: there is no way. */
  readonly best_positions: Int32Array;
  private readonly done: Uint8Array;
  private readonly heap = new StateHeap();
  private readonly slots: number;
  /** Hours of the way as it is closed or slower now, by way x carriers. */
  private readonly now_h: readonly [Float64Array, Float64Array];

  constructor(
    private readonly ready: ReadyWays,
    private readonly arcs: Arcs,
    private readonly party: ReadyParty,
  ) {
    this.slots = party.carriers.length;
    const nodes = ready.nodeIds.length;
    const states = nodes * this.slots;
    this.hours_h = new Float64Array(states);
    this.before_h = new Float64Array(states);
    this.river_h = new Float64Array(states);
    this.after_h = new Float64Array(states);
    this.byRiver_count = new Uint8Array(states);
    this.cost_amount = new Float64Array(states);
    this.fuel_L = new Float64Array(states);
    this.limitOf_positions = new Uint16Array(states);
    this.inArea_h = new Float64Array(states * ready.areaIds.length);
    this.arc_positions = new Int32Array(states);
    this.next_positions = new Int32Array(states);
    this.best_positions = new Int32Array(nodes);
    this.done = new Uint8Array(states);
    this.now_h = [new Float64Array(party.there_h.length), new Float64Array(party.there_h.length)];
  }

  /**
   * Looks from one node. `slot`: the carrier by which it is left again, so that changing to another there takes its time; -1: it is the end.
   * `slower`: Infinity where a way is not to be gone.
   */
  search(end: number, slot: number, slower: Float64Array, areaOf: Int16Array): void {
    const { hours_h, best_positions, done, heap, slots } = this;
    this.setHours(slower);
    hours_h.fill(Number.POSITIVE_INFINITY);
    best_positions.fill(-1);
    done.fill(0);
    for (let one = 0; one < slots; one++) {
      if (slot >= 0 && slot !== one) continue;
      const state = end * slots + one;
      hours_h[state] = 0;
      this.next_positions[state] = -1;
      heap.push(0, state);
    }
    while (heap.length > 0) {
      const state = heap.pop();
      if (done[state] === 1) continue;
      done[state] = 1;
      this.settle(state, slot, areaOf);
      const node = Math.floor(state / slots);
      const own = state - node * slots;
      this.relax(node, state, own, 0);
      if (best_positions[node]! >= 0) continue;
      best_positions[node] = state;
      if (node === end && slot < 0) continue;
      const change_h = this.ready.changeOver_h[node]!;
      for (let other = 0; other < slots; other++) if (other !== own) this.relax(node, state, other, change_h);
    }
  }

  private setHours(slower: Float64Array): void {
    const { there_h, back_h } = this.party;
    const [there, back] = this.now_h;
    slower.forEach((factor, at) => {
      const isClosed = factor === Number.POSITIVE_INFINITY;
      // A way of no hours that is closed has 0 times Infinity of them.
      there[at] = isClosed ? factor : there_h[at]! * factor;
      back[at] = isClosed ? factor : back_h[at]! * factor;
    });
  }

  /** Comes to `node`, from where it goes on as `state` says, by carrier `slot`. */
  private relax(node: number, state: number, slot: number, change_h: number): void {
    const { hours_h, slots, now_h, arcs, done } = this;
    const { start_positions, from_positions, way_positions, isBack_count } = arcs;
    const rest_h = hours_h[state]! + change_h;
    for (let arc = start_positions[node]!; arc < start_positions[node + 1]!; arc++) {
      const at = way_positions[arc]! * slots + slot;
      const own_h = now_h[isBack_count[arc] as 0 | 1][at]!;
      if (own_h === Number.POSITIVE_INFINITY) continue;
      const before = from_positions[arc]! * slots + slot;
      const total_h = rest_h + own_h;
      if (done[before] === 1 || total_h >= hours_h[before]!) continue;
      hours_h[before] = total_h;
      this.arc_positions[before] = arc;
      this.next_positions[before] = state;
      this.heap.push(total_h, before);
    }
  }

  /** Everything else of a way, once its hours are settled: its first stretch, changing carriers, and what is known of the rest. */
  private settle(state: number, endSlot: number, areaOf: Int16Array): void {
    const { slots, party, inArea_h } = this;
    const areas = this.ready.areaIds.length;
    const next = this.next_positions[state]!;
    const slot = state % slots;
    const isRiver = party.carriers[slot]!.mode === 'river';
    if (next < 0) {
      this.before_h[state] = this.river_h[state] = this.after_h[state] = 0;
      this.cost_amount[state] = this.fuel_L[state] = this.limitOf_positions[state] = 0;
      this.byRiver_count[state] = endSlot >= 0 && isRiver ? 1 : 0;
      inArea_h.fill(0, state * areas, (state + 1) * areas);
      return;
    }
    const arc = this.arc_positions[state]!;
    const way = this.arcs.way_positions[arc]!;
    const at = way * slots + slot;
    const stretch_h = this.stretchOf_h(state);
    const change_h = this.changeAfter_h(state);
    this.split(state, next, stretch_h, change_h, isRiver);
    this.cost_amount[state] = this.cost_amount[next]! + stretch_h * party.carriers[slot]!.cost_amount_per_h;
    this.fuel_L[state] = this.fuel_L[next]! + party.fuel_L[at]!;
    this.limitOf_positions[state] = party.limits.both(party.limitOf_positions[at]!, this.limitOf_positions[next]!);
    for (let area = 0; area < areas; area++) inArea_h[state * areas + area] = inArea_h[next * areas + area]!;
    if (areaOf[way]! >= 0) inArea_h[state * areas + areaOf[way]!]! += stretch_h;
  }

  /** Hours of the first stretch from a state. */
  private stretchOf_h(state: number): number {
    const arc = this.arc_positions[state]!;
    const way = this.arcs.way_positions[arc]!;
    return this.now_h[this.arcs.isBack_count[arc] as 0 | 1][way * this.slots + (state % this.slots)]!;
  }

  /** Changing to the next carrier, where the first stretch from a state ends. */
  private changeAfter_h(state: number): number {
    const next = this.next_positions[state]!;
    return next % this.slots === state % this.slots ? 0 : this.ready.changeOver_h[Math.floor(next / this.slots)]!;
  }

  /** A state's river part and a last stretch by river after its end, from the morning on. */
  riverWith_h(state: number, last_h: number, end: number): number {
    const { riverDay_h } = this.party;
    if (this.ready.maySleep_count[end] === 1 || this.river_h[state]! + last_h <= riverDay_h)
      return withStretch(this.river_h[state]!, last_h, riverDay_h);
    let first = state;
    while (this.next_positions[first]! >= 0 && !this.isRiver(first)) first = this.next_positions[first]!;
    const { stretches, change_h } = this.partFrom(first);
    return riverPart_h([...stretches, { hours_h: last_h, change_h, isRiver: true, maySleep: false }], riverDay_h);
  }

  /** Hours from the morning on in which a river part is gone that begins with a state's first stretch, by days of boats. */
  private inDays_h(state: number): number {
    const { stretches, change_h } = this.partFrom(state);
    return riverPart_h(stretches, this.party.riverDay_h) + change_h;
  }

  private isRiver(state: number): boolean {
    return this.party.carriers[state % this.slots]!.mode === 'river';
  }

  /** The stretches of a river part that begins with a state's first one, and what changing after them takes where it goes on beyond the end. */
  private partFrom(state: number): { readonly stretches: readonly RiverStretch[]; readonly change_h: number } {
    const { next_positions, byRiver_count } = this;
    const stretches: RiverStretch[] = [];
    let change_h = 0;
    for (let at = state; next_positions[at]! >= 0; at = next_positions[at]!) {
      const maySleep = this.ready.maySleep_count[Math.floor(at / this.slots)] === 1;
      stretches.push({ hours_h: this.stretchOf_h(at), change_h, isRiver: this.isRiver(at), maySleep });
      if (byRiver_count[next_positions[at]!] === 0) return { stretches, change_h: 0 };
      change_h = this.changeAfter_h(at);
    }
    return { stretches, change_h };
  }

  private split(state: number, next: number, stretch_h: number, change_h: number, isRiver: boolean): void {
    const { before_h, river_h, after_h, byRiver_count } = this;
    const goesOnByRiver = byRiver_count[next] === 1;
    byRiver_count[state] = isRiver || goesOnByRiver ? 1 : 0;
    if (!isRiver) {
      before_h[state] = stretch_h + change_h + before_h[next]!;
      river_h[state] = river_h[next]!;
      after_h[state] = after_h[next]!;
      return;
    }
    before_h[state] = 0;
    const rest_h = change_h + before_h[next]!;
    const straight_h = goesOnByRiver ? stretch_h + rest_h + river_h[next]! : stretch_h;
    river_h[state] = straight_h <= this.party.riverDay_h ? straight_h : this.inDays_h(state);
    after_h[state] = goesOnByRiver ? after_h[next]! : rest_h;
  }
}
