import { kthSmallest, type WaterYear } from '../../kernel/index.ts';
import type { AllSizes } from './allSizes.ts';
import { metSlack_fraction, roundingSlack_count } from './constants.ts';

/**
 * How many years of these must be good?
 *
 * @param judgedYears - years judged [year], whole
 * @param share_fraction - share that must be good [fraction], 0 to 1
 * @returns least number of good years [year], whole
 * @definition smallest whole number not under the share
 * @example
 * goodYearsNeeded(31, 0.8) // → 25
 * goodYearsNeeded(15, 0.8) // → 12
 */
export function goodYearsNeeded(judgedYears: number, share_fraction: number): number {
  return Math.max(0, Math.ceil(judgedYears * share_fraction - roundingSlack_count));
}

/**
 * How many judged days are short in tanks of these volumes? One pass over the days for all of them.
 *
 * @param critical_L - critical volume by day [L]
 * @param years - the record's water years; those not judged do not count
 * @param tankVolumes_L - usable volumes, smallest first [L], 0 or more
 * @returns dry days in the judged years by volume [day], whole
 * @law never more in a larger tank
 * @definition a day is short exactly in tanks smaller than its critical volume
 * @example
 * Array.from(dryDaysAt(Float64Array.of(0, 3, 5), [{ label: 2001, from: 0, to: 3, missing_days: 0, judged: true }], [2, 3])) // → [2, 1]
 */
export function dryDaysAt(
  critical_L: Float64Array,
  years: readonly WaterYear[],
  tankVolumes_L: readonly number[],
): Float64Array {
  const dry = new Float64Array(tankVolumes_L.length);
  const enough_L = tankVolumes_L.map((volume) => volume * (1 + metSlack_fraction));
  for (const year of years) {
    if (!year.judged) continue;
    for (let day = year.from; day < year.to; day++) {
      const critical = critical_L[day]!;
      // Most days are met by the smallest tank, so the first comparison is mostly the last.
      for (let size = 0; size < dry.length && critical > enough_L[size]!; size++) dry[size]!++;
    }
  }
  return dry;
}

/** Critical volumes of the judged days that are dry in a tank of this volume, ascending [L]. */
export function criticalAbove(
  critical_L: Float64Array,
  years: readonly WaterYear[],
  tankVolume_L: number,
): Float64Array {
  const enough_L = tankVolume_L * (1 + metSlack_fraction);
  const above: number[] = [];
  for (const { from, to, judged } of years) {
    if (!judged) continue;
    for (let day = from; day < to; day++) if (critical_L[day]! > enough_L) above.push(critical_L[day]!);
  }
  return Float64Array.from(above).sort();
}

/** How many of these days are dry in a tank of this volume, as `dryDaysAt` counts them? */
export function countAbove(ascending_L: Float64Array, tankVolume_L: number): number {
  const enough_L = tankVolume_L * (1 + metSlack_fraction);
  let [below, above] = [0, ascending_L.length];
  while (below < above) {
    const middle = (below + above) >> 1;
    if (ascending_L[middle]! > enough_L) above = middle;
    else below = middle + 1;
  }
  return ascending_L.length - below;
}

/**
 * On how many days of the judged years are judged litres asked? Nobody goes without on a day on which nobody asks, so such days
 * neither help nor hurt a share of days.
 *
 * @param judged_L - judged litres asked by day [L]
 * @param years - the record's water years
 * @returns days with a demand above 0 in judged years [day], whole
 * @definition count over the judged years
 * @example
 * askedDaysOf(Float64Array.of(5, 0, 5), [{ label: 2001, from: 0, to: 3, missing_days: 0, judged: true }]) // → 2
 */
export function askedDaysOf(judged_L: Float64Array, years: readonly WaterYear[]): number {
  let asked = 0;
  for (const year of years) {
    if (!year.judged) continue;
    for (let day = year.from; day < year.to; day++) if (judged_L[day]! > 0) asked++;
  }
  return asked;
}

/** How many days may be dry for this share of those on which water is asked to be met [day], whole. */
export function allowedDryDays(askedDays: number, daysMet_fraction: number): number {
  return Math.floor(askedDays * (1 - daysMet_fraction) + roundingSlack_count);
}

/** How many days the judged years have [day]. */
function judgedDays(years: readonly WaterYear[]): number {
  return years.reduce((days, year) => days + (year.judged ? year.to - year.from : 0), 0);
}

/**
 * Which is the smallest tank that meets the judged litres on this share of days? Read off the critical volumes, without a search.
 *
 * @param critical_L - critical volume by day [L]
 * @param years - the record's water years; those not judged do not count
 * @param askedDays - days of the judged years on which judged litres are asked [day], whole
 * @param daysMet_fraction - share of them wanted [fraction], 0 to 1
 * @returns volume [L], or null where no tank would do or no year is judged
 * @definition the (allowed dry days + 1)-th largest critical volume
 * @example
 * tankForDays(Float64Array.of(0, 3, 5, 9), [{ label: 2001, from: 0, to: 4, missing_days: 0, judged: true }], 4, 0.75) // → 5
 */
