import { longGutters } from './constants.ts';

/**
 * What is left of a gutter's flow where water runs far along it? The table of the standard, straight between its rows.
 *
 * @param run_m - the farthest way water runs along it to an outlet [m], 0 or more
 * @param depth_mm - depth of the gutter [mm], above 0
 * @returns share of the short gutter's flow [factor], 0.6 to 1; null beyond 500 times its depth, where the table ends
 * @law a longer run never leaves more
 * @source uk-gutter-note, notes 2 to 5; en-12056-3, Table 6 (from memory)
 * @example
 * longGutterFactor(5, 100) // → 1
 * longGutterFactor(7.5, 100) // → 0.965
 * longGutterFactor(51, 100) // → null
 */
export function longGutterFactor(run_m: number, depth_mm: number): number | null {
  const depths_count = (run_m * 1000) / depth_mm;
  const above = longGutters.findIndex((row) => row.depths_count >= depths_count);
  if (above === -1) return null;
  const high = longGutters[above]!;
  const low = longGutters[above - 1];
  if (low === undefined) return high.long_factor;
  const part = (depths_count - low.depths_count) / (high.depths_count - low.depths_count);
  return low.long_factor + part * (high.long_factor - low.long_factor);
}
