import type { DayIndex, DesignSettings, KitFacts, Place } from '../../kernel/index.ts';
import type { MoneyBasis } from './moneyFacts.ts';
import { type MoneyMoved, moneyIn } from './moneyIn.ts';

/** Money of the programme's currency on one day. */
export interface MoneyOn {
  /** What amounts are told in; null where nothing states a currency. */
  readonly currency: string | null;
  readonly day: DayIndex;
  /** An amount of a currency and a day in it. */
  readonly convert: (amount: number, currency: string, day: DayIndex, place?: Place) => MoneyMoved;
}

/** Something with a price: what says in which currency a programme reckons where it does not. */
export interface PricedOn {
  readonly currency: string;
  readonly priceDate: DayIndex;
}

/**
 * How is money told on a day? In the programme's currency; where it states none, in that of its latest price, of equal ones the one further down.
 *
 * @param settings - currency, yearly change of prices [fraction/year], and how old a rate may be [day]
 * @param kit - rates [currency/unit] and redenominations [factor]
 * @param day - the day [day]
 * @param priced - prices and costs with their days [day]
 * @returns the currency, and how an amount comes to it
 * @definition ours: docs/methods/money.md
 */
export function moneyOn(
  settings: Pick<DesignSettings, 'currency' | 'priceChange_fraction_per_year' | 'oldRate_days'>,
  kit: Pick<KitFacts, 'rates' | 'redenominations'>,
  day: DayIndex,
  priced: readonly PricedOn[],
): MoneyOn {
  const { priceChange_fraction_per_year, oldRate_days } = settings;
  const latest = priced.reduce<PricedOn | null>(
    (last, one) => (last === null || one.priceDate >= last.priceDate ? one : last),
    null,
  );
  const currency = settings.currency ?? latest?.currency ?? null;
  const { rates, redenominations } = kit;
  const basisIn = (own: string): MoneyBasis => ({
    currency: own,
    rates,
    redenominations,
    priceChange_fraction_per_year,
    oldRate_days,
  });
  return {
    currency,
    day,
    convert: (amount, of, on, place = {}) =>
      moneyIn({ amount, currency: of, day: on }, basisIn(currency ?? of), { day, place }),
  };
}
