import type { MapSite } from './frame.ts';

/** Letters without marks and case: what somebody types who does not look for them. */
const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();

/** A site with what it is found by. */
interface Findable {
  readonly site: MapSite;
  readonly name: string;
  readonly key: string;
}

/** The sites with their names and ids as they are looked for, so that each letter typed costs no more than a look. */
export const findable = (sites: readonly MapSite[]): readonly Findable[] =>
  sites.map((site) => ({ site, name: plain(site.name), key: plain(site.key) }));

/**
 * Sites whose name or id holds what was typed; those that begin with it come first.
 *
 * @param most - how many are wanted
 */
export function findSites(sites: readonly Findable[], typed: string, most: number): readonly MapSite[] {
  const wanted = plain(typed);
  const begins = sites.filter(({ name, key }) => name.startsWith(wanted) || key.startsWith(wanted));
  const holds = ({ name, key }: Findable) => name.includes(wanted) || key.includes(wanted);
  const others = begins.length < most ? sites.filter((one) => holds(one) && !begins.includes(one)) : [];
  return [...begins, ...others].slice(0, most).map(({ site }) => site);
}
