import type { DayIndex } from '@eavewell/engine';
import type { RolloutSheet } from '@eavewell/tables';
import { dayOf } from './axis.ts';
import { type StockLine, stockLines } from './curves.ts';

/** What lies in a store of one part today, and how far it goes. */
export interface StockAhead {
  readonly line: StockLine;
  /** By the end of today. */
  readonly now_count: number;
  /** What is to go after today. */
  readonly goes_count: number;
  /** The first day on which what lies there today is not enough for all that went by then; null: it is enough for the plan. */
  readonly until: DayIndex | null;
  /** What comes first after today; null: nothing does. */
  readonly next: { readonly at: DayIndex; readonly in_count: number } | null;
  /** The first day on which some are missing, whatever comes; null: none. */
  readonly short: { readonly at: DayIndex; readonly count: number } | null;
}

/** What lies there by the end of a day. */
function countAt({ points }: StockLine, day: DayIndex): number {
  const before = points.filter(({ at }) => at <= day).at(-1);
  if (before !== undefined) return before.value;
  const [first] = points;
  return first === undefined ? 0 : first.value - first.in_count + first.out_count;
}

/** How far what lies there today goes, of one part in one store. */
export function aheadOf(line: StockLine, today: DayIndex): StockAhead {
  const now_count = countAt(line, today);
  const later = line.points.filter(({ at }) => at > today);
  let goes_count = 0;
  let until: DayIndex | null = null;
  for (const { at, out_count } of later) {
    goes_count += out_count;
    if (until === null && out_count > 0 && goes_count > now_count) until = at;
  }
  const comes = later.find(({ in_count }) => in_count > 0);
  const lacks = now_count < 0 ? { at: today, value: now_count } : later.find(({ value }) => value < 0);
  return {
    ...{ line, now_count, goes_count, until },
    next: comes === undefined ? null : { at: comes.at, in_count: comes.in_count },
    short: lacks === undefined ? null : { at: lacks.at, count: -lacks.value },
  };
}

/** Days in order, what has none last. */
function sooner(a: DayIndex | null | undefined, b: DayIndex | null | undefined): number {
  if (a == null || b == null) return (a == null ? 1 : 0) - (b == null ? 1 : 0);
  return a - b;
}

/** All that is still to go from a store, what is short first, then what is used up first. */
export function stockAhead(sheet: Pick<RolloutSheet, 'stock' | 'places' | 'day'>): readonly StockAhead[] {
  const today = dayOf(sheet.day) ?? 0;
  return stockLines(sheet)
    .map((line) => aheadOf(line, today))
    .filter(({ goes_count, short }) => goes_count > 0 || short !== null)
    .sort((a, b) => sooner(a.short?.at, b.short?.at) || sooner(a.until, b.until));
}

/** Does anything go from a store on a day, as far as it is counted? */
export const goesOn = (all: readonly StockAhead[], storeId: string, leaves: string): boolean =>
  all.some(({ line }) => line.storeId === storeId && goesAt(line, dayOf(leaves)));

const goesAt = ({ points }: StockLine, day: DayIndex | null): boolean =>
  points.some(({ at, out_count }) => at === day && out_count > 0);

/** What a trip takes that does not lie in its store today, and when enough of it is there. */
export interface NotThere {
  readonly part: string;
  /** Null: not by the day it leaves. */
  readonly comes: DayIndex | null;
}

/**
 * What goes from a store on a day and is not there yet: what lies there today does not cover all that goes until then.
 *
 * @param all - what lies in the stores
 * @param storeId - from where
 * @param leaves - on which day
 */
export function notThereYet(all: readonly StockAhead[], storeId: string, leaves: string): readonly NotThere[] {
  const day = dayOf(leaves);
  if (day === null) return [];
  return all.flatMap(({ line, until, short }) => {
    if (line.storeId !== storeId || !goesAt(line, day) || until === null || until > day) return [];
    const isShort = short !== null && short.at <= day;
    const comes = line.points.filter(({ at, in_count }) => in_count > 0 && at <= day).at(-1)?.at;
    return [{ part: line.part, comes: isShort ? null : (comes ?? null) }];
  });
}
