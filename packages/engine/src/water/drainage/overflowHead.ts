import type { TankFacts, TankGroup } from '../../kernel/index.ts';

/** From the lower edge of the pipe to the rim of its own tank; null where either was not measured. */
export function ownHead_mm({ overflowHeight_m, height_m }: TankFacts): number | null {
  return overflowHeight_m === null || height_m === null ? null : (height_m - overflowHeight_m) * 1000;
}

/** From the ground; a stand that was not measured adds nothing. */
function rim_m({ height_m, standHeight_m }: TankFacts): number | null {
  return height_m === null ? null : height_m + (standHeight_m ?? 0);
}

/** The rim that water comes to first: the lowest of those that were measured; null where none was. */
function lowestRim_m({ tanks }: TankGroup): number | null {
  const rims = tanks.map(rim_m).filter((rim) => rim !== null);
  return rims.length === 0 ? null : Math.min(...rims);
}

/**
 * How high may water stand over an overflow before the first of the joined tanks runs over? To the lowest rim, stands and all; under 0 where the
 * overflow lies above that. Where a measure is open, no more than lets its pipe run just full.
 */
export function headToRim_mm(tank: TankFacts, group: TankGroup, bore_mm: number): number {
  const lowest_m = lowestRim_m(group);
  const own_m = rim_m(tank);
  const edge_m = tank.overflowHeight_m === null ? null : tank.overflowHeight_m + (tank.standHeight_m ?? 0);
  const ownOrFull_mm = ownHead_mm(tank) ?? bore_mm;
  let head_mm = ownOrFull_mm;
  if (lowest_m !== null && own_m !== null) head_mm = ownOrFull_mm - (own_m - lowest_m) * 1000;
  else if (lowest_m !== null && edge_m !== null) head_mm = (lowest_m - edge_m) * 1000;
  return openMeasure(tank, group) === null ? head_mm : Math.min(head_mm, bore_mm);
}

/** What is not known of how far an overflow lies below the lowest rim; null where all of it is. */
export function openMeasure(
  tank: TankFacts,
  { tanks }: TankGroup,
): 'overflowHeight_m' | 'height_m' | 'standHeight_m' | null {
  if (tank.overflowHeight_m === null) return 'overflowHeight_m';
  if (tanks.some(({ height_m }) => height_m === null)) return 'height_m';
  const stands = tanks.filter(({ standHeight_m }) => standHeight_m !== null);
  return stands.length > 0 && stands.length < tanks.length ? 'standHeight_m' : null;
}
