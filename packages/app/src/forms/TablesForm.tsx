import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { Heading } from 'react-aria-components';
import { useChange } from '../api/useChange.ts';
import { useWho } from '../api/useWho.ts';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { type Draft, type DraftStep, type RowChange, type RowName, type RowNow, rowId } from './draft.ts';
import { FaultSummary } from './FaultSummary.tsx';
import { formTable } from './formTables.ts';
import { outcomeOf } from './outcome.ts';
import { RowFields, RowTitle } from './RowFields.tsx';
import { SaveBar } from './SaveBar.tsx';
import { unsaved } from './unsaved.ts';
import { useFieldWords } from './useFieldWords.ts';
import './forms.css';

/** A table in a form. */
export interface FormSection {
  readonly table: string;
  /** Columns that are not asked for. */
  readonly hidden: readonly string[];
  /** May rows be added and removed? */
  readonly isGrowing: boolean;
  /** Cells a new row begins with. */
  newRow(): Readonly<Record<string, string>>;
}

export interface TablesFormProps {
  readonly programmeId: string;
  readonly sections: readonly FormSection[];
  readonly rows: readonly RowNow[];
  /** Rows elsewhere in the programme that cells may name. */
  readonly known: readonly RowNow[];
  readonly draft: Draft;
  /** What the draft is called in this browser. */
  readonly draftName: string;
  dispatch(step: DraftStep): void;
  /** Turns the changes of the form into those of the records, where they are kept otherwise. */
  readonly asKept?: (changes: readonly RowChange[]) => readonly RowChange[];
  /** Rows that are shown before anything is typed; all where it is left out. */
  isShown?(row: RowNow): boolean;
  /** Called once it is saved, or kept in this browser until it can be, with what was changed. */
  onSaved(changes: readonly RowChange[], isKept: boolean): void;
  onLeave(): void;
  /** The level of the headings of tables: 2 where the form is the page, 3 within a part of one. */
  readonly level?: 2 | 3;
  readonly children?: ReactNode;
}

/** Where in the page the fields of a table stand: what an address may lead to. */
export const formAt = (table: string): string => `form-${table}`;

/** Rows of tables as fields: one save makes one record of all that was typed. */
export function TablesForm(props: TablesFormProps) {
  const { programmeId, sections, rows, draft, draftName, dispatch, onSaved, asKept } = props;
  const { numbers } = useLanguage();
  const [tries, setTries] = useState(0);
  const who = useWho();
  const { change, state, outcome, forget } = useChange(programmeId);
  const judged = useMemo(() => outcomeOf(draft, { rows, tableOf: formTable, numbers }), [draft, rows, numbers]);
  // The head of the page tells the same.
  useEffect(() => unsaved.note(draftName, judged.unsaved), [draftName, judged.unsaved]);
  const save = async () => {
    setTries(tries + 1);
    if (judged.faults.length > 0 || who === '') return;
    const changes = asKept?.(judged.changes) ?? judged.changes;
    const made = changes.length === 0 ? { isSaved: true, isKept: false } : await change(changes);
    if (!made.isSaved) return;
    dispatch({ kind: 'letGo' });
    onSaved(changes, made.isKept);
  };
  const letGo = () => {
    dispatch({ kind: 'letGo' });
    forget();
    setTries(0);
    props.onLeave();
  };
  return (
    <form
      className="tables-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <FaultSummary faults={judged.faults} outcome={outcome} needsName={who === ''} tries={tries} />
      {props.children}
      {sections.map((section) => (
        <Section key={section.table} {...props} section={section} isTried={tries > 0} />
      ))}
      <SaveBar unsaved={judged.unsaved} isSaving={state === 'saving'} onLetGo={letGo} />
    </form>
  );
}

function Section(props: TablesFormProps & { readonly section: FormSection; readonly isTried: boolean }) {
  const { section, rows, draft, dispatch } = props;
  const { say } = useLanguage();
  const words = useFieldWords();
  const { table } = section;
  const added = Object.values(draft.rows)
    .filter((row) => row.table === table && row.state === 'added')
    .map(({ key }) => ({ table, key, cells: {} }));
  const isShown = (row: RowNow) => draft.rows[rowId(row)] !== undefined || props.isShown?.(row) !== false;
  const own = [...rows.filter((row) => row.table === table && isShown(row)), ...added];
  return (
    <section className="form-section" id={formAt(table)}>
      <Heading level={props.level ?? 2} className="form-table">
        {words.table(table)}
      </Heading>
      {own.map((row) => (
        <Row key={rowId(row)} {...props} row={row} />
      ))}
      {section.isGrowing ? (
        <button
          type="button"
          className="button"
          onClick={() => dispatch({ kind: 'add', table, cells: section.newRow() })}
        >
          {say('forms.add', { what: words.one(table) })}
        </button>
      ) : null}
    </section>
  );
}

type RowProps = TablesFormProps & {
  readonly section: FormSection;
  readonly isTried: boolean;
  readonly row: RowNow;
};

function Row(props: RowProps) {
  const { section, row, rows, known, draft, dispatch } = props;
  const { say } = useLanguage();
  const own = draft.rows[rowId(row)];
  const name: RowName = { table: row.table, key: row.key };
  const isNew = own?.state === 'added';
  if (own?.state === 'removed')
    return (
      <div className="form-row">
        <p>
          <s>
            <RowTitle row={row} hidden={section.hidden} />
          </s>{' '}
          {say('forms.will_be_removed')}{' '}
          <button type="button" className="button" onClick={() => dispatch({ kind: 'leaveRow', row: name })}>
            {say('forms.keep_row')}
          </button>
        </p>
      </div>
    );
  const typedRows = Object.values(draft.rows)
    .filter(({ state }) => state === 'added')
    .map(asTyped);
  return (
    <div className="form-row">
      {section.isGrowing ? (
        <div className="form-row-head">
          <Heading level={(props.level ?? 2) + 1} className="form-row-title">
            <RowTitle row={isNew ? asTyped(own!) : row} hidden={section.hidden} />
          </Heading>
          <button type="button" className="button plain" onClick={() => dispatch({ kind: 'remove', row: name, isNew })}>
            {say('forms.remove')}
          </button>
        </div>
      ) : null}
      <RowFields
        programmeId={props.programmeId}
        row={row}
        draft={draft}
        hidden={section.hidden}
        known={[...known, ...rows, ...typedRows]}
        isTried={props.isTried}
        dispatch={dispatch}
      />
    </div>
  );
}

/** A new row as it would stand, so that others can name it. */
function asTyped({ table, key, cells }: Draft['rows'][string]): RowNow {
  const typed = Object.entries(cells).flatMap(([column, cell]) => (cell.typed === '' ? [] : [[column, cell.typed]]));
  return { table, key, cells: Object.fromEntries(typed) };
}
