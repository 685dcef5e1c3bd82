import { startTransition, useEffect, useState } from 'react';

/** Has the browser drawn what stood here at first? Then what may come after it has its turn, and a slow computer shows the first part sooner. */
export function useIsDrawn(): boolean {
  const [isDrawn, setDrawn] = useState(false);
  useEffect(() => {
    // What is asked for in a frame is made after it is drawn.
    const frame = requestAnimationFrame(() => startTransition(() => setDrawn(true)));
    return () => cancelAnimationFrame(frame);
  }, []);
  return isDrawn;
}
