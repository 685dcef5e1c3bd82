import { createStore, get, type UseStore, update } from 'idb-keyval';
import type { KeptChange } from './outbox.ts';

/** Where kept changes stand: read and altered as a whole, so that two pages never write over one another. */
export interface OutboxStore {
  read(): Promise<readonly KeptChange[]>;
  /** Alters what is kept; it is on the disk when this is done, or nothing was altered and it throws. */
  alter(work: (kept: readonly KeptChange[]) => readonly KeptChange[]): Promise<void>;
}

/** Kept changes in the browser's own database. */
export function browserOutbox(): OutboxStore {
  let store: UseStore | null = null;
  const open = () => {
    store ??= createStore('eavewell-outbox', 'changes');
    return store;
  };
  const place = 'kept';
  return {
    read: async () => (await get<readonly KeptChange[]>(place, open())) ?? [],
    alter: (work) => update<readonly KeptChange[]>(place, (kept) => work(kept ?? []), open()),
  };
}
