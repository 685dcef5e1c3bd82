import {
  type DesignSettings,
  type DesignStorm,
  explain,
  type Problem,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { coefficientStorm } from './coefficientStorm.ts';
import { dailyStorm, shortRecordStorm } from './measuredStorms.ts';
import { risk_fraction } from './risk.ts';
import { statedStorm } from './statedStorm.ts';
import { stormProblem } from './stormProblem.ts';
import type { StormGiven } from './stormWay.ts';

/**
 * How hard does it rain at this gauge for five minutes, once in the years the settings ask? What is stated for that return period comes first, then the
 * gauge's coefficients, then its record of short intervals, and last its wettest days with a stated share of five minutes in them; never a day's rain alone.
 *
 * @param given - the gauge's stated storms [mm/h], coefficients and short record [mm], its wettest days [mm], and the settings
 * @returns the storm [mm/h] with its range, or null; every problem met on the way taken; the working
 * @problem storm.no_intensity - none of these is given
 * @problem storm.period_not_stated - storms are stated, and none for that return period
 * @problem storm.intensity_unlikely - under 20 or over 600 mm/h
 * @problem storm.range_reversed - the range that is stated does not hold the storm
 * @problem storm.source_missing - nobody is named who says so
 * @problem storm.coefficients_out_of_range - the coefficients are not made for that return period
 * @problem storm.too_few_years - fewer maxima than the settings ask
 * @problem storm.not_fitted - all maxima are the same
 * @problem storm.from_daily - it rests on the wettest days: what is judged by it is tight at best
 * @law a stated storm is taken whatever else is known
 * @definition ours: docs/decisions/0172-which-storm-is-taken.md
 */
export function designStorm(given: StormGiven): {
  readonly storm: DesignStorm | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
} {
  const { gauge, settings } = given;
  const problems: Problem[] = [];
  for (const way of [statedStorm, coefficientStorm, shortRecordStorm, dailyStorm]) {
    const found = way(given);
    problems.push(...found.problems);
    if (found.storm) return { storm: found.storm, problems, working: concluded(found.storm, found.working, settings) };
    if (found.isStop) return { storm: null, problems, working: [] };
  }
  const facts = { returnPeriod_years: settings.stormReturnPeriod_years };
  return {
    storm: null,
    problems: [...problems, stormProblem('storm.no_intensity', gauge.gaugeId, 'stated', facts)],
    working: [],
  };
}

/** Where a storm is from, where nobody is named who says so. */
const unsaid = { stated: 'survey', coefficients: 'survey', shortRecord: 'gauge', dailyMaxima: 'settings' } as const;

/** The last lines of a working: the storm itself, and how likely it is within as many years. */
function concluded(
  storm: DesignStorm,
  before: readonly WorkingLine[],
  settings: DesignSettings,
): readonly WorkingLine[] {
  const working = [...before];
  const period = workingInput('returnPeriod', storm.returnPeriod_years, 'year');
  explain(working, {
    code: 'storm.intensity',
    value: storm.intensity_mm_per_h,
    unit: 'mm/h',
    inputs: [
      workingInput('gauge', storm.gaugeId, 'text'),
      period,
      workingInput('stormFrom', storm.from, 'text'),
      ...(storm.intensity_range
        ? [
            workingInput('low', storm.intensity_range.low, 'mm/h'),
            workingInput('high', storm.intensity_range.high, 'mm/h'),
          ]
        : [workingInput('margin', settings.stormMargin_fraction, 'fraction')]),
    ],
    source: storm.source ?? unsaid[storm.from],
  });
  explain(working, {
    code: 'storm.risk',
    value: risk_fraction(storm.returnPeriod_years, storm.returnPeriod_years),
    unit: 'fraction',
    inputs: [period],
    source: 'punmia-pande-lal, 4.36',
  });
  return working;
}
