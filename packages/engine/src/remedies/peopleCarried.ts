import type { Verdict } from '../kernel/index.ts';
import type { Placed, Plan } from './chains.ts';
import { stayingLeast_fraction } from './constants.ts';

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
  /** Of no use are those who are not more than these. */
  readonly over_people: number;
  /** Known to be too many; at most all of them. */
  readonly tooMany_people: number;
  /** The first step down from there; grows from step to step. */
  readonly firstStep_people: number;
}

/**
 * How many people does a site carry? The greatest number with which it does, since fewer people never make a site worse.
 *
 * @param isCarried - does it carry so many?
 * @param sought - between which numbers of people it is looked for, and the first step down [person], whole
 * @returns people carried [person], whole; null where they are not more than over_people
 * @law one person more is not carried
 * @definition ours: docs/decisions/0099-people-split-and-second-source.md; found from the top in growing steps, then by halving, since
 *   demand rises with people
 */
export function mostCarried(isCarried: (people: number) => boolean, sought: Sought): number | null {
  const { over_people, tooMany_people, firstStep_people } = sought;
  let tooMany = tooMany_people;
  let carried = over_people;
  for (let step = firstStep_people; tooMany - over_people > 1; step *= 2) {
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
