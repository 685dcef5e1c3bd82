import type { MapSite } from './frame.ts';

/** Letters without marks and case: what somebody types who does not look for them. */
const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();

/**
 * Sites whose name or id holds what was typed; those that begin with it come first.
 *
 * @param most - how many are wanted
 */
export function findSites(sites: readonly MapSite[], typed: string, most: number): readonly MapSite[] {
  const wanted = plain(typed);
  if (wanted === '') return sites.slice(0, most);
  const found = sites.flatMap((site) => {
    const [name, key] = [plain(site.name), plain(site.key)];
    if (name.startsWith(wanted) || key.startsWith(wanted)) return [{ site, rank: 0 }];
    return name.includes(wanted) || key.includes(wanted) ? [{ site, rank: 1 }] : [];
  });
  return found
    .sort((a, b) => a.rank - b.rank)
    .slice(0, most)
    .map(({ site }) => site);
}
