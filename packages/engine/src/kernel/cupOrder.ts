import type { CupReason, MayDrink } from './safetyFindings.ts';
import { type StationVerdict, verdictOrder } from './verdicts.ts';

/** What the order of cups in a list hangs on. */
export interface CupRanked {
  readonly mayDrink: MayDrink;
  readonly verdict: StationVerdict;
  readonly reasons: readonly CupReason[];
  /** Of the worst germ at the worse end; null where no risk was worked. */
  readonly burden_DALY_per_person_per_year: number | null;
  /** Null where not known: it counts as one. */
  readonly people: number | null;
}

/**
 * Which of two cups is told first in a list? Those not to be drunk of, germs that were found before what is reckoned; then those with a unit that failed its test with air; then what is not shown to be fit, then what is fit; within them the worse
 * verdict, then the more healthy years lost.
 *
 * @param one - a cup
 * @param other - another
 * @returns below 0 where the first comes first, above 0 where the other does, 0 where neither [number]
 * @definition ours: docs/decisions/0273-the-order-of-cups.md
 */
export function compareCups(one: CupRanked, other: CupRanked): number {
  return rankOf(one) - rankOf(other) || verdictRank(one) - verdictRank(other) || lostYears(other) - lostYears(one);
}

function rankOf({ mayDrink, reasons }: CupRanked): number {
  if (mayDrink === 'no') return reasons[0] === 'found' ? 0 : 1;
  if (reasons.includes('unitFailed')) return 2;
  return mayDrink === 'notShown' ? 3 : 4;
}

function verdictRank({ verdict }: CupRanked): number {
  return verdict === 'notJudged' ? verdictOrder.length : verdictOrder.indexOf(verdict);
}

function lostYears({ burden_DALY_per_person_per_year, people }: CupRanked): number {
  return (burden_DALY_per_person_per_year ?? 0) * (people ?? 1);
}
