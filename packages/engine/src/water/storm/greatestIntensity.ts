/**
 * How hard did it rain at its hardest for so long? The greatest depth in any window of that many intervals.
 *
 * @param depths_mm - rain of each interval, one after the other [mm], each 0 or more
 * @param interval_min - length of an interval [min], above 0
 * @param duration_min - how long a window is [min], a whole number of intervals
 * @returns the mean intensity over the greatest window [mm/h]; null where the window is no whole number of intervals or longer than they are together
 * @law a longer window that is a whole number of shorter ones is never harder
 * @source punmia-pande-lal, Example 4.8
 */
export function greatestIntensity_mm_per_h(
  depths_mm: ArrayLike<number>,
  interval_min: number,
  duration_min: number,
): number | null {
  const steps = duration_min / interval_min;
  if (!Number.isInteger(steps) || steps < 1 || steps > depths_mm.length) return null;
  let most_mm = 0;
  for (let end = steps; end <= depths_mm.length; end++) {
    let window_mm = 0;
    for (let i = end - steps; i < end; i++) window_mm += depths_mm[i]!;
    if (window_mm > most_mm) most_mm = window_mm;
  }
  return (most_mm * 60) / duration_min;
}
