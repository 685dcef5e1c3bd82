import { hair_factor } from './constants.ts';

/**
 * How much may lie in something that holds so much? The same by a hair more, so that three thirds of a bar are one bar.
 *
 * @param capacity - what it holds [any unit]
 * @returns what may lie in it, as sums of decimals are compared [the same unit]
 * @definition ours: by a thousand-millionth more, far under what can be weighed or measured
 * @example
 * roomOf(0) // → 0
 * 0.1 + 0.2 <= roomOf(0.3) // → true
 */
export function roomOf(capacity: number): number {
  return capacity * (1 + hair_factor);
}

/**
 * How many bins of one size, or bars of one length, are needed at the least, before anything is packed? `byTotal` is all that is to be packed
 * over what one holds. `byLarge` also sees that two things of over half a bin never share one, and that what is large leaves no room for what is
 * not small: for every size up to half a bin as the limit of small, with all smaller things left out; the largest of these.
 *
 * @param sizes - size of each thing [any unit], each from 0 to capacity, in any order
 * @param capacity - what a bin holds [the same unit], above 0
 * @returns byTotal_count and byLarge_count [count]; null where a thing does not fit a bin by itself, or a figure is none
 * @law byTotal_count ≤ byLarge_count ≤ the least number of bins; byLarge_count is 2/3 of it or more
 * @source martello-toth-1990, chapter 8, bounds L1 and L2 (from memory)
 * @example
 * binBounds([70, 60, 50, 33, 33, 33, 11, 7, 3], 100) // → { byTotal_count: 3, byLarge_count: 4 }
 * binBounds([6, 6, 6], 10) // → { byTotal_count: 2, byLarge_count: 3 }
 * binBounds([], 10) // → { byTotal_count: 0, byLarge_count: 0 }
 * binBounds([11], 10) // → null
 */
export function binBounds(
  sizes: readonly number[],
  capacity: number,
): { readonly byTotal_count: number; readonly byLarge_count: number } | null {
  const room = roomOf(capacity);
  if (!(capacity > 0 && Number.isFinite(room))) return null;
  if (!sizes.every((size) => size >= 0 && size <= room)) return null;
  if (sizes.length === 0) return { byTotal_count: 0, byLarge_count: 0 };
  const falling = Float64Array.from(sizes).sort().reverse();
  const total = falling.reduce((sum, size) => sum + size, 0);
  const byTotal_count = Math.max(1, binsFor(total, room));
  return { byTotal_count, byLarge_count: Math.max(byTotal_count, byLarge(falling, room)) };
}

/** The least number of bins for so much, were it sand; the last bits of a sum are no bin. */
function binsFor(total: number, room: number): number {
  return Math.ceil(total / room - hair_factor);
}

/** The bound by large things, over every limit of small. `falling` is sorted, the largest first. */
function byLarge(falling: Float64Array, room: number): number {
  const sums = new Float64Array(falling.length + 1);
  for (let index = 0; index < falling.length; index++) sums[index + 1] = sums[index]! + falling[index]!;
  const large = firstAtMost(falling, room / 2);
  let bound = large;
  // Those of over room − limit have a bin to themselves; the limit grows smaller, and they become fewer.
  let alone = large;
  for (let end = large; end < falling.length; end++) {
    const limit = falling[end]!;
    if (falling[end + 1] === limit) continue;
    while (alone > 0 && falling[alone - 1]! <= room - limit) alone--;
    const leftInLarge = (large - alone) * room - (sums[large]! - sums[alone]!);
    const medium = sums[end + 1]! - sums[large]!;
    bound = Math.max(bound, large + Math.max(0, binsFor(medium - leftInLarge, room)));
  }
  return bound;
}

/** Place of the first size that is no larger than the limit. */
function firstAtMost(falling: Float64Array, limit: number): number {
  const place = falling.findIndex((size) => size <= limit);
  return place < 0 ? falling.length : place;
}
