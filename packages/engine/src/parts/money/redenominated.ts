import type { DayIndex, Redenomination } from '../../kernel/index.ts';

/** An amount of old money, in the newest money it has become. */
export interface Redenominated {
  readonly currency: string;
  /** What the amount is divided by; 1 where nothing was redenominated. */
  readonly divisor_factor: number;
  /** The changes it went through, oldest first. */
  readonly steps: readonly Redenomination[];
  /** The change by which its currency was no money any more on its own day; null where it still was. */
  readonly endedBy: Redenomination | null;
}

/**
 * What has money of a currency and a day become? An amount of before the day of a change is divided by its factor, change after change. An amount that is written
 * in letters which had already ended on its day is old money all the same.
 *
 * @param currency - the letters of the currency [text]
 * @param day - the day the amount is of [day]
 * @param changes - the redenominations, factors in old units a new one [factor]
 * @returns the newest currency and what the amount is divided by [factor]
 * @law the order of the changes does not matter; two changes one after the other divide by the product of their factors
 * @definition ours: docs/decisions/0252-redenominations-come-first.md
 */
export function redenominated(currency: string, day: DayIndex, changes: readonly Redenomination[]): Redenominated {
  const dated = changes.filter(isUsable).sort((a, b) => a.day - b.day);
  const before = dated.filter((one) => one.day <= day && concerns(one, currency));
  // Of changes on one day, letters that were brought in and ended on it had ended.
  const lastDay = before.filter((one) => one.day === before.at(-1)?.day);
  const endedBy = lastDay.find((one) => one.currency === currency && one.newCurrency !== currency) ?? null;
  const left = dated.filter((one) => (endedBy === null ? one.day > day : one.day >= endedBy.day));
  const steps: Redenomination[] = [];
  let now = currency;
  let divisor_factor = 1;
  for (;;) {
    // Changes of one day follow from each other, whichever row stands first.
    const at = left.findIndex((one) => one.currency === now && one.day >= (steps.at(-1)?.day ?? one.day));
    const [change] = at < 0 ? [] : left.splice(at, 1);
    if (change === undefined) break;
    steps.push(change);
    divisor_factor *= change.factor;
    now = change.newCurrency;
  }
  return { currency: now, divisor_factor, steps, endedBy };
}

/**
 * What were the letters of a currency on an earlier day?
 *
 * @param currency - the letters it has now [text]
 * @param day - the earlier day [day]
 * @param changes - the redenominations, factors in old units a new one [factor]
 * @returns its letters on that day [text]
 * @definition ours: docs/decisions/0252-redenominations-come-first.md
 */
export function currencyOn(currency: string, day: DayIndex, changes: readonly Redenomination[]): string {
  const left = changes.filter((one) => isUsable(one) && one.day > day).sort((a, b) => b.day - a.day);
  let then = currency;
  let since = Infinity;
  for (;;) {
    const at = left.findIndex((one) => one.newCurrency === then && one.day <= since);
    const [change] = at < 0 ? [] : left.splice(at, 1);
    if (change === undefined) return then;
    then = change.currency;
    since = change.day;
  }
}

function concerns({ currency, newCurrency }: Redenomination, letters: string): boolean {
  return currency === letters || newCurrency === letters;
}

function isUsable({ factor, day }: Redenomination): boolean {
  return Number.isFinite(factor) && factor > 0 && Number.isFinite(day);
}
