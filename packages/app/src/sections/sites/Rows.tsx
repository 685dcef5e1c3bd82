import {
  defaultRangeExtractor,
  type Range,
  useWindowVirtualizer,
  type VirtualItem,
  type Virtualizer,
  windowScroll,
} from '@tanstack/react-virtual';
import {
  type RefObject,
  startTransition,
  useCallback,
  useDeferredValue,
  useEffect,
  useMemo,
  useReducer,
  useRef,
  useState,
} from 'react';
import type { ListState } from 'react-stately/useListState';
import type { SiteEntry } from './overview.ts';
import { type RowGiven, SiteRow } from './SiteRow.tsx';
import type { SiteCollection } from './siteCollection.ts';

/** A row before it is measured [px], and rows drawn beyond the screen at each end. Ours. */
const [usual_px, beyond_rows] = [78, 3] as const;
/** What stays free over and under a row that has the focus [px]: the head that stays on the screen must not cover it. */
const [over_px, under_px] = [140, 20] as const;
/**
 * So many new rows are made at once, and the others when the browser has drawn those: a slow computer is never held up. One at first,
 * and after a frame that took long; else a few. Ours, measured.
 */
const [fewest_new, most_new, long_ms] = [1, 3, 10] as const;
/** The page has come to rest when it has not moved for so long [ms]. Ours. */
const rest_ms = 200;

/** A site whose row is to be brought into view, such as one pressed on the map; the count tells one press from the next. */
export interface Wanted {
  readonly key: string;
  readonly count: number;
}

interface Given {
  readonly programmeId: string;
  readonly collection: SiteCollection;
  readonly state: ListState<SiteEntry>;
  readonly list: RefObject<HTMLDivElement | null>;
  readonly isChoosing: boolean;
  readonly isDone: boolean;
  readonly wanted: Wanted | null;
  onShown(keys: readonly string[]): void;
  open(key: string): void;
}

/** The rows on the screen, of as many as there are. Moving the page draws rows anew and nothing else. */
export function Rows({ programmeId, collection, state, list, isChoosing, isDone, wanted, onShown, open }: Given) {
  const manager = state.selectionManager;
  const { focusedKey, isFocused, isEmpty } = manager;
  const focusedRow = collection.rowOfKey(focusedKey);
  const { rows, isPlaced } = useRowsDrawn(list, collection, focusedRow);
  useEffect(() => {
    if (isFocused && focusedRow >= 0) rows.scrollToIndex(focusedRow, { align: 'auto' });
  }, [isFocused, focusedRow, rows]);
  // A press on the map counts once, whatever the list shows afterwards.
  const bring = useRef({ collection, rows, state });
  bring.current = { collection, rows, state };
  useEffect(() => {
    const row = wanted === null ? -1 : bring.current.collection.rowOfKey(wanted.key);
    if (row < 0) return;
    bring.current.state.selectionManager.setFocusedKey(wanted!.key);
    bring.current.rows.scrollToIndex(row, { align: 'center' });
  }, [wanted]);
  // Rows are made when there is time for it, a few at once: moving the page never waits for them.
  const items = useDeferredValue(rows.getVirtualItems());
  const ofSites = useMemo(() => itemsOfSites(isPlaced ? items : none, collection), [isPlaced, items, collection]);
  const drawn = useFewAtOnce(ofSites, focusedRow);
  useShown(collection, rows.range, onShown);
  const { measureElement: measure } = rows;
  const given: RowGiven = useMemo(
    () => ({ programmeId, collection, state, isDone, isChoosing, measure, open }),
    [programmeId, collection, state, isDone, isChoosing, measure, open],
  );
  const at = (row: number) => (row !== focusedRow ? 'elsewhere' : isFocused ? 'focused' : 'here');
  return (
    <div role="presentation" style={{ blockSize: rows.getTotalSize() }}>
      {drawn.map(({ index, start, key }, i) => (
        <SiteRow
          key={key}
          row={index}
          gap={start - (drawn[i - 1]?.end ?? rows.options.scrollMargin)}
          at={at(index)}
          isChosen={manager.isSelected(key)}
          isNoneChosen={isEmpty}
          given={given}
        />
      ))}
    </div>
  );
}

const none: readonly VirtualItem[] = [];

/** A row that is to be drawn, with the key of its site: it stays the row of that site where the list is another. */
interface Item extends Omit<VirtualItem, 'key'> {
  readonly key: string;
}

const itemsOfSites = (items: readonly VirtualItem[], collection: SiteCollection): readonly Item[] =>
  items.flatMap((item) => {
    const key = collection.keyAt(item.index);
    return key === null ? [] : [{ ...item, key: String(key) }];
  });

