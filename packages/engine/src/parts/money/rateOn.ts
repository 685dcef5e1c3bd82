import type { CurrencyRate, DayIndex } from '../../kernel/index.ts';
import { largestAmount, smallestAmount } from './constants.ts';
import type { MoneyBasis } from './moneyFacts.ts';
import { currencyOn, redenominated } from './redenominated.ts';

/** A rate that was found. */
export interface RateFound {
  /** Of the newest money on either side. */
  readonly rate_factor: number;
  /** As it stands in the table; null for a currency in itself. */
  readonly rate: CurrencyRate | null;
  readonly age_days: number;
}

/**
 * What did one unit of a currency buy of the programme's on a day? The latest rate on or before it, of two of one day the one further down the table; a later
 * one is never carried back. Both sides are counted in the newest money they have become since.
 *
 * @param currency - the newest letters of the currency, as `redenominated` gives them [text]
 * @param day - the day [day]
 * @param basis - the programme's currency, rates [currency/unit] and redenominations
 * @returns the rate [factor] with its age [day]; 1 for the programme's currency itself; null where no rate is known on that day
 * @law never 1 because nothing is known
 * @definition ours: docs/decisions/0253-a-rate-is-looked-up-not-guessed.md
 */
export function rateOn(currency: string, day: DayIndex, basis: MoneyBasis): RateFound | null {
  const { redenominations: changes } = basis;
  const own = (of: DayIndex) => redenominated(currencyOn(basis.currency, of, changes), of, changes);
  if (currency === own(day).currency) return { rate_factor: 1, rate: null, age_days: 0 };
  let latest: CurrencyRate | null = null;
  for (const rate of basis.rates) {
    if (rate.day > day || !isUsable(rate.perUnit)) continue;
    if (redenominated(rate.currency, rate.day, changes).currency !== currency) continue;
    if (latest === null || rate.day >= latest.day) latest = rate;
  }
  if (latest === null) return null;
  const units_factor = redenominated(latest.currency, latest.day, changes).divisor_factor;
  const rate_factor = (latest.perUnit * units_factor) / own(latest.day).divisor_factor;
  return { rate_factor, rate: latest, age_days: day - latest.day };
}

function isUsable(perUnit: number): boolean {
  return perUnit >= smallestAmount && perUnit <= largestAmount;
}
