import { useNavigate, useParams } from '@tanstack/react-router';
import { useEffect, useMemo, useState } from 'react';
import type { DraftStep, RowChange, RowNow } from '../../forms/draft.ts';
import { nextId } from '../../forms/options.ts';
import { TablesForm } from '../../forms/TablesForm.tsx';
import { useDraft } from '../../forms/useDraft.ts';
import { useKnownRows } from '../../forms/useKnownRows.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { namedBySites, siteSections } from './siteSections.ts';

const asked = [...namedBySites, 'sites'] as const;

/** A site that is new, with its roofs and tanks: one record. */
// long: one form and what follows from its first field
export function NewSite() {
  const { say } = useLanguage();
  const navigate = useNavigate();
  const { programmeId } = useParams({ from: '/p/$programmeId/new-site' });
  const known = useKnownRows(programmeId, asked);
  const { name, draft, dispatch } = useDraft(programmeId, 'new-site');
  const typed = useMemo(
    () =>
      Object.values(draft.rows).map(({ table, key, cells }) => ({
        table,
        key,
        cells: Object.fromEntries(Object.entries(cells).map(([column, cell]) => [column, cell.typed])),
      })),
    [draft],
  );
  const siteIds = known?.filter(({ table }) => table === 'sites').map(({ key }) => key) ?? null;
  const isBegun = typed.some(({ table }) => table === 'sites');
  const [isDone, setDone] = useState(false);
  const firstId = siteIds === null ? null : nextId(siteIds, 'S');
  useEffect(() => {
    if (isBegun || isDone || firstId === null) return;
    dispatch({ kind: 'add', table: 'sites', cells: { siteId: firstId }, isOffered: true });
  }, [isBegun, isDone, firstId, dispatch]);
  const siteId = typed.find(({ table }) => table === 'sites')?.cells['siteId'] ?? '';
  // Roofs and tanks follow their site when its id is changed.
  const follow = (step: DraftStep) => {
    dispatch(step);
    if (step.kind !== 'type' || step.row.table !== 'sites' || step.column !== 'siteId') return;
    for (const { table, key } of typed.filter(belongs))
      dispatch({ kind: 'type', row: { table, key }, column: 'siteId', cell: step.cell });
  };
  const leave = () => {
    setDone(true);
    void navigate({ to: '/p/$programmeId/sites', params: { programmeId } });
  };
  // It is seen where it stands now; one that waits in this browser has no page yet.
  const saved = (changes: readonly RowChange[], isKept: boolean) => {
    const own = changes.find(({ table }) => table === 'sites');
    if (own === undefined || isKept) return leave();
    setDone(true);
    void navigate({ to: '/p/$programmeId/sites/$siteId', params: { programmeId, siteId: own.key } });
  };
  return (
    <>
      <h1>{say('forms.new_site')}</h1>
      {known === null || !isBegun ? (
        <p>{say('forms.reading')}</p>
      ) : (
        <TablesForm
          programmeId={programmeId}
          sections={siteSections(siteId, typed, true)}
          rows={noRows}
          known={known}
          draft={draft}
          draftName={name}
          dispatch={follow}
          onSaved={saved}
          onLeave={leave}
        />
      )}
    </>
  );
}

const noRows: readonly RowNow[] = [];
const belongs = ({ table }: RowNow) => table !== 'sites';
