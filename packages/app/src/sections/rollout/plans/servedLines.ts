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

/** Two plans on one axis: from the first day on which either serves somebody to the last; null where neither does. */
export function servedLines({
  servedA: a,
  servedB: b,
  people_count,
}: Pick<RolloutComparison, 'servedA' | 'servedB' | 'people_count'>): ServedLines | null {
  const days = [...a, ...b].map(({ day }) => day).sort();
  const [from, until] = [days[0], days.at(-1)];
  return from === undefined || until === undefined ? null : { a, b, from, until, people: people_count };
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
