import { type GroupKind, groupKinds, isFitting } from './changes.ts';
import type { NotMendedReason } from './notMended.ts';
import type { Remedy } from './remedy.ts';

/** What is kept of a site that is short or tight until all are judged. */
export interface SmallestRemedy {
  readonly siteId: string;
  readonly people: number | null;
  readonly smallest: Remedy | null;
  readonly notMended: NotMendedReason | null;
}

/** Money in one currency. */
export interface Sum {
  readonly amount: number;
  readonly currency: string;
}

/** Sites counted together, with their people and what they cost. */
export interface SitesTogether {
  readonly sites: number;
  readonly people: number;
  readonly withoutPeople_count: number;
  /** By currency, in the order of their letters. */
  readonly costs: readonly Sum[];
  /** Sites whose cost is not known: they are in no sum. */
  readonly withoutCost_count: number;
}

/** Sites with the same kinds of smallest change, leading to the same verdict. */
export interface RemedyGroup extends SitesTogether {
  readonly kinds: readonly GroupKind[];
  readonly verdict: Remedy['verdict'];
  readonly isPromiseCut: boolean;
}

/** What would mend a whole programme. */
export interface RemediesTogether {
  /** Sites that are short or tight. */
  readonly looked: SitesTogether;
  /** Of these, those that would hold. */
  readonly mended: SitesTogether;
  /** Most sites first. */
  readonly groups: readonly RemedyGroup[];
  readonly notMended: readonly { readonly reason: NotMendedReason; readonly siteIds: readonly string[] }[];
}

/**
 * What would mend the programme, each site by its smallest remedy, and what do they cost together? Sums are kept apart by
 * currency; a cost that is not known is counted, never added as 0.
 *
 * @param given - the sites that are short or tight, each with its smallest remedy
 * @returns counts of sites [count], people [person] and costs [currency], all together and by kind of change; and the sites
 *   none mends, by reason
 * @law the order of sites changes no figure
 * @definition ours: docs/methods/remedies.md, programme
 */
export function remediesTogether(given: readonly SmallestRemedy[]): RemediesTogether {
  // Gutters and pipes by themselves mend no site whose water does not last.
  const sites = given.map((site) => (site.smallest?.besides.includes('storage') ? { ...site, smallest: null } : site));
  const byKind = groupedBy(
    sites.filter(isLifted),
    ({ smallest }) => `${smallest!.verdict} ${groupKindsOf(smallest!).join('+')}`,
  );
  const groups = [...byKind.values()].map((members): RemedyGroup => {
    const { verdict, promiseCut_count } = members[0]!.smallest!;
    const kinds = groupKindsOf(members[0]!.smallest!);
    return { kinds, verdict, isPromiseCut: promiseCut_count > 0, ...together(members) };
  });
  const unmended = groupedBy(
    sites.filter(({ notMended }) => notMended !== null),
    ({ notMended }) => notMended!,
  );
  return {
    looked: together(sites),
    mended: together(sites.filter(({ notMended }) => notMended === null)),
    groups: groups.sort(
      (a, b) => Number(a.verdict !== 'holds') - Number(b.verdict !== 'holds') || b.sites - a.sites || byKinds(a, b),
    ),
    notMended: [...unmended]
      .map(([reason, members]) => ({ reason, siteIds: members.map(({ siteId }) => siteId).sort() }))
      .sort((a, b) => (a.reason < b.reason ? -1 : 1)),
  };
}

/** Has it a remedy, and no station beside that nothing lifts, so that it is told among those that none mends? */
function isLifted({ smallest, notMended }: SmallestRemedy): boolean {
  return smallest !== null && (smallest.verdict === 'tight' || notMended === null);
}

/** Gutters and pipes are one kind, whichever they are. */
function groupKindsOf({ changes }: Remedy): readonly GroupKind[] {
  const kinds = changes.filter((change) => !isFitting(change)).map(({ kind }) => kind as GroupKind);
  if (changes.some(isFitting)) kinds.push('fittings');
  return kinds.sort((a, b) => groupKinds.indexOf(a) - groupKinds.indexOf(b));
}

function together(members: readonly SmallestRemedy[]): SitesTogether {
  const sums = new Map<string, number>();
  const amounts = members.flatMap(({ smallest }) => (smallest === null ? [] : [smallest.cost]));
  // Added from the smallest up, so that the order of sites moves no last digit.
  const known = amounts.filter(({ amount, currency }) => amount !== null && currency !== null);
  for (const { amount, currency } of known.sort((a, b) => a.amount! - b.amount!))
    sums.set(currency!, (sums.get(currency!) ?? 0) + amount!);
  return {
    sites: members.length,
    people: members.reduce((sum, { people }) => sum + (people ?? 0), 0),
    withoutPeople_count: members.filter(({ people }) => people === null).length,
    costs: [...sums]
      .map(([currency, amount]) => ({ amount, currency }))
      .sort((a, b) => (a.currency < b.currency ? -1 : 1)),
    withoutCost_count: amounts.filter(({ amount }) => amount === null).length,
  };
}

function groupedBy<K extends string>(
  sites: readonly SmallestRemedy[],
  keyOf: (site: SmallestRemedy) => K,
): Map<K, SmallestRemedy[]> {
  const groups = new Map<K, SmallestRemedy[]>();
  for (const site of sites) {
    const members = groups.get(keyOf(site));
    if (members) members.push(site);
    else groups.set(keyOf(site), [site]);
  }
  return groups;
}

function byKinds(a: RemedyGroup, b: RemedyGroup): number {
  return a.kinds.join('+') < b.kinds.join('+') ? -1 : 1;
}
