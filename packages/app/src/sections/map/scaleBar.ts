/** The bar of a map's scale. */
export interface ScaleBar {
  /** Its length on the earth [km]. */
  readonly length_km: number;
  /** Its length in the picture [px]. */
  readonly pixels: number;
}

/**
 * The bar of a round length, 1, 2 or 5 of some power of ten, that is no longer than so many pixels.
 *
 * @param pixels_per_km - of the picture, at its middle
 * @param most - the longest it may be [px]
 */
export function scaleBarOf(pixels_per_km: number, most: number): ScaleBar {
  const longest_km = most / pixels_per_km;
  const power = 10 ** Math.floor(Math.log10(longest_km));
  const length_km = (longest_km >= 5 * power ? 5 : longest_km >= 2 * power ? 2 : 1) * power;
  return { length_km, pixels: length_km * pixels_per_km };
}
