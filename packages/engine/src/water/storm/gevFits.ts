import { logGamma } from '../../kernel/index.ts';
import { euler_fraction, gumbelShape_fraction, leastShape, mostShape } from './constants.ts';
import type { ExtremeFit } from './extremes.ts';
import { lMoments } from './lMoments.ts';

/**
 * Which generalised extreme value distribution has the first three L-moments of these values? The shape is solved from the L-skewness to the last
 * bits, not by the usual approximation of it.
 *
 * @param values_mm - yearly maxima [mm], in any order
 * @returns location and scale [mm] and shape [number], under 0 for a heavy tail; null where there are fewer than four values, all are the same, or no such distribution is as skew
 * @law twice the values give twice the location and scale and the same shape; the order of the values changes nothing
 * @source hosking-1990, generalised extreme value distribution by L-moments
 */
export function gevByLMoments(values_mm: ArrayLike<number>): ExtremeFit | null {
  const moments = lMoments(values_mm);
  const shape = moments && shapeOfSkewness(moments.t3_ratio);
  if (moments === null || shape === null) return null;
  const { l1_mm, l2_mm } = moments;
  if (Math.abs(shape) < gumbelShape_fraction) return gumbelOf(l1_mm, l2_mm);
  // ln Γ(1 + k), so that neither factor loses its digits near k = 0.
  const logFactor = logGamma(1 + shape);
  const scale_mm = (l2_mm * shape) / (-Math.expm1(-shape * Math.LN2) * Math.exp(logFactor));
  return { location_mm: l1_mm + (scale_mm * Math.expm1(logFactor)) / shape, scale_mm, shape };
}

/**
 * Which Gumbel distribution has the first two L-moments of these values?
 *
 * @param values_mm - yearly maxima [mm], in any order
 * @returns location and scale [mm], shape 0 [number]; null where there are fewer than four values or all are the same
 * @law twice the values give twice the location and scale
 * @source hosking-1990, Gumbel distribution by L-moments: scale l2 ÷ ln 2, location l1 − 0.5772 scale
 */
export function gumbelByLMoments(values_mm: ArrayLike<number>): ExtremeFit | null {
  const moments = lMoments(values_mm);
  return moments && gumbelOf(moments.l1_mm, moments.l2_mm);
}

function gumbelOf(l1_mm: number, l2_mm: number): ExtremeFit {
  const scale_mm = l2_mm / Math.LN2;
  return { location_mm: l1_mm - euler_fraction * scale_mm, scale_mm, shape: 0 };
}

const ln3 = Math.log(3);

/** The shape whose L-skewness this is: Newton's steps from Hosking's approximation, kept between shapes known to be too small and too large. */
function shapeOfSkewness(t3_ratio: number): number | null {
  if (!(t3_ratio > -1 && t3_ratio < 1)) return null;
  const wanted = (3 + t3_ratio) / 2;
  const c = 1 / wanted - Math.LN2 / ln3;
  let [low, high] = [leastShape, mostShape];
  let shape = Math.min(mostShape / 2, Math.max(-0.999, 7.859 * c + 2.9554 * c * c));
  for (let step = 0; step < 100; step++) {
    const { ratio, slope } = skewnessRatio(shape);
    const miss = ratio - wanted;
    // The ratio falls as the shape grows.
    if (miss > 0) low = shape;
    else high = shape;
    let next = shape - miss / slope;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - shape) <= 1e-15 * (1 + Math.abs(shape))) return next;
    shape = next;
  }
  return shape > leastShape && shape < mostShape ? shape : null;
}

/** (1 − 3^−k) ÷ (1 − 2^−k), and how steep it is. */
function skewnessRatio(shape: number): { ratio: number; slope: number } {
  const limit = ln3 / Math.LN2;
  if (Math.abs(shape) < 1e-9)
    return { ratio: limit * (1 - (shape * (ln3 - Math.LN2)) / 2), slope: (-limit * (ln3 - Math.LN2)) / 2 };
  const above = -Math.expm1(-shape * ln3);
  const below = -Math.expm1(-shape * Math.LN2);
  const ratio = above / below;
  return { ratio, slope: (ln3 * Math.exp(-shape * ln3) - ratio * Math.LN2 * Math.exp(-shape * Math.LN2)) / below };
}
