import type { SiteFacts, TreatmentUnitFacts } from '../../kernel/index.ts';

/** The units of a site that are there. */
export function unitsInUse({ treatment }: SiteFacts): readonly TreatmentUnitFacts[] {
  return treatment.units.filter(({ removedOn }) => removedOn === null);
}
