import { Link } from '@tanstack/react-router';
import { memo, useDeferredValue, useMemo, useRef } from 'react';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { useIsPrinting } from '../../look/useIsPrinting.ts';
import { useRowsOnScreen } from '../../look/useRowsOnScreen.ts';
import { VerdictMark } from '../../look/VerdictMark.tsx';
import { drinkOf, type SiteOfSafety } from './cups.ts';
import { dueWords, lastWords, leadWords, needsWords, reasonWords } from './cupWords.ts';

/** A row before it is measured [px]. Ours. */
const usual_px = 92;

/** The sites as rows: of ten thousand those on the screen are drawn, and on paper all. */
export function CupRows({
  programmeId,
  sites,
  today,
}: {
  readonly programmeId: string;
  readonly sites: readonly SiteOfSafety[];
  readonly today: string;
}) {
  const list = useRef<HTMLOListElement>(null);
  const isWhole = useIsPrinting();
  const keys = useMemo(() => sites.map(({ key }) => key), [sites]);
  const { rows, setFocused, margin_px } = useRowsOnScreen(list, keys, usual_px);
  const items = useDeferredValue(rows.getVirtualItems());
  if (isWhole)
    return (
      <ol className="cups whole">
        {sites.map((site) => (
          <li key={site.key}>
            <CupRow {...{ site, programmeId, today }} />
          </li>
        ))}
      </ol>
    );
  return (
    <ol className="cups" ref={list} style={{ blockSize: rows.getTotalSize() }}>
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
            <CupRow {...{ site, programmeId, today }} />
          </li>
        );
      })}
    </ol>
  );
}

/** One site: what may be said of drinking, why, the last sample, and when its cartridges are due. */
const CupRow = memo(function CupRow({
  site,
  programmeId,
  today,
}: {
  readonly site: SiteOfSafety;
  readonly programmeId: string;
  readonly today: string;
}) {
  const language = useLanguage();
  const { say, numbers } = language;
  const { key, siteId, name, people, area, cup } = site;
  const drink = drinkOf(site);
  const verdict = cup?.verdict ?? 'notJudged';
  const [set, ...others] = cup?.sets ?? [];
  const last = lastWords(site, language);
  const needs = needsWords(site, language);
  return (
    <div className={`cup-row drink-${drink}`}>
      <VerdictMark verdict={verdict} size={drink === 'no' ? 30 : drink === 'notShown' ? 24 : 14} />
      <div className="what">
        <p className="who">
          <Link to="/p/$programmeId/sites/$siteId/safety" params={{ programmeId, siteId: siteId || key }}>
            {name || key}
          </Link>{' '}
          <span className="small">
            {people === null ? say('sites.no_people') : numbers.people(people)}
            {area === null ? '' : `, ${area}`}
          </span>
        </p>
        <p className="line">
          <b className={`w-${verdict}`}>{leadWords(site, language)}.</b> {reasonWords(site, language)}
        </p>
      </div>
      <div className="beside small">
        {last === '' ? null : <p className={cup?.last === null ? 'is-due' : ''}>{last}</p>}
        {needs === '' ? null : (
          <p className="is-due">
            {needs}{' '}
            <Link
              to="/p/$programmeId/sites/$siteId"
              params={{ programmeId, siteId: siteId || key }}
              hash="form-waterTests"
              className="on-screen"
            >
              {say('safety.write_test')}
            </Link>
          </p>
        )}
        {set === undefined ? null : (
          <p>
            {say(set.middle < today ? 'safety.set_is' : 'safety.set_due', { when: dueWords(set, today, language) })}
            {others.length === 0 ? '' : ` ${say('safety.more_sets', { count: others.length })}`}
          </p>
        )}
      </div>
    </div>
  );
});
