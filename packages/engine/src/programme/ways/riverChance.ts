import { calendarDay, type DayIndex, dayOfPlainYear, type RiverLevel } from '../../kernel/index.ts';
import { leastLevelYears_count, weekDays_count, weeks_count } from './constants.ts';

/** Levels between which a carrier goes; null: no bound. */
export interface LevelBounds {
  readonly least_m: number | null;
  readonly greatest_m: number | null;
}

/** Shares of the days of a week that were read: too low, too high. */
export interface LevelShares {
  readonly below_fraction: number;
  readonly above_fraction: number;
  /** Neither. */
  readonly open_fraction: number;
}

/**
 * On what share of days of each week of a year is a river too low for a carrier, on what too high?
 *
 * @param levels - readings of one gauge [m], in any order; of two on one day each counts
 * @param bounds - the least and greatest level it is gone at [m]
 * @returns shares by week [fraction], the first week from 1 January on, the last with the days that are left; null for a week that was read in fewer than five years
 * @law together they are what openChance leaves
 * @definition ours: docs/decisions/0327-river-levels-by-week.md
 */
export function levelShares(levels: readonly RiverLevel[], bounds: LevelBounds): readonly (LevelShares | null)[] {
  const read = new Float64Array(weeks_count);
  const below = new Float64Array(weeks_count);
  const above = new Float64Array(weeks_count);
  const open = new Float64Array(weeks_count);
  const years = Array.from({ length: weeks_count }, () => new Set<number>());
  for (const { day, level_m } of levels) {
    if (!Number.isFinite(level_m)) continue;
    const week = weekOf(day);
    read[week]!++;
    years[week]!.add(calendarDay(day).year);
    // Bounds that are turned let nothing through: it counts once.
    if (level_m < (bounds.least_m ?? level_m)) below[week]!++;
    else if (level_m > (bounds.greatest_m ?? level_m)) above[week]!++;
    else open[week]!++;
  }
  return years.map((of, week) =>
    of.size < leastLevelYears_count
      ? null
      : {
          below_fraction: below[week]! / read[week]!,
          above_fraction: above[week]! / read[week]!,
          open_fraction: open[week]! / read[week]!,
        },
  );
}

/**
 * On what share of days of each week of a year does a river let a carrier through?
 *
 * @param levels - readings of one gauge [m], in any order; of two on one day each counts
 * @param bounds - the least and greatest level it is gone at [m]
 * @returns a share by week [fraction], the first week from 1 January on, the last with the days that are left; null for a week that was read in fewer than five years
 * @definition ours: docs/decisions/0327-river-levels-by-week.md
 */
export function openChance(levels: readonly RiverLevel[], bounds: LevelBounds): readonly (number | null)[] {
  return levelShares(levels, bounds).map((shares) => shares?.open_fraction ?? null);
}

/**
 * Which week of a year is a day in?
 *
 * @param day - the day [day]
 * @returns 0 to 51 [count]; 29 February is in the week of the 28th
 * @definition weeks of seven days from 1 January on; the last has the day that is left too
 * @example
 * weekOf(0) // → 0: 1 January 1970
 */
export function weekOf(day: DayIndex): number {
  const { month, day: ofMonth } = calendarDay(day);
  return Math.min(weeks_count - 1, Math.floor((dayOfPlainYear(month, ofMonth) - 1) / weekDays_count));
}
