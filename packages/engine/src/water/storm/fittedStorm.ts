import {
  type DesignSettings,
  explain,
  type Problem,
  type Range,
  seedFor,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { drawsOfLimits_count } from './constants.ts';
import { limitsOfStorms_mm, stormDistribution } from './extremeLimits.ts';
import { type ExtremeFit, maximumOnceIn_mm } from './extremes.ts';
import { stormProblem } from './stormProblem.ts';

/** A storm read off the maxima of years. */
export interface FittedStorm {
  readonly depth_mm: number;
  readonly depth_mm_range: Range;
}

/** What maxima of years come to. */
export interface StormFit {
  readonly storm: FittedStorm | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** Which maxima: five minutes of a short record, or days. */
export type MaximaOf = 'shortRecord' | 'dailyMaxima';

/** The storm of the settings' return period by the distribution of these years' maxima, with its limits; too few years, or years all alike, give none. */
export function fittedStorm(
  gaugeId: string,
  of: MaximaOf,
  maxima_mm: readonly number[],
  settings: DesignSettings,
  before: readonly WorkingLine[] = [],
): StormFit {
  const years = maxima_mm.length;
  const { leastYears, stormReturnPeriod_years: period, range_fraction, seed } = settings;
  const without = (problem: Problem): StormFit => ({ storm: null, problems: [problem], working: [] });
  // A year has its maximum every year: no distribution says what is exceeded then. The settings ask for 2 years or more.
  if (!(period > 1)) return { storm: null, problems: [], working: [] };
  if (years < leastYears) return without(stormProblem('storm.too_few_years', gaugeId, of, { of, years, leastYears }));
  const fit = stormDistribution(maxima_mm);
  if (!fit) return without(stormProblem('storm.not_fitted', gaugeId, of, { of, years }));
  const working = maximaWorking(gaugeId, of, maxima_mm, before, fit);
  const depth_mm = explain(working, {
    code: 'storm.onceIn',
    value: maximumOnceIn_mm(fit, period),
    unit: 'mm',
    inputs: [workingInput('returnPeriod', period, 'year')],
    source: 'hosking-1990',
  });
  const [range] = limitsOfStorms_mm(fit, years, [period], range_fraction, seedFor(seed, `storm ${gaugeId}`));
  const depth_mm_range = explain(working, {
    code: 'storm.limits',
    value: range!,
    unit: 'mm',
    inputs: [
      workingInput('range', range_fraction, 'fraction'),
      workingInput('draws', drawsOfLimits_count, 'number'),
      workingInput('years', years, 'year'),
      workingInput('seed', seed, 'number'),
    ],
    source: 'efron-tibshirani-1993',
  });
  return { storm: { depth_mm, depth_mm_range }, problems: [], working };
}

/** The maxima, and the distribution they give. */
function maximaWorking(
  gaugeId: string,
  of: MaximaOf,
  maxima_mm: readonly number[],
  before: readonly WorkingLine[],
  fit: ExtremeFit,
): WorkingLine[] {
  const working: WorkingLine[] = [];
  explain(working, {
    code: 'storm.maxima',
    value: maxima_mm.length,
    unit: 'year',
    inputs: [
      workingInput('gauge', gaugeId, 'text'),
      workingInput('maximaOf', of, 'text'),
      workingInput('least', Math.min(...maxima_mm), 'mm'),
      workingInput('most', Math.max(...maxima_mm), 'mm'),
    ],
    source: 'gauge',
  });
  working.push(...before);
  explain(working, {
    code: 'storm.distribution',
    value: fit.shape,
    unit: 'number',
    inputs: [workingInput('location', fit.location_mm, 'mm'), workingInput('scale', fit.scale_mm, 'mm')],
    source: 'hosking-1990',
  });
  return working;
}
