import { readIsoDay } from '@eavewell/engine';
import type { RolloutSheet, SheetCrew, SheetStrip, SheetTrip } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** How a trip is drawn: what is wrong with it comes before what became of it. */
export type TripLook = 'done' | 'underWay' | 'planned' | 'tight' | 'broken';

/** How a trip is drawn. What is done is a fact: nothing of it is tight any more. */
export function lookOf({ state, broken, isTight }: Pick<SheetTrip, 'state' | 'broken' | 'isTight'>): TripLook {
  if (state === 'done') return 'done';
  if (broken.length > 0) return 'broken';
  return isTight ? 'tight' : state;
}

/** People of all stops of a trip. */
export const peopleOf = ({ stops }: Pick<SheetTrip, 'stops'>): number =>
  stops.reduce((sum, { people }) => sum + people, 0);

/** What is to be known of a trip beside its days: done, under way, tight, broken, overdue, locked. */
export function statesOf(trip: SheetTrip, { say }: Pick<Words, 'say'>): readonly string[] {
  return [
    ...(trip.state === 'planned' ? [] : [say(`rolloutBands.state_${trip.state}`)]),
    ...(trip.broken.length > 0 ? [say('rolloutBands.state_broken')] : []),
    ...(trip.isTight && trip.broken.length === 0 ? [say('rolloutBands.state_tight')] : []),
    ...(trip.isOverdue ? [say('rolloutBands.state_overdue')] : []),
    ...(trip.isLocked ? [say('rolloutBands.state_locked')] : []),
  ];
}

/** A trip in a sentence: for who does not see its hull. */
export function tripLabel(trip: SheetTrip, crew: Pick<SheetCrew, 'name'>, { say, numbers }: Words): string {
  const states = statesOf(trip, { say });
  return say('rolloutBands.trip', {
    crew: crew.name,
    leaves: numbers.date(trip.leaves),
    back: numbers.date(trip.back),
    sites: say('rolloutBands.sites', { count: trip.stops.length }),
    people: numbers.people(peopleOf(trip)),
    nights: say('rolloutBands.nights', { count: trip.nights_count }),
    states: states.length === 0 ? 'none' : 'some',
    statesSaid: states.join(', '),
  });
}

/** Named ways at most in "by". Ours. */
const named_most = 2;

/** By way of what a trip goes out: the names of the ways of its first leg, or what kind they are. */
export function byWayOf(trip: SheetTrip, { ways }: Pick<RolloutSheet, 'ways'>, { say }: Pick<Words, 'say'>): string {
  const wanted = new Set(trip.legs[0]?.wayIds ?? []);
  const gone = ways.filter(({ wayId }) => wanted.has(wayId));
  const names = [...new Set(gone.map(({ name }) => name).filter((name) => name !== null && name !== ''))];
  if (names.length > 0) return names.slice(0, named_most).join(', ');
  return [...new Set(gone.map(({ mode }) => say(`rolloutBands.mode_${mode}`)))].join(', ');
}

/** A crew in a few words: how many, by what, from when on. */
export function crewWords(crew: SheetCrew, sheet: Pick<RolloutSheet, 'from'>, { say, numbers }: Words): string {
  const isLater =
    crew.from !== null && crew.from > sheet.from && crew.trips.every(({ leaves }) => leaves >= crew.from!);
  const values = { people: numbers.people(crew.people), goesBy: crew.goesBy };
  return isLater
    ? say('rolloutBands.crew_from', { ...values, date: numbers.date(crew.from!) })
    : say('rolloutBands.crew_about', values);
}

/** Why a trip leaves when it does. */
export function waitWords({ waitsFor, waited_days }: SheetTrip, { say, numbers }: Words): string {
  const days = numbers.days(Math.round(waited_days));
  return say(waited_days < 0.5 ? 'rolloutBands.waits_nothing' : `rolloutBands.waits_${waitsFor}`, { days });
}

/** When a way is not gone, or slower, in words; a last day that is a guess is told as one. */
export function spanWords(
  { from, to, isToGuessed, said }: SheetStrip['spans'][number],
  { say, numbers }: Words,
): string {
  const values = { from: numbers.date(from), to: numbers.date(to), said };
  return say('rolloutBands.way_span', { ...values, isGuess: isToGuessed ? 'yes' : 'no' });
}

/** A trip with its crew. */
export interface TripOfCrew {
  readonly trip: SheetTrip;
  readonly crew: SheetCrew;
}

