import {
  type DesignSettings,
  type JudgedRain,
  kthSmallest,
  quantileReordering,
  type Range,
} from '../../kernel/index.ts';
import { growth_count, holdPrecision_fraction, mostTimesLarger_count, roundingSlack_count } from './constants.ts';
import { countedYears } from './countedYears.ts';
import { goodYearsAt } from './curve.ts';
import type { Balance, RunRules } from './dayByDay.ts';
import { looksAtContent } from './dayRules.ts';
import { type DrawnYears, drawPool } from './drawYears.ts';
import { rerunRecords } from './rerun.ts';
import { drawnRecords } from './resample.ts';
import { type DryDays, dryDaysOf, isShareMet, type SizeCurve } from './sizeCurve.ts';

/** What the doubt about a tank is worked out from. */
export interface DoubtCase {
  readonly balance: Balance;
  readonly rain: JudgedRain;
  readonly settings: DesignSettings;
  readonly drawn: DrawnYears;
  /** Rules that look at how full the tank is; left out where every size is known at once. */
  readonly rules?: RunRules;
}

/** The ranges of one tank size, and whether their worse ends meet the target. */
export interface SizeDoubt {
  readonly goodYears_fraction: Range;
  /** Good ones of as many coming years as were judged. */
  readonly comingGood_years: Range;
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
 * How sure are we of a tank of this size? The drawn records give the range of the days; the good years counted and the
 * drawn records each give one of the years, and both are told as one.
 *
 * @param curve - every tank size
 * @param given - balance [L], rain, settings, drawn years and rules
 * @param tankVolume_L - usable volume [L]
 * @param goodYears - good years at this size [year]
 * @returns ranges of good years [fraction], of good ones among as many coming years [year], of dry days [day/year] and
 *   days met [fraction]; whether their worse ends meet the target
 * @law a range holds its point
 * @law a larger tank, or more roof, never makes the worse end of a range worse
 * @definition ours: docs/methods/storage.md, how sure
 */
export function sizeDoubt(curve: DryDays, given: DoubtCase, tankVolume_L: number, goodYears: number): SizeDoubt {
  const { judgedYears } = curve;
  const point = dryDaysOf(curve, [tankVolume_L])[0]! / judgedYears;
  const ranges = rangesAt(curve, given, tankVolume_L, goodYears, point);
  const { dryDays_per_year: dry, goodYears_fraction: good } = ranges;
  const { comingGood_years } = countedYears(goodYears, judgedYears, given.settings.range_fraction);
  return {
    ...ranges,
    comingGood_years: withIn(
      comingGood_years,
      Math.floor(good.low * judgedYears + roundingSlack_count),
      Math.ceil(good.high * judgedYears - roundingSlack_count),
    ),
    daysMet_fraction: { low: daysMet_fraction(curve, dry.high), high: daysMet_fraction(curve, dry.low) },
    meetsTarget: judgedYears >= given.settings.leastYears && targetExcess(curve, given.settings, ranges) <= 0,
  };
}

/** The ranges that the target is asked of. */
type Ranges = Pick<SizeDoubt, 'goodYears_fraction' | 'dryDays_per_year'>;

function rangesAt(
  curve: DryDays,
  { balance, rain, settings, drawn, rules }: DoubtCase,
  tankVolume_L: number,
  goodYears: number,
  dryDays_per_year: number,
): Ranges {
  const { target, range_fraction } = settings;
  const { share_fraction, tail_fraction } = countedYears(goodYears, curve.judgedYears, range_fraction);
  const longestDryRun_days = target.longestDryRun_days;
  const records =
    rules && looksAtContent(rules)
      ? rerunRecords(balance, drawPool(rain), tankVolume_L, longestDryRun_days, drawn, rules)
      : drawnRecords(balance, drawPool(rain), tankVolume_L, longestDryRun_days, drawn);
  const good = withIn(middleOf(records.goodYears_fraction, tail_fraction), share_fraction.low, share_fraction.high);
  // So many years may be bad, seen or not, and a bad year has a dry run over the limit.
  const unseen = (1 - good.low) * (target.longestDryRun_days + 1);
  // Years that are not judged are not drawn, though they drain the tank of the years that are: the range holds its point.
  const dry = withIn(
    middleOf(records.dryDays_per_year, tail_fraction),
    dryDays_per_year,
    Math.max(dryDays_per_year, unseen),
  );
  return { goodYears_fraction: good, dryDays_per_year: dry };
}

/** The values without this share of them at each end; their order is changed. */
function middleOf(values: Float64Array, tail_fraction: number): Range {
  return { low: quantileReordering(values, tail_fraction), high: quantileReordering(values, 1 - tail_fraction) };
}

/** The range, wide enough to hold these too. */
function withIn(range: Range, low: number, high: number): Range {
  return { low: Math.min(range.low, low), high: Math.max(range.high, high) };
}

/** By what share of what the target allows do the worse ends miss it? 0 or less where they meet it. */
function targetExcess(curve: DryDays, { target }: DesignSettings, ranges: Ranges): number {
  const daysMet = daysMet_fraction(curve, ranges.dryDays_per_year.high);
  const good = ranges.goodYears_fraction.low;
  const missed = (worst: number, wanted: number) => (wanted - worst) / Math.max(1 - wanted, roundingSlack_count);
  const excess = Math.max(missed(daysMet, target.daysMet_fraction), missed(good, target.goodYears_fraction));
  const isMet = isShareMet(daysMet, 1, target.daysMet_fraction) && isShareMet(good, 1, target.goodYears_fraction);
  return isMet ? Math.min(excess, 0) : Math.max(excess, roundingSlack_count);
}

/** The chosen tank, and how sure it is. */
export interface ChosenDoubt {
  readonly tankVolume_L: number;
  readonly doubt: Ranges;
}

/**
 * Which is the smallest tank that would hold? The years are read off exactly; the days are tried at that size, or at the
 * chosen tank where that is known to be too small, and where they fail, at larger ones: first ever larger until one holds,
 * then between the largest that does not and the smallest that does, since a larger tank never has more dry days or fewer
 * good years in any draw.
 *
 * @param curve - every tank size
 * @param given - balance, rain, settings and drawn years
 * @param chosen - the chosen tank [L] and its doubt, which does not hold
 * @returns volume [L], never too small and too large by 2 % at most; null where none up to sixteen times the smallest for
 *   the years would hold
 * @law a tank of this size holds
 * @definition ours: docs/methods/storage.md, verdict
 */
export function tankToHold_L(curve: SizeCurve, given: DoubtCase, chosen: ChosenDoubt): number | null {
  const { tankForTarget_L } = curve;
  const years = fewestSureYears(curve, given.settings);
  if (tankForTarget_L === null || years === null) return null;
  const need = years === 0 ? 0 : kthSmallest(curve.needs_L.slice(), years);
  const least = Math.max(tankForTarget_L, need);
  if (!Number.isFinite(least)) return null;
  const largest = mostTimesLarger_count * Math.max(least, 1);
  // From the smallest tank for the target on the point meets it, and only the worse ends are asked.
  const excessAt = (volume_L: number) => {
    const good = goodYearsAt(curve.needs_L, volume_L);
    return targetExcess(curve, given.settings, rangesAt(curve, given, volume_L, good, 0));
  };
  const isChosenLarger = chosen.tankVolume_L >= least;
  let small: Tried = isChosenLarger
    ? { volume_L: chosen.tankVolume_L, excess: targetExcess(curve, given.settings, chosen.doubt) }
    : { volume_L: least, excess: excessAt(least) };
  if (small.excess <= 0) return small.volume_L;
  const start = Math.max(small.volume_L, 1);
  for (const times of growth_count) {
    const volume_L = Math.min(start * times, largest);
    if (volume_L <= small.volume_L) return null;
    const tried = { volume_L, excess: excessAt(volume_L) };
    if (tried.excess <= 0) return smallestBetween(small, tried, excessAt);
    small = tried;
  }
  return null;
}

/** How few good years would do for the counted range to keep to the target? Null where even all of them would not. */
function fewestSureYears({ judgedYears, goodYearsNeeded }: SizeCurve, settings: DesignSettings): number | null {
  if (judgedYears < settings.leastYears) return null;
  const { target, range_fraction } = settings;
  for (let years = goodYearsNeeded; years <= judgedYears; years++)
    if (isShareMet(countedYears(years, judgedYears, range_fraction).share_fraction.low, 1, target.goodYears_fraction))
      return years;
  return null;
}

/** A tank that was tried, and by what share the worse end misses the target there; 0 or less where it holds. */
interface Tried {
  readonly volume_L: number;
  readonly excess: number;
}

/**
 * Narrows the two down to each other: where a straight line between their excesses is 0, a little to the side that was not
 * tried last, so that both ends close in; half-way where the same end moved twice.
 */
function smallestBetween(tooSmall: Tried, holds: Tried, excessAt: (volume_L: number) => number): number {
  let [small, large] = [tooSmall, holds];
  let [side, sameSide] = [0, 0];
  while (large.volume_L - small.volume_L > holdPrecision_fraction * large.volume_L) {
    const gap = large.volume_L - small.volume_L;
    const margin = (holdPrecision_fraction / 2) * large.volume_L;
    const line = small.volume_L + (gap * small.excess) / (small.excess - large.excess) - 0.9 * side * margin;
    const middle = small.volume_L + gap / 2;
    const volume_L =
      sameSide >= 2 ? middle : Math.min(large.volume_L - margin, Math.max(small.volume_L + margin, line));
    const tried = { volume_L, excess: excessAt(volume_L) };
    const moved = tried.excess <= 0 ? 1 : -1;
    if (moved === 1) large = tried;
    else small = tried;
    sameSide = moved === side && sameSide < 2 ? sameSide + 1 : 1;
    side = moved;
  }
  return large.volume_L;
}
