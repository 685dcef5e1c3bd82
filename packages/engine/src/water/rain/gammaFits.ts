/** A gamma distribution of rain: its mean is shape × scale. */
export interface GammaFit {
  readonly shape: number;
  readonly scale_mm: number;
}

/**
 * Which gamma distribution has the first two L-moments of these amounts? The L-moments are taken from probability-weighted
 * moments without bias; the shape follows from their ratio by Hosking's approximation, off by less than 0.00005 of itself.
 *
 * @param amounts_mm - rain [mm], each above 0, in any order
 * @returns shape [number] and scale [mm]; null where there are not two different amounts
 * @law twice the amounts give the same shape and twice the scale
 * @source hosking-1990, gamma distribution by L-moments (from memory)
 */
export function gammaByLMoments(amounts_mm: readonly number[]): GammaFit | null {
  const { length } = amounts_mm;
  const sorted = Float64Array.from(amounts_mm).sort();
  if (!areFitting(sorted)) return null;
  let sum = 0;
  let ranked = 0;
  for (const [i, amount] of sorted.entries()) {
    sum += amount;
    ranked += (i / (length - 1)) * amount;
  }
  const mean_mm = sum / length;
  const ratio = ((2 * ranked) / length - mean_mm) / mean_mm;
  const shape = shapeOfRatio(ratio);
  return { shape, scale_mm: mean_mm / shape };
}

/** Hosking's approximations of the shape from the ratio of the second L-moment to the first, 0 < ratio < 1. */
function shapeOfRatio(ratio: number): number {
  if (ratio < 0.5) {
    const z = Math.PI * ratio * ratio;
    return (1 - 0.308 * z) / (z * (1 - z * (0.05812 - z * 0.01765)));
  }
  const z = 1 - ratio;
  return (z * (0.7213 - z * 0.5947)) / (1 + z * (-2.1817 + z * 1.2113));
}

/**
 * Which gamma distribution fits these amounts by Thom's approximation of the greatest likelihood?
 *
 * @param amounts_mm - rain [mm], each above 0, in any order
 * @returns shape [number] and scale [mm]; null where there are not two different amounts
 * @law twice the amounts give the same shape and twice the scale
 * @source thom-1958, gamma distribution (from memory)
 */
export function gammaByThom(amounts_mm: readonly number[]): GammaFit | null {
  if (!areFitting(Float64Array.from(amounts_mm).sort())) return null;
  const mean_mm = amounts_mm.reduce((sum, amount) => sum + amount, 0) / amounts_mm.length;
  // ln(mean) − mean(ln), term by term, so that like amounts do not cancel.
  const spread = amounts_mm.reduce((sum, amount) => sum - Math.log(amount / mean_mm), 0) / amounts_mm.length;
  if (!(spread > 0)) return null;
  const shape = (1 + Math.sqrt(1 + (4 * spread) / 3)) / (4 * spread);
  return { shape, scale_mm: mean_mm / shape };
}

/** All above 0 and not all the same: what a gamma distribution can be fitted to. Sorted amounts. */
function areFitting(sorted: Float64Array): boolean {
  return sorted.length >= 2 && sorted[0]! > 0 && sorted.at(-1)! > sorted[0]! && Number.isFinite(sorted.at(-1)!);
}
