import type { SheetCandidate } from '@eavewell/tables';
import { Link } from '@tanstack/react-router';
import { memo, useDeferredValue, useMemo, useRef } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { useIsPrinting } from '../../../look/useIsPrinting.ts';
import { useRowsOnScreen } from '../../../look/useRowsOnScreen.ts';
import { VerdictMark } from '../../../look/VerdictMark.tsx';
import { MendingLink } from '../finding/MendingLink.tsx';
import { mendingOf } from '../finding/mending.ts';
import { whyOf } from './choosingAsked.ts';
import { agreedLine } from './choosingWords.ts';
import { isHolding } from './chosenCandidates.ts';

/** A row before it is measured [px]. Ours. */
const usual_px = 96;

interface RowsAsked {
  readonly programmeId: string;
  readonly plan: string | undefined;
  readonly sites: readonly SheetCandidate[];
  readonly chosen: ReadonlySet<string>;
  onToggle(siteId: string): void;
}

/** The sites as rows: of ten thousand those on the screen are drawn, and on paper all. */
export function CandidateRows(asked: RowsAsked) {
  const { sites, chosen, ...same } = asked;
  const list = useRef<HTMLOListElement>(null);
  const isWhole = useIsPrinting();
  const keys = useMemo(() => sites.map(({ siteId }) => siteId), [sites]);
  const { rows, setFocused, margin_px } = useRowsOnScreen(list, keys, usual_px);
  const items = useDeferredValue(rows.getVirtualItems());
  if (isWhole)
    return (
      <ol className="candidates whole">
        {sites.map((site) => (
          <li key={site.siteId}>
            <CandidateRow {...same} site={site} isChosen={chosen.has(site.siteId)} />
          </li>
        ))}
      </ol>
    );
  return (
    <ol className="candidates" ref={list} style={{ blockSize: rows.getTotalSize() }}>
      {items.map(({ index, start, key }) => {
        const site = sites[index];
        return site === undefined ? null : (
          <li
            key={String(key)}
            ref={rows.measureElement}
            data-index={index}
            aria-setsize={sites.length}
            aria-posinset={index + 1}
            style={{ transform: `translateY(${start - margin_px}px)` }}
            onFocus={() => setFocused(index)}
          >
            <CandidateRow {...same} site={site} isChosen={chosen.has(site.siteId)} />
          </li>
        );
      })}
    </ol>
  );
}

/** One site: whether it holds, whether it is planned or why not, what is agreed, and what would change it. */
const CandidateRow = memo(function CandidateRow({
  site,
  isChosen,
  programmeId,
  plan,
  onToggle,
}: Omit<RowsAsked, 'sites' | 'chosen'> & { readonly site: SheetCandidate; readonly isChosen: boolean }) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { siteId, name, people, area, verdict, tripId, said } = site;
  const mending = mendingOf(site);
  const isLeft = whyOf(site) !== 'planned';
  return (
    <div className={isLeft ? 'candidate-row is-left' : 'candidate-row'}>
      <label className="tick on-screen">
        <input type="checkbox" checked={isChosen} onChange={() => onToggle(siteId)} />
        <span className="said-only">{say('rolloutChoosing.choose', { name })}</span>
      </label>
      <VerdictMark verdict={verdict ?? 'notJudged'} size={isLeft || !isHolding(site) ? 26 : 16} />
      <div className="what">
        <p className="who">
          <Link to="/p/$programmeId/sites/$siteId" params={{ programmeId, siteId }}>
            {name}
          </Link>{' '}
          <span className="small">
            {people === null ? say('sites.no_people') : numbers.people(people)}
            {area === null ? '' : `, ${area}`}, {say('map.verdict', { verdict: verdict ?? 'notJudged' })}
          </span>
        </p>
        <p className="line">{isLeft ? <b className={`w-${verdict ?? 'unknown'}`}>{said}</b> : said}</p>
        <p className="small">{agreedLine(site, language)}</p>
      </div>
      <p className="beside small on-screen">
        {mending === null || mending.to === 'plan' ? null : mending.to !== 'agree' ? (
          <MendingLink {...{ programmeId, siteId, plan, mending }} />
        ) : isChosen ? null : (
          <button type="button" className="press" onClick={() => onToggle(siteId)}>
            {say(mending.key)}
          </button>
        )}
        {tripId === null ? null : (
          <Link
            to="/p/$programmeId/rollout"
            params={{ programmeId }}
            search={{ ...(plan === undefined ? {} : { plan }), site: siteId }}
          >
            {say('rolloutChoosing.when', { name })}
          </Link>
        )}
      </p>
    </div>
  );
});
