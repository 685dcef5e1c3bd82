import type { DayIndex, PartFacts, PriceFacts } from '../kernel/index.ts';
import { type MoneyBasis, moneyIn, type PriceFound, priceOn } from '../parts/index.ts';

/** What can be bought, and for how much on one day. */
export interface Market {
  readonly parts: readonly PartFacts[];
  /** By partId; in the programme's currency and at the prices of `day`, where a rate allows. */
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
 * @param basis - the programme's currency, rates [currency/unit] and yearly change of prices [fraction/year]; null: nothing is converted
 * @returns parts with their prices, amount [currency of the price], or why one has none; a price for which there is no rate stays in its own currency
 * @definition ours
 * @example
 * marketOn([], [], null).day // → null
 */
export function marketOn(
  parts: readonly PartFacts[],
  prices: readonly PriceFacts[],
  day: DayIndex | null,
  basis: MoneyBasis | null = null,
): Market {
  const latest = prices.reduce<DayIndex | null>(
    (last, { priceDate }) => (last === null || priceDate > last ? priceDate : last),
    null,
  );
  const of = day ?? latest;
  const found = new Map<string, PriceFound>();
  for (const { partId } of parts)
    found.set(
      partId,
      of === null ? { price: null, reason: 'noPrice' } : inOneMoney(priceOn(prices, partId, of), of, basis),
    );
  return { parts, prices: found, day: of };
}

function inOneMoney(found: PriceFound, day: DayIndex, basis: MoneyBasis | null): PriceFound {
  if (basis === null || found.price === null) return found;
  const { price } = found;
  const { amount } = moneyIn({ amount: price.amount, currency: price.currency, day: price.priceDate }, basis, { day });
  return amount === null ? found : { price: { ...price, amount, currency: basis.currency }, reason: null };
}
