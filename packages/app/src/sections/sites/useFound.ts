import { startTransition, useEffect, useState } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import type { Overview } from './overviewOpened.ts';
import { overviewName } from './overviewQuery.ts';
import { findInOverview } from './overviewThread.ts';

/** Places of the sites a text means; null where no text is asked for, or the first answer is not there yet. */
export function useFound(programmeId: string, overview: Overview, text: string | undefined): Uint32Array | null {
  const { code } = useLanguage();
  const [found, setFound] = useState<{ readonly of: Overview; readonly places: Uint32Array | null } | null>(null);
  useEffect(() => {
    let isWanted = true;
    if (text === undefined) setFound(null);
    else
      void findInOverview(overviewName(programmeId, code), text).then((places) => {
        if (isWanted) startTransition(() => setFound({ of: overview, places }));
      });
    return () => {
      isWanted = false;
    };
  }, [programmeId, code, overview, text]);
  // Places are of one list: those of the list before would name other sites.
  return text !== undefined && found?.of === overview ? found.places : null;
}
