import { type Dice, gammaDraw, uniformDraw } from '../../kernel/index.ts';
import { type WetChain, wetDayMoments } from './wetChain.ts';

/** Rain of a wet day: the least a wet day has, and above it a gamma distribution. */
export interface GammaAmounts {
  readonly kind: 'gamma';
  readonly least_mm: number;
  readonly shape: number;
  readonly scale_mm: number;
}

/** Rain of a wet day: the least a wet day has, and above it light rain of one mean or heavy rain of another. */
export interface MixedAmounts {
  readonly kind: 'mixedExponential';
  readonly least_mm: number;
  /** Share of wet days with light rain. */
  readonly light_fraction: number;
  readonly lightMean_mm: number;
  readonly heavyMean_mm: number;
}

export type WetDayAmounts = GammaAmounts | MixedAmounts;

/** Mean and standard deviation of rain. */
export interface RainMoments {
  readonly mean_mm: number;
  readonly sd_mm: number;
}

/**
 * How much rain has a wet day, and how much does it differ?
 *
 * @param amounts - distribution of a wet day's rain [mm]
 * @returns mean and standard deviation [mm]
 * @source woolhiser-roldan-1982, mixed exponential distribution (from memory)
 */
export function amountMoments(amounts: WetDayAmounts): RainMoments {
  if (amounts.kind === 'gamma') {
    const { least_mm, shape, scale_mm } = amounts;
    return { mean_mm: least_mm + shape * scale_mm, sd_mm: Math.sqrt(shape) * scale_mm };
  }
  const { least_mm, light_fraction, lightMean_mm, heavyMean_mm } = amounts;
  const mean_mm = light_fraction * lightMean_mm + (1 - light_fraction) * heavyMean_mm;
  const square = 2 * light_fraction * lightMean_mm ** 2 + 2 * (1 - light_fraction) * heavyMean_mm ** 2;
  return { mean_mm: least_mm + mean_mm, sd_mm: Math.sqrt(square - mean_mm ** 2) };
}

/**
 * How much rain falls in so many days, and how much does it differ from one time to the next? The chain's own spread only:
 * a real record differs more from year to year, so that no record is to be held against it.
 *
 * @param chain - chances of a wet day [fraction]
 * @param wetDay - mean and standard deviation of a wet day's rain [mm]
 * @param days - how many days are added up [day], whole, 1 or more
 * @returns mean and standard deviation of the sum [mm]
 * @source katz-1977, sums of rain of a chain of two states (from memory)
 */
export function totalMoments(chain: WetChain, wetDay: RainMoments, days: number): RainMoments {
  const { mean_days, sd_days } = wetDayMoments(chain, days);
  return {
    mean_mm: mean_days * wetDay.mean_mm,
    sd_mm: Math.sqrt(mean_days * wetDay.sd_mm ** 2 + (wetDay.mean_mm * sd_days) ** 2),
  };
}

/** One wet day's rain [mm]. */
export function drawAmount_mm(amounts: WetDayAmounts, dice: Dice): number {
  if (amounts.kind === 'gamma') return amounts.least_mm + amounts.scale_mm * gammaDraw(dice, amounts.shape);
  const isLight = uniformDraw(dice) < amounts.light_fraction;
  return amounts.least_mm - (isLight ? amounts.lightMean_mm : amounts.heavyMean_mm) * Math.log(uniformDraw(dice));
}
