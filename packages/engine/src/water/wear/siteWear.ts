import type { Range } from '../../kernel/index.ts';
import { type CartridgeRating, growthOfLoad } from './cartridgeRating.ts';
import { lnWearSpread_ratio, turbidityStretches_count } from './constants.ts';
import { type WearBelief, wearBelief } from './wearBelief.ts';

/** A reading of the flow, with the litres of each water that had passed till then. */
export interface SiteReading {
  /** Litres of the tank that had passed the set. */
  readonly tank_L: number;
  /** Litres of a second source that had. */
  readonly source_L: number;
  readonly resistance_ratio: number;
  readonly error_fraction: number;
}

/** The turbidity of the waters of a site: one throw says where in both ranges it lies. */
export interface SiteTurbidity {
  readonly tank_NTU_range: Range;
  /** Null where there is no second source. */
  readonly source_NTU_range: Range | null;
}

/** What is believed of a site's turbidity and wear together. */
export interface SiteWear {
  /** How likely each of the equal stretches of the turbidity's range is, from its low end up; the sum is 1. */
  readonly stretch_fraction: Float64Array;
  /** The wear, if the turbidity lies in that stretch. */
  readonly beliefs: readonly WearBelief[];
}

/**
 * What do readings of the flow say of a site's turbidity and wear? They tell the product of both: a set that clogged fast met dirtier water or clogs faster. So the range of the
 * turbidity is cut into equal stretches, the wear is weighed for each, and the stretches by how likely they make the readings.
 *
 * @param rating - the set: rated litres [L] and turbidity [NTU], flows [L/h]
 * @param turbidity - ranges of turbidity of tank and second source [NTU]
 * @param readings - litres of each water [L], resistance [ratio] and error [fraction]
 * @param lnSpread_ratio - standard deviation of the wear's logarithm before any reading [ratio]
 * @returns weights of the stretches [fraction], and the belief of the wear in each [ratio]
 * @law without readings every stretch is as likely as any other, and the belief of each is the one there was before
 * @definition ours: docs/decisions/0208-wear-learned-from-readings.md
 */
export function siteWear(
  rating: CartridgeRating,
  turbidity: SiteTurbidity,
  readings: readonly SiteReading[],
  lnSpread_ratio: number = lnWearSpread_ratio,
): SiteWear {
  const growth = growthOfLoad(rating);
  if (growth === null || readings.length === 0)
    return { stretch_fraction: Float64Array.of(1), beliefs: [wearBelief(0, [], lnSpread_ratio)] };
  const { tank_NTU_range: tank, source_NTU_range: source } = turbidity;
  const isOne = tank.low === tank.high && (source === null || source.low === source.high);
  const stretches = isOne ? 1 : turbidityStretches_count;
  const beliefs = Array.from({ length: stretches }, (_, stretch) => {
    const middle = (stretch + 1 / 2) / stretches;
    const loads = readings.map(({ tank_L, source_L, resistance_ratio, error_fraction }) => ({
      load_L_NTU:
        tank_L * turbidityAt_NTU(tank, middle) + (source === null ? 0 : source_L * turbidityAt_NTU(source, middle)),
      resistance_ratio,
      error_fraction,
    }));
    return wearBelief(growth, loads, lnSpread_ratio);
  });
  const most = Math.max(...beliefs.map(({ lnLikelihood_ratio }) => lnLikelihood_ratio));
  const weights = Float64Array.from(beliefs, ({ lnLikelihood_ratio }) => Math.exp(lnLikelihood_ratio - most));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return { stretch_fraction: weights.map((weight) => weight / sum), beliefs };
}

/** The turbidity so far up its range [NTU]; the shares between are equally likely. */
export function turbidityAt_NTU({ low, high }: Range, up_fraction: number): number {
  return low + up_fraction * (high - low);
}

/** Where a throw falls: in which stretch, and how far up the whole range. */
export function turbidityOfThrow({ stretch_fraction }: SiteWear, throw_fraction: number) {
  let below = 0;
  let stretch = 0;
  while (stretch < stretch_fraction.length - 1 && below + stretch_fraction[stretch]! <= throw_fraction)
    below += stretch_fraction[stretch++]!;
  const weight = stretch_fraction[stretch]!;
  const within = weight > 0 ? Math.min(1, Math.max(0, (throw_fraction - below) / weight)) : 0;
  return { stretch, up_fraction: (stretch + within) / stretch_fraction.length };
}
