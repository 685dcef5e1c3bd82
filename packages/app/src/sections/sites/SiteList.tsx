import { useNavigate } from '@tanstack/react-router';
import { memo, startTransition, useCallback, useId, useMemo, useRef } from 'react';
import { useGridList } from 'react-aria/useGridList';
import { type ListState, useListState } from 'react-stately/useListState';
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
  const state = useSteady(
    useListState<SiteEntry>({
      collection,
      selectionMode: 'multiple',
      selectionBehavior: 'toggle',
      selectedKeys: chosen as ReadonlySet<Key> as Set<Key>,
      // All of ten thousand is a later rendering: the key that was pressed is answered first, and what follows comes in parts.
      onSelectionChange: (keys: 'all' | Set<Key>) =>
        keys === 'all'
          ? startTransition(() => onChosen(collection.allKeys()))
          : onChosen(new Set(keys as Iterable<string>)),
    }),
  );
  const open = useCallback(
    (key: Key) => {
      const site = collection.getItem(key)?.value;
      if (site)
        void navigate({
          to: '/p/$programmeId/sites/$siteId',
          params: { programmeId, siteId: site.siteId || site.key },
        });
    },
    [collection, navigate, programmeId],
  );
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
        <Rows {...given} state={state} list={ref} open={open} />
      </div>
    </>
  );
});

type State = ListState<SiteEntry>;
type Manager = State['selectionManager'];

/**
 * The state of a list that stays the same thing while what it tells changes, so that a row need not be drawn anew for a change that
 * is not its own.
 */
function useSteady(state: State): State {
  const latest = useRef(state);
  latest.current = state;
  return useMemo(() => {
    const selectionManager = new Proxy({} as Manager, {
      get: (_, name) => {
        const manager = latest.current.selectionManager;
        const value: unknown = Reflect.get(manager, name, manager);
        return typeof value === 'function' ? value.bind(manager) : value;
      },
    });
    return {
      selectionManager,
      get collection() {
        return latest.current.collection;
      },
      get disabledKeys() {
        return latest.current.disabledKeys;
      },
    };
  }, []);
}
