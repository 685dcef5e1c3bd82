import { useNavigate } from '@tanstack/react-router';
import { memo, useId, useMemo, useRef } from 'react';
import { useGridList } from 'react-aria/useGridList';
import { useListState } from 'react-stately/useListState';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { SiteEntry } from './overview.ts';
import { Rows, type Wanted } from './Rows.tsx';
import { RowKeys } from './rowKeys.ts';
import type { Key, SiteCollection } from './siteCollection.ts';

/** What the list is given. */
export interface SiteListGiven {
  readonly programmeId: string;
  readonly collection: SiteCollection;
  readonly chosen: ReadonlySet<string>;
  onChosen(chosen: ReadonlySet<string>): void;
  readonly isChoosing: boolean;
  readonly isDone: boolean;
  readonly wanted: Wanted | null;
  /** Told which sites the rows on the screen are of. */
  onShown(keys: readonly string[]): void;
}

/** The list of sites: keys go from row to row, open and choose. */
export const SiteList = memo(function SiteList(given: SiteListGiven) {
  const { programmeId, collection, chosen, onChosen } = given;
  const { say } = useLanguage();
  const navigate = useNavigate();
  const ref = useRef<HTMLDivElement>(null);
  const help = useId();
  const state = useListState<SiteEntry>({
    collection,
    selectionMode: 'multiple',
    selectionBehavior: 'toggle',
    selectedKeys: chosen as ReadonlySet<Key> as Set<Key>,
    onSelectionChange: (keys: 'all' | Set<Key>) =>
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
  return (
    <>
      <p id={help} className="said-only">
        {say('sites.choose_keys')}
      </p>
      <div {...gridProps} ref={ref} className={given.isChoosing ? 'site-list choosing' : 'site-list'}>
        <Rows {...given} state={state} list={ref} />
      </div>
    </>
  );
});
