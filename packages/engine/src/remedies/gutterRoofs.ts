import { gutterFor, type RoofFacts, roofPlanArea } from '../kernel/index.ts';
import { firstFlushDepth } from '../water/roof/index.ts';

/** Roofs with more gutter, and what that takes. */
export interface GutteredRoofs {
  readonly roofs: readonly RoofFacts[];
  /** Metres of gutter to hang on each roof that gets more; null where the length of its eaves is not known [m]. */
  readonly added: readonly { readonly roofId: string; readonly length_m: number | null }[];
  /** Roofs whose first-flush chamber has to grow with the roof it serves. */
  readonly newDiverters_count: number;
}

/**
 * What do these roofs become when each is guttered to at least a share of its plan area? A roof whose guttered share is
 * not known counts as wholly guttered already, as everywhere. A chamber keeps its litres as long as they still make the
 * programme's first-flush depth on the larger area, or the depth the roof has now where that is less; else a larger one
 * is set that does.
 *
 * @param roofs - the roofs as surveyed
 * @param gutteredFraction - the share wanted [fraction], 0 to 1
 * @param default_mm - the programme's first-flush depth [mm], 0 or more
 * @returns the roofs, metres of gutter to add [m], and how many diverters [count]; null where no roof is under the share
 * @law no roof lets go less first flush than it does now and than the programme's depth
 * @definition ours: docs/decisions/0243-lengths-of-runs.md
 */
export function gutterRoofs(
  roofs: readonly RoofFacts[],
  gutteredFraction: number,
  default_mm: number,
): GutteredRoofs | null {
  const added: { roofId: string; length_m: number | null }[] = [];
  let newDiverters_count = 0;
  const changed = roofs.map((roof) => {
    const share = roof.gutteredFraction;
    if (share === null || share >= gutteredFraction) return roof;
    const run = gutterFor(roof, gutteredFraction - share);
    // What is assumed is bought by nobody: no length, no cost.
    added.push({ roofId: roof.roofId, length_m: run === null || run.from === 'assumed' ? null : run.length_m });
    const area_m2 = roofPlanArea(roof) ?? 0;
    const now = firstFlushDepth(roof.diverter, area_m2 * share, default_mm);
    if (now.from !== 'chamber' || roof.diverter === null) return { ...roof, gutteredFraction };
    const least_mm = Math.min(now.firstFlush_mm, default_mm);
    const kept = firstFlushDepth(roof.diverter, area_m2 * gutteredFraction, default_mm);
    if (kept.firstFlush_mm >= least_mm) return { ...roof, gutteredFraction };
    newDiverters_count++;
    return { ...roof, gutteredFraction, diverter: { ...roof.diverter, firstFlush_mm: least_mm } };
  });
  return added.length === 0 ? null : { roofs: changed, added, newDiverters_count };
}
