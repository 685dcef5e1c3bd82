import { type RefObject, startTransition, useEffect, useState } from 'react';
import type { Size } from './view.ts';

/** How large an element is [px], as it changes; null before the browser has laid it out, which nobody makes it do sooner. */
export function useSize(element: RefObject<HTMLElement | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null);
  useEffect(() => {
    const measured = element.current;
    if (measured === null) return undefined;
    const read = () => {
      const { clientWidth: wide, clientHeight: high } = measured;
      startTransition(() => setSize((known) => (known?.wide === wide && known.high === high ? known : { wide, high })));
    };
    const observer = new ResizeObserver(read);
    observer.observe(measured);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
