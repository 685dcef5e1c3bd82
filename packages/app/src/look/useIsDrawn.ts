import { startTransition, useEffect, useReducer } from 'react';

/** What was drawn since the pages were opened. */
const drawn = new Set<string>();

/**
 * Has the browser drawn this once since the pages were opened? Until then what may come after it waits for its turn, and a slow
 * computer shows the first part sooner. Who comes back finds all of it at once, and the page where it was.
 *
 * @param what - names it; null while it is not there
 */
export function useIsDrawn(what: string | null): boolean {
  const [, look] = useReducer((count: number) => count + 1, 0);
  useEffect(() => {
    if (what === null || drawn.has(what)) return undefined;
    // What is asked for in a frame is made after it is drawn.
    const frame = requestAnimationFrame(() => {
      drawn.add(what);
      startTransition(look);
    });
    return () => cancelAnimationFrame(frame);
  }, [what]);
  return what !== null && drawn.has(what);
}
