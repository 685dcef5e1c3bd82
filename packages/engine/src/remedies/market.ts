import type { DayIndex, DesignSettings, KitFacts, PartFacts, PriceFacts, Problem } from '../kernel/index.ts';
import { type MoneyOn, moneyOn, type PriceFound, priceOn, rowsThatDiffer } from '../parts/index.ts';

/** What can be bought, and for how much on one day. */
export interface Market {
  readonly parts: readonly PartFacts[];
  /** By partId; in the programme's currency and at the prices of `day`, where a rate allows. */
  readonly prices: ReadonlyMap<string, PriceFound>;
  /** The day prices are of; null where there is none at all. */
  readonly day: DayIndex | null;
  /** What its prices and rates brought up, each thing once. */
  readonly problems: readonly Problem[];
}

/** What a programme says of money. */
export interface MarketMoney {
  readonly settings: Pick<DesignSettings, 'currency' | 'priceChange_fraction_per_year' | 'oldRate_days'>;
  readonly kit: Pick<KitFacts, 'rates' | 'redenominations'>;
}

/**
 * What does each part cost on a day? Each its latest price on or before it.
 *
 * @param parts - the catalogue
 * @param prices - all prices: amount [currency] at priceDate [day]
 * @param day - the day prices are wanted for [day]; null: that of the latest price there is, so that the same folder always
 *   gives the same costs
 * @param money - the programme's currency and yearly change of prices [fraction/year], rates [currency/unit] and redenominations; null: nothing is converted
 * @returns parts with their prices, amount [currency of the price], or why one has none; a price for which there is no rate stays in its own currency
 * @definition ours
 * @example
 * marketOn([], [], null).day // → null
 */
export function marketOn(
  parts: readonly PartFacts[],
  prices: readonly PriceFacts[],
  day: DayIndex | null,
  money: MarketMoney | null = null,
): Market {
  const latest = prices.reduce<DayIndex | null>(
    (last, { priceDate }) => (last === null || priceDate > last ? priceDate : last),
    null,
  );
  const of = day ?? latest;
  const found = new Map<string, PriceFound>();
  const problems = new Map<string, Problem>();
  const tell = (all: readonly Problem[]) => {
    for (const one of all) problems.set(JSON.stringify(one), one);
  };
  const on = of === null || money === null ? null : moneyOn(money.settings, money.kit, of, prices);
  for (const { partId } of parts) {
    const price: PriceFound = of === null ? { price: null, reason: 'noPrice' } : priceOn(prices, partId, of);
    found.set(partId, on === null ? price : inOneMoney(price, on, tell));
  }
  if (money !== null) tell(rowsThatDiffer(prices, money.kit.rates));
  return { parts, prices: found, day: of, problems: [...problems.values()] };
}

function inOneMoney(found: PriceFound, on: MoneyOn, tell: (problems: readonly Problem[]) => void): PriceFound {
  const { price } = found;
  if (price === null || on.currency === null) return found;
  const { amount, currency, problems } = on.convert(price.amount, price.currency, price.priceDate, {
    file: 'prices.csv',
  });
  tell(problems);
  return amount === null ? found : { price: { ...price, amount, currency }, reason: null };
}
