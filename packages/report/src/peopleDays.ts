import { type SiteDesign, type Verdict, verdictOrder } from '@eavewell/engine';

/**
 * How much does a site lack for how many? People times dry days a year, tank by tank; the people alone where the dry days are
 * not known.
 *
 * @param design - the site's people [person] and storages
 * @returns the weight by which exceptions are put in order [person·day/year]
 * @definition ours
 */
export function peopleDays({ people, storages }: Pick<SiteDesign, 'people' | 'storages'>): number {
  if (storages.length === 0) return people ?? 0;
  return storages.reduce((sum, one) => sum + one.people * one.dryDays_per_year, 0);
}

/** What decides the place of a site among others. */
export interface Placed {
  readonly siteId: string;
  readonly verdict: Verdict;
  /** People times dry days a year, as peopleDays has it. */
  readonly weight: number;
}

/**
 * Which of two sites is told first? Short, then unknown, then tight, then those that hold; within each the most people for the
 * most dry days.
 *
 * @param a - a site
 * @param b - another
 * @returns under 0 where a comes first, over 0 where b does [number]
 * @law a total order over sites of different ids
 * @definition ours
 */
export function exceptionsFirst(a: Placed, b: Placed): number {
  return (
    verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) ||
    b.weight - a.weight ||
    (a.siteId < b.siteId ? -1 : 1)
  );
}