/** Of the rows that are to be drawn: those that are there already, and a few new ones; then a few more, until all are there. */
function useFewAtOnce(items: readonly Item[], first: number): readonly Item[] {
  const there = useRef<ReadonlySet<string> | null>(null);
  // New rows since the browser drew last: the list may be rendered several times before it does so again.
  const made_count = useRef(0);
  const room_count = useRef<number>(fewest_new);
  const frame = useRef<number | null>(null);
  const after = useRef<ReturnType<typeof setTimeout>>(undefined);
  const isLacking = useRef(false);
  const [, goOn] = useReducer((count: number) => count + 1, 0);
  const few = fewOf(items, there.current, first, room_count.current - made_count.current);
  useEffect(() => {
    const before = there.current;
    there.current = new Set(few.map(({ key }) => key));
    if (before !== null) made_count.current += few.reduce((sum, { key }) => sum + Number(!before.has(key)), 0);
    isLacking.current = few.length < items.length;
    if (!isLacking.current && made_count.current === 0) return;
    const drawn = (from_ms: number) => {
      frame.current = null;
      if (made_count.current > 0) room_count.current = performance.now() - from_ms > long_ms ? fewest_new : most_new;
      made_count.current = 0;
      if (isLacking.current) startTransition(goOn);
    };
    // A task that is put off in a frame comes after it is drawn.
    frame.current ??= requestAnimationFrame(() => {
      const from_ms = performance.now();
      after.current = setTimeout(() => drawn(from_ms));
    });
  });
  useEffect(
    () => () => {
      if (frame.current !== null) cancelAnimationFrame(frame.current);
      clearTimeout(after.current);
      frame.current = null;
    },
    [],
  );
  return few;
}

/** The rows that are there, the one that has the focus, and new ones as far as there is room for them. */
function fewOf(items: readonly Item[], there: ReadonlySet<string> | null, first: number, most_count: number) {
  // The sheet round them comes before them all.
  if (there === null) return [];
  let room = most_count;
  return items.filter(({ key, index }) => there.has(key) || index === first || room-- > 0);
}

/** Which rows are drawn: those on the screen, a few beyond, and the one that has the focus. */
function useRowsDrawn(list: RefObject<HTMLDivElement | null>, collection: SiteCollection, focusedRow: number) {
  const [margin, setMargin] = useState<number | null>(null);
  const isScrolledByUs = useRef(false);
  useEffect(() => {
    // It is told when the browser has laid the page out, and first of all at once.
    const seen = new ResizeObserver(() =>
      setMargin(list.current ? list.current.getBoundingClientRect().top + window.scrollY : 0),
    );
    seen.observe(document.body);
    return () => seen.disconnect();
  }, [list]);
  const rangeExtractor = useCallback(
    (range: Range) => {
      const drawn = defaultRangeExtractor(range);
      if (focusedRow < 0 || drawn.includes(focusedRow)) return drawn;
      return focusedRow < (drawn[0] ?? 0) ? [focusedRow, ...drawn] : [...drawn, focusedRow];
    },
    [focusedRow],
  );
  const rows = useWindowVirtualizer({
    count: collection.size,
    estimateSize: () => usual_px,
    overscan: beyond_rows,
    scrollMargin: margin ?? 0,
    scrollPaddingStart: over_px,
    scrollPaddingEnd: under_px,
    // A number, as all rows are gone over each time one is measured.
    getItemKey: useCallback((row: number) => collection.places[row] ?? row, [collection]),
    rangeExtractor,
    useFlushSync: false,
    // At first the page stands where it stands: to scroll it there would make the browser lay it out before its time.
    scrollToFn: (offset, how, instance: Virtualizer<Window, Element>) => {
      if (isScrolledByUs.current) windowScroll(offset, how, instance);
      isScrolledByUs.current = true;
    },
    // The browser tells the size when it has laid the row out; asking before that would make it do so row by row.
    measureElement: (element, entry, { options, indexFromElement, measurementsCache }) =>
      entry?.borderBoxSize[0]?.blockSize ??
      measurementsCache[indexFromElement(element)]?.size ??
      options.estimateSize(indexFromElement(element)),
  });
  return { rows, isPlaced: margin !== null };
}

/** Tells which sites the rows on the screen are of, when the page has come to rest. */
function useShown(
  collection: SiteCollection,
  range: { readonly startIndex: number; readonly endIndex: number } | null,
  onShown: Given['onShown'],
): void {
  const [from, to] = [range?.startIndex ?? 0, range?.endIndex ?? -1];
  useEffect(() => {
    const timer = setTimeout(() => {
      const keys: string[] = [];
      for (let row = from; row <= to; row++) keys.push(String(collection.keyAt(row)));
      onShown(keys);
    }, rest_ms);
    return () => clearTimeout(timer);
  }, [collection, from, to, onShown]);
}