/** Trips that are still to leave, the next first. */
export function leavingNext({ crews }: Pick<RolloutSheet, 'crews'>): readonly TripOfCrew[] {
  return crews
    .flatMap((crew) => crew.trips.filter(({ state }) => state === 'planned').map((trip) => ({ trip, crew })))
    .sort((a, b) => (a.trip.leaves === b.trip.leaves ? 0 : a.trip.leaves < b.trip.leaves ? -1 : 1));
}

export type SheetHaul = RolloutSheet['hauls'][number];

/** What leaves next: a trip, or goods that are brought for one. */
export type Going =
  | { readonly kind: 'trip'; readonly day: string; readonly of: TripOfCrew }
  | { readonly kind: 'haul'; readonly day: string; readonly haul: SheetHaul; readonly of: TripOfCrew };

/** Trips that are still to leave and what is brought for them, the next first; on one day what is brought. */
export function goingNext(sheet: Pick<RolloutSheet, 'crews' | 'hauls'>): readonly Going[] {
  const trips = leavingNext(sheet);
  const hauls = sheet.hauls.flatMap((haul): readonly Going[] => {
    const of = trips.find(({ trip }) => trip.tripId === haul.forTrip);
    return of === undefined ? [] : [{ kind: 'haul', day: haul.leaves, haul, of }];
  });
  const all: readonly Going[] = [...hauls, ...trips.map((of): Going => ({ kind: 'trip', day: of.trip.leaves, of }))];
  return all.toSorted((a, b) => (a.day === b.day ? 0 : a.day < b.day ? -1 : 1));
}

/** What is brought for a trip. */
export const haulsFor = ({ hauls }: Pick<RolloutSheet, 'hauls'>, { tripId }: Pick<SheetTrip, 'tripId'>) =>
  hauls.filter(({ forTrip }) => forTrip === tripId);

/** What the words of what is brought are made with. */
export function haulValues(
  { by, from, store, leaves, arrives, back, trips_count }: SheetHaul,
  { places }: { readonly places: readonly { readonly placeId: string; readonly name: string }[] },
  { numbers }: Pick<Words, 'numbers'>,
) {
  const name = (id: string) => places.find(({ placeId }) => placeId === id)?.name ?? id;
  return {
    ...{ by: by ?? '', hasBy: by === null ? 'no' : 'yes', from: name(from), store: name(store), runs: trips_count },
    ...{ leaves: numbers.date(leaves), arrives: numbers.date(arrives) },
    ...{ back: back === null ? '' : numbers.date(back), hasBack: back === null ? 'no' : 'yes' },
  };
}

/** The trip for which goods are brought; null: it is none of those to come. */
export function tripOfHaul(sheet: Pick<RolloutSheet, 'crews'>, { forTrip }: SheetHaul): TripOfCrew | null {
  return tripsOf(sheet).find(({ trip }) => trip.tripId === forTrip) ?? null;
}

/** Nights of all runs, there and back; null where one does not come back within the days looked at. */
export function nightsOut({ runs }: Pick<SheetHaul, 'runs'>): number | null {
  let sum = 0;
  for (const { leaves, back } of runs) {
    const [out, home] = [readIsoDay(leaves), back === null ? null : readIsoDay(back)];
    if (out === null || home === null) return null;
    sum += Math.max(0, home - out);
  }
  return sum;
}

/** What is aboard of all runs, and what one may carry. */
export function haulMass({ loaded_kg, limit_kg, trips_count }: SheetHaul, { say, numbers }: Words): string {
  return say('rolloutBands.haul_load', {
    ...{ kg: numbers.quantity(Math.round(loaded_kg), 'kg'), runs: trips_count },
    ...{ limit: limit_kg === null ? '' : numbers.quantity(Math.round(limit_kg), 'kg') },
    hasLimit: limit_kg === null ? 'no' : 'yes',
  });
}

/** What is brought, in a sentence: for who does not see its box. */
export function haulLabel(haul: SheetHaul, sheet: Pick<RolloutSheet, 'crews' | 'places'>, language: Words): string {
  const { say, numbers } = language;
  const of = tripOfHaul(sheet, haul);
  const known = `${say('rolloutBands.haul', haulValues(haul, sheet, language))} ${haulMass(haul, language)}.`;
  if (of === null) return known;
  const trip = say('rolloutBands.trip_at', { crew: of.crew.name, leaves: numbers.date(of.trip.leaves) });
  return `${known} ${say('rolloutBands.haul_for', { trip })}`;
}

/** Every trip with its crew. */
export const tripsOf = ({ crews }: Pick<RolloutSheet, 'crews'>): readonly TripOfCrew[] =>
  crews.flatMap((crew) => crew.trips.map((trip) => ({ trip, crew })));
