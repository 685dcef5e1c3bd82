import { gravity_m_per_s2 } from './hydraulics.ts';

/** What a person keeps up at a pump, at its shaft [W]: the middle and the cautious end. Source: lambert-faulkner-1991, abstract: just over 40 W; 30 W is ours, for users nobody chose, docs/decisions/0182-head.md. */
export const personPower_W = 40;
export const cautiousPersonPower_W = 30;

/** What share of a person's power a hand pump passes on to the water [fraction]. Ours: the low end of 0.5 to 0.65, docs/decisions/0182-head.md. */
export const pumpEfficiency_fraction = 0.5;

/**
 * How hard does a person work who adds so much head to so much water?
 *
 * @param head_m - head added [m]; under 0 none
 * @param flow_m3_per_s - the flow [m3/s], 0 or more
 * @param waterDensity_kg_per_m3 - of the water [kg/m3]
 * @param efficiency_fraction - share of the person's power the pump passes on [fraction], above 0, at most 1
 * @returns power at the handle [W]
 * @source hydraulic-power, ρ g H Q ÷ η (from memory)
 * @example
 * handPower_W(0, 0.001, 998, 0.5) // → 0
 */
export function handPower_W(
  head_m: number,
  flow_m3_per_s: number,
  waterDensity_kg_per_m3: number,
  efficiency_fraction: number,
): number {
  return (waterDensity_kg_per_m3 * gravity_m_per_s2 * Math.max(0, head_m) * flow_m3_per_s) / efficiency_fraction;
}

/**
 * How much water can a person lift by so much head, working this hard?
 *
 * @param power_W - power at the handle [W], 0 or more
 * @param head_m - head to add [m]
 * @param waterDensity_kg_per_m3 - of the water [kg/m3]
 * @param efficiency_fraction - share of the person's power the pump passes on [fraction], above 0, at most 1
 * @returns flow [m3/s]; Infinity where there is no head to add
 * @source hydraulic-power, η P ÷ (ρ g H) (from memory)
 * @example
 * handPumped_m3_per_s(40, 0, 998, 0.5) // → Infinity
 */
export function handPumped_m3_per_s(
  power_W: number,
  head_m: number,
  waterDensity_kg_per_m3: number,
  efficiency_fraction: number,
): number {
  if (head_m <= 0) return Infinity;
  return (power_W * efficiency_fraction) / (waterDensity_kg_per_m3 * gravity_m_per_s2 * head_m);
}
