import type { RolloutSheet } from '@eavewell/tables';
import { dayOf } from './axis.ts';
import type { StockLine } from './curves.ts';
import { haulsFor, leavingNext, type TripOfCrew } from './tripWords.ts';

/** A part that holds trips up: it came to the store while they waited for it, and without it there would not have been enough. */
export interface StockBinding {
  readonly line: StockLine;
  /** Trips that waited for it, the next first. */
  readonly trips: readonly TripOfCrew[];
}

type OfStock = Pick<RolloutSheet, 'crews' | 'hauls'>;

/** Where the goods of a trip come from themselves, and until when they have to be there: the day it leaves, or what is brought for it does. */
function drawnFrom(
  sheet: OfStock,
  { trip, crew }: TripOfCrew,
): { readonly storeId: string; readonly day: number | null } {
  const hauls = haulsFor(sheet, trip);
  // What is brought leaves a store that is filled by nothing of the same trip.
  const first = hauls.find(({ from }) => !hauls.some(({ store }) => store === from));
  return first === undefined
    ? { storeId: crew.store, day: dayOf(trip.leaves) }
    : { storeId: first.from, day: dayOf(first.leaves) };
}

/** Does some of it come after a day, without which there would not be enough on another? */
function isAwaited({ points }: StockLine, after: number, day: number): boolean {
  const last = points.filter(({ at }) => at <= day).at(-1);
  if (last?.at !== day || last.out_count === 0) return false;
  const came = points
    .filter(({ at, in_count }) => in_count > 0 && at > after && at <= day)
    .reduce((sum, { in_count }) => sum + in_count, 0);
  return came > 0 && last.value < came;
}

/**
 * The parts that hold trips up, those of the next trip first.
 *
 * @param sheet - trips, and what is brought for them
 * @param lines - what lies in the stores
 */
export function stockBindings(sheet: OfStock, lines: readonly StockLine[]): readonly StockBinding[] {
  const trips = new Map<StockLine, TripOfCrew[]>();
  for (const of of leavingNext(sheet)) {
    const { waitsFor, waited_days } = of.trip;
    const { storeId, day } = drawnFrom(sheet, of);
    if (waitsFor !== 'stock' || day === null || waited_days <= 0) continue;
    const leaves = dayOf(of.trip.leaves) ?? day;
    for (const line of lines) {
      if (line.storeId !== storeId || !isAwaited(line, leaves - waited_days, day)) continue;
      trips.set(line, [...(trips.get(line) ?? []), of]);
    }
  }
  return [...trips].map(([line, own]) => ({ line, trips: own }));
}
