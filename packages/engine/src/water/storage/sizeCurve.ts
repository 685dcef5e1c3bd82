import type { JudgedRain, SizePoint, Target } from '../../kernel/index.ts';
import { criticalVolumes } from './allSizes.ts';
import { roundingSlack_count } from './constants.ts';
import {
  askedDaysOf,
  countAbove,
  criticalAbove,
  dryDaysAt,
  goodYearsAt,
  goodYearsNeeded,
  tankForDays,
  tankForRuns,
  yearNeeds,
} from './curve.ts';
import { type Balance, judgedRules } from './dayByDay.ts';

/** A tank of the catalogue, or one of no part. */
export interface TankSize {
  readonly partId: string | null;
  readonly tankVolume_L: number;
}

/** Which days are dry at any size of tank, ready to be read. */
export interface DryDays {
  readonly target: Target;
  readonly critical_L: Float64Array;
  /** Volume from which each judged year is good. */
  readonly needs_L: Float64Array;
  readonly years: JudgedRain['years'];
  readonly judgedYears: number;
  readonly goodYearsNeeded: number;
  /** Days of the judged years on which judged litres are asked. */
  readonly askedDays: number;
  /** The judged days that are dry in the smallest tank looked at, ready to be counted in larger ones. Left out: every day is looked at. */
  readonly sorted?: () => SortedDays;
}

/** Critical volumes of the judged days that are dry in one tank, ascending. */
interface SortedDays {
  readonly least_L: number;
  readonly critical_L: Float64Array;
}

/** What every tank size does for one balance, ready to be read at any size. */
export interface SizeCurve extends DryDays {
  /** What the chosen tank falls short of in the judged years [L], [day]. */
  readonly shortfall_L: number;
  readonly otherShortDays: number;
  /** Smallest tank for each half of the target and for both; null where no tank would do. */
  readonly tankForDays_L: number | null;
  readonly tankForRuns_L: number | null;
  readonly tankForTarget_L: number | null;
}

/**
 * What would a tank of any size do here, and which is the smallest that would do?
 *
 * @param balance - inflow and demands by day [L]
 * @param rain - the rain's water years
 * @param target - what "enough" means
 * @param tankVolume_L - the chosen tank [L], 0 or more
 * @returns critical volumes and needs [L], counts of years [year] and days [day], and the smallest tanks [L]
 * @law the smallest tank meets the target, and no smaller one does
 * @definition ours: docs/methods/storage.md, every size at once
 */
export function sizeCurve(
  balance: Balance,
  rain: Pick<JudgedRain, 'years' | 'judgedYears'>,
  target: Target,
  tankVolume_L: number,
): SizeCurve {
  const { years, judgedYears } = rain;
  const rules = { ...judgedRules, order: 'drawFirst' } as const;
  const { critical_L, shortfall_L, otherShortDays } = criticalVolumes(balance, rules, tankVolume_L, years);
  const needs_L = yearNeeds(critical_L, years, target.longestDryRun_days);
  const askedDays = askedDaysOf((balance.whole ?? balance).judged_L, years);
  const forDays_L = once(() => tankForDays(critical_L, years, askedDays, target.daysMet_fraction));
  const forRuns_L = once(() => tankForRuns(needs_L, target.goodYears_fraction));
  return {
    target,
    sorted: once(() => ({ least_L: tankVolume_L, critical_L: criticalAbove(critical_L, years, tankVolume_L) })),
    shortfall_L,
    otherShortDays,
    critical_L,
    needs_L,
    years,
    judgedYears,
    goodYearsNeeded: goodYearsNeeded(judgedYears, target.goodYears_fraction),
    askedDays,
    get tankForDays_L() {
      return forDays_L();
    },
    get tankForRuns_L() {
      return forRuns_L();
    },
    get tankForTarget_L() {
      const [days_L, runs_L] = [forDays_L(), forRuns_L()];
      return days_L === null || runs_L === null ? null : Math.max(days_L, runs_L);
    },
  };
}

/** Worked out when first asked for: most curves are read at a few sizes, and never asked for the smallest. */
function once<T>(work: () => T): () => T {
  let found: { readonly value: T } | null = null;
  return () => {
    found ??= { value: work() };
    return found.value;
  };
}

/**
 * What do tanks of these sizes do?
 *
 * @param curve - every tank size
 * @param sizes - tanks to read off: usable volumes [L], 0 or more, with the catalogue's part
 * @returns by size, smallest first: dry days a year [day/year], good years [year], and whether the point meets the target
 * @law never worse for a larger tank; the order of sizes changes nothing
 * @definition ours: docs/methods/storage.md, target
 */
export function sizePoints(curve: DryDays, sizes: readonly TankSize[]): SizePoint[] {
  const ordered = [...sizes].sort(
    (a, b) => a.tankVolume_L - b.tankVolume_L || (String(a.partId) < String(b.partId) ? -1 : 1),
  );
  const volumes = ordered.map((size) => size.tankVolume_L);
  const dryDays = dryDaysOf(curve, volumes);
  return ordered.map(({ tankVolume_L, partId }, index) => {
    const goodYears = goodYearsAt(curve.needs_L, tankVolume_L);
    const metDays = curve.askedDays - dryDays[index]!;
    return {
      tankVolume_L,
      partId,
      dryDays_per_year: dryDays[index]! / curve.judgedYears,
      goodYears,
      meetsTarget:
        goodYears >= curve.goodYearsNeeded && isShareMet(metDays, curve.askedDays, curve.target.daysMet_fraction),
    };
  });
}

/** Dry days of the judged years in tanks of these volumes, smallest first: counted off where they are sorted already. */
export function dryDaysOf(curve: DryDays, volumes: readonly number[]): Float64Array {
  const sorted = curve.sorted?.();
  if (sorted === undefined || !(volumes[0]! >= sorted.least_L))
    return dryDaysAt(curve.critical_L, curve.years, volumes);
  return Float64Array.from(volumes, (volume_L) => countAbove(sorted.critical_L, volume_L));
}

/**
 * Is the share reached, against the last bits of rounding?
 *
 * @param part - the part [count]
 * @param whole - the whole [count]
 * @param wanted_fraction - the share wanted [fraction]
 * @returns true or false
 * @definition part ÷ whole is not under the share
 * @example
 * isShareMet(12, 15, 0.8) // → true
 */
export function isShareMet(part: number, whole: number, wanted_fraction: number): boolean {
  return part >= whole * wanted_fraction - roundingSlack_count;
}
