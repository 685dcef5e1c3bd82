import { fewestBars } from '../../parts/index.ts';
import { massStep_kg, massSteps_count, stepRounding_count } from './constants.ts';
import type { PackCase } from './packCase.ts';

/** Loads that only mass limits are bars that are cut: the same search, over masses in whole steps. Null where more than mass matters, or masses are no whole steps. */
export function massPacked(
  { kinds, apart, room_kg, room_L }: PackCase,
  work_count: number,
): { readonly loads: number[][]; readonly bound_count: number } | null {
  if (room_L !== Number.POSITIVE_INFINITY || apart.some((row) => row.some((isApart) => isApart))) return null;
  const room = wholeSteps(room_kg);
  const sizes = kinds.map(({ mass_kg }) => wholeSteps(mass_kg));
  const total = kinds.reduce((sum, { count }, kind) => sum + count * (sizes[kind] ?? 0), 0);
  if (room === null || sizes.some((size) => size === null) || total > massSteps_count) return null;
  const kindOf = kinds.flatMap(({ count }, kind) => new Array<number>(count).fill(kind));
  const { positions, bound_count } = fewestBars(
    kindOf.map((kind) => sizes[kind]!),
    room,
    work_count,
  );
  const loads = positions.map((places) => {
    const counts = new Array<number>(kinds.length).fill(0);
    for (const place of places) counts[kindOf[place]!]! += 1;
    return counts;
  });
  return { loads, bound_count };
}

/** A mass in whole steps; null where it is none. */
function wholeSteps(mass_kg: number): number | null {
  const steps = Math.round(mass_kg / massStep_kg);
  return Math.abs(mass_kg / massStep_kg - steps) <= stepRounding_count && steps > 0 ? steps : null;
}
