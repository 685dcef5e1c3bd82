import { leastValues_count } from './constants.ts';

/** The first four L-moments of a sample, and the two ratios that tell its form. */
export interface LMoments {
  /** The mean. */
  readonly l1_mm: number;
  /** Half the mean difference of two values. */
  readonly l2_mm: number;
  readonly l3_mm: number;
  readonly l4_mm: number;
  /** L-skewness, l3 over l2. */
  readonly t3_ratio: number;
  /** L-kurtosis, l4 over l2. */
  readonly t4_ratio: number;
}

/**
 * What are the L-moments of these values? Taken without bias from probability-weighted moments of the sorted values. In mm here; any unit will do.
 *
 * @param values_mm - the values [mm], in any order, all finite
 * @returns the L-moments [mm] and their ratios [number]; null where there are fewer than four values or all are the same
 * @law the order of the values changes nothing; twice the values give twice the moments and the same ratios
 * @source hosking-1990, L-moments from probability-weighted moments, b_r the mean of C(i, r) ÷ C(n − 1, r) times the value of rank i + 1
 */
export function lMoments(values_mm: ArrayLike<number>): LMoments | null {
  const n = values_mm.length;
  if (n < leastValues_count) return null;
  const sorted = Float64Array.from(values_mm).sort();
  if (!(Number.isFinite(sorted[0]) && Number.isFinite(sorted[n - 1]) && sorted[n - 1]! > sorted[0]!)) return null;
  let [b0, b1, b2, b3] = [0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    let weighted = sorted[i]!;
    b0 += weighted;
    weighted *= i / (n - 1);
    b1 += weighted;
    weighted *= (i - 1) / (n - 2);
    b2 += weighted;
    weighted *= (i - 2) / (n - 3);
    b3 += weighted;
  }
  [b0, b1, b2, b3] = [b0 / n, b1 / n, b2 / n, b3 / n];
  const l2_mm = 2 * b1 - b0;
  const l3_mm = 6 * b2 - 6 * b1 + b0;
  const l4_mm = 20 * b3 - 30 * b2 + 12 * b1 - b0;
  if (!(l2_mm > 0)) return null;
  return { l1_mm: b0, l2_mm, l3_mm, l4_mm, t3_ratio: l3_mm / l2_mm, t4_ratio: l4_mm / l2_mm };
}
