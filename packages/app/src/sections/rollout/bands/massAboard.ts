import type { SheetTrip } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';

/** A mass aboard of a trip: at least so much where the kit of a stop could not all be counted, or not all be weighed. */
export function massAboard(
  mass_kg: number,
  { stops }: Pick<SheetTrip, 'stops'>,
  { say, numbers }: Pick<AppLanguage, 'say' | 'numbers'>,
): string {
  const mass = numbers.quantity(Math.round(mass_kg), 'kg');
  return stops.some(({ isKitInPart, isUnweighed }) => isKitInPart || isUnweighed)
    ? say('rolloutTrip.at_least', { mass })
    : mass;
}
