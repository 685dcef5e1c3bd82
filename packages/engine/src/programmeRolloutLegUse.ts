import { type Crew, endDay, type TimedTrip } from './programme/rollout/index.ts';
import type { TripLeg } from './programmeRolloutTrips.ts';

/** Days on which a crew does not work, from a day to a day, both counted. */
export function restBetween({ works }: Crew, from: number, to: number): number {
  let rest = 0;
  for (let day = Math.max(0, from); day <= to; day++) if (works[day] === 0) rest++;
  return rest;
}

/** How the time to a stop is used: hours on the way, days of rest, and what is left, in which nobody can go on; null: by which way it is gone is not known. */
export function legTimes(
  crew: Crew,
  arrives: number,
  { own, legs: all, siteId }: { readonly own: TimedTrip; readonly legs: readonly TripLeg[]; readonly siteId: string },
): {
  readonly begins: number;
  readonly hours_h: number;
  readonly rest_days: number;
  readonly stood_days: number;
} | null {
  const last = all.findIndex(({ to }) => to === siteId);
  // A leg to the store is gone in one with the leg from there.
  const first = last > 0 && all[last]!.leaves === null ? last - 1 : last;
  const legs = all.slice(Math.max(0, first), last + 1);
  if (legs.length === 0 || legs.some(({ way }) => way === null)) return null;
  const begins = legs[0]!.leaves ?? own.leaves;
  const hours_h = legs
    .flatMap(({ way }) => way!.stretches)
    .reduce((sum, stretch) => sum + stretch.hours_h + stretch.changeOver_h, 0);
  const rest_days = restBetween(crew, Math.floor(begins), endDay(arrives));
  return { begins, hours_h, rest_days, stood_days: arrives - begins - hours_h / crew.work_h_per_day - rest_days };
}
