import type { PartFacts } from '../kernel/index.ts';

/** A tank that can be bought. */
export interface TankPart {
  readonly partId: string;
  readonly tankVolume_L: number;
}

/**
 * Which sizes of tank can be bought? The catalogue's parts of kind `tank` whose volume is known, smallest first, equal
 * ones by partId.
 *
 * @param parts - the catalogue
 * @returns partId [text] and tankVolume_L [L], above 0, ascending
 * @law the order of the catalogue changes nothing
 * @definition ours
 * @example
 * tankSizes([{ partId: 'T1', kind: 'tank', name: 'Tank', volume_L: 500, length_m: null }]) // → [{ partId: 'T1', tankVolume_L: 500 }]
 */
export function tankSizes(parts: readonly PartFacts[]): readonly TankPart[] {
  const sizes: TankPart[] = [];
  for (const { partId, kind, volume_L } of parts) {
    if (kind === 'tank' && volume_L !== null && volume_L > 0) sizes.push({ partId, tankVolume_L: volume_L });
  }
  return sizes.sort((a, b) => a.tankVolume_L - b.tankVolume_L || (a.partId < b.partId ? -1 : 1));
}
