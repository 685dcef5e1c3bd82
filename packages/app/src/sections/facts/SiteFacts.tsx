import { useSuspenseQuery } from '@tanstack/react-query';
import { useLocation } from '@tanstack/react-router';
import { useEffect, useRef, useState } from 'react';
import { queries } from '../../api/queries.ts';
import { rowId } from '../../forms/draft.ts';
import { formAt, TablesForm } from '../../forms/TablesForm.tsx';
import { useDraft } from '../../forms/useDraft.ts';
import { useKnownRows } from '../../forms/useKnownRows.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { SavedLine } from '../../offline/SavedLine.tsx';
import { useRowsWithKept } from '../../offline/useKept.ts';
import { FactsRead } from './FactsRead.tsx';
import { RemoveSite } from './RemoveSite.tsx';
import { namedBySites, siteSections } from './siteSections.ts';
import '../../forms/forms.css';

/** All that was entered about one site: to read with its history, and to change in one form. */
// long: one part of a page, read or changed
export function SiteFacts({ programmeId, siteId }: { readonly programmeId: string; readonly siteId: string }) {
  const { say, numbers } = useLanguage();
  const { data } = useSuspenseQuery(queries.site(programmeId, siteId));
  const rows = useRowsWithKept(programmeId, siteId, data.rows);
  const known = useKnownRows(programmeId, namedBySites);
  const { name, draft, dispatch, foundAt } = useDraft(programmeId, `site-${siteId}`);
  const hash = useLocation({ select: (location) => location.hash });
  // An address may lead straight to the fields of samples.
  const [isEdited, setEdited] = useState(hash === formAt('waterTests'));
  const isLed = useRef(isEdited);
  const [isSaved, setSaved] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (isEdited && !isLed.current) heading.current?.focus();
  }, [isEdited]);
  const isOpen = isEdited && known !== null;
  useEffect(() => {
    if (!isOpen || !isLed.current) return;
    const fields = document.getElementById(formAt('waterTests'));
    fields?.scrollIntoView();
    fields?.querySelector<HTMLElement>(':scope > button')?.focus({ preventScroll: true });
    isLed.current = false;
  }, [isOpen]);
  const close = (saved: boolean) => {
    setEdited(false);
    setSaved(saved);
    heading.current?.focus();
  };
  const addedRows = Object.values(draft.rows).map(({ table, key, cells }) => ({
    table,
    key,
    cells: Object.fromEntries(Object.entries(cells).map(([column, { typed }]) => [column, typed])),
  }));
  const begin = () => setEdited(true);
  return (
    <section className="facts" aria-labelledby="facts-title">
      <h2 id="facts-title" ref={heading} tabIndex={-1}>
        {say(isEdited ? 'forms.change_facts' : 'forms.facts')}
      </h2>
      {isSaved && !isEdited ? <SavedLine programmeId={programmeId} /> : null}
      {rows === data.rows ? null : <p className="heed">{say('offline.kept_rows')}</p>}
      {!isEdited && draft.beganAt !== null ? (
        <p className="heed">{say('forms.draft_found', { when: numbers.moment(foundAt ?? draft.beganAt) })}</p>
      ) : null}
      {isEdited && known !== null ? (
        <TablesForm
          programmeId={programmeId}
          sections={siteSections(siteId, [...rows, ...addedRows], false)}
          rows={rows}
          known={known}
          level={3}
          draft={draft}
          draftName={name}
          dispatch={dispatch}
          onSaved={() => close(true)}
          onLeave={() => close(false)}
        />
      ) : (
        <>
          <p className="on-screen facts-presses">
            <button type="button" className="button" onClick={begin}>
              {say(draft.beganAt === null ? 'forms.change_facts' : 'forms.go_on')}
            </button>
            {draft.beganAt === null ? null : (
              <button type="button" className="button" onClick={() => dispatch({ kind: 'letGo' })}>
                {say('forms.let_go')}
              </button>
            )}
            <RemoveSite programmeId={programmeId} siteId={siteId} rows={rows} />
          </p>
          <FactsRead programmeId={programmeId} rows={rows} key={rows.map(rowId).join()} />
        </>
      )}
    </section>
  );
}
