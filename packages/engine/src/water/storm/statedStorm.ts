import type { Problem } from '../../kernel/index.ts';
import { maximumOnceIn_mm } from './extremes.ts';
import { gumbelThrough } from './gumbelFits.ts';
import { stormProblem } from './stormProblem.ts';
import { noWay, type StormGiven, stormFrom, unlikelyIntensity, type Way } from './stormWay.ts';

/** The storm that is stated for just this return period; where one end of its range is stated, the other is by the margin. */
export function statedStorm({ gauge, settings }: StormGiven): Way {
  const { gaugeId, storms } = gauge;
  const period = settings.stormReturnPeriod_years;
  const found = storms.find(({ returnPeriod_years }) => returnPeriod_years === period);
  if (!found) return storms.length === 0 ? noWay : { ...noWay, problems: [notStated(gauge, period)] };
  const { intensity_mm_per_h: value, source } = found;
  const { stormMargin_fraction: margin } = settings;
  const [low, high] = [found.low_mm_per_h ?? value * (1 - margin), found.high_mm_per_h ?? value * (1 + margin)];
  const stop = (problem: Problem): Way => ({ ...noWay, isStop: true, problems: [problem] });
  const unlikely = unlikelyIntensity(gaugeId, 'stated', value);
  if (unlikely) return stop(unlikely);
  if (low > value || high < value)
    return stop(
      stormProblem('storm.range_reversed', gaugeId, 'stated', {
        value_mm_per_h: value,
        low_mm_per_h: low,
        high_mm_per_h: high,
      }),
    );
  const hasRange = found.low_mm_per_h !== null || found.high_mm_per_h !== null;
  const range = hasRange ? { low, high } : null;
  return {
    storm: stormFrom(gaugeId, 'stated', settings, value, { range, source }),
    problems: source === null ? [stormProblem('storm.source_missing', gaugeId, 'stated', { of: 'stated' })] : [],
    working: [],
  };
}

/** Which return periods are stated, and what a line between the two around the one wanted would give, as a guide. */
function notStated({ gaugeId, storms }: StormGiven['gauge'], period: number): Problem {
  const once = storms.map(({ returnPeriod_years, intensity_mm_per_h }) => ({
    returnPeriod_years,
    maximum_mm: intensity_mm_per_h,
  }));
  const below = once.findLast(({ returnPeriod_years }) => returnPeriod_years > 1 && returnPeriod_years < period);
  const above = once.find(({ returnPeriod_years }) => returnPeriod_years > period);
  const line = below && above ? gumbelThrough(below, above) : null;
  return stormProblem('storm.period_not_stated', gaugeId, 'stated', {
    returnPeriod_years: period,
    stated_years: once.map(({ returnPeriod_years }) => String(returnPeriod_years)),
    ...(line ? { between_mm_per_h: maximumOnceIn_mm(line, period) } : {}),
  });
}
