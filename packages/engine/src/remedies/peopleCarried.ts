import type { SiteDesign, Verdict } from '../kernel/index.ts';
import { worstVerdict } from '../kernel/index.ts';
import { siteSizes } from '../site.ts';
import type { RemedyCase } from './chains.ts';

/** How many people a site carries as it stands, and how many need water from another one. */
export interface PeopleCarried {
  /** What the site is with so many. */
  readonly verdict: Extract<Verdict, 'holds' | 'tight'>;
  /** Of those of the design year. */
  readonly carried_people: number;
  readonly others_people: number;
}

/**
 * How many people does this site, which is short, carry as it stands? The greatest number with which it holds; where it holds with none, the
 * greatest with which it is tight. The others need water from a site of their own.
 *
 * @param design - the site's design, people of the design year [person]
 * @param given - the site, its gauge, the programme and the market [L], [currency]
 * @returns people carried and the others [person], whole; null where the site is not short, or carries not one
 * @law with one person more the site does not have the verdict; fewer people never make a site worse
 * @definition ours: docs/decisions/0098-people-a-site-carries.md; found by halving, since demand rises with people
 */
export function peopleCarried(design: SiteDesign, given: RemedyCase): PeopleCarried | null {
  const { design_people } = design;
  if (design_people === null || design.verdict !== 'short') return null;
  for (const verdict of ['holds', 'tight'] as const) {
    const enough = verdict === 'holds' ? ['holds'] : ['holds', 'tight'];
    const carried_people = most(design_people, (people) => enough.includes(verdictWith(people, given)));
    if (carried_people > 0 && carried_people < design_people)
      return { verdict, carried_people, others_people: design_people - carried_people };
  }
  return null;
}

/** The greatest whole number under `all` that is carried; 0 where not even 1 is. */
function most(all: number, isCarried: (people: number) => boolean): number {
  let [carried, tooMany] = [0, all];
  while (tooMany - carried > 1) {
    const middle = Math.floor((carried + tooMany) / 2);
    if (isCarried(middle)) carried = middle;
    else tooMany = middle;
  }
  return carried;
}

/** The verdict of the site with so many people of the design year. */
function verdictWith(people: number, { site, gauge, programme }: RemedyCase): Verdict {
  const fewer = { ...site, people, growthFraction_per_year: 0 };
  return worstVerdict(
    siteSizes(fewer, gauge, programme).map(
      (one) => one.verdictsAt([{ partId: null, tankVolume_L: one.tankVolume_L }])[0]!.verdict,
    ),
  );
}
