import type { EngineProblemCode, RoofFacts } from '../../kernel/index.ts';

/** Warnings of what water may pick up on a roof. */
export type RoofWarningCode = Extract<
  EngineProblemCode,
  | 'safety.lead'
  | 'safety.lead_not_looked_for'
  | 'safety.coating'
  | 'safety.asbestos'
  | 'safety.trees'
  | 'safety.bare_metal'
>;

/** What a roof is told by. */
export type RoofLooked = Pick<RoofFacts, 'material' | 'coating' | 'hasLead' | 'hasAsbestos' | 'isUnderTrees'>;

/**
 * What may the water of a roof pick up before it reaches the tank? Warnings, not verdicts: whether it does is told by a laboratory alone, and no treatment here takes out what is
 * dissolved. Lead nobody looked for is not absent, nor asbestos in sheets of cement nobody asked about. Bare zinc lowers E. coli, so that few of it are no proof of a clean roof.
 *
 * @param roof - what covers it, its coating, lead, asbestos, trees; null where nobody said
 * @returns codes in a set order
 * @problem safety.lead - there is lead in flashing, nails or paint
 * @problem safety.lead_not_looked_for - nobody said whether there is
 * @problem safety.coating - it is painted with nobody knows what, or tarred
 * @problem safety.asbestos - it has asbestos, or sheets of cement of which nobody said
 * @problem safety.trees - trees, or birds and beasts, are over it
 * @problem safety.bare_metal - it is metal without a coating
 * @law a warning goes only where somebody looked and found nothing
 * @source enhealth-2011, roofs to keep out of use (from memory); magyar-roofs; massey-2017; chubaka-2018
 * @definition ours: docs/decisions/0226-warnings-of-chemistry.md
 */
export function roofWarnings(roof: RoofLooked): readonly RoofWarningCode[] {
  const { material, coating, hasLead, hasAsbestos, isUnderTrees } = roof;
  const raised: Readonly<Record<RoofWarningCode, boolean>> = {
    'safety.lead': hasLead === true,
    'safety.lead_not_looked_for': hasLead === null,
    'safety.coating': coating === 'unknownPaint' || coating === 'bitumen',
    'safety.asbestos': hasAsbestos === true || (hasAsbestos === null && material === 'fibreCement'),
    'safety.trees': isUnderTrees === true,
    'safety.bare_metal': material === 'corrugatedMetal' && (coating === 'none' || coating === null),
  };
  return (Object.keys(raised) as RoofWarningCode[]).filter((code) => raised[code]);
}
