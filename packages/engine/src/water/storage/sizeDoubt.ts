import { type DesignSettings, type JudgedRain, jeffreysRange, kthSmallest, type Range } from '../../kernel/index.ts';
import { holdPrecision_fraction, mostTimesLarger_count } from './constants.ts';
import { dryDaysAt, goodYearsAt } from './curve.ts';
import type { Balance } from './dayByDay.ts';
import { type DrawnYears, resampledDryDays } from './resample.ts';
import { isShareMet, type SizeCurve } from './sizeCurve.ts';

/** What the doubt about a tank is worked out from. */
export interface DoubtCase {
  readonly balance: Balance;
  readonly rain: JudgedRain;
  readonly settings: DesignSettings;
  readonly drawn: DrawnYears;
}

/** The ranges of one tank size, and whether their worse ends meet the target. */
export interface SizeDoubt {
  readonly goodYears_fraction: Range;
  readonly dryDays_per_year: Range;
  readonly daysMet_fraction: Range;
  readonly meetsTarget: boolean;
}

/**
 * Which share of the judged days on which water is asked is met, at so many dry days a year? The same figure told the other way round.
 *
 * @param curve - every tank size
 * @param dryDays_per_year - dry days in a mean judged year [day/year]
 * @returns share of days [fraction]
 * @definition 1 less dry days ÷ judged days on which judged litres are asked
 */
export function daysMet_fraction(
  curve: Pick<SizeCurve, 'judgedYears' | 'askedDays'>,
  dryDays_per_year: number,
): number {
  return Math.max(0, 1 - (dryDays_per_year * curve.judgedYears) / curve.askedDays);
}

/**
 * How sure are we of a tank of this size?
 *
 * @param curve - every tank size
 * @param given - balance, rain, settings and drawn years
 * @param tankVolume_L - usable volume [L]
 * @param goodYears - good years at this size [year]
 * @returns ranges of good years [fraction], dry days [day/year] and days met [fraction]; whether their worse ends meet the target
 * @definition ours: docs/methods/storage.md, how sure
 */
export function sizeDoubt(curve: SizeCurve, given: DoubtCase, tankVolume_L: number, goodYears: number): SizeDoubt {
  const { target, range_fraction, leastYears } = given.settings;
  const { judgedYears } = curve;
  const drawn = resampledDryDays(given.balance, given.rain.years, tankVolume_L, given.drawn, range_fraction);
  // Years that are not judged are not drawn, though they drain the tank of the years that are: the range holds its point.
  const point = dryDaysAt(curve.critical_L, curve.years, [tankVolume_L])[0]! / judgedYears;
  const dry = { low: Math.min(drawn.low, point), high: Math.max(drawn.high, point) };
  const daysMet = { low: daysMet_fraction(curve, dry.high), high: daysMet_fraction(curve, dry.low) };
  const good = jeffreysRange(goodYears, judgedYears, range_fraction);
  return {
    goodYears_fraction: good,
    dryDays_per_year: dry,
    daysMet_fraction: daysMet,
    meetsTarget:
      good.low >= target.goodYears_fraction &&
      isShareMet(daysMet.low, 1, target.daysMet_fraction) &&
      judgedYears >= leastYears,
  };
}

/**
 * Which is the smallest tank that would hold? The years are read off exactly; the days are tried at that size, and where
 * they fail, between it and larger ones by halving, since a larger tank never has more dry days in any draw.
 *
 * @param curve - every tank size
 * @param given - balance, rain, settings and drawn years
 * @returns volume [L], never too small and too large by 2 % at most; null where no tank would hold
 * @law a tank of this size holds
 * @definition ours: docs/methods/storage.md, verdict
 */
export function tankToHold_L(curve: SizeCurve, given: DoubtCase): number | null {
  const { judgedYears, tankForTarget_L } = curve;
  const { target, range_fraction, leastYears } = given.settings;
  if (tankForTarget_L === null || judgedYears < leastYears) return null;
  let years = curve.goodYearsNeeded;
  while (years <= judgedYears && jeffreysRange(years, judgedYears, range_fraction).low < target.goodYears_fraction)
    years++;
  if (years > judgedYears) return null;
  const need = years === 0 ? 0 : kthSmallest(curve.needs_L.slice(), years);
  const least = Math.max(tankForTarget_L, need);
  if (!Number.isFinite(least)) return null;
  const holds = (volume_L: number) =>
    sizeDoubt(curve, given, volume_L, goodYearsAt(curve.needs_L, volume_L)).meetsTarget;
  if (holds(least)) return least;
  let tooSmall = least;
  let enough = Math.max(least, 1);
  do {
    if (enough > mostTimesLarger_count * Math.max(least, 1)) return null;
    tooSmall = enough;
    enough *= 2;
  } while (!holds(enough));
  while (enough - tooSmall > holdPrecision_fraction * enough) {
    const middle = (tooSmall + enough) / 2;
    if (holds(middle)) enough = middle;
    else tooSmall = middle;
  }
  return enough;
}
