import type { CurrencyRate, DayIndex, Redenomination } from '../../kernel/index.ts';

/** So much money of one currency, at the prices of one day. */
export interface Money {
  readonly amount: number;
  readonly currency: string;
  readonly day: DayIndex;
}

/** How money of several currencies and days is brought to one. */
export interface MoneyBasis {
  /** The programme's: what rates are written in and amounts are wanted in. */
  readonly currency: string;
  readonly rates: readonly CurrencyRate[];
  readonly redenominations: readonly Redenomination[];
  /** What prices in the programme's currency become more by in a year, as a share; null: not stated, so that they stay. */
  readonly priceChange_fraction_per_year: number | null;
  /** A rate older than this, on the amount's own day, is told. */
  readonly oldRate_days: number;
}
