import type { LegLimit } from '../../kernel/index.ts';
import { mostLimits_count, quickLimits_count } from './constants.ts';

/** Limits of legs, each once, by index. The first limits nothing. */
export class LimitTable {
  readonly limits: LegLimit[] = [];
  private readonly byKey = new Map<string, number>();
  private readonly tighter = new Map<number, number>();
  /** The same for the first so many, which are nearly all there are: -1 is not looked at yet. */
  private readonly firstTighter = new Int32Array(quickLimits_count ** 2).fill(-1);

  constructor() {
    this.indexOf(unlimited);
  }

  indexOf(limit: LegLimit): number {
    const key = `${limit.kg} ${limit.litres} ${limit.longest_m} ${limit.porters_count}`;
    const known = this.byKey.get(key);
    if (known !== undefined) return known;
    // Too many to tell apart: the tightest of all so far, which overstates nothing.
    const isFull = this.limits.length >= mostLimits_count;
    const index = isFull ? mostLimits_count : this.limits.length;
    this.limits[index] = isFull ? tighterOf(this.limits[index] ?? limit, limit) : limit;
    if (!isFull) this.byKey.set(key, index);
    return index;
  }

  /** The index of what passes two limits. */
  both(one: number, other: number): number {
    if (one === other || other === 0) return one;
    if (one === 0) return other;
    if (one >= quickLimits_count || other >= quickLimits_count) return this.bothOfMany(one, other);
    const at = one * quickLimits_count + other;
    const known = this.firstTighter[at]!;
    if (known >= 0) return known;
    const index = this.indexOf(tighterOf(this.limits[one]!, this.limits[other]!));
    this.firstTighter[at] = index;
    return index;
  }

  private bothOfMany(one: number, other: number): number {
    const key = one * (mostLimits_count + 1) + other;
    const known = this.tighter.get(key);
    if (known !== undefined) return known;
    const index = this.indexOf(tighterOf(this.limits[one]!, this.limits[other]!));
    this.tighter.set(key, index);
    return index;
  }
}

const unlimited: LegLimit = {
  kg: Number.POSITIVE_INFINITY,
  litres: Number.POSITIVE_INFINITY,
  longest_m: Number.POSITIVE_INFINITY,
  porters_count: 0,
};

/** What passes both, with the porters that both take. */
export function tighterOf(one: LegLimit, other: LegLimit): LegLimit {
  return {
    kg: Math.min(one.kg, other.kg),
    litres: Math.min(one.litres, other.litres),
    longest_m: Math.min(one.longest_m, other.longest_m),
    porters_count: Math.max(one.porters_count, other.porters_count),
  };
}
