import type { TankFacts } from '../../kernel/index.ts';
import { type MostHeld, mostHeld } from './mostHeld.ts';
import { isOnStand } from './standGiven.ts';

/** What is known of one tank, its stand and what that rests on; null is not known. */
export interface StandMeasures {
  readonly standHeight_m: number | null;
  readonly diameter_m: number | null;
  readonly height_m: number | null;
  readonly held: MostHeld | null;
  readonly tank_kg: number | null;
  readonly stand_kg: number | null;
  readonly area_m2: number | null;
  readonly baseWidth_m: number | null;
  /** Is it on something that it could be blown off? */
  readonly isRaised: boolean;
  /** Columns of tanks.csv whose cells are wanted and are not there. */
  readonly missing: readonly string[];
}

/**
 * What is known of a tank and its stand? On the ground it rests on its own foot, where it has no pads.
 *
 * @param tank - as surveyed: heights and sides [m], masses [kg], volumes [L]
 * @returns its measures [m, m2, kg, L], and the columns that are wanted and empty
 * @definition ours: docs/methods/stand.md
 */
export function standMeasures(tank: TankFacts): StandMeasures {
  const { standHeight_m, diameter_m, height_m, pads_count, padSide_m } = tank;
  const isRaised = isOnStand(tank);
  const isOnGround = standHeight_m === 0;
  const foot_m2 = isOnGround && diameter_m !== null ? (Math.PI / 4) * diameter_m * diameter_m : null;
  const pads_m2 = pads_count !== null && padSide_m !== null ? pads_count * padSide_m * padSide_m : null;
  const hasPads = pads_count !== null || padSide_m !== null;
  const held = mostHeld(tank);
  const measures = {
    standHeight_m,
    diameter_m,
    height_m,
    held,
    tank_kg: tank.emptyMass_kg ?? tank.partMass_kg,
    stand_kg: tank.standMass_kg ?? (isOnGround ? 0 : null),
    area_m2: hasPads ? pads_m2 : foot_m2,
    baseWidth_m: tank.baseWidth_m ?? (isOnGround ? diameter_m : null),
    isRaised,
  };
  const missing: string[] = [];
  const want = (column: string, value: number | MostHeld | null) => {
    if (value === null) missing.push(column);
  };
  want('standHeight_m', standHeight_m);
  want('diameter_m', diameter_m);
  want('height_m', height_m);
  if (held === null && diameter_m !== null && height_m !== null) missing.push('nominal_L');
  want('emptyMass_kg', measures.tank_kg);
  if (!isOnGround) want('standMass_kg', measures.stand_kg);
  if (hasPads || !isOnGround) {
    want('pads', pads_count);
    want('padSide_m', padSide_m);
  }
  if (!isOnGround) want('baseWidth_m', measures.baseWidth_m);
  return { ...measures, missing };
}
