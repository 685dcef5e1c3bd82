import type { GroundClass } from '../../kernel/index.ts';
import { type BearingFigure, bearingFigures } from './constants.ts';

/**
 * What may ground of this class be presumed to carry? Listings differ by up to four times; the lowest of those that have the class is
 * taken. A presumption holds only where the ground is what the class says, and a competent person has looked at it.
 *
 * @param groundClass - what the stand rests on
 * @returns bearing_kPa: the lowest of the listings' figures [kPa] and its source; null for ground that must be investigated
 * @law never more than any listing has for the class
 * @source ibc-2012, table 1806.2; nbc-canada; indian-bearing; bs-8004 (from memory)
 * @example
 * presumptiveBearing('softClay') // → { bearing_kPa: 40, source: 'nbc-canada, table 9.4.4.1' }
 * presumptiveBearing('softOrMadeGround') // → null
 */
export function presumptiveBearing(groundClass: GroundClass): BearingFigure | null {
  const [first, ...others] = bearingFigures[groundClass];
  if (first === undefined) return null;
  return others.reduce((lowest, one) => (one.bearing_kPa < lowest.bearing_kPa ? one : lowest), first);
}
