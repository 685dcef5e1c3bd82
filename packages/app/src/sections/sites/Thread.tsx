import { memo } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { type SiteEntry, stationsInOrder } from './overview.ts';
import { stationsWords } from './rowWords.ts';

/** A mark is as large as it matters [px]: an exception stands out, what holds is small. */
const markSizes = { short: 24, tight: 24, unknown: 24, holds: 11, notJudged: 11 } as const;

/** The stations of one site on a thread, along the water's path. The drawing is never mirrored. */
export const Thread = memo(function Thread({ site }: { readonly site: SiteEntry }) {
  const language = useLanguage();
  const { stations } = site;
  if (stations === null) return <span className="thread" />;
  return (
    <span className="thread" dir="ltr">
      <span className="said-only" dir={language.direction}>
        {stationsWords(site, language)}
      </span>
      {stationsInOrder.map((station) => (
        <span key={station} className="knot">
          <VerdictMark verdict={stations[station]} size={markSizes[stations[station]]} />
        </span>
      ))}
    </span>
  );
});
