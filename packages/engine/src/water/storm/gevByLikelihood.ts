import { gumbelShape_fraction, likelyShape as mostShape } from './constants.ts';
import type { ExtremeFit } from './extremes.ts';
import { gevByLMoments, gumbelByLMoments } from './gevFits.ts';
import { lowestPoint } from './lowestPoint.ts';

/**
 * Which generalised extreme value distribution makes these maxima likeliest? Found by a downhill simplex from the fit by L-moments, and once more
 * from where that ended. Held beside the fit by L-moments; no storm is taken from it.
 *
 * @param values_mm - yearly maxima [mm], in any order
 * @returns location and scale [mm] and shape [number], −1 to 1; null where they cannot be fitted or the likelihood has no top within these shapes
 * @law twice the values give twice the location and scale and the same shape
 * @source coles-2001, section 3.3.2, likelihood of the generalised extreme value distribution; nelder-mead-1965, downhill simplex (from memory)
 */
export function gevByLikelihood(values_mm: readonly number[]): ExtremeFit | null {
  const start = gevByLMoments(values_mm) ?? gumbelByLMoments(values_mm);
  if (!start) return null;
  // In units of the values' own spread, so that the scale of the values changes nothing.
  const unit = start.scale_mm;
  const reduced = values_mm.map((value) => (value - start.location_mm) / unit);
  const minusLogLikelihood = ([location, logScale, shape]: readonly number[]) =>
    minusLog(reduced, location!, Math.exp(logScale!), shape!);
  const first = [0, 0, Math.abs(start.shape) < mostShape ? start.shape : 0];
  const allowed = Number.isFinite(minusLogLikelihood(first)) ? first : [0, 0.5, 0];
  const found = lowestPoint(
    minusLogLikelihood,
    lowestPoint(minusLogLikelihood, allowed, [0.3, 0.3, 0.1]),
    [0.1, 0.1, 0.05],
  );
  const [location, logScale, shape] = found;
  if (!(Math.abs(shape!) < 0.999 * mostShape) || !Number.isFinite(minusLogLikelihood(found))) return null;
  return { location_mm: start.location_mm + location! * unit, scale_mm: Math.exp(logScale!) * unit, shape: shape! };
}

/** −ln of the likelihood; Infinity where a value lies outside the distribution. */
function minusLog(values: readonly number[], location: number, scale: number, shape: number): number {
  if (Math.abs(shape) > mostShape) return Number.POSITIVE_INFINITY;
  let sum = values.length * Math.log(scale);
  for (const value of values) {
    const z = (value - location) / scale;
    if (shape * z >= 1) return Number.POSITIVE_INFINITY;
    const y = Math.abs(shape) < gumbelShape_fraction ? z : -Math.log1p(-shape * z) / shape;
    sum += (1 - shape) * y + Math.exp(-y);
  }
  return sum;
}
