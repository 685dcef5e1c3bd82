import type { RolloutTripAnswer } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import type { TripLoad } from './rolloutLoad.ts';

/** A mass that is a sum: lines of it may have none, and things may be left out of it. */
export interface MassOf {
  readonly mass_kg: number;
  readonly unweighed_count: number;
  readonly isKitInPart: boolean;
}

/** The mass of what lies together, as far as it is known. */
export function massOf({ mass_kg, unweighed_count, isKitInPart }: MassOf, { say, numbers }: Language): string {
  if (unweighed_count > 0 && mass_kg === 0) return say('rolloutPapers.weight_not_known');
  const mass = kg(mass_kg, { numbers });
  return unweighed_count > 0 || isKitInPart ? say('rolloutPapers.at_least', { mass }) : mass;
}

/**
 * A mass that is aboard for these stops: at least so much where the kit of one could not all be counted.
 *
 * @param mass_kg - as far as it is known [kg]
 * @param stops - what it is for
 * @param language - words
 * @returns the mass in words
 * @definition ours: docs/decisions/0395-what-a-plan-leans-on.md
 */
export const massAboard = (
  mass_kg: number,
  stops: readonly { readonly isKitInPart: boolean; readonly isUnweighed: boolean }[],
  language: Language,
): string =>
  massOf(
    {
      ...{ mass_kg, unweighed_count: stops.filter(({ isUnweighed }) => isUnweighed).length },
      isKitInPart: stops.some(({ isKitInPart }) => isKitInPart),
    },
    language,
  );

/** A mass to the tenth under a hundred, whole above. */
export const kg = (mass_kg: number, { numbers }: Pick<Language, 'numbers'>): string =>
  numbers.quantity(mass_kg < 100 ? Math.round(mass_kg * 10) / 10 : Math.round(mass_kg), 'kg');

/** A line under what is aboard, and its mass where it has one. */
export interface TotalSaid {
  readonly said: string;
  readonly mass: string;
}

/**
 * What stands under the list of a load: fuel, all of it against the limit and where that comes from, and the crew beside it.
 *
 * @param load - what is aboard
 * @param trip - whose it is
 * @param language - words
 * @returns lines in order, the crew the last
 * @definition ours: docs/decisions/0383-people-are-beside-the-limit.md
 */
export function totalsOfLoad(
  load: TripLoad,
  { crew, crew_kg, trip }: Pick<RolloutTripAnswer, 'crew' | 'crew_kg' | 'trip'>,
  language: Language,
): readonly TotalSaid[] {
  const { say, numbers } = language;
  return [
    ...sumsOf(load, trip.fuel_L ?? 0, language),
    {
      said: say('rolloutPapers.crew_line', { people: numbers.given(crew.people, '') }),
      mass: massKnown(crew_kg, language),
    },
  ];
}

/**
 * What stands under the list of what is brought for a trip: fuel, all of it against the limit, how often it goes, and people beside it.
 *
 * @param load - of all runs together
 * @param haul - whose it is
 * @param language - words
 * @returns lines in order
 * @definition ours: docs/decisions/0401-runs-between-stores.md
 */
export function totalsOfHaul(
  load: TripLoad,
  { fuel_L, limit_kg, trips_count }: RolloutTripAnswer['hauls'][number],
  language: Language,
): readonly TotalSaid[] {
  const { say } = language;
  const each = limit_kg === null ? null : kg(limit_kg, language);
  return [
    ...sumsOf(load, fuel_L, language),
    ...(each === null || trips_count < 2
      ? []
      : [{ said: say('rolloutPapers.haul_each', { runs: trips_count, limit: each }), mass: '' }]),
    { said: say('rolloutPapers.haul_people'), mass: '' },
  ];
}

const massKnown = (mass_kg: number | null, language: Language): string =>
  mass_kg === null ? language.say('rolloutPapers.weight_not_known') : kg(mass_kg, language);

/** How a load stands against its limit. */
export function againstSaid(
  { limit_kg, left_kg, isKitInPart }: Pick<TripLoad, 'limit_kg' | 'left_kg' | 'isKitInPart'>,
  language: Language,
): string {
  const { say } = language;
  if (limit_kg === null || left_kg === null) return say('rolloutPapers.total_none');
  const limit = kg(limit_kg, language);
  return left_kg < 0
    ? say('rolloutPapers.total_over', { limit, over: kg(-left_kg, language) })
    : say(isKitInPart ? 'rolloutPapers.total_left_most' : 'rolloutPapers.total_left', {
        limit,
        left: kg(Math.floor(left_kg), language),
      });
}

function sumsOf(load: TripLoad, fuel_L: number, language: Language): readonly TotalSaid[] {
  const { say, numbers } = language;
  const { fuel_kg, limit_kg, limitBy, loaded_kg, unweighed_count, isKitInPart, presumed_count } = load;
  const inPart = load.stops.filter((stop) => stop.isKitInPart).map(({ name }) => name);
  const limit = limit_kg === null ? null : kg(limit_kg, language);
  const litres = numbers.quantity(Math.ceil(fuel_L), 'L');
  const all = { mass_kg: loaded_kg, unweighed_count: unweighed_count + (fuel_kg === null ? 1 : 0), isKitInPart };
  return [
    ...(fuel_L > 0 ? [{ said: say('rolloutPapers.fuel_line', { litres }), mass: massKnown(fuel_kg, language) }] : []),
    { said: `${say('rolloutPapers.parts_and_fuel')}; ${againstSaid(load, language)}`, mass: massOf(all, language) },
    ...(limit === null || limitBy === null
      ? []
      : [{ said: say('rolloutPapers.limit_of', { limit, ...limitBy }), mass: '' }]),
    ...(isKitInPart ? [{ said: say('rolloutPapers.kit_in_part', { sites: inPart.join(', ') }), mass: '' }] : []),
    ...(presumed_count > 0 ? [{ said: say('rolloutPapers.presumed_about', { count: presumed_count }), mass: '' }] : []),
    ...(unweighed_count > 0 ? [{ said: say('rolloutPapers.unweighed', { count: unweighed_count }), mass: '' }] : []),
  ];
}
