import type { DayIndex, SiteTreatmentFacts, TreatmentUnitFacts } from '../../kernel/index.ts';

/**
 * Which units in use take nothing out today: those still to be installed, and those whose cartridges, all or some of them, were taken out with none put in for them? A unit of which no cartridge is named is taken to have its own.
 *
 * @returns their serials
 */
export function unitsNotInPlace(treatment: SiteTreatmentFacts, today: DayIndex | null): readonly string[] {
  const inUse = treatment.units.filter(({ removedOn }) => removedOn === null);
  return inUse
    .filter((unit) => isAhead(unit.installedOn, today) || lacksCartridges(treatment, unit, today))
    .map(({ serial }) => serial);
}

/** Is it still to come? */
function isAhead(day: DayIndex | null, today: DayIndex | null): boolean {
  return day !== null && today !== null && day > today;
}

function lacksCartridges(
  { units, cartridges }: SiteTreatmentFacts,
  { serial, figures }: TreatmentUnitFacts,
  today: DayIndex | null,
): boolean {
  const own = cartridges.filter(({ unitSerial }) => (unitSerial === null ? units.length === 1 : unitSerial === serial));
  const inIt = own.filter(({ installedOn, removedOn }) => removedOn === null && !isAhead(installedOn, today));
  if (own.length === 0) return false;
  // A set may be written down as one row: what was in it at once is what is missed.
  const hadAtOnce = own.map(({ installedOn }) => {
    const day = installedOn ?? -Infinity;
    return own.filter((one) => (one.installedOn ?? -Infinity) <= day && (one.removedOn ?? Infinity) > day).length;
  });
  const wanted = Math.min(figures?.cartridges_count ?? 1, Math.max(...hadAtOnce));
  return inIt.length < Math.max(1, wanted);
}
