import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Whole numbers by chance, the same for the same seed. */
export function seededChance(seed: number): { readonly below: (n: number) => number } {
  const generator = xoroshiro128plus(seed);
  return { below: (n) => uniformInt(generator, 0, n - 1) };
}
