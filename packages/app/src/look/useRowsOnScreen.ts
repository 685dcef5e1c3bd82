import { defaultRangeExtractor, type Range, useWindowVirtualizer } from '@tanstack/react-virtual';
import { useCallback, useEffect, useState } from 'react';

/** Rows drawn beyond the screen at each end. Ours. */
const beyond_rows = 4;

/**
 * Of a long list those rows that are on the screen; the one that has the focus stays, so that keys do not lose their place.
 *
 * @param list - the list in the page
 * @param keys - a name for each row, in their order
 * @param usual_px - how high a row is before it is measured [px]
 */
export function useRowsOnScreen(
  list: { readonly current: HTMLElement | null },
  keys: readonly string[],
  usual_px: number,
) {
  const [margin_px, setMargin] = useState(0);
  const [focused, setFocused] = useState(-1);
  useEffect(() => {
    const seen = new ResizeObserver(() =>
      setMargin(list.current ? list.current.getBoundingClientRect().top + window.scrollY : 0),
    );
    seen.observe(document.body);
    return () => seen.disconnect();
  }, [list]);
  const rows = useWindowVirtualizer({
    count: keys.length,
    estimateSize: () => usual_px,
    overscan: beyond_rows,
    scrollMargin: margin_px,
    getItemKey: useCallback((row: number) => keys[row] ?? row, [keys]),
    rangeExtractor: useCallback(
      (range: Range) => {
        const drawn = defaultRangeExtractor(range);
        return focused < 0 || focused >= range.count || drawn.includes(focused)
          ? drawn
          : [...drawn, focused].sort((a, b) => a - b);
      },
      [focused],
    ),
    useFlushSync: false,
  });
  return { rows, setFocused, margin_px };
}
