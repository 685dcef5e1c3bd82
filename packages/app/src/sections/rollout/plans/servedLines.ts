import type { RolloutComparison } from '@eavewell/tables';

type ComparedSite = RolloutComparison['sites'][number];

/** So many people drink from a day on. */
export interface ServedPoint {
  readonly day: string;
  readonly people: number;
}

/** Two plans as lines on one axis of days and one of people. */
export interface ServedLines {
  readonly a: readonly ServedPoint[];
  readonly b: readonly ServedPoint[];
  readonly from: string;
  readonly until: string;
  readonly people: number;
}

function lineOf(sites: readonly ComparedSite[], dayOf: (site: ComparedSite) => string | null): readonly ServedPoint[] {
  const byDay = new Map<string, number>();
  for (const site of sites) {
    const day = dayOf(site);
    if (day !== null) byDay.set(day, (byDay.get(day) ?? 0) + site.people);
  }
  let people = 0;
  return [...byDay]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([day, more]) => {
      people += more;
      return { day, people };
    });
}

/**
 * How many people drink from which day on, under each of two plans? Of the sites of the two plans alone: who drinks already is not counted.
 *
 * @param sites - of both plans, with their days
 * @returns null where neither plan serves anybody
 */
export function servedLines(sites: readonly ComparedSite[]): ServedLines | null {
  const [a, b] = [lineOf(sites, (site) => site.servedA), lineOf(sites, (site) => site.servedB)];
  const days = [...a, ...b].map(({ day }) => day).sort();
  const [from, until] = [days[0], days.at(-1)];
  if (from === undefined || until === undefined) return null;
  return { a, b, from, until, people: sites.reduce((sum, { people }) => sum + people, 0) };
}

/** Sites by how much later they come under plan b, the most people and days first, then those that come earlier. */
export function byLateness(sites: readonly ComparedSite[]): {
  readonly later: readonly ComparedSite[];
  readonly earlier: readonly ComparedSite[];
  /** Served by one of the plans alone. */
  readonly onlyOne: readonly ComparedSite[];
  readonly same_count: number;
} {
  const hurt = ({ people, later_days }: ComparedSite) => people * Math.abs(later_days ?? 0);
  const sorted = [...sites].sort((one, other) => hurt(other) - hurt(one) || (one.siteId < other.siteId ? -1 : 1));
  return {
    later: sorted.filter(({ later_days }) => later_days !== null && later_days > 0),
    earlier: sorted.filter(({ later_days }) => later_days !== null && later_days < 0),
    onlyOne: sorted.filter(({ servedA, servedB }) => (servedA === null) !== (servedB === null)),
    same_count: sorted.filter(({ later_days }) => later_days === 0).length,
  };
}
