import type { ReadyCrew, Retiming } from './retiming.ts';

/**
 * Where the leg from one node to another stands in the legs of a crew. One of which nothing is known is noted, and stands at the end,
 * where no leg can be gone.
 */
export function legAt(ready: Retiming, { pairs, crew }: ReadyCrew, from: number, to: number): number {
  const key = from * ready.nodes + to;
  if (pairs === null) return key;
  const place = placeOf(pairs, key);
  if (place >= 0) return place;
  ready.unknown.push(crew.travel, from, to);
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
