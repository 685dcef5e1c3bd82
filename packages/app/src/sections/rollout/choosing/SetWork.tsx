import { useId, useMemo, useState } from 'react';
import { useChange } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { cellEntry } from '../../../forms/cellEntry.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { FieldInput } from '../../../forms/FieldInput.tsx';
import { formTable } from '../../../forms/formTables.ts';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useKnownRows } from '../../../forms/useKnownRows.ts';
import { Who } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { settingWork, type WorkCells, type WorkColumn, workColumns, workFaults } from './settingWork.ts';
import '../../../forms/forms.css';

const asked = ['sites'] as const;

/** What was typed for a column, or that what stands there is to be taken out; a column nobody touched is not there. */
type Typed = Partial<Readonly<Record<WorkColumn, { readonly text: string; readonly isOut: boolean }>>>;

/** Sets agreement, days and priority for the sites that are chosen, as one record that undo takes back. */
// long: one form: its fields, what stands against saving, what came of it
export function SetWork(props: { readonly programmeId: string; readonly siteIds: ReadonlySet<string> }) {
  const { say, numbers } = useLanguage();
  const { programmeId, siteIds } = props;
  const who = useWho();
  const known = useKnownRows(programmeId, asked);
  const { change, state, outcome } = useChange(programmeId);
  const [typed, setTyped] = useState<Typed>({});
  const [done, setDone] = useState<number | null>(null);
  const [isTried, setTried] = useState(false);
  const table = formTable('sites')!;
  const rows = useMemo(() => known?.filter(({ key }) => siteIds.has(key)) ?? [], [known, siteIds]);
  const entries = workColumns.flatMap((column) => {
    const cell = typed[column];
    if (cell === undefined || (!cell.isOut && cell.text.trim() === '')) return [];
    return [[column, cellEntry(table.columns[column]!, cell.isOut ? '' : cell.text, numbers)] as const];
  });
  const cells: WorkCells = Object.fromEntries(
    entries.flatMap(([column, entry]) => (entry.kind === 'cell' ? [[column, entry.cell]] : [])),
  );
  const faults = workFaults(rows, cells);
  const isWrong = entries.some(([, { kind }]) => kind !== 'cell');
  const isReady = entries.length > 0 && !isWrong && !faults.isReasonWanted && faults.turnedRound_count === 0;
  const save = async () => {
    setTried(true);
    if (!isReady || who === '' || known === null) return;
    let count = 0;
    for (const changes of settingWork(rows, cells)) {
      const { isSaved } = await change(changes);
      if (!isSaved) return;
      count += changes.length;
    }
    setTyped({});
    setTried(false);
    setDone(count);
  };
  const type = (column: WorkColumn, text: string, isOut: boolean) => {
    setDone(null);
    setTyped((before) => ({ ...before, [column]: { text, isOut } }));
  };
  return (
    <form
      className="set-work"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className="fields">
        {workColumns.map((column) => (
          <WorkField
            key={column}
            column={column}
            typed={typed[column] ?? { text: '', isOut: false }}
            said={
              entries.flatMap(([one, entry]) => (one === column && entry.kind === 'wrong' ? [entry.said] : []))[0] ??
              null
            }
            isAsking={entries.some(([one, { kind }]) => one === column && kind === 'asks')}
            onType={(text, isOut) => type(column, text, isOut)}
          />
        ))}
      </div>
      <div role="status">
        {faults.isReasonWanted ? <p className="field-wanting">{say('rolloutChoosing.reason_wanted')}</p> : null}
        {faults.turnedRound_count === 0 ? null : (
          <p className="field-wanting">{say('rolloutChoosing.turned_round', { count: faults.turnedRound_count })}</p>
        )}
        {isTried && entries.length === 0 ? (
          <p className="field-wanting">{say('rolloutChoosing.nothing_typed')}</p>
        ) : null}
        {isTried && who === '' ? <p className="field-wanting">{say('rolloutChoosing.name_wanted')}</p> : null}
        {done === null ? null : <p>{done === 0 ? say('forms.set_same') : say('forms.set_done', { count: done })}</p>}
        <NotSaved outcome={outcome} />
      </div>
      <Who />
      <button type="submit" className="button main" disabled={known === null || state === 'saving'}>
        {say('forms.set_for_many', { count: rows.length })}
      </button>
    </form>
  );
}

function WorkField(props: {
  readonly column: WorkColumn;
  readonly typed: { readonly text: string; readonly isOut: boolean };
  readonly said: { readonly key: Parameters<ReturnType<typeof useLanguage>['say']>[0]; readonly values: object } | null;
  readonly isAsking: boolean;
  onType(text: string, isOut: boolean): void;
}) {
  const { say } = useLanguage();
  const words = useFieldWords();
  const id = useId();
  const { column, typed, said, isAsking, onType } = props;
  const label = words.label('sites', column);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <div className="field-value">
        <FieldInput
          id={id}
          column={formTable('sites')!.columns[column]!}
          typed={typed.isOut ? '' : typed.text}
          options={null}
          isOpen={false}
          isInvalid={said !== null || isAsking}
          describedBy={`${id}-told`}
          label={label}
          onType={(text) => onType(text, false)}
        />
      </div>
      <p id={`${id}-told`} className="small">
        {said === null ? (isAsking ? say('rolloutChoosing.which_number') : words.about('sites', column)) : null}
        {said === null ? null : <span className="field-wanting">{say(said.key, said.values as never)}</span>}
      </p>
      <label className="take-out small">
        <input type="checkbox" checked={typed.isOut} onChange={({ target }) => onType(typed.text, target.checked)} />
        {say('rolloutChoosing.take_out')}
      </label>
    </div>
  );
}
