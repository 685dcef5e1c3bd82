import { guidelineValues, type Substance } from './constants.ts';
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
