import { useQuery, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import type { paths } from '../../api/apiTypes.ts';
import type { RowChange } from '../../api/client.ts';
import { queries, type TableName } from '../../api/queries.ts';
import { useChange } from '../../api/useChange.ts';
import { useWho } from '../../api/useWho.ts';
import { NotSaved } from '../../forms/FaultSummary.tsx';
import { useFieldWords } from '../../forms/useFieldWords.ts';
import { Who } from '../../forms/Who.tsx';
import { nameOfRecord, type RecordWords, rowInWords } from '../../history/recordSentence.ts';
import { useLanguage } from '../../language/LanguageProvider.tsx';

type Answer =
  paths['/api/programmes/{programmeId}/conflicts']['get']['responses']['200']['content']['application/json'];
type Conflict = Answer['conflicts'][number];
type CellConflict = Extract<Conflict, { kind: 'cell' }>;
type RowConflict = Extract<Conflict, { kind: 'row' }>;

/** What two people said unseen by each other. A press settles it, as one record. */
export function Conflicts({ programmeId, telling }: { readonly programmeId: string; readonly telling: RecordWords }) {
  const { say } = useLanguage();
  const { data } = useSuspenseQuery(queries.conflicts(programmeId));
  const who = useWho();
  const { change, state, outcome } = useChange(programmeId);
  if (data.conflicts.length === 0) return null;
  const settle = (changes: readonly RowChange[]) => void change(changes);
  const isOff = who === '' || state === 'saving';
  return (
    <section className="heed" aria-labelledby="conflicts-title">
      <h2 id="conflicts-title">{say('history.conflicts', { count: data.conflicts.length })}</h2>
      <p>{say('history.conflicts_about')}</p>
      <NotSaved outcome={outcome} />
      <Who />
      <ul className="conflicts">
        {data.conflicts.map((conflict) =>
          conflict.kind === 'cell' ? (
            <OfCell
              key={`${conflict.table}/${conflict.key}/${conflict.column}`}
              {...{ programmeId, conflict, telling, isOff, settle }}
            />
          ) : (
            <OfRow key={`${conflict.table}/${conflict.key}`} {...{ programmeId, conflict, telling, isOff, settle }} />
          ),
        )}
      </ul>
    </section>
  );
}

interface OneProps<C> {
  readonly programmeId: string;
  readonly conflict: C;
  readonly telling: RecordWords;
  readonly isOff: boolean;
  settle(changes: readonly RowChange[]): void;
}

function OfCell({ programmeId, conflict, telling, isOff, settle }: OneProps<CellConflict>) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const { table, key, column, stands, over } = conflict;
  const { data } = useQuery(queries.history(programmeId, { table, key, column }));
  const by = (name: string) =>
    data?.entries.find(({ record }) => nameOfRecord(record) === name)?.record.by ?? say('history.somebody');
  const text = (cell: string | null) => telling.cell({ table, column }, cell);
  const put = (value: string | null) =>
    settle([{ kind: 'edited', table, key, before: { [column]: stands }, after: { [column]: value } }]);
  return (
    <li>
      <p>
        {say('history.conflict_cell', {
          field: words.label(table, column),
          row: rowInWords(conflict, telling),
          stands: text(stands),
          standsBy: by(conflict.standsBy),
          over: text(over),
          overBy: by(conflict.overBy),
        })}
      </p>
      <button type="button" className="button" disabled={isOff} onClick={() => put(stands)}>
        {say('history.leave', { value: text(stands) })}
      </button>{' '}
      <button type="button" className="button" disabled={isOff} onClick={() => put(over)}>
        {say('history.put', { value: text(over) })}
      </button>
    </li>
  );
}

function OfRow({ programmeId, conflict, telling, isOff, settle }: OneProps<RowConflict>) {
  const { say } = useLanguage();
  const client = useQueryClient();
  const { table, key } = conflict;
  const remove = async () => {
    const { rows } = await client.ensureQueryData(queries.table(programmeId, table as TableName));
    const row = rows.find((one) => one.key === key);
    if (row) settle([{ kind: 'removed', table, key, before: row.cells }]);
  };
  return (
    <li>
      <p>{say('history.conflict_row', { row: rowInWords(conflict, telling) })}</p>
      <button
        type="button"
        className="button"
        disabled={isOff}
        onClick={() => settle([{ kind: 'edited', table, key, before: {}, after: {} }])}
      >
        {say('history.keep_row')}
      </button>{' '}
      <button type="button" className="button" disabled={isOff} onClick={() => void remove()}>
        {say('history.remove_row')}
      </button>
    </li>
  );
}
