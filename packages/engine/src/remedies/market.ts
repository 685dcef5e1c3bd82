import type { DayIndex, PartFacts, PriceFacts } from '../kernel/index.ts';
import { type PriceFound, priceOn } from '../parts/index.ts';

/** What can be bought, and for how much on one day. */
export interface Market {
  readonly parts: readonly PartFacts[];
  /** By partId. */
  readonly prices: ReadonlyMap<string, PriceFound>;
  /** The day prices are of; null where there is none at all. */
  readonly day: DayIndex | null;
}

/**
 * What does each part cost on a day? Each its latest price on or before it.
 *
 * @param parts - the catalogue
 * @param prices - all prices: amount [currency] at priceDate [day]
 * @param day - the day prices are wanted for [day]; null: that of the latest price there is, so that the same folder always
 *   gives the same costs
 * @returns parts with their prices, amount [currency of the price], or why one has none
 * @definition ours
 * @example
 * marketOn([], [], null).day // → null
 */
export function marketOn(parts: readonly PartFacts[], prices: readonly PriceFacts[], day: DayIndex | null): Market {
  const latest = prices.reduce<DayIndex | null>(
    (last, { priceDate }) => (last === null || priceDate > last ? priceDate : last),
    null,
  );
  const of = day ?? latest;
  const found = new Map<string, PriceFound>();
  for (const { partId } of parts)
    found.set(partId, of === null ? { price: null, reason: 'noPrice' } : priceOn(prices, partId, of));
  return { parts, prices: found, day: of };
}
