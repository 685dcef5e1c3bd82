import type { Range } from '../../kernel/index.ts';
import { type CartridgeRating, growthOfLoad } from './cartridgeRating.ts';
import { turbidityStretches_count } from './constants.ts';
import { type FoulingBelief, foulingBelief } from './foulingBelief.ts';

/** A reading of the flow, with the litres of each water that had passed till then. */
export interface SiteReading {
  /** Litres of roof water that had passed the set. */
  readonly roof_L: number;
  /** Litres of a second source that had. */
  readonly secondSource_L: number;
  readonly resistance_ratio: number;
  readonly error_fraction: number;
}

/** The turbidity of the waters of a site: one throw says where in both ranges it lies. */
export interface SiteTurbidity {
  readonly roof_NTU_range: Range;
  /** Null where there is no second source. */
  readonly source_NTU_range: Range | null;
}

/** What is believed of a site's turbidity and fouling together. */
export interface SiteFouling {
  /** How likely each of the equal stretches of the turbidity's range is, from its low end up; the sum is 1. */
  readonly stretch_fraction: Float64Array;
  /** The fouling, if the turbidity lies in that stretch. */
  readonly beliefs: readonly FoulingBelief[];
}

/**
 * What do readings of the flow say of a site's turbidity and fouling? They tell the product of both: a set that clogged fast met dirtier water or clogs faster. So the range of the
 * turbidity is cut into equal stretches, the fouling is weighed for each, and the stretches by how likely they make the readings.
 *
 * @param rating - the set: rated litres [L] and turbidity [NTU], flows [L/h]
 * @param turbidity - ranges of turbidity of roof water and second source [NTU]
 * @param readings - litres of each water [L], resistance [ratio] and error [fraction]
 * @param lnSpread_ratio - standard deviation of the fouling's logarithm before any reading [ratio]
 * @returns weights of the stretches [fraction], and the belief of the fouling in each [ratio]
 * @law without readings every stretch is as likely as any other, and the belief of each is the one there was before
 * @definition ours: docs/decisions/0208-fouling-learned-from-readings.md
 */
export function siteFouling(
  rating: CartridgeRating,
  turbidity: SiteTurbidity,
  readings: readonly SiteReading[],
  lnSpread_ratio: number,
): SiteFouling {
  const growth = growthOfLoad(rating);
  if (growth === null || readings.length === 0)
    return { stretch_fraction: Float64Array.of(1), beliefs: [foulingBelief(0, [], lnSpread_ratio)] };
  const { roof_NTU_range: roof, source_NTU_range: source } = turbidity;
  const isOne = roof.low === roof.high && (source === null || source.low === source.high);
  const stretches = isOne ? 1 : turbidityStretches_count;
  const beliefs = Array.from({ length: stretches }, (_, stretch) => {
    const middle = (stretch + 1 / 2) / stretches;
    const loads = readings.map(({ roof_L, secondSource_L, resistance_ratio, error_fraction }) => ({
      load_L_NTU:
        roof_L * turbidityAt_NTU(roof, middle) +
        (source === null ? 0 : secondSource_L * turbidityAt_NTU(source, middle)),
      resistance_ratio,
      error_fraction,
    }));
    return foulingBelief(growth, loads, lnSpread_ratio);
  });
  const most = Math.max(...beliefs.map(({ lnLikelihood_ratio }) => lnLikelihood_ratio));
  const weights = Float64Array.from(beliefs, ({ lnLikelihood_ratio }) => Math.exp(lnLikelihood_ratio - most));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { stretch_fraction: weights.map((weight) => weight / sum), beliefs };
}

/** The turbidity so far up its range [NTU]: even in its logarithm, so that twice and half the middle are as likely; even in itself where the range begins at 0. */
export function turbidityAt_NTU({ low, high }: Range, up_fraction: number): number {
  return low > 0 ? low * (high / low) ** up_fraction : up_fraction * high;
}

/** Where a throw falls: in which stretch, and how far up the whole range. */
export function turbidityOfThrow({ stretch_fraction }: SiteFouling, throw_fraction: number) {
  let below = 0;
  let stretch = 0;
  while (stretch < stretch_fraction.length - 1 && below + stretch_fraction[stretch]! <= throw_fraction)
    below += stretch_fraction[stretch++]!;
  const weight = stretch_fraction[stretch]!;
  const within = weight > 0 ? Math.min(1, Math.max(0, (throw_fraction - below) / weight)) : 0;
  return { stretch, up_fraction: (stretch + within) / stretch_fraction.length };
}
