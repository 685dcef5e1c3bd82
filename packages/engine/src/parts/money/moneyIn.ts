import {
  type CurrencyRate,
  type DayIndex,
  engineProblem,
  explain,
  isoDay,
  type Place,
  type Problem,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { largestAmount, priceYear_days, smallestAmount } from './constants.ts';
import type { Money, MoneyBasis } from './moneyFacts.ts';
import { type RateFound, rateOn } from './rateOn.ts';
import { type Redenominated, redenominated } from './redenominated.ts';

/** Money brought to another currency and day. */
export interface MoneyMoved {
  /** Null where it is not known, with a problem that says why. */
  readonly amount: number | null;
  readonly currency: string;
  readonly day: DayIndex;
  /** The rates it took, from and to the programme's currency. */
  readonly rates: readonly CurrencyRate[];
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** What an amount is to become. */
export interface MoneyWanted {
  /** Left out: the programme's. */
  readonly currency?: string;
  readonly day: DayIndex;
  /** Where the amount stands, for its problems. */
  readonly place?: Place;
}

/**
 * What is an amount in another currency, on another day? Old money becomes new first; then it is converted at its own date, by the latest rates on or before that; then
 * it moves to the day wanted by the yearly change of prices, (1 + change)^(days ÷ 365.25).
 *
 * @param money - the amount [currency], and the day it is of [day]
 * @param basis - the programme's currency, rates [currency/unit], redenominations [factor] and yearly change [fraction/year]
 * @param wanted - the currency, the programme's where left out, and the day [day]
 * @returns the amount [currency wanted], null where it is not known; its rates, problems and working
 * @problem money.figure_unusable - an amount or a change that nobody can reckon with
 * @problem money.rate_missing - no rate on or before its day
 * @problem money.rate_old - the rate is older than stated
 * @problem money.currency_ended - the letters had ended on its day
 * @law a missing rate never counts as 1; there and back on one day gives the amount again
 * @definition ours: docs/methods/money.md
 */
export function moneyIn(money: Money, basis: MoneyBasis, wanted: MoneyWanted): MoneyMoved {
  const { place = {} } = wanted;
  const to = wanted.currency ?? basis.currency;
  const problems: Problem[] = [];
  const working: WorkingLine[] = [];
  const result = (found: number | null, rates: readonly CurrencyRate[] = []): MoneyMoved => {
    const amount = found === null || isAmount(found) ? found : null;
    if (amount !== found)
      problems.push(engineProblem('money.figure_unusable', place, { value: String(found), what: 'amount' }));
    return { amount, currency: to, day: wanted.day, rates, problems, working };
  };
  const unusable = unusableFigure(money, basis);
  if (unusable !== null) {
    problems.push(engineProblem('money.figure_unusable', place, unusable));
    return result(null);
  }
  const old = redenominated(money.currency, money.day, basis.redenominations);
  const target = redenominated(to, wanted.day, basis.redenominations);
  for (const one of [old, target]) tellEnded(one, place, problems);
  // The same money on both days: what it becomes later is no matter, and not a bit is lost by going there and back.
  const isSame = old.currency === target.currency && old.divisor_factor === target.divisor_factor;
  if (isSame) return result(explainMove(money.amount, money.day, { basis, day: wanted.day, to }, working));
  const newest = { amount: explainNew(money, old, working), currency: old.currency, day: money.day };
  const rates = ratesBetween(newest, target.currency, basis, place, problems);
  if (rates === null) return result(null);
  const converted = explainRates(newest, rates, { to, target }, working);
  const amount = explainMove(converted, money.day, { basis, day: wanted.day, to }, working);
  return result(
    amount,
    rates.flatMap(({ rate }) => (rate === null ? [] : [rate])),
  );
}

function unusableFigure({ amount, day }: Money, { priceChange_fraction_per_year: change }: MoneyBasis) {
  if (!isAmount(amount)) return { value: String(amount), what: 'amount' };
  if (!Number.isFinite(day)) return { value: String(day), what: 'day' };
  if (change !== null && !(change > -1 && change <= largestAmount)) return { value: String(change), what: 'change' };
  return null;
}

function isAmount(amount: number): boolean {
  return amount === 0 || (Math.abs(amount) >= smallestAmount && Math.abs(amount) <= largestAmount);
}

function tellEnded({ endedBy }: Redenominated, place: Place, problems: Problem[]): void {
  if (endedBy === null) return;
  const { currency, newCurrency, day, factor } = endedBy;
  problems.push(engineProblem('money.currency_ended', place, { currency, newCurrency, day: isoDay(day), factor }));
}

/** The rates from and to the programme's currency; null where one is missing. */
function ratesBetween(
  { currency, day }: Money,
  to: string,
  basis: MoneyBasis,
  place: Place,
  problems: Problem[],
): readonly [RateFound, RateFound] | null {
  const same: RateFound = { rate_factor: 1, rate: null, age_days: 0 };
  if (currency === to) return [same, same];
  const found = [currency, to].map((one) => ({ one, rate: rateOn(one, day, basis) }));
  for (const { one, rate } of found) {
    if (rate === null) problems.push(engineProblem('money.rate_missing', place, { currency: one, day: isoDay(day) }));
    else if (rate.age_days > basis.oldRate_days)
      problems.push(engineProblem('money.rate_old', place, { currency: one, day: isoDay(day), days: rate.age_days }));
  }
  const [from, into] = found.map(({ rate }) => rate);
  return from && into ? [from, into] : null;
}

function explainNew({ amount, currency }: Money, old: Redenominated, working: WorkingLine[]): number {
  if (old.steps.length === 0) return amount;
  return explain(working, {
    code: 'money.redenominated',
    value: amount / old.divisor_factor,
    unit: old.currency,
    inputs: [
      workingInput('amount', amount, currency),
      ...old.steps.map(({ factor, currency: from, newCurrency }) =>
        workingInput('oldUnits', factor, `${from}/${newCurrency}`),
      ),
    ],
    source: 'settings',
  });
}

function explainRates(
  { amount, currency }: Money,
  rates: readonly [RateFound, RateFound],
  { to, target }: { readonly to: string; readonly target: Redenominated },
  working: WorkingLine[],
): number {
  const [from, into] = rates;
  const converted = ((amount * from.rate_factor) / into.rate_factor) * target.divisor_factor;
  const used = rates.flatMap(({ rate }) => (rate === null ? [] : [rate]));
  if (used.length === 0) return converted;
  return explain(working, {
    code: 'money.converted',
    value: converted,
    unit: to,
    inputs: [
      workingInput('amount', amount, currency),
      ...used.flatMap((rate) => [
        workingInput('rate', rate.perUnit, rate.currency),
        workingInput('rateDay', isoDay(rate.day), ''),
        ...(rate.source === null ? [] : [workingInput('rateSource', rate.source, '')]),
      ]),
    ],
    source: 'settings',
  });
}

function explainMove(
  amount: number,
  from: DayIndex,
  { basis, day, to }: { readonly basis: MoneyBasis; readonly day: DayIndex; readonly to: string },
  working: WorkingLine[],
): number {
  const change = basis.priceChange_fraction_per_year;
  if (change === null || change === 0 || day === from) return amount;
  return explain(working, {
    code: 'money.moved',
    value: priceMoved(amount, change, day - from),
    unit: to,
    inputs: [
      workingInput('amount', amount, to),
      workingInput('priceChange', change, 'fraction'),
      workingInput('days', day - from, 'day'),
    ],
    source: 'settings',
  });
}

/**
 * What does a price become in so many days, by a yearly change?
 *
 * @param amount - the price [currency]
 * @param change_fraction_per_year - what prices become more by in a year [fraction/year], above −1
 * @param days - how many days later [day]; under 0: earlier
 * @returns the price then [currency]
 * @law there and back gives the price again
 * @source newnan-tables, compound amount; a year of 365.25 days, docs/decisions/0254-prices-move-by-a-stated-change.md
 * @example
 * priceMoved(100, 0.1, 365.25) // → 110
 */
export function priceMoved(amount: number, change_fraction_per_year: number, days: number): number {
  return amount * (1 + change_fraction_per_year) ** (days / priceYear_days);
}
