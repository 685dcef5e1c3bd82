import type { RoofMaterial } from '../../kernel/index.ts';
import { guidelineValues, least_pH, type Substance } from './constants.ts';

/** What water meets on its way to the tank, as a crew can see it. Null: nobody looked. */
export interface CollectionGiven {
  readonly material: RoofMaterial | null;
  readonly flashing: 'lead' | 'other' | 'none' | null;
  readonly nails: 'leadHeaded' | 'other' | null;
  readonly paint: 'none' | 'forDrinkingWater' | 'lead' | 'notKnown' | null;
  readonly timber: 'untreated' | 'copperChromeArsenic' | 'none' | null;
  /** Tar or bitumen on the roof, in its gutters or seams. */
  readonly isTarred: boolean | null;
  /** A smelter, a mine or heavy traffic within reach of the wind. */
  readonly isNearFumes: boolean | null;
  /** Trees over the roof, or birds that roost on it. */
  readonly isUnderTreesOrBirds: boolean | null;
  readonly water_pH: number | null;
}

/** Warnings of what water may pick up before it reaches a tank. */
export type ChemistryWarningCode =
  | 'leadFlashing'
  | 'leadNails'
  | 'leadPaint'
  | 'paintNotKnown'
  | 'leadNotLookedFor'
  | 'acidWithMetal'
  | 'acidityNotMeasured'
  | 'treatedTimber'
  | 'tar'
  | 'fumes'
  | 'treesOrBirds'
  | 'asbestosDust'
  | 'zincHidesGerms';

/** One warning, and what to have measured. */
export interface ChemistryWarning {
  readonly code: ChemistryWarningCode;
  /** Substances to be tested for, worst first. */
  readonly tests: readonly Substance[];
  readonly source: string;
}

/** What to test for, and who says so. */
const warnings: Readonly<Record<ChemistryWarningCode, Omit<ChemistryWarning, 'code'>>> = {
  leadFlashing: { tests: ['lead'], source: 'magyar-roofs, lead flashing in Melbourne' },
  leadNails: { tests: ['lead'], source: 'massey-2017, lead-headed nails' },
  leadPaint: { tests: ['lead'], source: 'enhealth-2011, roofs to keep out of use (from memory)' },
  paintNotKnown: { tests: ['lead', 'chromium'], source: 'enhealth-2011, roofs to keep out of use (from memory)' },
  leadNotLookedFor: { tests: ['lead'], source: 'chubaka-2018, half of the samples over the limit for lead' },
  acidWithMetal: { tests: ['lead', 'cadmium', 'copper', 'zinc'], source: 'who-gdwq-4, chapter 8 (from memory)' },
  acidityNotMeasured: { tests: [], source: 'who-gdwq-4, chapter 8 (from memory)' },
  treatedTimber: {
    tests: ['arsenic', 'chromium', 'copper'],
    source: 'enhealth-2011, roofs to keep out of use (from memory)',
  },
  tar: { tests: [], source: 'enhealth-2011, roofs to keep out of use (from memory)' },
  fumes: { tests: ['lead', 'cadmium', 'arsenic'], source: 'enhealth-2011, air pollution (from memory)' },
  treesOrBirds: { tests: [], source: 'enhealth-2011, animals on roofs (from memory)' },
  asbestosDust: { tests: [], source: 'who-gdwq-4, chapter 12, asbestos (from memory)' },
  zincHidesGerms: { tests: ['zinc'], source: 'massey-2017, zinc and E. coli' },
};

/**
 * What may the water of a roof pick up before it reaches the tank? Warnings, not verdicts: whether it does is told by a laboratory alone. What nobody looked at is not taken as
 * absent.
 *
 * @param given - roof, flashing, nails, paint, timber, surroundings and pH [pH]
 * @returns warnings in a set order, each with what to test for
 * @law looking never adds a warning but for what was found
 * @source enhealth-2011, roofs to keep out of use (from memory); magyar-roofs; chubaka-2018
 * @definition ours: docs/decisions/0226-warnings-of-chemistry.md
 */
export function collectionWarnings(given: CollectionGiven): readonly ChemistryWarning[] {
  const hasMetal = given.material === 'corrugatedMetal' || given.flashing === 'lead' || given.nails === 'leadHeaded';
  const isBare = given.material === 'corrugatedMetal' && (given.paint === 'none' || given.paint === null);
  const raised: Readonly<Record<ChemistryWarningCode, boolean>> = {
    leadFlashing: given.flashing === 'lead',
    leadNails: given.nails === 'leadHeaded',
    leadPaint: given.paint === 'lead',
    paintNotKnown: given.paint === 'notKnown',
    leadNotLookedFor: given.flashing === null || given.nails === null || given.paint === null,
    acidWithMetal: hasMetal && given.water_pH !== null && given.water_pH < least_pH,
    acidityNotMeasured: hasMetal && given.water_pH === null,
    treatedTimber: given.timber === 'copperChromeArsenic',
    tar: given.isTarred === true || given.material === 'shingle',
    fumes: given.isNearFumes === true,
    treesOrBirds: given.isUnderTreesOrBirds === true,
    asbestosDust: given.material === 'fibreCement',
    zincHidesGerms: isBare,
  };
  return (Object.keys(raised) as ChemistryWarningCode[])
    .filter((code) => raised[code])
    .map((code) => ({ code, ...warnings[code] }));
}

/** A substance of which there is more than there may be. */
export interface OverGuideline {
  readonly substance: Substance;
  readonly measured_mg_per_L: number;
  readonly most_mg_per_L: number;
  readonly basis: 'health' | 'taste';
}

/**
 * Of which substances is there more in the water than there may be? A laboratory's figures against WHO's guideline values; local values go before them.
 *
 * @param measured_mg_per_L - what was measured [mg/L] by substance; null or left out where it was not
 * @returns those over, those that harm first
 * @law a value at the guideline is not over it
 * @source who-gdwq-4, Annex 3 and chapter 10 (from memory)
 */
export function overGuideline(
  measured_mg_per_L: Readonly<Partial<Record<Substance, number | null>>>,
): readonly OverGuideline[] {
  const over = (Object.keys(guidelineValues) as Substance[]).flatMap((substance) => {
    const measured = measured_mg_per_L[substance] ?? null;
    const { most_mg_per_L, basis } = guidelineValues[substance];
    return measured !== null && measured > most_mg_per_L
      ? [{ substance, measured_mg_per_L: measured, most_mg_per_L, basis }]
      : [];
  });
  return [...over.filter(({ basis }) => basis === 'health'), ...over.filter(({ basis }) => basis === 'taste')];
}
