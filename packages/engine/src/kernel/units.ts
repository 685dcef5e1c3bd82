/** 1 mm of rain on 1 m² is 1 L: the water balance's coherent set is mm, m², L and days. */
export const L_per_m3 = 1000;

/** International foot and inch, US liquid gallon: exact by definition. Source: NIST SP 811, App. B.8. */
export const m_per_ft = 0.3048;
export const mm_per_in = 25.4;
export const L_per_usGallon = 3.785411784;

/** US gallons as litres [L]. */
export function litresFromUsGallons(gallons: number): number {
  return gallons * L_per_usGallon;
}

/** Square feet as square metres [m2]. */
export function squareMetresFromSquareFeet(area_ft2: number): number {
  return area_ft2 * m_per_ft * m_per_ft;
}

/** Inches as millimetres [mm]. */
export function millimetresFromInches(depth_in: number): number {
  return depth_in * mm_per_in;
}

/** Litres from cubic metres [L]. */
export function litresFromCubicMetres(volume_m3: number): number {
  return volume_m3 * L_per_m3;
}

/** Mean length of a year: 146,097 days in 400 years [day]. Source: the rule of the Gregorian calendar. */
export const meanYear_days = 365.2425;
