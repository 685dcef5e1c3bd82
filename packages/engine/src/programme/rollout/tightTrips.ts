import { type NewBreak, whatBecomes } from './byHand/index.ts';
import type { TimedPlan } from './planChanges.ts';
import type { Retiming } from './retiming.ts';

/** A trip that must not leave much later, and what happens if it does. */
export interface TightTrip {
  readonly crew: number;
  readonly trip: number;
  readonly later_days: number;
  /** What breaks of it that is not broken now; null: nothing, but a site waits long. */
  readonly breaks: NewBreak | null;
  /** The site of the trip that is handed over most days later, where it is more than the trip is late and its slack; null: none is. */
  readonly waits: { readonly job: number; readonly handOverDay: number; readonly by_days: number } | null;
}

/** So many days later is asked about, and so many more than that a site may wait before it counts [day]. Ours: docs/decisions/0355-which-trips-are-tight.md. */
const [asked_days, slack_days] = [7, 7] as const;

/**
 * Which trips must leave about when they do? Each that can be made is timed once more, leaving a week later, all else of the plan as it is: a way may close meanwhile,
 * goods may go to others, a date may be missed.
 *
 * @param ready - the rollout made ready [day]
 * @param now - the plan and what comes of it [day]
 * @param until - only trips that leave before this day of the plan are asked about [day]; left out: all
 * @returns trips of which something of their own breaks that is not broken now, or whose sites wait over two weeks longer [day]
 * @law a trip that breaks nothing and delays nothing by a week is none
 * @definition ours: docs/decisions/0355-which-trips-are-tight.md
 */
export function tightTrips(ready: Retiming, now: TimedPlan, until = Number.POSITIVE_INFINITY): readonly TightTrip[] {
  const { problem } = ready;
  const { plan, outcome } = now;
  return outcome.trips.flatMap((trips, crew) =>
    trips.flatMap(({ leaves, stops }, trip): readonly TightTrip[] => {
      const isMade = stops.some(({ handOverDay }) => handOverDay < problem.horizon_days);
      if (!isMade || leaves >= until) return [];
      const notBefore = Math.floor(leaves) + asked_days;
      const later = {
        trips: plan.trips.map((own, at) =>
          at === crew ? own.map((one, nth) => (nth === trip ? { ...one, notBefore } : one)) : own,
        ),
      };
      const becomes = whatBecomes(ready, now, later);
      // What is late already is later by as much as the trip, and what comes after it has a trip of its own that says so.
      const isOwn = ({ before_by, broken }: NewBreak) =>
        before_by === null && 'trip' in broken && broken.crew === crew && broken.trip === trip;
      const breaks = becomes.breaks.find(isOwn) ?? null;
      const waits = stops
        .flatMap(({ job, handOverDay }, at) => {
          const { handOverDay: then } = becomes.outcome.trips[crew]![trip]!.stops[at]!;
          const by_days = then - handOverDay;
          return then < problem.horizon_days && by_days > asked_days + slack_days
            ? [{ job, handOverDay: then, by_days }]
            : [];
        })
        .reduce<TightTrip['waits']>((most, one) => (most === null || one.by_days > most.by_days ? one : most), null);
      return breaks === null && waits === null ? [] : [{ crew, trip, later_days: asked_days, breaks, waits }];
    }),
  );
}
