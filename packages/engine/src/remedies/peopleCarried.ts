import type { Verdict } from '../kernel/index.ts';
import type { Chains, Placed, Plan } from './chains.ts';
import { firstStep_count, stayingLeast_fraction } from './constants.ts';

/** How many people a site carries as it stands, and how many need water from another one. */
export interface PeopleCarried {
  /** What the site is with so many. */
  readonly verdict: Extract<Verdict, 'holds' | 'tight'>;
  /** Of those of the design year. */
  readonly carried_people: number;
  readonly others_people: number;
}

/** The site with these changes and so many of its people. */
export function splitPlan(placed: readonly Placed[], carried_people: number, all_people: number): Plan {
  return {
    placed,
    ofSite: { kind: 'people', carried_people, others_people: all_people - carried_people },
    cut_count: 0,
  };
}

/** The most that may stay and yet be too few: with so many and no more, the site would be no remedy for its people. */
export function tooFewToStay(all_people: number): number {
  return Math.ceil(all_people * stayingLeast_fraction) - 1;
}

/** What number of people is looked for. */
interface Sought {
  readonly verdict: PeopleCarried['verdict'];
  /** Those of the design year. */
  readonly all_people: number;
  /** Of no use are those who are not more than these. */
  readonly over_people: number;
  /** Known to be too many; at most all of them. */
  readonly tooMany_people: number;
}

/**
 * How many of its people does a site carry with these changes? The greatest number with which it has the verdict, or a better one. The
 * others need water from a site of their own.
 *
 * @param chains - the site
 * @param placed - changes to it, none or one
 * @param sought - the verdict, and between which numbers of people it is looked for [person], whole
 * @returns people carried [person], whole; null where they are not more than over_people
 * @law with one person more the site does not have the verdict; fewer people never make a site worse
 * @definition ours: docs/decisions/0099-people-split-and-second-source.md; found from the top in growing steps, then by halving, since
 *   demand rises with people
 */
export function mostCarried(chains: Chains, placed: readonly Placed[], sought: Sought): number | null {
  const { verdict, all_people, over_people, tooMany_people } = sought;
  const isCarried = (people: number) => chains.isAtLeast(verdict, splitPlan(placed, people, all_people));
  let tooMany = tooMany_people;
  let carried = over_people;
  for (let step = Math.ceil(tooMany / firstStep_count); tooMany - over_people > 1; step *= 2) {
    const fewer = Math.max(over_people + 1, tooMany - step);
    if (isCarried(fewer)) {
      carried = fewer;
      break;
    }
    tooMany = fewer;
  }
  if (carried === over_people) return null;
  while (tooMany - carried > 1) {
    const middle = Math.floor((carried + tooMany) / 2);
    if (isCarried(middle)) carried = middle;
    else tooMany = middle;
  }
  return carried;
}
