import { yearOfDrinking_days } from './constants.ts';

/** A share of the water, and what is taken out of it. */
export interface WaterShare {
  /** How much of the water, in any measure that is the same for all shares. */
  readonly share_factor: number;
  readonly reduction_log10: number;
}

/**
 * What is taken out of water on the whole, where shares of it were treated differently? The mean is of what is left, never of the log reductions: one tenth
 * left untreated caps the whole at 1.
 *
 * @param shares - the shares: how much of each [any one measure], 0 or more, and its log reduction [log10]
 * @returns log reduction of the mean dose [log10]; null where there is no water at all
 * @law lies between the least and the greatest of the shares that have water
 * @source enger-2013, mean of the dose; brown-clasen-2012
 * @definition −log₁₀ of the mean of 10^−reduction, weighted by the shares
 */
export function meanReduction_log10(shares: readonly WaterShare[]): number | null {
  const water = shares.filter(({ share_factor }) => share_factor > 0);
  const water_factor = water.reduce((sum, { share_factor }) => sum + share_factor, 0);
  if (water_factor === 0) return null;
  const left_fraction = water.reduce(
    (sum, { share_factor, reduction_log10 }) => sum + (share_factor / water_factor) * 10 ** -reduction_log10,
    0,
  );
  // `0 -` keeps untreated water at 0 rather than −0.
  return 0 - Math.log10(left_fraction);
}

/** One of several cartridges side by side. */
export interface ParallelCartridge {
  readonly flow_L_per_min: number;
  readonly reduction_log10: number;
  /** Share of its flow that passes a cut fibre or a bad seal without being filtered; 0 where it is tight. */
  readonly leak_fraction: number;
}

/**
 * What do cartridges side by side take out of the water they share? What each lets through counts by its flow; of a leaking one, its leak is not filtered at all.
 *
 * @param cartridges - flow [L/min], log reduction while tight [log10] and leak [fraction] of each
 * @returns log reduction of the mean dose [log10]; null where nothing flows
 * @law a leak never makes it better
 * @definition the mean of what is left, weighted by flow
 */
export function parallelReduction_log10(cartridges: readonly ParallelCartridge[]): number | null {
  return meanReduction_log10(
    cartridges.flatMap(({ flow_L_per_min, reduction_log10, leak_fraction }) => [
      { share_factor: flow_L_per_min * (1 - leak_fraction), reduction_log10 },
      { share_factor: flow_L_per_min * leak_fraction, reduction_log10: 0 },
    ]),
  );
}

/**
 * What is left of a log reduction over a year with days on which nobody's water is treated? One day caps it at 2.56.
 *
 * @param reduction_log10 - log reduction on the other days [log10], 0 or more
 * @param daysOff - days without treatment [days], 0 to 365, parts of a day too
 * @returns log reduction of the year's mean dose [log10]
 * @law never rises with the days off
 * @definition the mean over the days of what is left
 * @example
 * reductionWithDaysOff_log10(6, 1) // → 2.562
 * reductionWithDaysOff_log10(6, 365) // → 0
 */
export function reductionWithDaysOff_log10(reduction_log10: number, daysOff: number): number {
  const off_days = Math.min(Math.max(daysOff, 0), yearOfDrinking_days);
  return meanReduction_log10([
    { share_factor: yearOfDrinking_days - off_days, reduction_log10 },
    { share_factor: off_days, reduction_log10: 0 },
  ])!;
}
