import type { Retiming } from './retiming.ts';

/** Where a leg stands among legs of some pairs. One of which nothing is known is noted, and stands at the end, where no leg can be gone. */
export function placeAmong({ nodes, unknown }: Retiming, travel: number, pairs: Float64Array, key: number): number {
  const place = placeOf(pairs, key);
  if (place >= 0) return place;
  unknown.push(travel, Math.floor(key / nodes), key % nodes);
  return pairs.length;
}

/** Where a key stands among sorted ones; -1 where it does not. */
export function placeOf(keys: ArrayLike<number>, key: number): number {
  let low = 0;
  let high = keys.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (keys[middle]! < key) low = middle + 1;
    else high = middle;
  }
  return keys[low] === key ? low : -1;
}
