import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useSyncExternalStore } from 'react';
import { useKeeping } from './useKept.ts';

/** When the oldest of what this page shows was read [ms since 1970]; null where it shows nothing that was read. */
export function useReadAt(): number | null {
  const client = useQueryClient();
  const { answers } = useKeeping();
  const subscribe = useCallback(
    (listener: () => void) => {
      // What is asked for comes and goes while a page is drawn: told at once, each telling would draw it again without end.
      let timer: ReturnType<typeof setTimeout> | undefined;
      const soon = () => {
        timer ??= setTimeout(() => {
          timer = undefined;
          listener();
        }, 0);
      };
      const ends = [answers.subscribe(soon), client.getQueryCache().subscribe(soon)];
      return () => {
        clearTimeout(timer);
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
