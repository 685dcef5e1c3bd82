import { explain, type WorkingLine, workingInput } from '../../kernel/index.ts';
import { leastPeriodOfSet_years, mostPeriodOfSet_years } from './constants.ts';
import { intensityOfCoefficients_mm_per_h } from './intensityOfCoefficients.ts';
import { stormProblem } from './stormProblem.ts';
import { noWay, type StormGiven, storm_h, stormFrom, unlikelyIntensity, type Way } from './stormWay.ts';

/** The storm by the gauge's coefficients, where they are made for its return period. */
export function coefficientStorm({ gauge: { gaugeId, stormCoefficients: set }, settings }: StormGiven): Way {
  if (!set) return noWay;
  const period = settings.stormReturnPeriod_years;
  const [least, most] = [
    set.leastPeriod_years ?? leastPeriodOfSet_years,
    set.mostPeriod_years ?? mostPeriodOfSet_years,
  ];
  const problem = (...[code, facts]: [Parameters<typeof stormProblem>[0], Parameters<typeof stormProblem>[3]]) =>
    stormProblem(code, gaugeId, 'coefficients', facts);
  if (!(period >= least && period <= most))
    return {
      ...noWay,
      problems: [
        problem('storm.coefficients_out_of_range', {
          returnPeriod_years: period,
          least_years: least,
          most_years: most,
        }),
      ],
    };
  const working: WorkingLine[] = [];
  const intensity = explain(working, {
    code: 'storm.coefficients',
    value: intensityOfCoefficients_mm_per_h(set, period, storm_h),
    unit: 'mm/h',
    inputs: [
      workingInput('lambda', set.lambda, 'number'),
      workingInput('kappa', set.kappa, 'number'),
      workingInput('theta', set.theta_h, 'h'),
      workingInput('eta', set.eta, 'number'),
      workingInput('duration', storm_h, 'h'),
      workingInput('returnPeriod', period, 'year'),
    ],
    source: 'msma-2011, equation 2.2',
  });
  const unlikely = unlikelyIntensity(gaugeId, 'coefficients', intensity);
  if (unlikely) return { ...noWay, isStop: true, problems: [unlikely] };
  const { source } = set;
  return {
    storm: stormFrom(gaugeId, 'coefficients', settings, intensity, { source }),
    problems: source === null ? [problem('storm.source_missing', { of: 'coefficients' })] : [],
    working,
  };
}
