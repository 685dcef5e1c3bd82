import { useSyncExternalStore } from 'react';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { pages } from './pagesWorker.ts';

/** A newer version of the pages waits: it is shown when she presses, never under her hands. */
export function NewPages() {
  const { say } = useLanguage();
  const isNewer = useSyncExternalStore(pages.subscribe, pages.isNewer);
  if (!isNewer) return null;
  return (
    <p className="on-screen">
      {say('offline.newer')}{' '}
      <button type="button" className="press plain-press" onClick={pages.show}>
        {say('offline.show_newer')}
      </button>
    </p>
  );
}
