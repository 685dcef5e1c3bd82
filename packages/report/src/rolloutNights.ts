import { type CrewFacts, isoDay, readIsoDay, type TripLeg } from '@eavewell/engine';
import type { RolloutTripAnswer, SheetTrip } from '@eavewell/tables';
import type { SheetTold } from './rolloutSheetTold.ts';

/**
 * Each day of a trip with the place its night is spent at: where the crew works, or on the way the last place it gets to in the hours of the day. Of a trip
 * that left the days of its legs are not known: only its first and last are told.
 */
export function nightsOf(
  { problem }: Pick<SheetTold, 'problem'>,
  trip: SheetTrip,
  legs: readonly TripLeg[],
  crew: CrewFacts,
): RolloutTripAnswer['days'] {
  const [first, last] = [readIsoDay(trip.leaves)!, readIsoDay(trip.back)!];
  const days = Array.from({ length: Math.max(1, last - first + 1) }, (_, at) => first + at);
  if (trip.state !== 'planned')
    return [...new Set([first, last])].map((day) => ({ day: isoDay(day), said: [], sleeps: null, siteIds: [] }));
  const sites = new Set(trip.stops.map(({ siteId }) => siteId));
  return days.map((day) => {
    const at = placeAt(legs, day + 1 - problem.firstDay, crew);
    const isAway = day < last && at !== null && at !== crew.base;
    return {
      ...{ day: isoDay(day), said: [], sleeps: isAway ? at : null },
      siteIds: isAway && sites.has(at) ? [at] : [],
    };
  });
}

/** Where a crew is at a time of the plan; null: it has not left. */
function placeAt(legs: readonly TripLeg[], time: number, { work_h_per_day }: CrewFacts): string | null {
  let at: string | null = null;
  let left = Number.NEGATIVE_INFINITY;
  for (const leg of legs) {
    left = leg.leaves ?? left;
    if (left >= time) return at;
    if (leg.arrives !== null && leg.arrives <= time) {
      at = leg.to;
      continue;
    }
    // On its way: as far as the hours go.
    let gone_h = (time - left) * work_h_per_day;
    at = leg.from;
    for (const { to, hours_h, changeOver_h } of leg.way?.stretches ?? []) {
      gone_h -= hours_h + changeOver_h;
      if (gone_h < 0) return at;
      at = to;
    }
    // A leg to the store is not told apart from the one that follows.
    if (leg.arrives !== null) return at;
  }
  return at;
}
