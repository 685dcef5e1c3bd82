import type { SheetTrip } from '@eavewell/tables';
import type { AppLanguage } from '@eavewell/words/app';

/** A mass aboard of a trip: at least so much where the kit of a stop could not all be counted. */
export function massAboard(
  mass_kg: number,
  { stops }: Pick<SheetTrip, 'stops'>,
  { say, numbers }: Pick<AppLanguage, 'say' | 'numbers'>,
): string {
  const mass = numbers.quantity(Math.round(mass_kg), 'kg');
  return stops.some(({ isKitInPart }) => isKitInPart) ? say('rolloutTrip.at_least', { mass }) : mass;
}
