/** Standard acceleration of free fall [m/s2]. Source: iso-80000-3, standard acceleration of free fall (from memory). */
export const gravity_m_per_s2 = 9.80665;

/**
 * What share of the flow of an ideal hole a plain sharp-edged round one lets through, as its jet narrows [ratio]. Source: handbooks give 0.60
 * to 0.62 (midoux-1993, page 51, quoted by others: 0.60); 0.62 is used where nothing else is said.
 */
export const orificeCoefficient_ratio = 0.62;

/**
 * How wide is a round opening of this diameter?
 *
 * @param diameter_m - inside diameter [m], 0 or more
 * @returns area of the opening [m2]
 * @definition π ÷ 4 × diameter²
 * @example
 * boreArea_m2(2) // → 3.141592653589793
 */
export function boreArea_m2(diameter_m: number): number {
  const radius_m = diameter_m / 2;
  return Math.PI * radius_m * radius_m;
}

/**
 * How much water leaves a hole under so much of it? Torricelli's law with a coefficient for the jet that narrows; a tap or a drip hole that is open
 * to the air.
 *
 * @param area_m2 - area of the hole [m2], 0 or more
 * @param head_m - height of the water over its middle [m]; under 0 nothing leaves
 * @param coefficient_ratio - discharge coefficient [ratio], above 0, at most 1
 * @returns flow [m3/s]
 * @law four times the head gives twice the flow
 * @source torricelli-1644, with a coefficient of discharge as in every handbook of hydraulics (from memory)
 * @example
 * orificeFlow_m3_per_s(0.01, 0, 0.62) // → 0
 */
export function orificeFlow_m3_per_s(area_m2: number, head_m: number, coefficient_ratio: number): number {
  return coefficient_ratio * area_m2 * Math.sqrt(2 * gravity_m_per_s2 * Math.max(0, head_m));
}

/**
 * How long does a tank or a chamber with upright walls take to sink from one level to another through a hole?
 *
 * @param surface_m2 - area of the water's surface, the same at every level [m2], 0 or more
 * @param area_m2 - area of the hole [m2], above 0
 * @param from_m - level at the start over the middle of the hole [m], 0 or more
 * @param to_m - level at the end [m], 0 to from_m
 * @param coefficient_ratio - discharge coefficient [ratio], above 0, at most 1
 * @returns time [s]; Infinity through no hole
 * @law emptied wholly, the mean flow is half of the first
 * @source torricelli-1644, integrated over the falling level: t = 2 A (√h₁ − √h₂) ÷ (C a √2g)
 * @example
 * emptyingTime_s(1, 0, 1, 0, 0.62) // → Infinity
 * emptyingTime_s(1, 0.001, 1, 1, 0.62) // → 0
 */
export function emptyingTime_s(
  surface_m2: number,
  area_m2: number,
  from_m: number,
  to_m: number,
  coefficient_ratio: number,
): number {
  const fall = Math.sqrt(Math.max(0, from_m)) - Math.sqrt(Math.max(0, to_m));
  if (fall <= 0 || surface_m2 === 0) return 0;
  if (area_m2 === 0) return Infinity;
  return (2 * surface_m2 * fall) / (coefficient_ratio * area_m2 * Math.sqrt(2 * gravity_m_per_s2));
}

/**
 * How stirred is the flow in a pipe?
 *
 * @param velocity_m_per_s - mean speed [m/s], 0 or more
 * @param bore_m - inside diameter [m], 0 or more
 * @param kinematicViscosity_m2_per_s - of the water [m2/s], above 0
 * @returns Reynolds number [number]
 * @source reynolds-1883, speed × bore ÷ kinematic viscosity (from memory)
 * @example
 * reynoldsFactor(1, 0.02, 0.000001) // → 20000
 */
export function reynoldsFactor(velocity_m_per_s: number, bore_m: number, kinematicViscosity_m2_per_s: number): number {
  return (velocity_m_per_s * bore_m) / kinematicViscosity_m2_per_s;
}
