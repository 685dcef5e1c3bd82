import { L_per_m3 } from './units.ts';

/**
 * How much does an upright cylinder hold: a tank between two heights, a pipe of some length?
 *
 * @param diameter_m - inside diameter [m], 0 or more
 * @param height_m - height or length [m]
 * @returns volume [L]
 * @definition π ÷ 4 × diameter² × height
 * @example
 * cylinderVolume_L(2, 1) // → 3141.592653589793
 */
export function cylinderVolume_L(diameter_m: number, height_m: number): number {
  return (Math.PI / 4) * diameter_m * diameter_m * height_m * L_per_m3;
}
