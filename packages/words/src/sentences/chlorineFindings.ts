import type { ChlorineFinding } from '@eavewell/engine';
import type { Speech } from '../problems.ts';

/** What the chlorine of a site is said from. */
export type ChlorineSaid = ChlorineFinding;

/**
 * What chlorine does at a site, in a sentence or two.
 *
 * @param w - the words and numbers of a language
 * @param f - the finding
 */
export function chlorineSaid({ say }: Speech, f: ChlorineSaid): string {
  return say('findings.chlorine.residual', { band: f.residualBand ?? 'unknown' });
}
