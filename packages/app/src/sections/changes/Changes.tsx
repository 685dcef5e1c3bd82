import { useInfiniteQuery, useSuspenseQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { queries, recordsBefore } from '../../api/queries.ts';
import { cellText } from '../../forms/cellText.ts';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { ChangesOfRecord } from '../../history/ChangesOfRecord.tsx';
import { nameOfRecord, type RecordTold, type RecordWords, recordSentence } from '../../history/recordSentence.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';
import { Conflicts } from './Conflicts.tsx';
import './changes.css';

/** How many records are asked for at once. Ours. */
const most = 50;

const sources = ['form', 'import', 'visit', 'undo', 'redo'] as const;

/** What records and rows are put into words with on this page. */
function useRecordWords(programmeId: string): Omit<RecordWords, 'find'> {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { data } = useSuspenseQuery(queries.table(programmeId, 'sites'));
  const names = new Map(data.rows.map(({ key, cells }) => [key, cells['name'] ?? null]));
  return {
    say,
    words,
    cell: (place, cell) => cellText(place, cell, numbers, words) ?? say('forms.not_known'),
    siteName: (siteId) => names.get(siteId) ?? null,
  };
}

/** Who changed what, newest first, and what two people said that cannot both be so. */
// long: one page: what is asked for, its filter, its list
export function Changes() {
  const { say } = useLanguage();
  const { programmeId } = useParams({ from: '/p/$programmeId/changes' });
  const { q = '', source } = useSearch({ from: '/p/$programmeId/changes' });
  const navigate = useNavigate({ from: '/p/$programmeId/changes' });
  const words = useRecordWords(programmeId);
  const { data: state } = useSuspenseQuery(queries.programme(programmeId));
  const { data, fetchNextPage, hasNextPage, isFetching } = useInfiniteQuery({
    queryKey: ['programme', programmeId, 'records', 'pages'],
    queryFn: ({ pageParam }) => recordsBefore(programmeId, pageParam, most),
    initialPageParam: null as number | null,
    getNextPageParam: ({ records }) => {
      const last = records.at(-1)?.place ?? 1;
      return last > 1 ? last : undefined;
    },
  });
  const records = data?.pages.flatMap((page) => page.records) ?? [];
  const byName = new Map(records.map((record) => [nameOfRecord(record), record]));
  const telling = { ...words, find: (name: string) => byName.get(name) };
  const shown = records.filter((record) => isWanted(record, q, source, telling));
  const filter = (search: { q?: string; source?: string }) => {
    const next = { ...(q === '' ? {} : { q }), ...(source === undefined ? {} : { source }), ...search };
    const kept = Object.entries(next).filter(([, value]) => value !== '');
    void navigate({ search: Object.fromEntries(kept), replace: true });
  };
  return (
    <>
      <h1>{say('history.title', { count: state.version })}</h1>
      <Conflicts programmeId={programmeId} telling={telling} />
      <search className="changes-filter on-screen">
        <label htmlFor="changes-q">{say('history.find')}</label>
        <input id="changes-q" type="search" value={q} onChange={(event) => filter({ q: event.target.value })} />
        <label htmlFor="changes-source">{say('history.from_where')}</label>
        <select id="changes-source" value={source ?? ''} onChange={(event) => filter({ source: event.target.value })}>
          <option value="">{say('history.all_sources')}</option>
          {sources.map((one) => (
            <option key={one} value={one}>
              {say(`history.source_${one}`)}
            </option>
          ))}
        </select>
      </search>
      <p role="status" className="small">
        {q === '' && source === undefined ? null : say('history.found', { count: shown.length, of: records.length })}
      </p>
      <ol className="changes">
        {shown.map((record) => (
          <OneRecord key={nameOfRecord(record)} record={record} telling={telling} />
        ))}
      </ol>
      {hasNextPage ? (
        <button type="button" className="button" disabled={isFetching} onClick={() => void fetchNextPage()}>
          {say('history.more')}
        </button>
      ) : null}
    </>
  );
}

function isWanted(record: RecordTold, q: string, source: string | undefined, telling: RecordWords): boolean {
  if (source !== undefined && record.source.kind !== source) return false;
  if (q.trim() === '') return true;
  const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const rows = record.changes.map(({ table, key }) => `${table} ${key}`).join(' ');
  return plain(`${recordSentence(record, telling)} ${rows}`).includes(plain(q.trim()));
}

function OneRecord({ record, telling }: { readonly record: RecordTold; readonly telling: RecordWords }) {
  const { say, numbers } = useLanguage();
  return (
    <li>
      <p className="change-head">
        <span className="change-when small">{numbers.moment(record.at)}</span> {recordSentence(record, telling)}
      </p>
      {record.changes.length === 0 ? null : (
        <details>
          <summary className="press">{say('history.open', { count: record.changeCount })}</summary>
          <ChangesOfRecord changes={record.changes} telling={telling} />
          {record.changeCount > record.changes.length ? (
            <p className="small">
              {say('history.first_only', { count: record.changes.length, of: record.changeCount })}
            </p>
          ) : null}
          <p className="small">{say('history.made_on', { device: record.device, number: record.number })}</p>
        </details>
      )}
    </li>
  );
}
