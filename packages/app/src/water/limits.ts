/** What a figure of the drawing may be, and to how many decimals it is kept. */
export interface Limit {
  readonly low: number;
  readonly high: number;
  readonly decimals: number;
  /** Its column in the tables. */
  readonly column: readonly [table: string, column: string];
}

/**
 * Least and greatest values as the tables take them; a test compares the two, since the tables' own contract is too heavy to be read before
 * anything is drawn. Decimals are ours: a tenth of a litre, a tenth of a millimetre of height, a hundredth of a per cent.
 */
export const limits = {
  // Up to 50 is taken for m³ in the tables.
  volume_L: { low: 51, high: 1e7, decimals: 1, column: ['tanks', 'nominal_L'] },
  diameter_m: { low: 0.2, high: 50, decimals: 3, column: ['tanks', 'diameter_m'] },
  overflowHeight_m: { low: 0, high: 20, decimals: 4, column: ['tanks', 'overflowHeight_m'] },
  height_m: { low: 0.2, high: 20, decimals: 4, column: ['tanks', 'height_m'] },
  gutteredFraction: { low: 0, high: 1, decimals: 4, column: ['roofs', 'gutteredFraction'] },
  firstFlush_mm: { low: 0, high: 10, decimals: 3, column: ['diverters', 'firstFlush_mm'] },
  litres_per_person_per_day: { low: 0, high: 500, decimals: 3, column: ['demand', 'litres_per_person_per_day'] },
  width_mm: { low: 20, high: 1000, decimals: 1, column: ['gutters', 'width_mm'] },
  depth_mm: { low: 10, high: 1000, decimals: 1, column: ['gutters', 'depth_mm'] },
  baseWidth_mm: { low: 10, high: 1000, decimals: 1, column: ['gutters', 'baseWidth_mm'] },
  fall_mm_per_m: { low: -200, high: 200, decimals: 2, column: ['gutters', 'fall_mm_per_m'] },
  outlets_count: { low: 1, high: 50, decimals: 0, column: ['gutters', 'outlets'] },
  bore_mm: { low: 10, high: 500, decimals: 1, column: ['downpipes', 'bore_mm'] },
  overflowBore_mm: { low: 10, high: 1000, decimals: 1, column: ['tanks', 'overflowBore_mm'] },
  standHeight_m: { low: 0, high: 10, decimals: 3, column: ['tanks', 'standHeight_m'] },
  tapHeight_m: { low: -100, high: 30, decimals: 3, column: ['sites', 'tapHeight_m'] },
  people: { low: 1, high: 100_000, decimals: 0, column: ['sites', 'people'] },
} as const satisfies Readonly<Record<string, Limit>>;

/**
 * A figure as the tables take it.
 *
 * @param name - which figure
 * @param value - as it was dragged or typed
 * @returns the nearest that is taken; null where it is no number
 */
export function within(name: keyof typeof limits, value: number): number | null {
  if (Number.isNaN(value)) return null;
  const { low, high, decimals } = limits[name];
  return Number(Math.min(high, Math.max(low, value)).toFixed(decimals));
}
