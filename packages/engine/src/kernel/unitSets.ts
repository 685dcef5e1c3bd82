import type { DayIndex } from './days.ts';
import type { SiteTreatmentFacts, TreatmentUnitFacts } from './treatmentFacts.ts';

/** Days before and after 1970 that a date can be [day]. Ours: some five hundred years. */
const farthest_days = 2e5;

/**
 * Is this a day one can reckon with?
 *
 * @param day - a day index [day]
 * @returns the day [day]; null where it is none
 * @definition ours
 * @example
 * dayOrNull(Number.NaN) // → null
 */
export function dayOrNull(day: DayIndex | null): DayIndex | null {
  return day !== null && Number.isInteger(day) && Math.abs(day) <= farthest_days ? day : null;
}

/**
 * Is a row of this unit: by its serial, or by none where the site has had one unit alone?
 *
 * @param treatment - what is told of the site's treatment: its units
 * @param unit - the unit
 * @param unitSerial - what the row names; null: nothing
 * @returns true where it is
 * @definition ours
 */
export function isOfUnit(
  treatment: Pick<SiteTreatmentFacts, 'units'>,
  unit: Pick<TreatmentUnitFacts, 'serial'>,
  unitSerial: string | null,
): boolean {
  return unitSerial === null ? treatment.units.length === 1 : unitSerial === unit.serial;
}

/**
 * When was the set in a unit new? On the last day cartridges were put in that are in it still; where none is named, on the day the unit was installed, else on the day the site is handed over.
 *
 * @param treatment - what is told of the site's treatment: its units and cartridges
 * @param unit - the unit
 * @param handOverDay - the day the site is handed over [day]; null where not known
 * @returns the day [day], which may be still to come; null where nobody says
 * @definition ours: docs/methods/wear.md
 */
export function setNewOn(
  treatment: Pick<SiteTreatmentFacts, 'units' | 'cartridges'>,
  unit: TreatmentUnitFacts,
  handOverDay: DayIndex | null,
): DayIndex | null {
  const own = treatment.cartridges.filter(({ unitSerial }) => isOfUnit(treatment, unit, unitSerial));
  if (own.length === 0) return dayOrNull(unit.installedOn ?? handOverDay);
  const inIt = own.filter(({ removedOn }) => removedOn === null);
  const days = inIt.flatMap(({ installedOn }) => dayOrNull(installedOn) ?? []);
  return days.length === 0 ? null : Math.max(...days);
}
