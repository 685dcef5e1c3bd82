import { kg, type StopLoad } from '@eavewell/report/trip';
import type { AppLanguage } from '@eavewell/words/app';

/** The mass of what lies together, as far as it is known. */
export function massOf(
  { mass_kg, unweighed_count, isKitInPart }: Pick<StopLoad, 'mass_kg' | 'unweighed_count' | 'isKitInPart'>,
  language: Pick<AppLanguage, 'say' | 'numbers'>,
): string {
  const { say } = language;
  if (unweighed_count > 0 && mass_kg === 0) return say('rolloutTrip.weigh');
  const mass = kg(mass_kg, language);
  return unweighed_count > 0 || isKitInPart ? say('rolloutTrip.at_least', { mass }) : mass;
}
