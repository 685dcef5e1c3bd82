import { cautionNamesOf } from '@eavewell/report';
import type { RolloutTripAnswer } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { Text } from '../text/index.ts';

/** What of a trip is put on paper: nothing of it is worked out on the page. */
export type TripOnPaper = Pick<
  RolloutTripAnswer,
  | 'programme'
  | 'plan'
  | 'crew'
  | 'trip'
  | 'legs'
  | 'aboard'
  | 'carriers'
  | 'hauls'
  | 'crew_kg'
  | 'fuel_kg'
  | 'cautions'
  | 'days'
  | 'places'
>;

/** When it is printed: given, so that the same paper is the same file. */
export interface PaperOptions {
  /** `2026-06-09` and `17:20`. */
  readonly printedOn: string;
  readonly printedAt: string | null;
}

/** Names of places and sites by their ids; an id nobody names stands as it is. */
export function namesOf({ places, trip }: Pick<TripOnPaper, 'places' | 'trip'>): (id: string) => string {
  const names = new Map([
    ...places.map(({ placeId, name }) => [placeId, name] as const),
    ...trip.stops.map(({ siteId, name }) => [siteId, name] as const),
  ]);
  return (id) => names.get(id) ?? id;
}

/**
 * The one frame of cautions: those of the trips' legs and loads, run on, the first sentence of each strong. No page of a boat goes without.
 *
 * @param trips - on that paper
 * @param language - its words
 * @returns nothing where nothing is carried
 */
export function cautionsOf(trips: readonly Pick<TripOnPaper, 'legs' | 'cautions'>[], { say }: Language): Text {
  const names = [...new Set(trips.flatMap(({ legs }) => cautionNamesOf(legs)))];
  const known = new Set<string>(names);
  // What else was told of the trip stands in the language it was told in.
  const others = trips.flatMap(({ cautions }) => cautions.filter(({ name }) => !known.has(name)));
  const said = [...names.map((name) => say(`loads.caution.${name}`)), ...new Set(others.map((one) => one.said))];
  return runOn(said);
}

/** Sentences one after the other, the first of each strong: what can hurt. */
export const runOn = (said: readonly string[]) =>
  said.flatMap((one) => {
    const first = /^.*?[.!?:。।؟](?=\s|$)/u.exec(one)?.[0] ?? one;
    return [
      { text: first, weight: 'strong' as const },
      { text: `${one.slice(first.length)} `, weight: 'plain' as const },
    ];
  });

/** At the foot: the programme, the plan, the day. */
export function printedSaid(
  { programme, plan }: Pick<TripOnPaper, 'programme' | 'plan'>,
  { printedOn, printedAt }: PaperOptions,
  { say, numbers }: Language,
): string {
  const given = { programme, plan, day: numbers.date(printedOn) };
  return printedAt === null
    ? say('rolloutPapers.plan_of', given)
    : say('rolloutPapers.plan_of_at', { ...given, time: printedAt });
}
