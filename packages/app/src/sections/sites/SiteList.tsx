import type { Key, Selection } from '@react-types/shared';
import { useNavigate } from '@tanstack/react-router';
import { defaultRangeExtractor, type Range, useWindowVirtualizer } from '@tanstack/react-virtual';
import { useCallback, useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useGridList } from 'react-aria/useGridList';
import { useListState } from 'react-stately/useListState';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { SiteEntry } from './overview.ts';
import { RowKeys } from './rowKeys.ts';
import { type RowGiven, SiteRow } from './SiteRow.tsx';
import type { SiteCollection } from './siteCollection.ts';

/** A row before it is measured [px], and rows drawn beyond the screen at each end. Ours. */
const [usual_px, beyond_rows] = [60, 4] as const;

/** What the list is given. */
export interface SiteListGiven {
  readonly programmeId: string;
  readonly collection: SiteCollection;
  readonly chosen: ReadonlySet<string>;
  onChosen(chosen: ReadonlySet<string>): void;
  readonly isChoosing: boolean;
  readonly isDone: boolean;
  /** A site whose row is to be brought into view, such as one pressed on the map; the count tells one press from the next. */
  readonly wanted: { readonly key: string; readonly count: number } | null;
  /** Told which sites the rows on the screen are of. */
  onShown(keys: readonly string[]): void;
}

/** The rows on the screen, of as many as there are; keys go from row to row, and choose. */
// long: wires the keyboard, the choosing and the part that is drawn together, a few lines each
export function SiteList({
  programmeId,
  collection,
  chosen,
  onChosen,
  isChoosing,
  isDone,
  wanted,
  onShown,
}: SiteListGiven) {
  const { say } = useLanguage();
  const navigate = useNavigate();
  const ref = useRef<HTMLDivElement>(null);
  const help = useId();
  const state = useListState<SiteEntry>({
    collection,
    selectionMode: 'multiple',
    selectionBehavior: 'toggle',
    selectedKeys: chosen as ReadonlySet<Key> as Set<Key>,
    onSelectionChange: (keys: Selection) =>
      onChosen(new Set(keys === 'all' ? (collection.getKeys() as Iterable<string>) : (keys as Iterable<string>))),
  });
  const open = (key: Key) => {
    const site = collection.getItem(key)?.value;
    if (site)
      void navigate({ to: '/p/$programmeId/sites/$siteId', params: { programmeId, siteId: site.siteId || site.key } });
  };
  const keys = useMemo(() => new RowKeys(collection), [collection]);
  const { gridProps } = useGridList(
    {
      'aria-label': say('sites.list'),
      'aria-describedby': help,
      isVirtualized: true,
      disallowTypeAhead: true,
      keyboardDelegate: keys,
      onAction: open,
    },
    state,
    ref,
  );
  const { focusedKey, isFocused } = state.selectionManager;
  const focusedRow = collection.rowOfKey(focusedKey);
  const rows = useRowsDrawn(ref, collection, focusedRow);
  useEffect(() => {
    if (isFocused && focusedRow >= 0) rows.scrollToIndex(focusedRow, { align: 'auto' });
  }, [isFocused, focusedRow, rows]);
  // A press on the map counts once, whatever the list shows afterwards.
  const bring = useRef({ collection, rows, selectionManager: state.selectionManager });
  bring.current = { collection, rows, selectionManager: state.selectionManager };
  useEffect(() => {
    const row = wanted === null ? -1 : bring.current.collection.rowOfKey(wanted.key);
    if (row < 0) return;
    bring.current.selectionManager.setFocusedKey(wanted!.key);
    bring.current.rows.scrollToIndex(row, { align: 'center' });
  }, [wanted]);
  const drawn = rows.getVirtualItems();
  useShown(collection, rows.range, onShown);
  const given: RowGiven = { programmeId, collection, state, isDone, isChoosing, measure: rows.measureElement };
  return (
    <>
      <p id={help} className="said-only">
        {say('sites.choose_keys')}
      </p>
      <div {...gridProps} ref={ref} className={isChoosing ? 'site-list choosing' : 'site-list'}>
        <div role="presentation" style={{ blockSize: rows.getTotalSize() }}>
          {drawn.map(({ index, start, key }) => (
            <SiteRow key={String(key)} row={index} top={start - rows.options.scrollMargin} given={given} />
          ))}
        </div>
      </div>
    </>
  );
}

/** Which rows are drawn: those on the screen, a few beyond, and the one that has the focus. */
function useRowsDrawn(ref: React.RefObject<HTMLDivElement | null>, collection: SiteCollection, focusedRow: number) {
  const [margin, setMargin] = useState(0);
  useLayoutEffect(() => {
    const place = () => setMargin(ref.current ? ref.current.getBoundingClientRect().top + window.scrollY : 0);
    place();
    const seen = new ResizeObserver(place);
    seen.observe(document.body);
    return () => seen.disconnect();
  }, [ref]);
  const rangeExtractor = useCallback(
    (range: Range) => {
      const drawn = defaultRangeExtractor(range);
      if (focusedRow < 0 || drawn.includes(focusedRow)) return drawn;
      return focusedRow < (drawn[0] ?? 0) ? [focusedRow, ...drawn] : [...drawn, focusedRow];
    },
    [focusedRow],
  );
  return useWindowVirtualizer({
    count: collection.size,
    estimateSize: () => usual_px,
    overscan: beyond_rows,
    scrollMargin: margin,
    scrollPaddingStart: 140,
    scrollPaddingEnd: 20,
    getItemKey: (row) => collection.keyAt(row) ?? row,
    rangeExtractor,
  });
}

/** Tells which sites the rows on the screen are of, when the page has come to rest. */
function useShown(
  collection: SiteCollection,
  range: { readonly startIndex: number; readonly endIndex: number } | null,
  onShown: SiteListGiven['onShown'],
): void {
  const [from, to] = [range?.startIndex ?? 0, range?.endIndex ?? -1];
  useEffect(() => {
    const rest_ms = 200;
    const timer = setTimeout(() => {
      const keys: string[] = [];
      for (let row = from; row <= to; row++) keys.push(String(collection.keyAt(row)));
      onShown(keys);
    }, rest_ms);
    return () => clearTimeout(timer);
  }, [collection, from, to, onShown]);
}
