import { quantile, type Range, seededDice, uniformDraw, widenedTail_fraction } from '../../kernel/index.ts';
import { drawsOfLimits_count } from './constants.ts';
import { type ExtremeFit, maximumOnceIn_mm } from './extremes.ts';
import { gevByLMoments, gumbelByLMoments } from './gevFits.ts';

/**
 * Which distribution of yearly maxima is a storm taken from? The generalised extreme value distribution of their L-moments; but where that has a
 * greatest value no storm passes, a Gumbel distribution instead: with few years such an end is mostly chance, and it would make storms too small.
 *
 * @param values_mm - yearly maxima [mm], in any order
 * @returns location and scale [mm] and shape [number], 0 or less; null where they cannot be fitted
 * @law twice the values give twice every storm; the order of the values changes nothing
 * @source hosking-1990; papalexiou-koutsoyiannis-2013 (from memory), tails of daily maxima; the choice is ours: docs/decisions/0171-a-storm-has-no-greatest-value.md
 */
export function stormDistribution(values_mm: ArrayLike<number>): ExtremeFit | null {
  const fit = gevByLMoments(values_mm);
  return fit && fit.shape <= 0 ? fit : gumbelByLMoments(values_mm);
}

/**
 * Between which values do the storms of these return periods lie? The distribution is drawn from so many times over as many years as it was fitted
 * to, each draw is fitted in the same way, and the ends of the range are read off
 * the storms of all draws, further out the fewer the years are.
 *
 * @param fit - the distribution [mm]
 * @param years_count - years it was fitted to [count], 4 or more
 * @param returnPeriods_years - return periods [year], each above 1
 * @param range_fraction - how much of the doubt the range holds [fraction], above 0, below 1
 * @param seed - seed of the draws [number], whole
 * @returns the range of the maximum at each return period [mm]
 * @law the same seed gives the same ranges; twice location and scale give twice the ranges
 * @source efron-tibshirani-1993, parametric bootstrap and percentile interval (from memory); hesterberg-2014, expanded percentile interval
 */
export function limitsOfStorms_mm(
  fit: ExtremeFit,
  years_count: number,
  returnPeriods_years: readonly number[],
  range_fraction: number,
  seed: number,
): readonly Range[] {
  const dice = seededDice(seed);
  const drawn = returnPeriods_years.map(() => new Float64Array(drawsOfLimits_count));
  const values_mm = new Float64Array(years_count);
  for (let draw = 0; draw < drawsOfLimits_count; draw++) {
    for (let i = 0; i < years_count; i++) values_mm[i] = maximumOnceIn_mm(fit, 1 / uniformDraw(dice));
    const again = stormDistribution(values_mm) ?? fit;
    for (const [i, period] of returnPeriods_years.entries()) drawn[i]![draw] = maximumOnceIn_mm(again, period);
  }
  const tail = widenedTail_fraction(years_count, range_fraction);
  return drawn.map((storms_mm) => ({ low: quantile(storms_mm, tail), high: quantile(storms_mm, 1 - tail) }));
}
