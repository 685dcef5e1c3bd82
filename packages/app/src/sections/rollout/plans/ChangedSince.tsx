import type { RolloutSheet } from '@eavewell/tables';
import { useQuery } from '@tanstack/react-query';
import { queries } from '../../../api/queries.ts';
import { useChange } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { useKnownRows } from '../../../forms/useKnownRows.ts';
import { askForName } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { LaterSites } from './LaterSites.tsx';
import { NotBegun } from './MakePlan.tsx';
import { planTables, retimedChanges } from './planRows.ts';
import { UnsaidTrips } from './UnsaidTrips.tsx';
import { anew_s, useFound } from './useFound.ts';

/** What changed since the days of the plan were worked out, and what may be done about it: keep its order, or plan anew. */
// long: what is said and its two presses
export function ChangedSince({ programmeId, sheet }: { readonly programmeId: string; readonly sheet: RolloutSheet }) {
  const { say, numbers } = useLanguage();
  const who = useWho();
  const rows = useKnownRows(programmeId, planTables);
  const { data: last } = useQuery(queries.lastRecords(programmeId));
  const { change, state, outcome } = useChange(programmeId);
  const { planId, changedSince: since } = sheet;
  const { found, anew, begin, isBusy: isSearched } = useFound(programmeId, planId);
  if (planId === null || since === null) return null;
  const isBusy = state === 'saving' || isSearched;
  const pressed = (act: () => void) => () => {
    if (who === '') askForName();
    else act();
  };
  const keep = () =>
    void change(retimedChanges({ sheet, rows: rows ?? [], at: timedAt(sheet.version, last?.records ?? []) }));
  return (
    <section className="changed-since on-screen" aria-label={say('rolloutPlans.changed')}>
      <p>
        <b className={since.later_count > 0 ? 'w-tight' : ''}>{since.said}</b>
      </p>
      <LaterSites later={since.later} />
      {since.changes.length === 0 ? null : (
        <details>
          <summary className="press">{say('rolloutPlans.changes', { count: since.changes_count })}</summary>
          <ul className="plain-list">
            {since.changes.map(({ at, by, said }) => (
              <li key={`${at} ${said}`}>
                <span className="small">
                  {numbers.moment(at)}, {by}
                </span>{' '}
                {said}
              </li>
            ))}
          </ul>
        </details>
      )}
      {found == null ? <UnsaidTrips programmeId={programmeId} sheet={sheet} /> : null}
      <p className="presses">
        {found == null ? (
          <button type="button" className="button main" disabled={isBusy} onClick={pressed(anew)}>
            {say('rolloutPlans.plan_anew')}
          </button>
        ) : null}
        <button type="button" className="button" disabled={isBusy || rows === null} onClick={pressed(keep)}>
          {say('rolloutPlans.keep_plan')}
        </button>
        {found == null ? <span className="small">{say('rolloutPlans.anew_about', { count: anew_s })}</span> : null}
      </p>
      <NotSaved outcome={outcome} />
      <NotBegun error={begin.error} />
    </section>
  );
}

/** Of when the days of a sheet are: of now, unless somebody changed something that it does not know of yet. */
function timedAt(version: number, records: readonly { readonly place: number; readonly at: string }[]): string {
  const isOfNow = records.every(({ place }) => place <= version);
  return (isOfNow ? undefined : records.find(({ place }) => place === version)?.at) ?? new Date().toISOString();
}
