import type { DayIndex } from '../../kernel/index.ts';

/** So much money of one currency, at the prices of one day. */
export interface Money {
  readonly amount: number;
  readonly currency: string;
  readonly day: DayIndex;
}

/** What one unit of a currency bought on a day. */
export interface RateFacts {
  readonly currency: string;
  readonly day: DayIndex;
  /** So many units of the programme's currency, as it was on that day. */
  readonly perUnit: number;
  /** Who says so. */
  readonly source: string | null;
}

/** From a day on a currency is another, or the same letters stand for more of it. */
export interface RedenominationFacts {
  readonly currency: string;
  readonly newCurrency: string;
  /** The first day of the new money. */
  readonly day: DayIndex;
  /** So many old units make a new one. */
  readonly factor: number;
  readonly source: string | null;
}

/** How money of several currencies and days is brought to one. */
export interface MoneyBasis {
  /** The programme's: what rates are written in and amounts are wanted in. */
  readonly currency: string;
  readonly rates: readonly RateFacts[];
  readonly redenominations: readonly RedenominationFacts[];
  /** What prices in the programme's currency become more by in a year, as a share; null: not stated, so that they stay. */
  readonly priceChange_fraction_per_year: number | null;
  /** A rate older than this is told; left out: 92 days. */
  readonly rateOld_days?: number;
}
