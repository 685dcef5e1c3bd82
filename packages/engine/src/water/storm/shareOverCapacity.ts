import type { RainByIntensity, ShortReading } from '../../kernel/index.ts';
import { minutes_per_h } from './constants.ts';
import { isFine } from './fiveMinuteMaxima.ts';

/**
 * How much rain fell how hard? Short intervals sorted by their intensity and summed from the hardest down, so that what is lost over a gutter is looked
 * up for every gutter of every site. Intervals longer than five minutes hide their peaks and are left out.
 *
 * @param rows - intervals of rain, in any order
 * @returns intensities [mm/h], rising, and the rain [mm] and time [min] at each or more; null where no interval of five minutes or less has rain
 * @law the order of the rows changes nothing
 * @definition ours: docs/methods/storm.md
 */
export function rainByIntensity(rows: readonly ShortReading[]): RainByIntensity | null {
  const byIntensity = new Map<number, { mm: number; min: number }>();
  for (const { interval_min, rain_mm } of rows) {
    if (!isFine(interval_min) || !(rain_mm > 0)) continue;
    const intensity = (rain_mm * minutes_per_h) / interval_min;
    const sum = byIntensity.get(intensity) ?? { mm: 0, min: 0 };
    sum.mm += rain_mm;
    sum.min += interval_min;
    byIntensity.set(intensity, sum);
  }
  if (byIntensity.size === 0) return null;
  const intensities_mm_per_h = Float64Array.from(byIntensity.keys()).sort();
  const asHard_mm = new Float64Array(byIntensity.size);
  const asHard_min = new Float64Array(byIntensity.size);
  let [mm, min] = [0, 0];
  for (let i = byIntensity.size - 1; i >= 0; i--) {
    const sum = byIntensity.get(intensities_mm_per_h[i]!)!;
    mm += sum.mm;
    min += sum.min;
    asHard_mm[i] = mm;
    asHard_min[i] = min;
  }
  return { intensities_mm_per_h, asHard_mm, asHard_min };
}

/**
 * Which share of the rain falls faster than a gutter carries? Each interval loses what its rain is above the capacity.
 *
 * @param rain - rain by its intensity
 * @param capacity_mm_per_h - the rain the gutter carries from its roof [mm/h], 0 or more
 * @returns the share of the rain that is lost [fraction], 0 to 1
 * @law never grows with the capacity; 1 at a capacity of 0
 * @definition ours: docs/methods/storm.md
 */
export function shareOverCapacity_fraction(rain: RainByIntensity, capacity_mm_per_h: number): number {
  const { intensities_mm_per_h, asHard_mm, asHard_min } = rain;
  let [low, high] = [0, intensities_mm_per_h.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (intensities_mm_per_h[middle]! > capacity_mm_per_h) high = middle;
    else low = middle + 1;
  }
  if (low === intensities_mm_per_h.length) return 0;
  const over_mm = asHard_mm[low]! - (capacity_mm_per_h * asHard_min[low]!) / minutes_per_h;
  return Math.min(1, Math.max(0, over_mm / asHard_mm[0]!));
}
