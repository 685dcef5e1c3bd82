import { binBounds } from './binBound.ts';
import { mostRemembered_count, stepsOfABar_count } from './constants.ts';
import { type Left, waysToFill } from './waysToFill.ts';

/** Pieces put into bars, and how few bars there could be. */
export interface BarsFilled {
  /** Of each bar the places of its pieces in the list that was given. */
  readonly positions: readonly (readonly number[])[];
  /** No way takes fewer. */
  readonly bound_count: number;
}

/** Sizes, as places in `Left.sizes`, one bar after the other. */
type Filled = readonly (readonly number[])[];

/**
 * Which is the least number of bars these pieces are cut from? Largest first into the first bar, and into the fullest, with room; then
 * bar by bar as full as can be; then, while that is more than no way can beat, every way to fill the bar of the largest piece that is
 * left, none twice and none that another one is at least as good as.
 *
 * @param sizes - what each piece takes of a bar [count], in whole steps of any unit, above 0, none larger than a bar
 * @param capacity - what a bar gives [count], in whole steps of any unit
 * @param work_count - so many steps at most for each number of bars that is tried [count]: the answer is the same on every machine
 * @returns pieces by bar [position], and the bound [count]; where the two agree, no way takes fewer bars
 * @law every piece is in one bar; no bar holds more than it gives
 * @source martello-toth-1990, ch. 8: bound L2 and dominance; korf-2003, filling bar by bar (both from memory)
 */
export function fewestBars(sizes: readonly number[], capacity: number, work_count: number): BarsFilled {
  const work = { left: work_count };
  const left = leftOf(sizes, capacity, work);
  let bound_count = binBounds(sizes, capacity)?.byLarge_count ?? 0;
  let best = firstWays(left, bound_count);
  for (let bars_count = bound_count; bars_count < best.length; bars_count++) {
    work.left = work_count;
    const found = filledIn(left, bars_count);
    if (found !== null && found !== 'stopped') best = found;
    else if (found === null) bound_count = bars_count + 1;
  }
  return { positions: placesOf(best, left, sizes), bound_count };
}

function leftOf(sizes: readonly number[], capacity: number, work: { left: number }): Left {
  const counted = new Map<number, number>();
  for (const size of sizes) counted.set(size, (counted.get(size) ?? 0) + 1);
  const each = [...counted.keys()].sort((a, b) => b - a);
  return {
    capacity_count: capacity,
    sizes_count: each,
    each_count: Int32Array.from(each, (size) => counted.get(size)!),
    work,
  };
}

/** From sizes back to the pieces that were given: of equal ones the first come first. */
function placesOf(filled: Filled, { sizes_count: each }: Left, sizes: readonly number[]): BarsFilled['positions'] {
  const places = new Map<number, number[]>(each.map((size) => [size, []]));
  for (let place = sizes.length - 1; place >= 0; place--) places.get(sizes[place]!)!.push(place);
  return filled.map((bar) => bar.map((at) => places.get(each[at]!)!.pop()!));
}

/** The best of three quick ways. */
function firstWays(left: Left, bound_count: number): Filled {
  let best = largestFirst(left, (room, size) => room.findIndex((one) => one >= size));
  if (best.length === bound_count) return best;
  for (const way of [() => largestFirst(left, fullestWithRoom), () => barByBar(left)]) {
    const next = way();
    if (next.length < best.length) best = next;
    if (best.length === bound_count) return best;
  }
  return best;
}

/** The largest pieces first, each into the bar that is chosen, or a new one. */
function largestFirst(
  { capacity_count: capacity, sizes_count: sizes, each_count: counts }: Left,
  choose: (room: readonly number[], size: number) => number,
): Filled {
  const room: number[] = [];
  const bars: number[][] = [];
  sizes.forEach((size, at) => {
    for (let count = counts[at]!; count > 0; count--) {
      const chosen = choose(room, size);
      if (chosen < 0) {
        room.push(capacity - size);
        bars.push([at]);
      } else {
        room[chosen]! -= size;
        bars[chosen]!.push(at);
      }
    }
  });
  return bars;
}

function fullestWithRoom(room: readonly number[], size: number): number {
  let chosen = -1;
  room.forEach((one, at) => {
    if (one >= size && (chosen < 0 || one < room[chosen]!)) chosen = at;
  });
  return chosen;
}

/** Each bar begun with the largest piece left and filled as well as a few steps find. */
function barByBar(left: Left): Filled {
  const counts = left.each_count.slice();
  const bars: number[][] = [];
  left.sizes_count.forEach((size, largest) => {
    while (counts[largest]! > 0) {
      counts[largest]!--;
      const room = left.capacity_count - size;
      let best: readonly number[] = [];
      // Where the steps run out, the best found so far stands.
      waysToFill({ ...left, each_count: counts, work: { left: stepsOfABar_count } }, room, room, (chosen, over) => {
        best = [...chosen];
        return over - 1;
      });
      for (const at of best) counts[at]!--;
      bars.push([largest, ...best]);
    }
  });
  return bars;
}

/** So many bars and no more: every way that leaves over no more than all of them together may; null where there is none. */
function filledIn(left: Left, bars_count: number): Filled | 'stopped' | null {
  const { capacity_count: capacity, sizes_count: sizes, each_count: counts, work } = left;
  const total = sizes.reduce((sum, size, at) => sum + size * counts[at]!, 0);
  const failed = new Set<string>();
  const bars: number[][] = [];
  const fill = (bars_left: number, slack: number): boolean | 'stopped' => {
    const largest = counts.findIndex((count) => count > 0);
    if (largest < 0) return true;
    if (bars_left === 0) return false;
    work.left -= counts.length >> 2;
    const state = `${bars_left}:${counts.join()}`;
    if (failed.has(state)) return false;
    counts[largest]!--;
    const found = fillRest(largest, bars_left, slack);
    counts[largest]!++;
    if (found === false && failed.size < mostRemembered_count) failed.add(state);
    return found;
  };
  const fillRest = (largest: number, bars_left: number, slack: number): boolean | 'stopped' => {
    const ways: { readonly chosen: readonly number[]; readonly over: number }[] = [];
    const isWhole = waysToFill(left, capacity - sizes[largest]!, slack, (chosen, over) => {
      ways.push({ chosen: [...chosen], over });
      return slack;
    });
    ways.sort((a, b) => a.over - b.over || a.chosen.length - b.chosen.length);
    for (const { chosen, over } of ways) {
      for (const at of chosen) counts[at]!--;
      const found = fill(bars_left - 1, slack - over);
      for (const at of chosen) counts[at]!++;
      if (found === true) bars.push([largest, ...chosen]);
      if (found !== false) return found;
    }
    return isWhole && work.left >= 0 ? false : 'stopped';
  };
  const found = fill(bars_count, bars_count * capacity - total);
  return found === true ? bars : found || null;
}
