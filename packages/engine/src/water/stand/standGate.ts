import type { DayIndex, StandGate, TankFacts } from '../../kernel/index.ts';
import { isOnStand } from './standGiven.ts';

/** A stand, as far as its signature goes. */
export type SignedStand = Pick<TankFacts, 'standHeight_m' | 'standMass_kg' | 'baseWidth_m' | 'signedBy' | 'signedOn'>;

/**
 * Does this tank stand on something that must be signed for and is not?
 *
 * @param tank - the measures of its stand [m, kg], who signed and when
 * @param today - the day it is asked on [day]; null where that is not known, and then no signature is of a day to come
 * @returns true or false
 * @definition a stand above 0, or of a height that is not known, without a name or a day, or signed on a day that is still to come
 */
export function isUnsigned(tank: SignedStand, today: DayIndex | null): boolean {
  if (!isOnStand(tank)) return false;
  const { signedBy, signedOn } = tank;
  if (signedBy === null || signedBy.trim() === '' || signedOn === null) return true;
  return today !== null && signedOn > today;
}

/**
 * May the tanks of a site be filled, as far as their stands go? Kept apart from every verdict: sums never open it.
 *
 * @param tanks - the tanks of the site: measures of their stands [m, kg], who signed and when [day]
 * @param today - the day it is asked on [day]; null where that is not known
 * @returns `notNeeded` where no tank is on a stand, `closed` while one is not signed for, else `open`
 * @law one stand that is not signed for closes it, whatever the others are
 * @definition ours: docs/decisions/0185-the-gate-of-a-stand.md
 */
export function standGate(tanks: readonly SignedStand[], today: DayIndex | null): StandGate {
  if (!tanks.some(isOnStand)) return 'notNeeded';
  return tanks.some((tank) => isUnsigned(tank, today)) ? 'closed' : 'open';
}
