import type { DiverterFacts } from '../../kernel/index.ts';

/** A first-flush depth and where it comes from. */
export interface FirstFlush {
  readonly firstFlush_mm: number;
  readonly from: 'depth' | 'chamber' | 'settings';
}

/**
 * How deep a layer of water on the roof is let go at the start of a spell? The diverter's stated depth; else its chamber
 * spread over the plan area that drains to it (1 L on 1 m² is 1 mm); else the programme's depth, also for a roof that has
 * no diverter yet, as one belongs there.
 *
 * @param diverter - the diverter as surveyed: firstFlush_mm [mm] or null, chamber_L [L] or null; null where there is none
 * @param drainedArea_m2 - plan area × guttered share [m2], 0 or more
 * @param default_mm - the programme's depth [mm], 0 or more
 * @returns firstFlush_mm: depth on the plan roof [mm], 0 or more, and where it comes from [text]
 * @definition ours
 * @example
 * firstFlushDepth({ firstFlush_mm: null, chamber_L: 40, drainHole: 'open', chamberBore_mm: null, drainHole_mm: null }, 80, 0.5) // → { firstFlush_mm: 0.5, from: 'chamber' }
 * firstFlushDepth(null, 80, 0.5) // → { firstFlush_mm: 0.5, from: 'settings' }
 */
export function firstFlushDepth(
  diverter: DiverterFacts | null,
  drainedArea_m2: number,
  default_mm: number,
): FirstFlush {
  const depth_mm = diverter?.firstFlush_mm ?? null;
  if (depth_mm !== null && depth_mm >= 0) return { firstFlush_mm: depth_mm, from: 'depth' };
  const chamber_L = diverter?.chamber_L ?? null;
  if (chamber_L !== null && chamber_L >= 0 && drainedArea_m2 > 0) {
    return { firstFlush_mm: chamber_L / drainedArea_m2, from: 'chamber' };
  }
  return { firstFlush_mm: default_mm, from: 'settings' };
}
