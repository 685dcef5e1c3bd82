import {
  type DesignSettings,
  explain,
  type Problem,
  type Range,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { fittedStorm } from './fittedStorm.ts';
import { fiveMinuteMaxima } from './fiveMinuteMaxima.ts';
import { recordProblems } from './recordProblems.ts';
import { stormProblem } from './stormProblem.ts';
import { noWay, type StormGiven, storm_h, stormFrom, unlikelyIntensity, type Way } from './stormWay.ts';

/** The storm by the most rain in five minutes of each year of a short record. */
export function shortRecordStorm({ gauge: { gaugeId, shortRain }, settings }: StormGiven): Way {
  if (shortRain.length === 0) return noWay;
  const record = fiveMinuteMaxima(shortRain);
  const told = recordProblems(gaugeId, record);
  if (record.coarse_count === shortRain.length) return { ...noWay, problems: told };
  const maxima_mm = record.maxima.map(({ depth_mm }) => depth_mm);
  const measured_mm = record.maxima.reduce((sum, one) => sum + one.measured_mm, 0);
  const before: WorkingLine[] = [];
  explain(before, {
    code: 'storm.fixedWindow',
    value: maxima_mm.reduce((sum, depth) => sum + depth, 0) / measured_mm,
    unit: 'number',
    inputs: [],
    source: 'weiss-1964',
  });
  const fit = fittedStorm(gaugeId, 'shortRecord', maxima_mm, settings, before);
  const problems = [...told, ...fit.problems];
  if (!fit.storm) return { ...noWay, problems };
  const { depth_mm, depth_mm_range } = fit.storm;
  return believed(
    gaugeId,
    'shortRecord',
    settings,
    { depth_mm, depth_mm_range },
    { problems, working: fit.working, years: maxima_mm.length, source: null },
  );
}

/** The wettest days, and the stated share of them that falls in five minutes. */
export function dailyStorm({ gauge: { gaugeId }, dailyMaxima, settings }: StormGiven): Way {
  const { fiveMinutesOfDay_fraction: share, fiveMinutesOfDaySource: source } = settings;
  if (share === null || dailyMaxima.length === 0) return noWay;
  const maxima_mm = dailyMaxima.map(({ rain_mm }) => rain_mm);
  const fit = fittedStorm(gaugeId, 'dailyMaxima', maxima_mm, settings);
  if (!fit.storm) return { ...noWay, problems: fit.problems };
  const working = [...fit.working];
  const depth_mm = explain(working, {
    code: 'storm.ofDay',
    value: fit.storm.depth_mm * share,
    unit: 'mm',
    inputs: [workingInput('dayStorm', fit.storm.depth_mm, 'mm'), workingInput('fiveMinutesOfDay', share, 'fraction')],
    source: source ?? 'settings',
  });
  const { low, high } = fit.storm.depth_mm_range;
  const problems = [
    stormProblem('storm.from_daily', gaugeId, 'dailyMaxima', { years: maxima_mm.length, share_fraction: share }),
    ...(source === null ? [stormProblem('storm.source_missing', gaugeId, 'dailyMaxima', { of: 'dailyMaxima' })] : []),
  ];
  const depths = { depth_mm, depth_mm_range: { low: low * share, high: high * share } };
  return believed(gaugeId, 'dailyMaxima', settings, depths, {
    problems,
    working,
    years: maxima_mm.length,
    source,
  });
}

/** A fitted depth as a storm, where it can be believed. */
function believed(
  gaugeId: string,
  from: 'shortRecord' | 'dailyMaxima',
  settings: DesignSettings,
  { depth_mm, depth_mm_range }: { readonly depth_mm: number; readonly depth_mm_range: Range },
  told: {
    readonly problems: readonly Problem[];
    readonly working: readonly WorkingLine[];
    readonly years: number;
    readonly source: string | null;
  },
): Way {
  const intensity = depth_mm / storm_h;
  const unlikely = unlikelyIntensity(gaugeId, from, intensity);
  if (unlikely)
    return { ...noWay, problems: [...told.problems.filter(({ code }) => code !== 'storm.from_daily'), unlikely] };
  const range = { low: depth_mm_range.low / storm_h, high: depth_mm_range.high / storm_h };
  const { years, source, problems, working } = told;
  return { storm: stormFrom(gaugeId, from, settings, intensity, { range, years, source }), problems, working };
}
