import { createContext, useContext, useSyncExternalStore } from 'react';
import type { Heard, Reach } from './events.ts';

/** What the pages hear from the program. */
export const HeardContext = createContext<Heard | null>(null);

/** Does the program on this computer answer? */
export function useReach(): Reach {
  const heard = useContext(HeardContext);
  if (heard === null) throw new Error('useReach is used outside HeardContext');
  return useSyncExternalStore(heard.subscribe, heard.now);
}
