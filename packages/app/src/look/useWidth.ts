import { type RefObject, useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** How wide a sheet of A4 prints, less its edges of 16 mm [px of 1/96 inch]. */
export const paperWidth = Math.floor((210 - 2 * 16) * (96 / 25.4));

/**
 * How wide is there room for a picture? On paper as wide as the sheet, whatever the window.
 *
 * @param element - what the picture stands in
 * @returns the width [px], whole; null until it is known
 */
export function useWidth(element: RefObject<HTMLElement | null>): {
  readonly width: number | null;
  readonly isPaper: boolean;
} {
  const [width, setWidth] = useState<number | null>(null);
  const [isPaper, setPaper] = useState(false);
  useEffect(() => {
    const at = element.current;
    if (at === null) return;
    const look = () => setWidth(Math.floor(at.clientWidth));
    look();
    const watcher = new ResizeObserver(look);
    watcher.observe(at);
    return () => watcher.disconnect();
  }, [element]);
  useEffect(() => {
    const begin = () => flushSync(() => setPaper(true));
    const end = () => setPaper(false);
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
    };
  }, []);
  return { width: isPaper ? paperWidth : width, isPaper };
}
