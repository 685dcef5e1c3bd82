import type { DayIndex, Range } from '@eavewell/engine';

/** Numbers, days and shares as people read them: never a number without its unit. */
export interface NumberWords {
  litres(value_L: number): string;
  /** A tank that is enough: rounded up, never down. */
  tankLitres(value_L: number): string;
  litresADay(value_L_per_day: number): string;
  days(value_days: number): string;
  daysAYear(value_days: number): string;
  dryDaysAYear(value_days: number): string;
  years(count: number): string;
  people(count: number): string;
  /** "28 of 30 years". */
  ofYears(good: number, all: number): string;
  /** An amount of money with its currency. */
  money(amount: number, currency: string): string;
  percent(value_fraction: number): string;
  /** Up to the next tenth of a per cent: what is said to be at most so much is never told smaller than it is. */
  percentAtMost(value_fraction: number): string;
  /** "likely 13 to 21", without a unit of its own: the figure beside it carries it. */
  likely(range: Range): string;
  /** "13 to 21", below a header that says likely. */
  range(range: Range): string;
  /** "25 to 30 of 31", below such a header. */
  rangeOfYears(range: Range, coming: number): string;
  /** "likely 25 to 30 of the next 31": so many of the coming years. */
  likelyNextYears(range: Range, coming: number): string;
  date(day: DayIndex | string): string;
  /** Metres under a kilometre, kilometres above. */
  distance_km(value_km: number | null): string;
  /** A figure with so many decimals, for columns whose heads name the unit. */
  fixed(value: number, decimals: number): string;
  /** Any figure with its unit, as the engine spells units. */
  quantity(value: number | string | Range | null, unit: string): string;
  /** The same, without rounding, for what was given. */
  given(value: number | string, unit: string): string;
}
