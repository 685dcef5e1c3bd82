import type { WearEnd } from '../../kernel/index.ts';
import { type CartridgeRating, growthOfLoad, mostResistance_ratio } from './cartridgeRating.ts';

/** How worn a set is. */
export interface Worn {
  /** Litres that passed. */
  readonly litres_L: number;
  /** The same, each counted by what its turbidity wears. */
  readonly wornLitres_L: number;
  /** Litres times their turbidity, added up. */
  readonly load_L_NTU: number;
}

/** A set that is led through days, changed as they pass. */
export type Wearing = { -readonly [K in keyof Worn]: Worn[K] };

/** What days bring to a set, a day each. */
export interface DailyWear {
  readonly litres_L: Float64Array;
  readonly wornLitres_L: Float64Array;
  readonly load_L_NTU: Float64Array;
}

/** What ends a set, made ready for many days. */
export interface EndLimits {
  readonly ratedLitres_L: number;
  /** Load at which a set that fouls as rated passes the lowest flow in the water of each day; null where the flow is not looked at. */
  readonly mostLoad_L_NTU: Float64Array | null;
}

/** Litres, and load by day, at which a set ends; the fouling of the site divides the load. */
export function endLimits(rating: CartridgeRating, temperature_C: Float64Array): EndLimits {
  const { ratedLitres_L, flow } = rating;
  const growth = growthOfLoad(rating);
  if (growth === null || flow === null) return { ratedLitres_L, mostLoad_L_NTU: null };
  const mostLoad_L_NTU = new Float64Array(temperature_C.length);
  let last = Number.NaN;
  for (let day = 0; day < mostLoad_L_NTU.length; day++) {
    const temperature = temperature_C[day]!;
    mostLoad_L_NTU[day] =
      temperature === last ? mostLoad_L_NTU[day - 1]! : (mostResistance_ratio(flow, temperature) - 1) / growth;
    last = temperature;
  }
  return { ratedLitres_L, mostLoad_L_NTU };
}

/** When a set ended, counted in days and parts of a day, and why. */
export interface EndFound {
  readonly end_days: number;
  readonly end: WearEnd;
}

/** Days after which a set is changed whatever it passed, the earlier of its years and its failure. */
export interface Stop {
  readonly stop_days: number;
  readonly stopEnd: 'age' | 'failure';
}

/** The earlier of the calendar and a failure; neither before the first day. */
export function stopOf(ageLeft_days: number, failure_days: number): Stop {
  const stopEnd = ageLeft_days <= failure_days ? 'age' : 'failure';
  return { stop_days: Math.max(0, Math.min(ageLeft_days, failure_days)), stopEnd };
}

/**
 * Leads a set through the days from `from` on until one of its ends, or to the day before `to`. The water of a day passes evenly, so that an end falls within its
 * day. The wear's first entry is that of the day `from`. Litres come before flow, and both before the calendar, where they fall together.
 */
export function firstEnd(
  wearing: Wearing,
  daily: DailyWear,
  from: number,
  to: number,
  limits: EndLimits,
  fouling_ratio: number,
  stop: Stop,
): EndFound | null {
  const { ratedLitres_L, mostLoad_L_NTU } = limits;
  const { litres_L, wornLitres_L, load_L_NTU } = daily;
  let { litres_L: litres, wornLitres_L: worn, load_L_NTU: load } = wearing;
  let found: EndFound | null = null;
  for (let day = from; day < to; day++) {
    const at = day - from;
    const limit = mostLoad_L_NTU === null ? Infinity : mostLoad_L_NTU[day]! / fouling_ratio;
    const wornAfter = worn + wornLitres_L[at]!;
    const loadAfter = load + load_L_NTU[at]!;
    let part = 1;
    if (!(wornAfter < ratedLitres_L && loadAfter <= limit && load <= limit) || stop.stop_days <= day + 1) {
      found = endWithin(day, { worn, wornAfter, load, loadAfter, limit, ratedLitres_L }, stop);
      part = found === null ? 1 : found.end_days - day;
    }
    litres += part * litres_L[at]!;
    worn = part === 1 ? wornAfter : worn + part * wornLitres_L[at]!;
    load = part === 1 ? loadAfter : load + part * load_L_NTU[at]!;
    if (found !== null) break;
  }
  wearing.litres_L = litres;
  wearing.wornLitres_L = worn;
  wearing.load_L_NTU = load;
  return found;
}

interface WithinDay {
  readonly worn: number;
  readonly wornAfter: number;
  readonly load: number;
  readonly loadAfter: number;
  readonly limit: number;
  readonly ratedLitres_L: number;
}

/** Where in a day a set ends, and why; null where it lasts the day. */
function endWithin(day: number, within: WithinDay, { stop_days, stopEnd }: Stop): EndFound | null {
  const { worn, wornAfter, load, loadAfter, limit, ratedLitres_L } = within;
  const atLitres = reached(worn, wornAfter, ratedLitres_L);
  const atFlow = load > limit ? 0 : loadAfter > limit ? reached(load, loadAfter, limit) : Infinity;
  const part = Math.min(atLitres, atFlow);
  if (part <= 1 && day + part <= stop_days)
    return { end_days: day + part, end: atLitres <= atFlow ? 'litres' : 'flow' };
  return stop_days <= day + 1 ? { end_days: Math.max(day, stop_days), end: stopEnd } : null;
}

/** The part of a day after which a sum that grows evenly from `before` to `after` has reached a mark; Infinity where it does not. */
function reached(before: number, after: number, mark: number): number {
  if (before >= mark) return 0;
  return after >= mark ? (mark - before) / (after - before) : Infinity;
}
