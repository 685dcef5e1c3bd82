import { type RoofFacts, roofPlanArea } from '../kernel/index.ts';
import { firstFlushDepth } from '../water/roof/index.ts';

/** Roofs with a smaller first flush, and how many diverters that takes. */
export interface FlushedRoofs {
  readonly roofs: readonly RoofFacts[];
  readonly newDiverters_count: number;
}

/**
 * What do these roofs become when none lets go more than the programme's first flush? Depth or chamber comes down to it,
 * never under it; a blocked drain hole stays as it is, since clearing it is upkeep and gives no more water.
 *
 * @param roofs - the roofs as surveyed, their guttered share as it will be
 * @param default_mm - the programme's first-flush depth [mm], 0 or more
 * @returns the roofs and how many get another diverter [count]; null where no roof lets go more than the depth
 * @law no roof lets go less than the programme's depth because of it
 * @definition ours: the depth on what a roof drains, as in the roof room
 */
export function flushRoofs(roofs: readonly RoofFacts[], default_mm: number): FlushedRoofs | null {
  let newDiverters_count = 0;
  const changed = roofs.map((roof) => {
    const drained_m2 = (roofPlanArea(roof) ?? 0) * (roof.gutteredFraction ?? 1);
    if (roof.diverter === null || drained_m2 === 0) return roof;
    if (firstFlushDepth(roof.diverter, drained_m2, default_mm).firstFlush_mm <= default_mm) return roof;
    newDiverters_count++;
    return { ...roof, diverter: { ...roof.diverter, firstFlush_mm: default_mm } };
  });
  return newDiverters_count === 0 ? null : { roofs: changed, newDiverters_count };
}
