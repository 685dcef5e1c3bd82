import type { RolloutSheet, SheetCrew, SheetStop, SheetStrip, SheetTrip } from '@eavewell/tables';
import { unsureAfter } from '../bands/guessed.ts';
import { meets, type Week } from './weeks.ts';

/** Something a crew does in a week. `from` and `to` are the same where it takes a day. */
export interface WeekEvent {
  readonly kind: 'leaves' | 'works' | 'back';
  readonly from: string;
  readonly to: string;
  readonly trip: SheetTrip;
  /** Where it works. */
  readonly stop: SheetStop | null;
}

/** What a crew does in a week, in the order of its days. */
export interface CrewOfWeek {
  readonly crew: SheetCrew;
  /** Trips that are out in that week. */
  readonly trips: readonly SheetTrip[];
  readonly events: readonly WeekEvent[];
}

/** Ways that are closed or slower in a week. */
export interface ClosedOfWeek {
  readonly strip: SheetStrip;
  readonly span: SheetStrip['spans'][number];
  /** Its last day is before the week, and was a guess: nobody knows whether it is over. */
  readonly isUnsure: boolean;
}

/** What happens in a week of a plan. */
export interface WeekHappens {
  /** Those that are out, in the order of the crews. */
  readonly crews: readonly CrewOfWeek[];
  /** Those that are not. */
  readonly idle: readonly SheetCrew[];
  /** Ways that cannot be gone first. */
  readonly closed: readonly ClosedOfWeek[];
  /** Stops from which people drink for the first time in that week. */
  readonly served: readonly SheetStop[];
}

/** What happens in a week, by crew: who leaves, works where, is back; which ways are closed; who drinks from then on. */
export function weekHappens(sheet: RolloutSheet, week: Week): WeekHappens {
  const all = sheet.crews.map((crew) => ofCrew(crew, week));
  const closed = sheet.strips.flatMap((strip) => ofStrip(strip, week));
  const stops = sheet.crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
  return {
    crews: all.filter(({ trips }) => trips.length > 0),
    idle: all.filter(({ trips }) => trips.length === 0).map(({ crew }) => crew),
    closed: closed.toSorted((a, b) => gravityOf(a) - gravityOf(b)),
    served: stops
      .filter(({ isWayUp, served }) => isWayUp && meets(week, served, served))
      .sort((a, b) => a.served!.localeCompare(b.served!)),
  };
}

/** Can it not be gone at all, as far as is known? */
export const isClosed = ({ span: { kind }, isUnsure }: Pick<ClosedOfWeek, 'span' | 'isUnsure'>): boolean =>
  kind !== 'slower' && !isUnsure;

/** What cannot be gone first, then what perhaps cannot, then what is slower. */
const gravityOf = (one: ClosedOfWeek): number => (isClosed(one) ? 0 : one.span.kind === 'slower' ? 2 : 1);

function ofStrip(strip: SheetStrip, week: Week): readonly ClosedOfWeek[] {
  const known = strip.spans.filter(({ from, to }) => meets(week, from, to));
  const unsure = strip.spans.filter((span) => {
    const after = unsureAfter(span, strip);
    return !known.includes(span) && after !== null && meets(week, after.from, after.to);
  });
  const all = [
    ...known.map((span) => ({ span, isUnsure: false })),
    ...unsure.map((span) => ({ span, isUnsure: true })),
  ];
  return all.map((one) => ({ strip, ...one }));
}

function ofCrew(crew: SheetCrew, week: Week): CrewOfWeek {
  const trips = crew.trips.filter(({ leaves, back }) => meets(week, leaves, back));
  return { crew, trips, events: trips.flatMap((trip) => eventsOf(trip, week)) };
}

function eventsOf(trip: SheetTrip, week: Week): readonly WeekEvent[] {
  const { leaves, back } = trip;
  const works = trip.stops.flatMap((stop): readonly WeekEvent[] => {
    const [from, to] = workOf(stop);
    return from === null || to === null || !stop.isWayUp ? [] : [{ kind: 'works', from, to, trip, stop }];
  });
  const all: readonly WeekEvent[] = [
    { kind: 'leaves', from: leaves, to: leaves, trip, stop: null },
    ...works,
    { kind: 'back', from: back, to: back, trip, stop: null },
  ];
  return all.filter(({ from, to }) => meets(week, from, to));
}

/** From which day to which there is work at a stop, as far as it is known. */
export function workOf({ arrives, starts, handOver }: SheetStop): readonly [from: string | null, to: string | null] {
  const from = starts ?? arrives ?? handOver;
  return [from, handOver ?? from];
}

/**
 * Do people drink at the end of a week?
 *
 * @returns true of sites that were handed over before the plan, and of those whose day of service has come
 */
export function servedBy(sheet: RolloutSheet, week: Week): (siteId: string) => boolean {
  const waiting = new Set(sheet.candidates.map(({ siteId }) => siteId));
  const served = new Map<string, string | null>();
  for (const { trips } of sheet.crews)
    for (const { stops } of trips)
      for (const stop of stops)
        if (stop.isWayUp || stop.isHandedOver)
          served.set(stop.siteId, stop.served ?? (stop.isHandedOver ? stop.handOver : null));
  return (siteId) => {
    if (!served.has(siteId)) return !waiting.has(siteId);
    const day = served.get(siteId);
    return day !== null && day !== undefined && day <= week.to;
  };
}
