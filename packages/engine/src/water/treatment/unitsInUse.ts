import type { DayIndex, SiteFacts, SiteTreatmentFacts, TreatmentUnitFacts } from '../../kernel/index.ts';

/** The units of a site that are there. */
export function unitsInUse({ treatment }: SiteFacts): readonly TreatmentUnitFacts[] {
  return treatment.units.filter(({ removedOn }) => removedOn === null);
}

/** Is a row of this unit: by its serial, or by none where the site has had one unit alone? */
export function isOfUnit(
  { units }: SiteTreatmentFacts,
  { serial }: TreatmentUnitFacts,
  unitSerial: string | null,
): boolean {
  return unitSerial === null ? units.length === 1 : unitSerial === serial;
}

/** The day the set in a unit was new: that of its newest cartridge, else that of the unit; null where nobody says. */
export function newSince(treatment: SiteTreatmentFacts, unit: TreatmentUnitFacts): DayIndex | null {
  const inIt = treatment.cartridges.filter(
    ({ unitSerial, removedOn }) => removedOn === null && isOfUnit(treatment, unit, unitSerial),
  );
  const days = inIt.flatMap(({ installedOn }) => (installedOn === null ? [] : [installedOn]));
  return days.length > 0 ? Math.max(...days) : unit.installedOn;
}
