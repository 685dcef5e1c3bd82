import type { RoofFacts } from './buildingFacts.ts';

/** Length to width of a roof known by its area or one side alone. Common practice, no source: three to two. */
export const usualRoofProportion_ratio = 1.5;

/** How a side of a roof is known: measured; made from its area and the other side; taken from its area, or the other side, in the usual proportion. */
export type SideFrom = 'measured' | 'madeFrom' | 'areaInProportion' | 'sideInProportion';

/** A roof seen from above. */
export interface RoofSides {
  /** The longer side: its ridge and its eaves run along it. */
  readonly length_m: number;
  readonly lengthFrom: SideFrom;
  readonly width_m: number;
  readonly widthFrom: SideFrom;
}

/**
 * How long and how wide is a roof, seen from above? As measured; else from its area and one side; else from what is known in the usual
 * proportion. The longer side is its length.
 *
 * @param roof - the roof as surveyed: length_m [m], width_m [m], roofPlanArea_m2 [m2], each above 0 or null
 * @returns its longer and shorter side [m], and how each is known; null where nothing is known of it
 * @definition ours: docs/decisions/0243-lengths-of-runs.md
 * @example
 * roofSides({ length_m: 6, width_m: 9, roofPlanArea_m2: null })?.length_m // → 9
 * roofSides({ length_m: null, width_m: null, roofPlanArea_m2: 54 })?.lengthFrom // → 'areaInProportion'
 * roofSides({ length_m: null, width_m: null, roofPlanArea_m2: null }) // → null
 */
export function roofSides(roof: Pick<RoofFacts, 'length_m' | 'width_m' | 'roofPlanArea_m2'>): RoofSides | null {
  const [a, b, area_m2] = [known(roof.length_m), known(roof.width_m), known(roof.roofPlanArea_m2)];
  const side = a ?? b;
  if (a !== null && b !== null) return longerFirst(a, 'measured', b, 'measured');
  if (side !== null && area_m2 !== null) return longerFirst(side, 'measured', area_m2 / side, 'madeFrom');
  if (side !== null) return longerFirst(side, 'measured', side / usualRoofProportion_ratio, 'sideInProportion');
  if (area_m2 === null) return null;
  const wide_m = Math.sqrt(area_m2 / usualRoofProportion_ratio);
  return longerFirst(area_m2 / wide_m, 'areaInProportion', wide_m, 'areaInProportion');
}

function longerFirst(one_m: number, oneFrom: SideFrom, other_m: number, otherFrom: SideFrom): RoofSides {
  return one_m >= other_m
    ? { length_m: one_m, lengthFrom: oneFrom, width_m: other_m, widthFrom: otherFrom }
    : { length_m: other_m, lengthFrom: otherFrom, width_m: one_m, widthFrom: oneFrom };
}

function known(value: number | null): number | null {
  return value !== null && value > 0 && value < Infinity ? value : null;
}
