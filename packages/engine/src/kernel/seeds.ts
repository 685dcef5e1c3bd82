import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A seeded source of whole numbers. The same seed gives the same numbers on every machine. */
export interface Dice {
  /** A whole number from 0 to `below` − 1, all equally likely. */
  next(below: number): number;
}

/**
 * Makes a seeded source of whole numbers.
 *
 * @param seed - the seed [number], any whole number
 * @returns dice: `next(n)` gives 0 to n − 1 [number]
 * @law the same seed gives the same numbers
 * @source pure-rand, xoroshiro128+
 */
export function seededDice(seed: number): Dice {
  const generator = xoroshiro128plus(seed);
  return { next: (below) => uniformInt(generator, 0, below - 1) };
}

/**
 * A seed of its own for a named thing (a gauge, a site), so that adding one never changes another.
 *
 * @param seed - the programme's seed [number], whole
 * @param name - what it is for [text]
 * @returns a 32-bit seed [number], whole
 * @source FNV-1a, 32 bit
 * @example
 * seedFor(7, 'G1') === seedFor(7, 'G1') // → true
 * seedFor(7, 'G1') === seedFor(7, 'G2') // → false
 */
export function seedFor(seed: number, name: string): number {
  let hash = 0x811c9dc5 ^ (seed | 0);
  for (let i = 0; i < name.length; i++) {
    hash ^= name.charCodeAt(i);
    hash = Math.imul(hash, 0x01000193);
  }
  return hash >>> 0;
}

/**
 * A number of its own for each day of a seed: the same day has the same number whatever is asked of the others, so that days can
 * be left out or added a few more at a time.
 *
 * @param seed - the seed [number], whole
 * @param day - the day [day], whole
 * @returns the number [number], 0 or more, below 1
 * @source murmurhash3, 32-bit finaliser (from memory)
 * @example
 * numberOfDay(7, 12000) === numberOfDay(7, 12000) // → true
 * numberOfDay(7, 12000) === numberOfDay(8, 12000) // → false
 */
export function numberOfDay(seed: number, day: number): number {
  let hash = (seed ^ Math.imul(day | 0, 0x9e3779b1)) | 0;
  for (let round = 0; round < 2; round++) {
    hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
    hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
    hash = (hash ^ (hash >>> 16)) + 0x6d2b79f5;
  }
  return (hash >>> 0) / 2 ** 32;
}
