import { paperNames } from '@eavewell/words/app';
import { useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';

/** A paper that can be had: where it is, and what it is called. */
export interface PaperLink {
  /** Below the rollout of the programme: `trips/T1/manifest.pdf`. */
  readonly path: string;
  readonly name: string;
}

/** What can be printed, in a language of paper. */
export function TripPapers({
  programmeId,
  planId,
  papers,
}: {
  readonly programmeId: string;
  readonly planId: string | null;
  readonly papers: readonly PaperLink[];
}) {
  const { say, code } = useLanguage();
  const own = paperNames.find((one) => code.startsWith(one.code))?.code ?? 'en';
  const [language, setLanguage] = useState<string>(own);
  const of = `/api/programmes/${encodeURIComponent(programmeId)}/rollout`;
  const plan = planId === null ? '' : `&plan=${encodeURIComponent(planId)}`;
  return (
    <div className="papers on-screen">
      {papers.map(({ path, name }, nth) => (
        <a
          key={path}
          className={nth === 0 ? 'button main' : 'button'}
          href={`${of}/${path}?language=${language}${plan}`}
          // Without a network the page stays, and the browser says that nothing came.
          download={path.replaceAll('/', '-')}
        >
          {name}
        </a>
      ))}
      <label>
        {say('rolloutTrip.paper_language')}{' '}
        <select value={language} onChange={(event) => setLanguage(event.target.value)}>
          {paperNames.map((one) => (
            <option key={one.code} value={one.code} lang={one.code} dir={one.direction}>
              {one.name}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="button" onClick={() => window.print()}>
        {say('rolloutTrip.print')}
      </button>
    </div>
  );
}
