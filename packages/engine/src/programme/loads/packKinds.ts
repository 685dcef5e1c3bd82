import {
  fewPieces_count,
  mostKindsSearched_count,
  mostLoadsSearched_count,
  stepsOfFew_count,
  stepsOfMany_count,
} from './constants.ts';
import { evenPacked } from './evenPacked.ts';
import { firstPacked } from './firstPacked.ts';
import { leastLoads } from './leastLoads.ts';
import { massPacked } from './massPacked.ts';
import type { PackCase } from './packCase.ts';
import { searchPacked } from './searchPacked.ts';

/** Loads: of each, how many of each kind are in it. */
export interface Packed {
  readonly byLoad_count: readonly (readonly number[])[];
  /** No way of loading has fewer. */
  readonly bound_count: number;
}

/** Puts pieces into the fewest loads it finds, with the number below which there is none. */
export function packKinds(all: PackCase): Packed {
  let loads: readonly (readonly number[])[] = firstPacked(all);
  let bound_count = leastLoads(all);
  const isMuch = loads.length > mostLoadsSearched_count || all.kinds.length > mostKindsSearched_count;
  if (loads.length <= bound_count || isMuch) return { byLoad_count: loads, bound_count };
  const pieces_count = all.kinds.reduce((sum, { count }) => sum + count, 0);
  let steps = pieces_count <= fewPieces_count ? stepsOfFew_count : stepsOfMany_count;
  const byMass = massPacked(all, steps);
  if (byMass !== null && byMass.loads.length < loads.length) loads = byMass.loads;
  bound_count = Math.max(bound_count, byMass?.bound_count ?? 0);
  for (let loads_count = bound_count; loads_count < loads.length; loads_count++) {
    const even = evenPacked(all, loads_count);
    if (even !== null) return { byLoad_count: even, bound_count };
    // Half of the steps that are left, so that some remain for the numbers that are still to be tried.
    const tried = searchPacked(all, loads_count, Math.floor(steps / (loads_count + 1 < loads.length ? 2 : 1)));
    if (tried.byLoad_count !== null) return { byLoad_count: tried.byLoad_count, bound_count };
    if (tried.isDisproved && loads_count === bound_count) bound_count = loads_count + 1;
    steps -= tried.steps_count;
  }
  return { byLoad_count: loads, bound_count };
}
