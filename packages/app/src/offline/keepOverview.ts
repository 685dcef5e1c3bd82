import { createStore, get, set } from 'idb-keyval';
import type { ListNumbers, Overview, OverviewHead, SiteEntry } from '../sections/sites/overview.ts';

/** Where answers are kept in this browser. */
export const answersStore = () => createStore('eavewell-answers', 'answers');

/**
 * Keeps the list of sites as every other answer is kept, from a thread of its own: some megabytes are not copied while a person
 * waits. A browser that keeps nothing is no fault.
 */
export async function keepOverview(
  name: string,
  form: string,
  head: OverviewHead,
  sites: readonly SiteEntry[],
  numbers: ListNumbers,
): Promise<void> {
  const places = new Map(sites.map(({ key }, place) => [key, place]));
  const data: Overview = { head, sites, places, numbers };
  await set(name, { form, at: Date.now(), data }, answersStore()).catch(() => undefined);
}

/** The sites of a list that is kept; null where it is not. */
export async function keptSites(name: string): Promise<readonly SiteEntry[] | null> {
  const kept = await get<{ readonly data?: Partial<Overview> }>(name, answersStore()).catch(() => undefined);
  return kept?.data?.sites ?? null;
}
