import { dayIndexOf, type StorageSeries, type WaterYear } from '@eavewell/engine';
import type { CurveWords } from './curveFrame.ts';
import type { MonthsWords } from './monthsChart.ts';
import type { RasterWords } from './rasterFrame.ts';
import type { RecordInput } from './record.ts';
import type { TraceWords } from './traceFrame.ts';
import type { WaterCurve } from './waterCurve.ts';
import type { YearsInput, YearsWords } from './yearsChart.ts';

/** Records and words for the tests of the charts. */

/** Whole numbers from a seed, evenly from 0 up to, not with, `below`. */
export function drawer(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Days given by hand; what is left out is 0. */
export function seriesOf(
  firstDay: number,
  content_L: readonly number[],
  given: Partial<Record<Daily, readonly number[]>> = {},
): StorageSeries {
  const list = (name: Daily) => Float64Array.from(given[name] ?? content_L.map(() => 0));
  return {
    tankIds: ['T1'],
    firstDay,
    rain_mm: list('rain_mm'),
    inflow_L: list('inflow_L'),
    judgedAsked_L: list('judgedAsked_L'),
    content_L: Float64Array.from(content_L),
    judgedTaken_L: list('judgedTaken_L'),
    otherTaken_L: list('otherTaken_L'),
    spill_L: list('spill_L'),
    secondSource_L: list('secondSource_L'),
    dry: Uint8Array.from(given.dry ?? content_L.map(() => 0)),
    state: Uint8Array.from(given.state ?? content_L.map(() => 0)),
  };
}
type Daily = Exclude<keyof StorageSeries, 'tankIds' | 'firstDay' | 'content_L'>;

/** Water years that begin in a month, from a year on. */
export function yearsFrom(
  year: number,
  month: number,
  count: number,
  notJudged: readonly number[] = [],
): readonly WaterYear[] {
  const first = dayIndexOf(year, month, 1);
  return Array.from({ length: count }, (_, index) => ({
    label: month === 1 ? year + index : year + index + 1,
    from: dayIndexOf(year + index, month, 1) - first,
    to: dayIndexOf(year + index + 1, month, 1) - first,
    missing_days: 0,
    judged: !notJudged.includes(index),
  }));
}

/** What a made-up record may be like. */
export interface MadeUp {
  readonly seed?: number;
  readonly year?: number;
  readonly month?: number;
  readonly years?: number;
  readonly tankVolume_L?: number;
  readonly asked_L?: number;
  readonly roof_L_per_mm?: number;
  readonly notJudged?: readonly number[];
  readonly state?: (day: number) => number;
}

/** A record of made-up rain with a dry season, drawn from a tank in the morning and filled after. */
export function madeUpRecord(made: MadeUp = {}): RecordInput {
  const {
    seed = 1,
    year = 1990,
    month = 1,
    years: count = 4,
    tankVolume_L = 5000,
    asked_L = 300,
    roof_L_per_mm = 60,
  } = made;
  const years = yearsFrom(year, month, count, made.notJudged);
  const firstDay = dayIndexOf(year, month, 1);
  const days = years[years.length - 1]!.to;
  const draw = drawer(seed);
  const own = {
    rain_mm: [],
    inflow_L: [],
    judgedAsked_L: [],
    judgedTaken_L: [],
    otherTaken_L: [],
    spill_L: [],
    dry: [],
    state: [],
  } as Record<string, number[]>;
  const content: number[] = [];
  let held = tankVolume_L / 2;
  for (let day = 0; day < days; day++) {
    const isWet = draw(100) < 30 + 28 * Math.cos((2 * Math.PI * day) / 365.25);
    const rain = isWet ? draw(30) : 0;
    const taken = Math.min(held, asked_L);
    const other = Math.min(held - taken, draw(3) === 0 ? 20 : 0);
    const after = held - taken - other + rain * roof_L_per_mm;
    held = Math.min(tankVolume_L, after);
    content.push(held);
    own['rain_mm']!.push(rain);
    own['inflow_L']!.push(rain * roof_L_per_mm);
    own['judgedAsked_L']!.push(asked_L);
    own['judgedTaken_L']!.push(taken);
    own['otherTaken_L']!.push(other);
    own['spill_L']!.push(after - held);
    own['dry']!.push(taken < asked_L ? 1 : 0);
    own['state']!.push(made.state?.(day) ?? 0);
  }
  return { series: seriesOf(firstDay, content, own), years, tankVolume_L, longestDryRun_days: 7 };
}

/** A record with what would be found of it, in the chart's own terms. */
export function yearsInputOf(input: RecordInput): YearsInput {
  const { series, years, longestDryRun_days } = input;
  const found = years.map((year) => {
    const dry = series.dry.subarray(year.from, year.to);
    let [run, longest] = [0, 0];
    for (const day of dry) {
      run = day === 1 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    return {
      waterYear: year.label,
      firstDay: series.firstDay + year.from,
      judged: year.judged,
      dryDays: dry.reduce((sum, day) => sum + day, 0),
      longestRun_days: longest,
      filledDays: 0,
    };
  });
  const judged = found.filter((year) => year.judged);
  const mean = judged.reduce((sum, year) => sum + year.dryDays, 0) / Math.max(1, judged.length);
  const finding = {
    years: found,
    judgedYears: judged.length,
    dryDays_per_year: mean,
    dryDays_per_year_range: { low: mean * 0.6, high: mean * 1.5 },
  };
  return { series, years, tankVolume_L: input.tankVolume_L, longestDryRun_days, finding, daysAllowed_per_year: 18.26 };
}

/** A curve of so many critical volumes, some of them repeated, some without end. */
export function madeUpCurve(seed: number, judgedYears: number, infinite = 0): WaterCurve {
  const draw = drawer(seed);
  const critical = Array.from({ length: judgedYears * 365 }, (_, day) => {
    if (day < infinite) return Infinity;
    return draw(5) < 3 ? 0 : draw(40) * 250 + draw(2) * 0.1;
  });
  const needs = Array.from({ length: judgedYears }, (_, year) => (year < infinite ? Infinity : draw(30) * 400));
  const sizes = [2000, 5000, 8000, 12000].map((tankVolume_L) => ({
    tankVolume_L,
    partId: `TANK${tankVolume_L}`,
    dryDays_per_year: 20000 / tankVolume_L,
    goodYears: Math.min(judgedYears, Math.floor(tankVolume_L / 1000)),
    meetsTarget: tankVolume_L > 7000,
  }));
  return {
    critical_L: Float64Array.from(critical).sort(),
    needs_L: Float64Array.from(needs).sort(),
    askedDays: judgedYears * 365,
    judgedYears,
    goodYearsNeeded: Math.ceil(0.8 * judgedYears),
    daysAllowed_per_year: 18.25,
    band: Array.from({ length: 20 }, (_, index) => ({
      tankVolume_L: (index + 1) * 1000,
      low: 90 - index * 4,
      high: 130 - index * 5,
    })),
    yearsBand: null,
    tankForDays_L: 7400,
    tankForRuns_L: 9600,
    tankToHold_L: 11000,
    sizes,
    isExact: true,
  };
}

const whole = (value: number) => Math.round(value).toLocaleString('en');
export const traceWords: TraceWords = {
  litres: (volume) => `${whole(volume)} L`,
  empty: 'empty',
  days: (days) => `${whole(days)} d`,
  from: (day) => `from day ${day}`,
  runsOver: (days) => `runs over ${days} d`,
  year: String,
  month: (month, year) => (year === null ? `M${month}` : `M${month} ${year}`),
  notJudged: 'not judged',
  filled: 'filled',
  unknown: 'not known',
  made: 'made-up rain',
  rain: (most) => `rain, most ${whole(most)} mm a day`,
  day: (day, content, isDry) => `day ${day}: ${whole(content)} L${isDry ? ', dry' : ''}`,
};
export const rasterWords: RasterWords = {
  ...traceWords,
  month: (month, isNarrow) => (isNarrow ? 'JFMAMJJASOND'[month - 1]! : `Mo${month}`),
  longestRun: (isNarrow) => (isNarrow ? 'longest' : 'longest dry run of the year'),
  dry: 'dry',
  low: 'low',
  full: 'full',
  thinRows: 'thin rows: not judged',
};
export const curveWords: CurveWords = {
  dryDays: 'dry days a year',
  goodYears: (all, days) => `years of ${all} with no dry run over ${days} d`,
  goodYearsNarrow: (all, days) => `years of ${all}, no run over ${days} d`,
  daysTarget: (days) => `target: at most ${days.toFixed(1)} d`,
  yearsTarget: (good, all) => `target: ${good} of ${all}`,
  daysAt: (days) => `${days.toFixed(1)} d`,
  yearsAt: (good) => `${good} years`,
  count: whole,
  size: whole,
  litres: traceWords.litres,
  toHold: (volume) => `to hold ${whole(volume)} L`,
  axis: 'tank size in L; blue: in the catalogue',
  beyond: (volume) => `${whole(volume)} L wanted, beyond this`,
  pointsOnly: 'sizes run one by one',
  at: (volume, days, good) => `${whole(volume)} L: ${days?.toFixed(1) ?? '?'} d, ${good ?? '?'} years`,
};
export const yearsWords: YearsWords = {
  year: String,
  count: whole,
  days: traceWords.days,
  head: 'dry days of the year',
  key: (days, hasOthers) => `solid: with a dry run over ${days} d${hasOthers ? '; hollow: not judged' : ''}`,
  target: (days) => `target: ${days.toFixed(1)} d in the mean`,
  mean: (days) => `mean ${days.toFixed(1)} d`,
  likely: (low, high) => `likely ${low.toFixed(1)} to ${high.toFixed(1)}`,
  coming: 'coming years',
  yearAt: (year, days, run) => `${year}: ${days} dry days, longest run ${run} d`,
};
export const monthsWords: MonthsWords = {
  month: rasterWords.month,
  flow: (flow) => flow,
  litres: traceWords.litres,
  ofYear: (_, volume) => (volume > 0 ? `${whole(volume)} L a year` : 'never'),
  range: 'bar: mean of the years; line: eight years in ten',
  at: (month, year, volume) => `M${month} ${year}: ${whole(volume)} L`,
};
