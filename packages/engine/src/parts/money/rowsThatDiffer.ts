import { type CurrencyRate, engineProblem, isoDay, type PriceFacts, type Problem } from '../../kernel/index.ts';

/**
 * Which prices of one part and day, and which rates of one currency and day, say two things? The one further down the table stands, and that is told.
 *
 * @param prices - all prices [currency]
 * @param rates - all rates [currency/unit]
 * @returns a problem for each part or currency and day
 * @problem money.prices_differ - two prices of one part and day
 * @problem money.rates_differ - two rates of one currency and day
 * @definition ours
 */
export function rowsThatDiffer(prices: readonly PriceFacts[], rates: readonly CurrencyRate[]): readonly Problem[] {
  const priced = differing(
    prices,
    ({ partId, priceDate }) => `${partId} ${priceDate}`,
    ({ amount, currency }) => `${amount} ${currency}`,
  );
  const rated = differing(
    rates,
    ({ currency, day }) => `${currency} ${day}`,
    ({ perUnit }) => String(perUnit),
  );
  return [
    ...priced.map(({ one, values }) =>
      engineProblem(
        'money.prices_differ',
        { file: 'prices.csv' },
        { part: one.partId, day: isoDay(one.priceDate), values },
      ),
    ),
    ...rated.map(({ one, values }) =>
      engineProblem(
        'money.rates_differ',
        { file: 'rates.csv' },
        { currency: one.currency, day: isoDay(one.day), values },
      ),
    ),
  ];
}

function differing<T>(
  rows: readonly T[],
  keyOf: (row: T) => string,
  saidIn: (row: T) => string,
): readonly { readonly one: T; readonly values: readonly string[] }[] {
  const byKey = new Map<string, { one: T; values: string[] }>();
  for (const row of rows) {
    const key = keyOf(row);
    const found = byKey.get(key) ?? { one: row, values: [] };
    byKey.set(key, { one: row, values: [...found.values.filter((value) => value !== saidIn(row)), saidIn(row)] });
  }
  return [...byKey.values()].filter(({ values }) => values.length > 1);
}
