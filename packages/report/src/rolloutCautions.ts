import type { RolloutLegReport, RolloutTripReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/** Of a load that goes on a river, or may: a leg of which no way is known; and of every load. */
const ofBoats = ['lifeVests', 'localSkipperDecides', 'freeboardMark', 'nobodyOnLoad', 'weather', 'noDark'] as const;
const ofAll = ['lashed', 'dangerApart', 'lifting'] as const;

/** A caution of a trip, as `loads.caution` has it. */
export type TripCaution = (typeof ofBoats)[number] | (typeof ofAll)[number];

/** Does a trip go on a river, or may it: a leg of which no way is known? */
export const mayBeAfloat = (legs: readonly Pick<RolloutLegReport, 'stretches'>[]): boolean =>
  legs.some(({ stretches }) => stretches.length === 0 || stretches.some(({ mode }) => mode === 'river'));

/**
 * Which cautions stand wherever the load of a trip is told? No load of a boat goes without those of boats.
 *
 * @param legs - of the trip
 * @returns their names
 * @definition ours: docs/decisions/0345-what-a-crew-is-given.md
 */
export const cautionNamesOf = (legs: readonly Pick<RolloutLegReport, 'stretches'>[]): readonly TripCaution[] => [
  ...(mayBeAfloat(legs) ? ofBoats : []),
  ...ofAll,
];

/** What is told whenever the load of a trip is told: no load of a boat goes without it. */
export function cautionsOfTrip(legs: readonly RolloutLegReport[], { say }: Language): RolloutTripReport['cautions'] {
  return cautionNamesOf(legs).map((name) => ({ name, said: say(`loads.caution.${name}`) }));
}
