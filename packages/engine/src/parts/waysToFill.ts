/** What is left to be put into bars: each size once, the largest first, with how many of it are left. */
export interface Left {
  readonly capacity_count: number;
  readonly sizes_count: readonly number[];
  readonly each_count: Int32Array;
  /** Steps that may still be made. */
  readonly work: { left: number };
}

/** What is done with one way to fill a bar, and the most that later ones may leave over; under 0 ends the search. */
export type TakeWay = (chosen: readonly number[], over: number) => number;

/**
 * In which ways can the rest of a bar be filled so that no more than so much is left over? Ways that another is at least as good as are left
 * out: where a piece that is not chosen would still go in, or would go in for a smaller one, or for two.
 *
 * @param left - what there is to choose from, its counts as they are; they are the same again afterwards
 * @param room - what the bar still gives [count of steps]
 * @param most - what may be left over of it [count of steps]
 * @param take - is given each way, as places in the sizes, and what it leaves over
 * @returns whether all ways were found before the steps ran out
 * @source martello-toth-1990, ch. 8, dominance criterion (from memory)
 */
export function waysToFill(left: Left, room: number, most: number, take: TakeWay): boolean {
  const { sizes_count: sizes, each_count: counts, work } = left;
  const last = lastLeft(left);
  const smallest = last < 0 ? Number.POSITIVE_INFINITY : sizes[last]!;
  const rest = restFrom(left);
  const chosen: number[] = [];
  let mayLeave = most;
  let isWhole = true;
  const tell = (over: number) => {
    if (over <= mayLeave && !isOutdone(left, chosen, over)) mayLeave = take(chosen, over);
  };
  const choose = (at: number, over: number) => {
    counts[at]!--;
    chosen.push(at);
    go(at, over - sizes[at]!);
    chosen.pop();
    counts[at]!++;
  };
  const go = (from: number, over: number): void => {
    if (--work.left < 0) isWhole = false;
    if (!isWhole || mayLeave < 0) return;
    for (let at = Math.max(from, firstAtMost(sizes, over)); at <= last; at++) {
      if (!isWhole || rest[at]! < over - mayLeave) return;
      const size = sizes[at]!;
      // It neither fills the bar nor leaves room for another.
      if (size < over - mayLeave && size > over - smallest) at = Math.max(at, firstAtMost(sizes, over - smallest));
      if (at <= last && counts[at]! > 0) choose(at, over);
    }
    tell(over);
  };
  go(0, room);
  return isWhole;
}

/** What all that is left from each place on would take. */
function restFrom({ sizes_count: sizes, each_count: counts }: Left): Float64Array {
  const rest = new Float64Array(sizes.length + 1);
  for (let at = sizes.length - 1; at >= 0; at--) rest[at] = rest[at + 1]! + sizes[at]! * counts[at]!;
  return rest;
}

function lastLeft({ each_count: counts }: Left): number {
  let last = counts.length - 1;
  while (last >= 0 && counts[last] === 0) last--;
  return last;
}

/** The first place whose size is no larger. */
export function firstAtMost(sizes: readonly number[], most: number): number {
  let [low, high] = [0, sizes.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sizes[middle]! <= most) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Would a piece that is left go in beside what is chosen, or for one of it, or for two? */
function isOutdone({ sizes_count: sizes, each_count: counts }: Left, chosen: readonly number[], over: number): boolean {
  const isLeft = (least: number, most: number, isAbove: boolean) => {
    for (let at = firstAtMost(sizes, most); at < sizes.length; at++) {
      const size = sizes[at]!;
      if (isAbove ? size <= least : size < least) return false;
      if (counts[at]! > 0) return true;
    }
    return false;
  };
  if (isLeft(0, over, true)) return true;
  return chosen.some((one, place) => {
    const size = sizes[one]!;
    if (over > 0 && isLeft(size, size + over, true)) return true;
    return chosen.some((other, then) => {
      if (then <= place) return false;
      const both = size + sizes[other]!;
      return isLeft(both, both + over, false);
    });
  });
}
