import { logGamma } from '../../kernel/index.ts';
import { logAny } from './likelihood.ts';
import type { Portion } from './portion.ts';
import { logTail } from './uncountable.ts';

/** How likely is what was seen beside the likeliest that could have been seen at this density, portion by portion? 1 where it is the likeliest. */
export function rarity_fraction(seen: readonly Portion[], logDensity: number): number {
  return Math.exp(seen.reduce((sum, portion) => sum + logRarity(portion, Math.exp(logDensity) * portion.volume_mL), 0));
}

function logRarity(portion: Portion, mean_count: number): number {
  if (portion.kind === 'wells') {
    const { positive_count, wells_count } = portion;
    const chanceOf = (positive: number) => logPattern(positive, wells_count, mean_count);
    const likeliest = Math.min(wells_count, Math.floor((wells_count + 1) * -Math.expm1(-mean_count)));
    return Math.min(0, chanceOf(positive_count) - chanceOf(likeliest));
  }
  const likeliest = Math.floor(mean_count);
  if (portion.kind === 'plate')
    return Math.min(0, logPoisson(portion.colonies_count, mean_count) - logPoisson(likeliest, mean_count));
  const counted = logPoisson(Math.min(likeliest, portion.limit_count - 1), mean_count);
  return Math.min(0, logTail(mean_count, portion.limit_count) - counted);
}

/** ln of the chance of so many positive wells. */
function logPattern(positive: number, wells: number, mean_count: number): number {
  const ways = logGamma(wells + 1) - logGamma(positive + 1) - logGamma(wells - positive + 1);
  return ways + (positive > 0 ? positive * logAny(mean_count) : 0) - (wells - positive) * mean_count;
}

function logPoisson(count: number, mean_count: number): number {
  return count * Math.log(mean_count) - mean_count - logGamma(count + 1);
}
