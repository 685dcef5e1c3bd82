import { seedFor } from '@eavewell/engine';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** A seeded source of chance: the same seed and name give the same draws. */
export interface Chance {
  /** From 0 up to, not including, 1. */
  share(): number;
  /** From `low` up to, not including, `high`. */
  between(low: number, high: number): number;
  /** A whole number from `low` to `high`, both included. */
  whole(low: number, high: number): number;
  /** One of the list. */
  pick<T>(list: readonly T[]): T;
  /** Mean 0, standard deviation 1. */
  normal(): number;
  /** Gamma with this shape and scale 1. */
  gamma(shape: number): number;
}

/** Makes a source of chance of its own for a named thing, so that adding one thing never changes another. */
export function chanceFor(seed: number, name: string): Chance {
  const generator = xoroshiro128plus(seedFor(seed, name));
  // Seeds that differ in few bits start alike in this generator; a few idle draws part them.
  for (let i = 0; i < 16; i++) generator.next();
  const share = () => uniformFloat64(generator);
  const normal = () => polarNormal(share);
  const between = (low: number, high: number) => low + (high - low) * share();
  const whole = (low: number, high: number) => low + Math.floor(share() * (high - low + 1));
  return {
    share,
    between,
    whole,
    pick: (list) => list[whole(0, list.length - 1)]!,
    normal,
    gamma: (shape) => gammaDraw(shape, share, normal),
  };
}

/** Normal draw by Marsaglia's polar method (from memory). */
function polarNormal(share: () => number): number {
  for (;;) {
    const x = 2 * share() - 1;
    const y = 2 * share() - 1;
    const s = x * x + y * y;
    if (s > 0 && s < 1) return x * Math.sqrt((-2 * Math.log(s)) / s);
  }
}

/** Gamma draw, scale 1, by Marsaglia & Tsang 2000 (from memory); a shape under 1 is drawn one higher and brought down. */
function gammaDraw(shape: number, share: () => number, normal: () => number): number {
  if (shape < 1) return gammaDraw(shape + 1, share, normal) * share() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    const u = share();
    if (Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}
