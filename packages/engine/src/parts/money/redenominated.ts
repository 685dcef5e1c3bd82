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
  const last = dated.filter((one) => one.day <= day && concerns(one, currency)).at(-1);
  const endedBy = last && last.currency === currency && last.newCurrency !== currency ? last : null;
  const steps: Redenomination[] = [];
  let now = currency;
  let divisor_factor = 1;
  for (const change of dated) {
    const isLater = endedBy === null ? change.day > day : change === endedBy || change.day > endedBy.day;
    if (!isLater || change.currency !== now) continue;
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
  const latestFirst = changes.filter(isUsable).sort((a, b) => b.day - a.day);
  let then = currency;
  for (const change of latestFirst) if (change.day > day && change.newCurrency === then) then = change.currency;
  return then;
}

function concerns({ currency, newCurrency }: Redenomination, letters: string): boolean {
  return currency === letters || newCurrency === letters;
}

function isUsable({ factor, day }: Redenomination): boolean {
  return Number.isFinite(factor) && factor > 0 && Number.isFinite(day);
}
