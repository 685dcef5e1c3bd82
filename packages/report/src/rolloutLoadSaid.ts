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
  const { fuel_kg, limit_kg, limitBy, left_kg, loaded_kg, unweighed_count, isKitInPart, presumed_count } = load;
  const inPart = load.stops.filter((stop) => stop.isKitInPart).map(({ name }) => name);
  const known = (mass_kg: number | null) =>
    mass_kg === null ? say('rolloutPapers.weight_not_known') : kg(mass_kg, language);
  const fuel_L = trip.fuel_L ?? 0;
  const limit = limit_kg === null ? null : kg(limit_kg, language);
  const against =
    left_kg === null || limit === null
      ? say('rolloutPapers.total_none')
      : left_kg < 0
        ? say('rolloutPapers.total_over', { limit, over: kg(-left_kg, language) })
        : say(isKitInPart ? 'rolloutPapers.total_left_most' : 'rolloutPapers.total_left', {
            limit,
            left: kg(Math.floor(left_kg), language),
          });
  const litres = numbers.quantity(Math.ceil(fuel_L), 'L');
  const all = { mass_kg: loaded_kg, unweighed_count: unweighed_count + (fuel_kg === null ? 1 : 0), isKitInPart };
  return [
    ...(fuel_L > 0 ? [{ said: say('rolloutPapers.fuel_line', { litres }), mass: known(fuel_kg) }] : []),
    { said: `${say('rolloutPapers.parts_and_fuel')}; ${against}`, mass: massOf(all, language) },
    ...(limit === null || limitBy === null
      ? []
      : [{ said: say('rolloutPapers.limit_of', { limit, ...limitBy }), mass: '' }]),
    ...(isKitInPart ? [{ said: say('rolloutPapers.kit_in_part', { sites: inPart.join(', ') }), mass: '' }] : []),
    ...(presumed_count > 0 ? [{ said: say('rolloutPapers.presumed_about', { count: presumed_count }), mass: '' }] : []),
    ...(unweighed_count > 0 ? [{ said: say('rolloutPapers.unweighed', { count: unweighed_count }), mass: '' }] : []),
    { said: say('rolloutPapers.crew_line', { people: numbers.given(crew.people, '') }), mass: known(crew_kg) },
  ];
}