export function tankForDays(
  critical_L: Float64Array,
  years: readonly WaterYear[],
  askedDays: number,
  daysMet_fraction: number,
): number | null {
  const days = judgedDays(years);
  if (days === 0) return null;
  const judged = new Float64Array(days);
  let end = 0;
  for (const year of years) {
    if (!year.judged) continue;
    judged.set(critical_L.subarray(year.from, year.to), end);
    end += year.to - year.from;
  }
  const allowed = allowedDryDays(askedDays, daysMet_fraction);
  return allowed >= days ? 0 : finiteOrNull(kthSmallest(judged, days - allowed));
}

/**
 * How large must the tank be in each judged year for no dry run to reach more than this many days in it? The record is a
 * loop: a run that crosses its seam, or the turn of a year, carries on.
 *
 * @param critical_L - critical volume by day [L]
 * @param years - the record's water years, adjoining
 * @param longestRun_days - longest run allowed [day], whole, 0 or more
 * @returns need by judged year, in their order [L]; Infinity where no tank would do
 * @law the year is good exactly in tanks not smaller than its need
 * @definition greatest over the windows of one day more that end in the year, of the least critical volume in the window
 * @example
 * yearNeeds(Float64Array.of(1, 6, 7, 2), [{ label: 2001, from: 0, to: 4, missing_days: 0, judged: true }], 1) // → Float64Array.of(6)
 */
export function yearNeeds(
  critical_L: Float64Array,
  years: readonly WaterYear[],
  longestRun_days: number,
): Float64Array {
  const judged = years.filter((year) => year.judged);
  const window = longestRun_days + 1;
  if (window > critical_L.length) return new Float64Array(judged.length);
  return Float64Array.from(judged, (year) => yearNeed(critical_L, year, window));
}

/** Raises the need only where a whole window stands above it, so that most days cost one comparison. */
function yearNeed(critical_L: Float64Array, year: WaterYear, window: number): number {
  const days = critical_L.length;
  let need = 0;
  /** Days in a row, up to today, whose critical volume is above the need. */
  let above = 0;
  for (let end = year.from - window + 1; end < year.to; end++) {
    if (critical_L[end < 0 ? end + days : end]! <= need) {
      above = 0;
      continue;
    }
    above++;
    if (above < window) continue;
    let least = Infinity;
    for (let day = end - window + 1; day <= end; day++) {
      const critical = critical_L[day < 0 ? day + days : day]!;
      if (critical > least) continue;
      least = critical;
      above = end - day;
    }
    need = least;
  }
  return need;
}

/**
 * Which is the smallest tank in which this share of years is good?
 *
 * @param needs_L - need by judged year [L]
 * @param goodYears_fraction - share of years wanted [fraction], 0 to 1
 * @returns volume [L], or null where no tank would do or no year is judged
 * @definition the k-th smallest need, k the least number of good years
 * @example
 * tankForRuns(Float64Array.of(5, 1, 9, 3, 7), 0.8) // → 7
 */
export function tankForRuns(needs_L: Float64Array, goodYears_fraction: number): number | null {
  if (needs_L.length === 0) return null;
  const needed = goodYearsNeeded(needs_L.length, goodYears_fraction);
  return needed === 0 ? 0 : finiteOrNull(kthSmallest(needs_L.slice(), needed));
}

/**
 * How many years are good in a tank of this volume?
 *
 * @param needs_L - need by judged year [L]
 * @param tankVolume_L - usable volume [L]
 * @returns good years [year], whole
 * @law never fewer in a larger tank
 * @definition years whose need is not above the volume
 * @example
 * goodYearsAt(Float64Array.of(5, 1, 9), 5) // → 2
 */
export function goodYearsAt(needs_L: Float64Array, tankVolume_L: number): number {
  let good = 0;
  for (const need of needs_L) if (need <= tankVolume_L * (1 + metSlack_fraction)) good++;
  return good;
}

/**
 * How many judged litres are short in a tank of this volume, over the whole record?
 *
 * @param sizes - the answer for every volume, with its relief
 * @param tankVolume_L - usable volume [L], 0 or more
 * @returns litres short in the counted pass [L]
 * @law equals demand less taken of `dayByDay`, to 1e-9 of the demand
 * @definition litres asked of the tank less the length of the relief stretches below the volume
 */
export function shortfallAt_L(sizes: AllSizes, tankVolume_L: number): number {
  let relieved = 0;
  const relief = sizes.relief_L;
  for (let i = 0; i < relief.length; i += 2) {
    const from = relief[i]!;
    if (from < tankVolume_L) relieved += Math.min(relief[i + 1]!, tankVolume_L) - from;
  }
  return Math.max(0, sizes.asked_L - relieved);
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
