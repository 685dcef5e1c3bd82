import { consentSteps } from './constants.ts';

/**
 * Up to how many litres may a tank commonly stand so high without asking for consent? Local rules decide; this only tells when to ask.
 *
 * @param standHeight_m - height of the stand [m], 0 or more
 * @returns the largest tank that is commonly exempt at that height [L]; 0 above the highest step
 * @law higher is never more
 * @source nz-building-act, schedule 1, clause 23 (partly from memory)
 * @example
 * commonlyExempt_L(0) // → 35000
 * commonlyExempt_L(1.2) // → 2000
 * commonlyExempt_L(5) // → 0
 */
export function commonlyExempt_L(standHeight_m: number): number {
  const steps = consentSteps.filter((step) => step.standHeight_m >= standHeight_m);
  return steps.reduce((most, { exempt_L }) => Math.max(most, exempt_L), 0);
}
