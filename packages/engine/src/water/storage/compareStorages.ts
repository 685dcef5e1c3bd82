import { type Verdict, verdictOrder } from '../../kernel/index.ts';

/** What two bodies of water of one site are set in order by. */
export interface StorageRank {
  readonly verdict: Verdict;
  readonly goodYears: number;
  readonly dryDays_per_year: number;
  readonly tankIds: readonly string[];
}

/**
 * Which of two bodies of water of one site is worse off? The worse verdict, then fewer good years, then more dry days, then by
 * the letters of their tanks, so that no two are equal.
 *
 * @param a - one: goodYears [year], dryDays_per_year [day/year], judged on the same years
 * @param b - another
 * @returns under 0 where a is worse, over 0 where b is [number]
 * @definition ours: docs/decisions/0090-several-tanks.md
 * @example
 * Math.sign(compareStorages({ verdict: 'tight', goodYears: 9, dryDays_per_year: 1, tankIds: ['T1'] }, { verdict: 'short', goodYears: 9, dryDays_per_year: 1, tankIds: ['T2'] })) // → 1
 */
export function compareStorages(a: StorageRank, b: StorageRank): number {
  return (
    verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) ||
    a.goodYears - b.goodYears ||
    b.dryDays_per_year - a.dryDays_per_year ||
    (a.tankIds.join() < b.tankIds.join() ? -1 : 1)
  );
}
