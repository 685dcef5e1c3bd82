import { foulingGrid_count, foulingGridSpreads_count } from './constants.ts';

/** What a reading of the flow says: how worn the set was, after which load. */
export interface FoulingReading {
  /** Litres that had passed times their turbidity, 0 or more. */
  readonly load_L_NTU: number;
  /** Resistance read ÷ clean resistance, above 0. */
  readonly resistance_ratio: number;
  /** How far it may be off: the standard deviation of its logarithm, above 0. */
  readonly error_fraction: number;
}

/** What is believed of the fouling of a site: a weight for each of many values. */
export interface FoulingBelief {
  /** The values' logarithms, evenly spaced, rising. */
  readonly lnFouling_ratio: Float64Array;
  /** Their weights; their sum is 1. */
  readonly weight_fraction: Float64Array;
  /** How likely the readings are under all that was believed before, as a logarithm and but for a constant: to weigh one turbidity against another. */
  readonly lnLikelihood_ratio: number;
  /** The heaviest value is the least or the greatest looked at: readings and rating do not belong together. */
  readonly atEdge: boolean;
}

/**
 * How fast do cartridges clog at this site? Before any reading as they are rated, within a stated spread; every reading of the flow narrows it. Bayes' rule on an even
 * grid of the fouling's logarithm: weights before × likelihood of the readings, whose errors are normal in the logarithm of the resistance.
 *
 * @param growth_ratio_per_L_NTU - growth of the resistance with a litre of one NTU, at a fouling of 1 [ratio/(L·NTU)], above 0
 * @param readings - loads [L·NTU], resistances [ratio] and errors [fraction], in any order
 * @param lnSpread_ratio - standard deviation of the fouling's logarithm before any reading [ratio], above 0
 * @returns the grid of the fouling's logarithm [ratio], weights [fraction], likelihood as a logarithm [ratio], and whether the heaviest value lies at an end of the grid
 * @law the order of readings is no matter; a higher resistance read never makes a slower fouling more likely
 * @source gelman-bda-2013, posterior on a grid (from memory); the model and its spread are ours, docs/decisions/0208-fouling-learned-from-readings.md
 */
export function foulingBelief(
  growth_ratio_per_L_NTU: number,
  readings: readonly FoulingReading[],
  lnSpread_ratio: number,
): FoulingBelief {
  const half = (foulingGrid_count - 1) / 2;
  const step = (foulingGridSpreads_count * lnSpread_ratio) / half;
  const lnFouling_ratio = Float64Array.from({ length: foulingGrid_count }, (_, place) => (place - half) * step);
  const lnWeight = lnFouling_ratio.map((lnFouling) => -((lnFouling / lnSpread_ratio) ** 2) / 2);
  const before = sumOfExponents(lnWeight);
  const growths = lnFouling_ratio.map((lnFouling) => Math.exp(lnFouling) * growth_ratio_per_L_NTU);
  for (const { load_L_NTU, resistance_ratio, error_fraction } of readings) {
    const read = Math.log(resistance_ratio);
    for (let place = 0; place < foulingGrid_count; place++) {
      const apart = (read - Math.log1p(growths[place]! * load_L_NTU)) / error_fraction;
      lnWeight[place]! -= (apart * apart) / 2;
    }
  }
  const after = sumOfExponents(lnWeight);
  const heaviest = lnWeight.indexOf(lnWeight.reduce((most, one) => Math.max(most, one), -Infinity));
  return {
    lnFouling_ratio,
    weight_fraction: lnWeight.map((one) => Math.exp(one - after)),
    lnLikelihood_ratio: after - before,
    atEdge: heaviest === 0 || heaviest === foulingGrid_count - 1,
  };
}

/** ln Σ e^x, whatever the size of the x. */
function sumOfExponents(exponents: Float64Array): number {
  const most = exponents.reduce((high, one) => Math.max(high, one), -Infinity);
  return most + Math.log(exponents.reduce((sum, one) => sum + Math.exp(one - most), 0));
}

/**
 * Which fouling is there a given share of belief below?
 *
 * @param belief - values and weights of the fouling [ratio]
 * @param share_fraction - the share below [fraction], 0 to 1
 * @returns the fouling against the rated one [ratio]; each value stands for the even stretch half way to its neighbours
 * @law never falls as the share grows
 * @definition ours: the weights of the grid added up, a straight line within each stretch
 */
export function foulingAtShare_ratio(
  belief: Pick<FoulingBelief, 'lnFouling_ratio' | 'weight_fraction'>,
  share_fraction: number,
): number {
  const { lnFouling_ratio, weight_fraction } = belief;
  const step = lnFouling_ratio[1]! - lnFouling_ratio[0]!;
  const last = weight_fraction.length - 1;
  let below = 0;
  let place = 0;
  while (place < last && below + weight_fraction[place]! < share_fraction) below += weight_fraction[place++]!;
  const weight = weight_fraction[place]!;
  const within = weight > 0 ? Math.min(1, Math.max(0, (share_fraction - below) / weight)) : 0;
  return Math.exp(lnFouling_ratio[place]! + (within - 1 / 2) * step);
}
