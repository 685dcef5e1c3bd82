import type { ShortReading } from '../../kernel/index.ts';
import { isFine } from './fiveMinuteMaxima.ts';

/**
 * Which share of the rain falls faster than a gutter carries? Each interval of five minutes or less loses what its rain is above the capacity;
 * longer ones hide their peaks and are left out.
 *
 * @param rows - intervals of rain, in any order
 * @param capacity_mm_per_h - the rain the gutter carries from its roof [mm/h], 0 or more
 * @returns the share of the rain that is lost [fraction], 0 to 1; null where no interval of five minutes or less has rain
 * @law never grows with the capacity; 1 at a capacity of 0
 * @definition ours: docs/methods/storm.md
 */
export function shareOverCapacity_fraction(rows: readonly ShortReading[], capacity_mm_per_h: number): number | null {
  let [all_mm, over_mm] = [0, 0];
  for (const { interval_min, rain_mm } of rows) {
    if (!isFine(interval_min) || !(rain_mm > 0)) continue;
    all_mm += rain_mm;
    over_mm += Math.max(0, rain_mm - (capacity_mm_per_h * interval_min) / 60);
  }
  return all_mm > 0 ? over_mm / all_mm : null;
}
