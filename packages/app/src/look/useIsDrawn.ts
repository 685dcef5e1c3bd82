import { startTransition, useEffect, useState } from 'react';

/** What was drawn since the pages were opened. */
const drawn = new Set<string>();

/**
 * Has the browser drawn this once since the pages were opened? Until then what may come after it waits for its turn, and a slow
 * computer shows the first part sooner. Who comes back finds all of it at once, and the page where it was.
 *
 * @param what - names it
 */
export function useIsDrawn(what: string): boolean {
  const [isDrawn, setDrawn] = useState(drawn.has(what));
  useEffect(() => {
    if (drawn.has(what)) return undefined;
    // What is asked for in a frame is made after it is drawn.
    const frame = requestAnimationFrame(() => {
      drawn.add(what);
      startTransition(() => setDrawn(true));
    });
    return () => cancelAnimationFrame(frame);
  }, [what]);
  return isDrawn;
}
