import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useSyncExternalStore } from 'react';
import { useKeeping } from './useKept.ts';

/** When the oldest of what this page shows was read [ms since 1970]; null where it shows nothing that was read. */
export function useReadAt(): number | null {
  const client = useQueryClient();
  const { answers } = useKeeping();
  const subscribe = useCallback(
    (listener: () => void) => {
      const ends = [answers.subscribe(listener), client.getQueryCache().subscribe(listener)];
      return () => {
        for (const end of ends) end();
      };
    },
    [answers, client],
  );
  const oldest = useCallback(() => {
    const shown = client.getQueryCache().findAll({ type: 'active' });
    const times = shown.flatMap(({ queryHash, queryKey }) => {
      const at = answers.whenRead(queryHash);
      return at === null || !String(queryKey[0]).startsWith('programme') ? [] : [at];
    });
    return times.length === 0 ? null : Math.min(...times);
  }, [answers, client]);
  return useSyncExternalStore(subscribe, oldest);
}
