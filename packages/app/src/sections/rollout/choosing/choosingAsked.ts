import type { SheetCandidate } from '@eavewell/tables';
import { type RolloutAskedOf, rolloutAskedOf } from '../rolloutAsked.ts';

/** Whether and why a site is planned or not, those that could be mended first; each a word of the program. */
export const whys = [
  ...(['short', 'unknown', 'notAgreed', 'noKit', 'noPeople', 'noWay', 'noSkill'] as const),
  ...(['tooHeavy', 'tooBulky', 'tooLong', 'noWindow', 'noTrip', 'notAsked', 'other', 'planned'] as const),
] as const;
export type Why = (typeof whys)[number];

const verdicts = ['holds', 'tight', 'short', 'unknown'] as const;
export type VerdictAsked = (typeof verdicts)[number];

/** What an address asks of the list of sites: those of one plan, with one reason, verdict or area, or one site alone. */
export interface ChoosingAsked extends Omit<RolloutAskedOf, 'week'> {
  readonly why?: Why;
  readonly verdict?: VerdictAsked;
  readonly area?: string;
}

const isWhy = (value: unknown): value is Why => whys.some((one) => one === value);
const isVerdict = (value: unknown): value is VerdictAsked => verdicts.some((one) => one === value);

/** Reads what an address asks; what is no answer to it is left out. */
export function choosingAskedOf({ why, verdict, area, ...others }: Record<string, unknown>): ChoosingAsked {
  const { plan, site } = rolloutAskedOf(others);
  return {
    ...(plan === undefined ? {} : { plan }),
    ...(site === undefined ? {} : { site }),
    ...(isWhy(why) ? { why } : {}),
    ...(isVerdict(verdict) ? { verdict } : {}),
    ...(typeof area === 'string' && area !== '' ? { area } : {}),
  };
}

/**
 * Whether a site is planned, or why not: `noTrip` where it might be and no trip goes there. A site that stands in a trip and cannot be
 * done any more is told by its reason; one whose trip is under way is planned.
 */
export function whyOf({ tripId, reason }: Pick<SheetCandidate, 'tripId' | 'reason'>): Why {
  if (reason !== null && reason !== 'underWay') return isWhy(reason) ? reason : 'other';
  return tripId === null ? 'noTrip' : 'planned';
}
