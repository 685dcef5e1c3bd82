import {
  type DesignSettings,
  type JudgedRain,
  jeffreysRange,
  type Range,
  type SizePoint,
  type Verdict,
  verdictOf,
} from '../../kernel/index.ts';
import type { Balance } from './dayByDay.ts';
import { type DrawnYears, resampledDryDays } from './resample.ts';
import { isShareMet, type SizeCurve, sizePoints, type TankSize } from './sizeCurve.ts';

/** One balance with every tank size answered, ready to be judged at any of them. */
export interface SizedCase {
  readonly balance: Balance;
  readonly rain: JudgedRain;
  readonly curve: SizeCurve;
  readonly settings: DesignSettings;
  readonly drawn: DrawnYears;
}

/** The verdict of one size of tank, with the ranges it rests on. */
export interface TankVerdict {
  readonly verdict: Verdict;
  readonly goodYears_fraction_range: Range;
  readonly daysMet_fraction_range: Range;
  readonly dryDays_per_year_range: Range;
}

/** One size of tank on the curve, and its verdict. */
export interface SizeVerdict {
  readonly point: SizePoint;
  readonly verdict: Verdict;
}

/**
 * Does a tank of this size hold, and how sure are we? The point is on the curve; the years drawn again give the range.
 *
 * @param given - balance by day [L], its curve, rain with its water years, settings and drawn years
 * @param point - the size as read off the curve [L]
 * @returns the verdict and its ranges: good years [fraction], days met [fraction], dry days a year [day/year]
 * @definition ours: docs/methods/storage.md, target, range and verdict
 */
export function tankVerdict(given: SizedCase, point: SizePoint): TankVerdict {
  const { balance, rain, curve, settings } = given;
  const { target } = settings;
  const spread = resampledDryDays(balance, rain.years, point.tankVolume_L, given.drawn, settings.range_fraction);
  const daysMet = {
    low: daysMetShare(curve, spread.high),
    high: daysMetShare(curve, spread.low),
  };
  const meetsAtWorstEnd = areYearsSure(given, point) && isShareMet(daysMet.low, 1, target.daysMet_fraction);
  return {
    verdict: verdictOf(point.meetsTarget, meetsAtWorstEnd),
    goodYears_fraction_range: yearsRange(given, point),
    daysMet_fraction_range: daysMet,
    dryDays_per_year_range: spread,
  };
}

/**
 * What verdict does each of these tanks get? A larger tank never has a worse verdict, so the years are drawn again only
 * at the few sizes between those that are surely `short` or `tight` and those that hold.
 *
 * @param given - balance by day [L], its curve, rain with its water years, settings and drawn years
 * @param sizes - tanks [L], 0 or more
 * @returns each size's point on the curve and its verdict, smallest first
 * @law the verdict of each size is that of `tankVerdict`
 * @definition ours: docs/methods/storage.md, target, range and verdict
 */
export function verdictsBySize(given: SizedCase, sizes: readonly TankSize[]): readonly SizeVerdict[] {
  const points = sizePoints(given.curve, sizes);
  let first = points.findIndex((point) => point.meetsTarget && areYearsSure(given, point));
  if (first < 0) first = points.length;
  let end = points.length;
  // The smallest candidate mostly holds at once; then halves.
  for (let probe = first; first < end; probe = (first + end) >> 1) {
    if (tankVerdict(given, points[probe]!).verdict === 'holds') end = probe;
    else first = probe + 1;
  }
  return points.map((point, index) => {
    if (index >= end) return { point, verdict: 'holds' };
    return { point, verdict: point.meetsTarget ? 'tight' : 'short' };
  });
}

/**
 * Which share of days is met at so many dry days a year? The same figure told the other way round.
 *
 * @param curve - the curve, with judged years [year] and judged days [day]
 * @param dryDays_per_year - dry days in a mean judged year [day/year]
 * @returns share of judged days met [fraction]
 * @definition 1 − dry days ÷ judged days
 * @example
 * daysMetShare({ judgedYears: 2, judgedDays: 800 }, 20) // → 0.95
 */
export function daysMetShare(
  curve: { readonly judgedYears: number; readonly judgedDays: number },
  dryDays_per_year: number,
): number {
  return 1 - (dryDays_per_year * curve.judgedYears) / curve.judgedDays;
}

function yearsRange({ rain, settings }: SizedCase, point: SizePoint): Range {
  return jeffreysRange(point.goodYears, rain.judgedYears, settings.range_fraction);
}

/** Does the unfavourable end of the good years meet the target, on a record long enough? */
function areYearsSure(given: SizedCase, point: SizePoint): boolean {
  const { rain, settings } = given;
  if (rain.judgedYears < settings.leastYears) return false;
  return yearsRange(given, point).low >= settings.target.goodYears_fraction;
}
