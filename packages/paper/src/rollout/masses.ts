import type { Language } from '@eavewell/words';

/** The mass of what lies together, as far as it is known. */
export function massOf(
  {
    mass_kg,
    unweighed_count,
  }: {
    readonly mass_kg: number;
    readonly unweighed_count: number;
  },
  { say, numbers }: Language,
): string {
  if (unweighed_count > 0 && mass_kg === 0) return say('rolloutPapers.weight_not_known');
  const mass = kg(mass_kg, { numbers });
  return unweighed_count > 0 ? say('rolloutPapers.at_least', { mass }) : mass;
}

/** A mass to the tenth under a hundred, whole above. */
export const kg = (mass_kg: number, { numbers }: Pick<Language, 'numbers'>): string =>
  numbers.quantity(mass_kg < 100 ? Math.round(mass_kg * 10) / 10 : Math.round(mass_kg), 'kg');
