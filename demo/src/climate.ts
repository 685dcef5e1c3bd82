/**
 * The climate of the demo, all of it made up: a humid chain of islands south of the line, wet from November to May and
 * dry from June to October, with some rain in every month. No figure here comes from a record of any place.
 */
export interface MonthOfRain {
  /** Chance that a wet day follows a dry one [fraction]. */
  readonly wetAfterDry_fraction: number;
  /** Chance that a wet day follows a wet one [fraction]. */
  readonly wetAfterWet_fraction: number;
  /** Mean rain of a wet day [mm]. */
  readonly wetDay_mm: number;
  /** Months whose luck is drawn with the dry season. */
  readonly dry: boolean;
}

const wet: MonthOfRain = { wetAfterDry_fraction: 0.42, wetAfterWet_fraction: 0.68, wetDay_mm: 15, dry: false };
const turning: MonthOfRain = { wetAfterDry_fraction: 0.3, wetAfterWet_fraction: 0.58, wetDay_mm: 12.5, dry: false };
const dry: MonthOfRain = { wetAfterDry_fraction: 0.3, wetAfterWet_fraction: 0.45, wetDay_mm: 8.5, dry: true };

/** January to December. */
export const months: readonly MonthOfRain[] = [wet, wet, wet, wet, turning, dry, dry, dry, dry, dry, turning, wet];

/** How the record of the demo runs. */
export const record = { firstYear: 1994, lastYear: 2025 } as const;

/** The failed season: dry-season chances from the first day to the last, cut down again. */
export const failedSeason = {
  firstMonth: 4,
  lastMonth: 12,
  lastDay: 10,
  /** What is left of the dry season's chances and amounts [fraction]. */
  left_fraction: 0.4,
} as const;

/** Year-to-year spread: standard deviation of a season's factor, and the least and greatest it may be. */
export const spread = {
  wet: { deviation_fraction: 0.08, least: 0.8, greatest: 1.25 },
  dry: { deviation_fraction: 0.12, least: 0.78, greatest: 1.35 },
} as const;

/** Amounts: gamma of this shape in all, of which a part falls on every gauge alike. */
export const amounts = { sharedShape: 0.5, ownShape: 0.25 } as const;

/** Share of days on which a gauge follows the weather of the whole chain [fraction]. */
export const sharedWeather_fraction = 0.75;
