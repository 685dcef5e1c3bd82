import { Link } from '@tanstack/react-router';
import { useWho } from '../../../api/useWho.ts';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useKnownRows } from '../../../forms/useKnownRows.ts';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { firstSteps, wantedFirst } from './firstUse.ts';
import { NotBegun } from './MakePlan.tsx';
import { freeName } from './planWords.ts';
import { useSearchForPlan } from './useSearch.ts';

/** How long the first plan is searched for [s]. Ours. */
const first_s = 10;

/** Before the first plan: what is still missing, table by table, or one press that makes it. */
export function FirstUse({ programmeId }: { readonly programmeId: string }) {
  const language = useLanguage();
  const { say } = language;
  const words = useFieldWords();
  const who = useWho();
  const rows = useKnownRows(programmeId, wantedFirst);
  const { state, begin } = useSearchForPlan(programmeId);
  if (rows === null) return null;
  const countOf = (table: string) => rows.filter((row) => row.table === table).length;
  const counts = Object.fromEntries(wantedFirst.map((table) => [table, countOf(table)]));
  const { steps, isReady } = firstSteps(counts as Parameters<typeof firstSteps>[0]);
  const make = () =>
    begin.mutate({ from: null, into: null, name: freeName([], language), seconds: first_s, onlyCrews: null });
  if (!isReady)
    return (
      <section className="first-use" aria-labelledby="first-use">
        <h2 id="first-use">{say('rolloutPlans.first_missing')}</h2>
        <ol>
          {steps.map(({ table, rows_count }) => (
            <li key={table} className={rows_count > 0 ? 'small' : ''}>
              <Link to="/p/$programmeId/settings/$table" params={{ programmeId, table }}>
                {words.tableOfAll(table)}
              </Link>{' '}
              {rows_count > 0 ? say('rolloutPlans.first_there', { rows: words.rows(table, rows_count) }) : null}
              {rows_count > 0 ? null : say(`rolloutPlans.first_${table}`)}
            </li>
          ))}
        </ol>
      </section>
    );
  return (
    <section className="first-use on-screen" aria-label={say('rolloutPlans.make')}>
      <p>{say('rolloutPlans.first_ready')}</p>
      <NotBegun error={begin.error} />
      <Who />
      <p className="presses">
        <button
          type="button"
          className="button main"
          disabled={who === '' || state?.taskId != null || begin.isPending}
          onClick={make}
        >
          {say('rolloutPlans.make')}
        </button>
      </p>
    </section>
  );
}
