import type { DayIndex, PriceFacts } from '../kernel/index.ts';

/** A price, or why there is none. */
export type PriceFound =
  | { readonly price: PriceFacts; readonly reason: null }
  | { readonly price: null; readonly reason: 'noPrice' | 'onlyLaterPrices' };

/**
 * What does a part cost on a day? The latest price dated on or before it; a later price is never carried back. Of two
 * prices of one date the one further down the table stands.
 *
 * @param prices - all prices: amount [currency] at priceDate [day]
 * @param partId - the part [text]
 * @param day - the day it is bought [day]
 * @returns the price, amount [currency of the price]; or null and the reason
 * @definition ours
 * @example
 * priceOn([], 'T1', 0) // → { price: null, reason: 'noPrice' }
 */
export function priceOn(prices: readonly PriceFacts[], partId: string, day: DayIndex): PriceFound {
  let latest: PriceFacts | null = null;
  let reason: 'noPrice' | 'onlyLaterPrices' = 'noPrice';
  for (const price of prices) {
    if (price.partId !== partId) continue;
    if (price.priceDate > day) reason = 'onlyLaterPrices';
    else if (latest === null || price.priceDate >= latest.priceDate) latest = price;
  }
  return latest === null ? { price: null, reason } : { price: latest, reason: null };
}
