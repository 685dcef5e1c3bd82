import { binBounds } from '../../parts/index.ts';
import {
  fewPieces_count,
  mostKindsSearched_count,
  mostLoadsSearched_count,
  stepsOfFew_count,
  stepsOfMany_count,
} from './constants.ts';
import { firstPacked } from './firstPacked.ts';
import type { PackCase, PackKind } from './packCase.ts';
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
    // What is left is shared among the numbers that are still to be tried.
    const tried = searchPacked(all, loads_count, Math.floor(steps / (loads_count + 1 < found.length ? 2 : 1)));
    if (tried.loads !== null) return { loads: tried.loads, bound_count };
    if (tried.isDisproved && loads_count === bound_count) bound_count = loads_count + 1;
    steps -= tried.steps_count;
  }
  return { loads: found, bound_count };
}

/** The least number of loads by mass, by bulk, and by kinds that are all kept apart from each other. */
function leastLoads(all: PackCase): number {
  return Math.max(leastOf(all, all.kinds), leastApart(all));
}

function leastOf({ room_kg, room_L }: PackCase, kinds: readonly PackKind[]): number {
  const byMass = binBounds(sizesOf(kinds, 'mass_kg'), room_kg)?.byLarge_count ?? 0;
  if (room_L === Number.POSITIVE_INFINITY) return byMass;
  return Math.max(byMass, binBounds(sizesOf(kinds, 'bulk_L'), room_L)?.byLarge_count ?? 0);
}

function sizesOf(kinds: readonly PackKind[], of: 'mass_kg' | 'bulk_L'): number[] {
  return kinds.flatMap((kind) => new Array<number>(kind.count).fill(kind[of]));
}

/** Kinds that are all kept apart share no load: what each of them needs is added up. The kinds are found greedily, those that need most first. */
function leastApart(all: PackCase): number {
  const needs = all.kinds.map((kind, index) => ({
    index,
    least_count: all.apart[index]![index] ? kind.count : leastOf(all, [kind]),
  }));
  needs.sort((a, b) => b.least_count - a.least_count || a.index - b.index);
  const taken: number[] = [];
  let sum = 0;
  for (const { index, least_count } of needs) {
    if (!taken.every((other) => all.apart[index]![other])) continue;
    taken.push(index);
    sum += least_count;
  }
  return sum;
}
