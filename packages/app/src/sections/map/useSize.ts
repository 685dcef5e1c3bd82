import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Size } from './view.ts';

/** How large an element is [px], as it changes; null before it is laid out. */
export function useSize(element: RefObject<HTMLElement | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null);
  useLayoutEffect(() => {
    const measured = element.current;
    if (measured === null) return undefined;
    const read = () => {
      const { clientWidth: wide, clientHeight: high } = measured;
      setSize((known) => (known?.wide === wide && known.high === high ? known : { wide, high }));
    };
    read();
    const observer = new ResizeObserver(read);
    observer.observe(measured);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
