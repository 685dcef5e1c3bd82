import { createStore, get, set } from 'idb-keyval';
import type { OverviewPacked } from '../sections/sites/overviewPacked.ts';

/** Where answers are kept in this browser. */
export const answersStore = () => createStore('eavewell-answers', 'answers');

/**
 * Keeps the list of sites as every other answer is kept, from a thread of its own: some megabytes are not copied while a person
 * waits. A browser that keeps nothing is no fault.
 */
export async function keepOverview(name: string, form: string, data: OverviewPacked): Promise<void> {
  await set(name, { form, at: Date.now(), data }, answersStore()).catch(() => undefined);
}

/** A list that is kept, of the form these pages know; null where there is none. */
export async function keptOverview(name: string, form: string): Promise<OverviewPacked | null> {
  const kept = await get<{ readonly form: string; readonly data?: OverviewPacked }>(name, answersStore()).catch(
    () => undefined,
  );
  return kept?.form === form ? (kept.data ?? null) : null;
}
