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
export function chlorineSaid(w: Speech, f: ChlorineSaid): string {
  const residual = w.say('findings.chlorine.residual', { band: f.residualBand ?? 'unknown' });
  return [residual, contactSaid(w, f), waitSaid(w, f), w.say('findings.chlorine.caution')]
    .filter((text) => text !== '')
    .join(' ');
}

/** What the contact earns, or that it earns nothing in turbid water. */
function contactSaid({ say, numbers }: Speech, f: ChlorineSaid): string {
  if (f.isTooTurbid === true) return say('findings.chlorine.tooTurbid');
  const { giardia_log10, viruses_log10 } = f;
  if (viruses_log10 === null) return say('findings.chlorine.notKnown');
  const viruses = numbers.quantity(viruses_log10, 'number');
  if (giardia_log10 === null) return say('findings.chlorine.viruses', { viruses });
  return say('findings.chlorine.logs', { viruses, giardia: numbers.quantity(giardia_log10, 'number') });
}

function waitSaid({ say, numbers }: Speech, { wait_min }: ChlorineSaid): string {
  return wait_min === null ? '' : say('findings.chlorine.wait', { wait: numbers.quantity(wait_min, 'min') });
}
