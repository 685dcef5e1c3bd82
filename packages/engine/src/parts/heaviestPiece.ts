import type { HeaviestPiece, PartFacts } from '../kernel/index.ts';
import { bestLift_kg, floorToTruck, twoPeople_kg } from './constants.ts';
import { liftingLimit_kg } from './liftingLimit.ts';

/** A part, as far as lifting it goes. */
export type LiftedPart = Pick<PartFacts, 'partId' | 'kind' | 'name' | 'mass_kg'>;

/**
 * How many people does a piece of so many kilograms want?
 *
 * @param mass_kg - its mass [kg]
 * @returns `one` up to 23 kg, `two` up to 30 kg, else `more`
 * @source niosh-94-110, load constant; 30 kg for two is ours: docs/decisions/0186-what-people-may-lift.md
 * @example
 * carriedBy(20) // → 'one'
 * carriedBy(24) // → 'two'
 * carriedBy(60) // → 'more'
 */
export function carriedBy(mass_kg: number): HeaviestPiece['carriedBy'] {
  if (mass_kg <= bestLift_kg) return 'one';
  return mass_kg <= twoPeople_kg ? 'two' : 'more';
}

/**
 * How many people does it take to lift a piece by hand?
 *
 * @param mass_kg - its mass [kg]
 * @returns one up to 23 kg, two up to 30 kg; beyond that one for every 15 kg, as each of the two has then [person]
 * @source niosh-94-110, load constant; 30 kg for two, and as much a head for more, is ours: docs/decisions/0186-what-people-may-lift.md
 * @example
 * peopleToLift(31) // → 3
 */
export function peopleToLift(mass_kg: number): number {
  if (mass_kg <= bestLift_kg) return 1;
  return Math.max(2, Math.ceil(mass_kg / (twoPeople_kg / 2)));
}

/**
 * Which is the heaviest piece that is carried to a site, and may one person lift it? Of the parts the site names, else of the catalogue; the
 * kit of a whole site is no piece.
 *
 * @param usedPartIds - ids of the parts the site names [text]
 * @param parts - the catalogue, its masses [kg]
 * @returns the piece, the limit of one person from the floor to a truck [kg] and the index [factor]; null where no part has a mass
 * @law the order of the catalogue changes nothing
 * @source niosh-94-110, equation
 */
export function heaviestPiece(
  usedPartIds: readonly (string | null)[],
  parts: readonly LiftedPart[],
): HeaviestPiece | null {
  const pieces = parts.filter(({ kind, mass_kg }) => kind !== 'site' && mass_kg !== null && mass_kg > 0);
  const used = pieces.filter(({ partId }) => usedPartIds.includes(partId));
  const from = used.length > 0 ? 'site' : 'catalogue';
  const heaviest = (from === 'site' ? used : pieces).reduce<LiftedPart | null>(heavier, null);
  const limit_kg = liftingLimit_kg(floorToTruck);
  if (heaviest === null || limit_kg === null) return null;
  const mass_kg = heaviest.mass_kg!;
  return {
    partId: heaviest.partId,
    name: heaviest.name,
    mass_kg,
    from,
    liftingLimit_kg: limit_kg,
    liftingIndex_factor: mass_kg / limit_kg,
    carriedBy: carriedBy(mass_kg),
  };
}

function heavier(most: LiftedPart | null, one: LiftedPart): LiftedPart {
  if (most === null || one.mass_kg! > most.mass_kg!) return one;
  return one.mass_kg === most.mass_kg && one.partId < most.partId ? one : most;
}
