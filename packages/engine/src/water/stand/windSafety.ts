import { weightOfOneKg_N } from './constants.ts';

/** Something that stands loose on its base, and the push against it. */
export interface PushedBody {
  readonly mass_kg: number;
  readonly windForce_N: number;
  /** The height at which the push acts, above the base. */
  readonly pushHeight_m: number;
  /** The least distance between the outer edges it could tip over. */
  readonly baseWidth_m: number;
  readonly friction_factor: number;
}

/** How many times the push could grow before it tips or slides; null where nothing pushes. */
export interface WindSafety {
  readonly overturning_factor: number | null;
  readonly sliding_factor: number | null;
}

/**
 * Does it tip about its leeward edge, or slide, in the wind? Its own weight alone holds it: no anchor is counted.
 *
 * @param body - mass [kg], push [N] at a height [m], width of its base [m] and friction [factor]
 * @returns resisting moment ÷ overturning moment, and friction × weight ÷ push [factor]; null where nothing pushes
 * @law more wind never a larger factor, a wider base or more mass never a smaller one
 * @definition moments about the leeward edge of the base; the weight acts at half its width
 * @example
 * windSafety({ mass_kg: 100, windForce_N: 981, pushHeight_m: 1, baseWidth_m: 2, friction_factor: 0.5 }).overturning_factor // → 1
 */
export function windSafety(body: PushedBody): WindSafety {
  const { mass_kg, windForce_N: push_N, pushHeight_m, baseWidth_m, friction_factor } = body;
  if (!(push_N > 0)) return { overturning_factor: null, sliding_factor: null };
  const weight_N = mass_kg * weightOfOneKg_N;
  const turning_Nm = push_N * pushHeight_m;
  return {
    overturning_factor: turning_Nm > 0 ? (weight_N * baseWidth_m) / 2 / turning_Nm : null,
    sliding_factor: (friction_factor * weight_N) / push_N,
  };
}
