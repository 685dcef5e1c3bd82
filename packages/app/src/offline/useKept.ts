import { createContext, useContext, useMemo, useSyncExternalStore } from 'react';
import type { KeptAnswers } from './keptAnswers.ts';
import { type KeptChange, type TableRow, withKept } from './outbox.ts';
import type { Outbox } from './outboxSender.ts';

/** What this browser keeps: changes that are not saved yet, and what was read last. */
export interface Keeping {
  readonly outbox: Outbox;
  readonly answers: KeptAnswers;
}

export const KeepingContext = createContext<Keeping | null>(null);

/** What this browser keeps. */
export function useKeeping(): Keeping {
  const keeping = useContext(KeepingContext);
  if (keeping === null) throw new Error('useKeeping is used outside KeepingContext');
  return keeping;
}

/** Changes kept in this browser that are not saved in their programme yet, oldest first. */
export function useKeptChanges(): readonly KeptChange[] {
  const { outbox } = useKeeping();
  return useSyncExternalStore(outbox.subscribe, outbox.now);
}

/** Rows of one site, as they would stand with what is kept in this browser put in; the very same where nothing kept touches them. */
export function useRowsWithKept(programmeId: string, siteId: string, rows: readonly TableRow[]): readonly TableRow[] {
  const kept = useKeptChanges();
  return useMemo(() => {
    const own = kept.filter((one) => one.programmeId === programmeId);
    return withKept(rows, own, ({ cells }) => cells['siteId'] === siteId);
  }, [kept, programmeId, siteId, rows]);
}
