import type { RoofFacts } from './buildingFacts.ts';

/**
 * How large is the roof seen from above? The plan area as given; where none is given, length × width. A given area is
 * believed over the sides, because it can tell of an L-shaped or hipped plan and the sides cannot.
 *
 * @param roof - the roof as surveyed: roofPlanArea_m2 [m2], length_m [m], width_m [m], each above 0 or null
 * @returns plan area [m2], above 0; null where neither an area nor both sides are known
 * @definition ours
 * @example
 * roofPlanArea({ length_m: 12, width_m: 7, roofPlanArea_m2: null }) // → 84
 * roofPlanArea({ length_m: 12, width_m: null, roofPlanArea_m2: null }) // → null
 */
export function roofPlanArea(roof: Pick<RoofFacts, 'length_m' | 'width_m' | 'roofPlanArea_m2'>): number | null {
  if (isAboveZero(roof.roofPlanArea_m2)) return roof.roofPlanArea_m2;
  if (isAboveZero(roof.length_m) && isAboveZero(roof.width_m)) return roof.length_m * roof.width_m;
  return null;
}

function isAboveZero(value: number | null): value is number {
  return value !== null && value > 0 && value < Infinity;
}
