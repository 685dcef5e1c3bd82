import type { Language } from '@eavewell/words';
import { daysOfTrip, type TripDated, type TripDay, type TripEvent } from './rolloutDays.ts';
import { massAboard } from './rolloutLoadSaid.ts';

/** A day of a trip in sentences. */
export interface TripDaySaid extends Pick<TripDay, 'day' | 'isOnRiver'> {
  readonly said: readonly string[];
}

/**
 * What does a crew do on a trip, in sentences, and where is each night spent?
 *
 * @param given - the trip with its legs and nights
 * @param store - where it loads, where the first leg does not say so
 * @param name - of places and sites by their ids
 * @param language - of the sentences
 * @returns days in order; one without anything new is left out, and the night before it says until when
 * @definition ours: docs/decisions/0368-paper-of-a-trip.md
 */
export function tripDaysSaid(
  given: TripDated,
  store: string,
  name: (id: string) => string,
  language: Language,
): readonly TripDaySaid[] {
  const { say } = language;
  const days = daysOfTrip(given, store);
  return days.map((day, nth) => {
    const to = goesTo(days, nth);
    return {
      ...{ day: day.day, isOnRiver: day.isOnRiver },
      said: [
        ...day.events.flatMap((event) => eventSaid(event, given, name, language)),
        ...restSaid(given, day, days[nth + 1]?.day ?? null, language),
        ...(to === null ? [] : [say('rolloutPapers.on_way', { place: name(to) })]),
        ...nightSaid(day, days[nth + 1]?.day ?? null, name, language),
      ],
    };
  });
}

/** Rest on a day, and on those after it that nothing else is told of. */
function restSaid(
  { days }: Pick<TripDated, 'days'>,
  { day, isRest }: TripDay,
  next: string | null,
  { say, numbers }: Language,
): readonly string[] {
  if (!isRest) return [];
  const count = days.filter((one) => one.isRest === true && one.day >= day && (next === null || one.day < next)).length;
  return [
    count === 1 ? say('rolloutPapers.day_rest') : say('rolloutPapers.days_rest', { count: numbers.given(count, '') }),
  ];
}

/** Where the night is spent, and until when, where days follow that are like it. */
function nightSaid(
  { day, sleeps, night }: TripDay,
  next: string | null,
  name: (id: string) => string,
  { say, numbers }: Language,
): readonly string[] {
  if (sleeps === null) return night === null ? [] : [night];
  const isOne = next === null || Date.parse(next) - Date.parse(day) <= day_ms;
  const place = name(sleeps);
  return [
    ...(night === null ? [] : [night]),
    isOne ? say('rolloutPapers.night', { place }) : say('rolloutPapers.nights', { place, day: numbers.date(next) }),
  ];
}

const day_ms = 86_400_000;

/** Where a crew is on its way to on a day on which nothing is begun or ended; null: something is. */
function goesTo(days: readonly TripDay[], nth: number): string | null {
  const { events, isRest } = days[nth]!;
  if (events.length > 0 || isRest) return null;
  const gone = days.slice(0, nth).flatMap((day) => day.events.flatMap((one) => (one.kind === 'go' ? [one.leg] : [])));
  return gone.at(-1)?.to ?? null;
}

/** What is done, in sentences. */
function eventSaid(
  event: TripEvent,
  { trip, aboard }: TripDated,
  name: (id: string) => string,
  language: Language,
): readonly string[] {
  const { say, numbers } = language;
  if (event.kind === 'load') {
    const pieces = numbers.given(
      aboard.reduce((sum, { count }) => sum + count, 0),
      '',
    );
    const mass = trip.kg === null ? say('rolloutPapers.weight_not_known') : massAboard(trip.kg, trip.stops, language);
    return [say('rolloutPapers.load', { place: name(event.placeId), mass, pieces, trip: trip.tripId })];
  }
  if (event.kind === 'home') return [say('rolloutPapers.home', { place: name(event.placeId) })];
  if (event.kind === 'go') return legSaid(event.leg, name, language);
  const { stop } = event;
  const people = numbers.people(stop.people);
  if (event.kind === 'work') return [say('rolloutPapers.work', { site: stop.name, people })];
  const after = massAboard(event.aboard_kg, event.isAboardFor, language);
  return [
    stop.served === null
      ? say('rolloutPapers.hand_over_undated', { site: stop.name, people })
      : say('rolloutPapers.hand_over', { site: stop.name, people, day: numbers.date(stop.served) }),
    ...(event.aboard_kg > 0 ? [say('rolloutPapers.aboard_after', { mass: after })] : []),
  ];
}

/** A leg in sentences: by which ways, what is changed where, how many porters. */
export function legSaid(
  leg: TripDated['legs'][number],
  name: (id: string) => string,
  { say, numbers }: Language,
): readonly string[] {
  const [from, to] = [name(leg.from), name(leg.to)];
  if (leg.stretches.length === 0) return [say('rolloutPapers.no_way', { from, to })];
  // A tenth of an hour, and no leg of none.
  const hours = (time_h: number) => numbers.quantity(Math.max(0.1, Math.round(time_h * 10) / 10), 'h');
  const stretches = leg.stretches.map((one) =>
    say('rolloutPapers.stretch', { mode: one.mode, to: name(one.to), hours: hours(one.hours_h) }),
  );
  const changes = leg.stretches
    .filter(({ changeOver_h }) => changeOver_h > 0)
    .map((one) => say('rolloutPapers.change_over', { place: name(one.from), hours: hours(one.changeOver_h) }));
  const porters = leg.porters_count;
  return [
    say('rolloutPapers.go', { from, to, stretches: stretches.join('; ') }),
    ...changes,
    ...(porters > 0 ? [say('rolloutPapers.porters', { count: numbers.given(porters, '') })] : []),
  ];
}
