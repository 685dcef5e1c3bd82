import { cylinderVolume_L, type TankFacts } from '../../kernel/index.ts';

/** The most a tank can hold, and from which of its measures that is known. */
export interface MostHeld {
  readonly mostHeld_L: number;
  readonly from: 'rim' | 'overflow' | 'stated';
}

/**
 * How much water can be in a tank when all goes wrong? To its rim, as an overflow may be blocked; to the overflow where the wall was not
 * measured; never less than what is written on it. It is more than the litres that can be drawn.
 *
 * @param tank - its diameter and heights [m], the volume written on it and that of its part [L]
 * @returns mostHeld_L [L] and where it comes from; null where neither heights nor a volume are known
 * @law never less than the stated volume, or than what lies between outlet and overflow
 * @definition π ÷ 4 × diameter² × height of the rim, else of the overflow; or the stated volume where that is more
 */
export function mostHeld(
  tank: Pick<TankFacts, 'diameter_m' | 'height_m' | 'overflowHeight_m' | 'nominal_L' | 'partVolume_L'>,
): MostHeld | null {
  const { diameter_m, height_m, overflowHeight_m } = tank;
  const stated_L = tank.nominal_L ?? tank.partVolume_L;
  const known: MostHeld[] = [];
  if (diameter_m !== null) {
    if (height_m !== null) known.push({ mostHeld_L: cylinderVolume_L(diameter_m, height_m), from: 'rim' });
    if (overflowHeight_m !== null)
      known.push({ mostHeld_L: cylinderVolume_L(diameter_m, overflowHeight_m), from: 'overflow' });
  }
  if (stated_L !== null) known.push({ mostHeld_L: stated_L, from: 'stated' });
  return known.reduce<MostHeld | null>(
    (most, one) => (most === null || one.mostHeld_L > most.mostHeld_L ? one : most),
    null,
  );
}
