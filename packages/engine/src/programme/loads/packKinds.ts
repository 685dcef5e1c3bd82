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
import type { PackCase } from './packCase.ts';
import { searchPacked } from './searchPacked.ts';

/** Loads: of each, how many of each kind are in it. */
export interface Packed {
  readonly loads: readonly (readonly number[])[];
  /** No way of loading has fewer. */
  readonly bound_count: number;
}

/** Puts pieces into the fewest loads it finds, with the number below which there is none. */
export function packKinds(all: PackCase): Packed {
  const found = firstPacked(all);
  let bound_count = leastLoads(all);
  const pieces_count = all.kinds.reduce((sum, { count }) => sum + count, 0);
  if (found.length <= bound_count) return { loads: found, bound_count };
  if (found.length > mostLoadsSearched_count || all.kinds.length > mostKindsSearched_count)
    return { loads: found, bound_count };
  let steps = pieces_count <= fewPieces_count ? stepsOfFew_count : stepsOfMany_count;
  for (let loads_count = bound_count; loads_count < found.length; loads_count++) {
    const even = evenPacked(all, loads_count);
    if (even !== null) return { loads: even, bound_count };
    // Half of the steps that are left, so that some remain for the numbers that are still to be tried.
    const tried = searchPacked(all, loads_count, Math.floor(steps / (loads_count + 1 < found.length ? 2 : 1)));
    if (tried.loads !== null) return { loads: tried.loads, bound_count };
    if (tried.isDisproved && loads_count === bound_count) bound_count = loads_count + 1;
    steps -= tried.steps_count;
  }
  return { loads: found, bound_count };
}
