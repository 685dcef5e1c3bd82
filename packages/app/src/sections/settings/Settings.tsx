import { useSuspenseQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import type { RowChange } from '../../api/client.ts';
import { queries } from '../../api/queries.ts';
import type { RowNow } from '../../forms/draft.ts';
import { settingsChanges, settingsRow } from '../../forms/settingsRows.ts';
import { TablesForm } from '../../forms/TablesForm.tsx';
import { useDraft } from '../../forms/useDraft.ts';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { SavedLine } from '../../offline/SavedLine.tsx';
import { tablesAsked } from './tablesAsked.ts';

const sections = [{ table: 'settings', hidden: [], isGrowing: false, newRow: () => ({}) }];
const nothingNamed: readonly RowNow[] = [];

/** What is set for the whole programme: its target, and what stands where a site says nothing. */
export function Settings() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from: '/p/$programmeId/settings' });
  const { data } = useSuspenseQuery(queries.table(programmeId, 'settings'));
  const { name, draft, dispatch } = useDraft(programmeId, 'settings');
  const [isSaved, setSaved] = useState(false);
  const rows = useMemo(() => [settingsRow(data.rows)], [data.rows]);
  const asKept = (changes: readonly RowChange[]) =>
    changes.flatMap((change) => (change.kind === 'edited' ? settingsChanges(change.after, data.rows) : []));
  return (
    <>
      <h1>{say('settings.title')}</h1>
      <TableLinks programmeId={programmeId} />
      {isSaved && draft.beganAt === null ? <SavedLine programmeId={programmeId} /> : null}
      <TablesForm
        programmeId={programmeId}
        sections={sections}
        rows={rows}
        known={nothingNamed}
        draft={draft}
        draftName={name}
        dispatch={dispatch}
        asKept={asKept}
        onSaved={() => setSaved(true)}
        onLeave={() => setSaved(false)}
      />
    </>
  );
}

/** The tables of the whole programme, each a page. */
export function TableLinks({ programmeId }: { readonly programmeId: string }) {
  const { say } = useLanguage();
  const words = useFieldWords();
  return (
    <nav className="table-links on-screen" aria-label={say('settings.tables')}>
      <ul>
        <li>
          <Link
            to="/p/$programmeId/settings"
            params={{ programmeId }}
            activeOptions={{ exact: true }}
            activeProps={{ 'aria-current': 'page' }}
          >
            {say('settings.title')}
          </Link>
        </li>
        {tablesAsked.map((table) => (
          <li key={table}>
            <Link
              to="/p/$programmeId/settings/$table"
              params={{ programmeId, table }}
              activeProps={{ 'aria-current': 'page' }}
            >
              {words.tableOfAll(table)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
