import { useId, useMemo, useState } from 'react';
import { useChange } from '../api/useChange.ts';
import { useWho } from '../api/useWho.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { cellEntry } from './cellEntry.ts';
import { NotSaved } from './FaultSummary.tsx';
import { FieldInput } from './FieldInput.tsx';
import { formTable } from './formTables.ts';
import { optionsOf } from './options.ts';
import { settingAlike } from './setForMany.ts';
import { useFieldWords } from './useFieldWords.ts';
import { useKnownRows } from './useKnownRows.ts';
import { Who } from './Who.tsx';
import './forms.css';

/** What may be set alike for many sites: what puts them into groups. */
const columns = ['area', 'siteClass', 'gaugeId', 'presenceCalendar', 'secondSourceId'] as const;
const asked = ['sites', 'gauges', 'targets', 'presence', 'secondSources'] as const;

/** Sets one field for many sites at once, as one record. */
// long: one form: a choice, its field, what came of it
export function SetForMany(props: { readonly programmeId: string; readonly siteIds: readonly string[] }) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { programmeId, siteIds } = props;
  const id = useId();
  const who = useWho();
  const known = useKnownRows(programmeId, asked);
  const { change, state, outcome } = useChange(programmeId);
  const [column, setColumn] = useState<string>(columns[0]);
  const [typed, setTyped] = useState('');
  const [done, setDone] = useState<number | null>(null);
  const wanted = useMemo(() => new Set(siteIds), [siteIds]);
  const table = formTable('sites')!;
  const contract = table.columns[column]!;
  const entry = cellEntry(contract, typed, numbers);
  const rows = known?.filter((row) => row.table === 'sites' && wanted.has(row.key)) ?? [];
  const save = async () => {
    if (entry.kind !== 'cell') return;
    let count = 0;
    for (const changes of settingAlike(rows, column, entry.cell)) {
      const { isSaved } = await change(changes);
      if (!isSaved) return;
      count += changes.length;
    }
    setDone(count);
  };
  return (
    <form
      className="set-for-many"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <label htmlFor={`${id}-column`}>{say('forms.set_what')}</label>
      <select
        id={`${id}-column`}
        value={column}
        onChange={(event) => {
          setColumn(event.target.value);
          setTyped('');
          setDone(null);
        }}
      >
        {columns.map((name) => (
          <option key={name} value={name}>
            {words.label('sites', name)}
          </option>
        ))}
      </select>
      <label htmlFor={`${id}-value`}>{say('forms.set_value')}</label>
      <div className="field-value">
        <FieldInput
          id={`${id}-value`}
          column={contract}
          typed={typed}
          options={optionsOf(table, column, known ?? [], null)}
          isOpen={table.links[column]?.isOpen === true}
          isInvalid={entry.kind === 'wrong'}
          describedBy={`${id}-told`}
          label={words.label('sites', column)}
          onType={(text) => {
            setTyped(text);
            setDone(null);
          }}
        />
      </div>
      <div id={`${id}-told`} role="status">
        {entry.kind === 'wrong' ? <p className="field-wanting">{say(entry.said.key, entry.said.values)}</p> : null}
        {done === null ? null : <p>{done === 0 ? say('forms.set_same') : say('forms.set_done', { count: done })}</p>}
        <NotSaved outcome={outcome} />
      </div>
      <Who />
      <button
        type="submit"
        className="button main"
        disabled={known === null || who === '' || entry.kind !== 'cell' || rows.length === 0 || state === 'saving'}
      >
        {say('forms.set_for_many', { count: rows.length })}
      </button>
    </form>
  );
}
