import type { Column } from '@eavewell/tables';
import { type ReactNode, useId, useRef, useState } from 'react';
import { useChange } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { cellEntry, figureOf, isPercent, shownCell } from '../../../forms/cellEntry.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { FieldInput } from '../../../forms/FieldInput.tsx';
import type { Option } from '../../../forms/options.ts';
import { faultOf } from '../../../forms/outcome.ts';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { whoId } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { Entered, EnteredCells, EntryFault } from './happenedChanges.ts';

/** One thing a short form asks for. */
export interface FieldAsked {
  readonly field: string;
  /** What judges it: the column into which it goes. */
  readonly column: Column<unknown>;
  readonly label: string;
  readonly about?: string;
  readonly options?: readonly Option[];
  /** What stands in it at first, as the tables write it. */
  readonly initial?: string | null;
}

export interface ShortFormProps {
  readonly programmeId: string;
  readonly fields: readonly FieldAsked[];
  readonly press: string;
  /** What the entry comes to, once every field can be read. */
  make(cells: EnteredCells): Entered;
  /** Asked for once it is saved. */
  onDone?(): void;
  readonly children?: ReactNode;
  /** Days that may be put in at one press. */
  readonly fill?: { readonly press: string; readonly cells: EnteredCells };
}

interface Typed {
  readonly typed: string;
  readonly chosen: number | null;
}

/**
 * A form of a few fields that makes one record: what is wrong stands beside its field, and what was typed stays. Under whose name
 * it is recorded is asked once on the page, not by each form.
 */
// long: the form as it is read, its state before it
export function ShortForm({ programmeId, fields, press, make, onDone, children, fill }: ShortFormProps) {
  const { say, numbers } = useLanguage();
  const id = useId();
  const who = useWho();
  const box = useRef<HTMLFormElement>(null);
  const { change, forget, state, outcome } = useChange(programmeId);
  const [typed, setTyped] = useState<Readonly<Record<string, Typed>>>({});
  const [made, setMade] = useState<Entered | null>(null);
  const [isTried, setTried] = useState(false);
  const typedIn = ({ field, column, initial = null }: FieldAsked): Typed =>
    typed[field] ?? { typed: shownCell(column, initial, numbers.decimalMark), chosen: null };
  const entries = fields.map((asked) => {
    const { typed: text, chosen } = typedIn(asked);
    return { asked, entry: cellEntry(asked.column, text, numbers, chosen) };
  });
  const put = (field: string, text: string, chosen: number | null = null) => {
    setTyped((before) => ({ ...before, [field]: { typed: text, chosen } }));
    setMade(null);
    if (state === 'saved') forget();
  };
  const goToFault = () =>
    requestAnimationFrame(() => box.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
  const save = async () => {
    setTried(true);
    if (entries.some(({ entry }) => faultOf(entry) !== null)) return goToFault();
    const cells = Object.fromEntries(
      entries.map(({ asked, entry }) => [asked.field, entry.kind === 'cell' ? entry.cell : null]),
    );
    const next = make(cells);
    setMade(next);
    if (next.faults.length > 0) return goToFault();
    if (who === '') return document.getElementById(whoId)?.focus();
    const { isSaved } = await change(next.changes);
    if (!isSaved) return;
    setTyped({});
    setMade(null);
    setTried(false);
    onDone?.();
  };
  return (
    <form
      ref={box}
      className="short-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      {children}
      <div className="fields">
        {entries.map(({ asked, entry }) => (
          <ShortField
            key={asked.field}
            id={`${id}-${asked.field}`}
            asked={asked}
            typed={typedIn(asked).typed}
            entry={entry}
            isTried={isTried}
            fault={made?.faults.find(({ field }) => field === asked.field) ?? null}
            onType={(text, chosen) => put(asked.field, text, chosen)}
          />
        ))}
      </div>
      <NotSaved outcome={outcome} />
      <p className="presses">
        <button type="submit" className="button main" disabled={state === 'saving'}>
          {press}
        </button>
        {fill === undefined ? null : (
          <button
            type="button"
            className="button"
            onClick={() => {
              for (const [field, cell] of Object.entries(fill.cells)) if (cell !== null) put(field, cell);
            }}
          >
            {fill.press}
          </button>
        )}
        <span role="status">
          {isTried && who === '' ? say('forms.name_needed') : null}
          {state === 'saving' ? say('forms.saving') : null}
          {state === 'saved' ? say(outcome?.isKept === true ? 'offline.kept_line' : 'forms.saved') : null}
        </span>
      </p>
    </form>
  );
}

function ShortField(props: {
  readonly id: string;
  readonly asked: FieldAsked;
  readonly typed: string;
  readonly entry: ReturnType<typeof cellEntry>;
  readonly fault: EntryFault | null;
  readonly isTried: boolean;
  onType(typed: string, chosen?: number): void;
}) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { id, asked, typed, entry, fault, isTried, onType } = props;
  const { column, label, about } = asked;
  const wrong = faultOf(entry);
  // What is empty is not called wrong before it was tried.
  const isShown = isTried || (typed !== '' && entry.kind === 'asks');
  const told = isShown && wrong !== null ? wrong.said : fault;
  const heed = entry.kind === 'cell' && told === null ? (entry.heed ?? entry.readAs) : null;
  const values = dayInWords(told?.values ?? {}, numbers.date);
  return (
    <div className="field">
      <div className="field-head">
        <label htmlFor={id}>{label}</label>
      </div>
      <div className="field-value">
        <FieldInput
          {...{ id, label, column, typed }}
          options={asked.options ?? null}
          isOpen={false}
          isInvalid={told !== null}
          describedBy={`${id}-about ${id}-told`}
          onType={onType}
        />
        <span className="unit">{words.unit(column)}</span>
      </div>
      <p id={`${id}-about`} className="small field-about">
        {about}
      </p>
      <div id={`${id}-told`}>
        {told === null && heed === null ? null : (
          <div className={told === null ? 'field-heed' : 'field-fault'}>
            <p>{told === null ? say(heed!.key, heed!.values) : say(told.key, values)}</p>
            {entry.kind === 'asks'
              ? entry.readings.map((value) => (
                  <button key={value} type="button" className="button" onClick={() => onType(typed, value)}>
                    {figureOf(column, isPercent(column) ? value / 100 : value, numbers)}
                  </button>
                ))
              : null}
          </div>
        )}
      </div>
    </div>
  );
}

/** Days among the values of a sentence are said as days. */
function dayInWords(values: Readonly<Record<string, unknown>>, date: (day: string) => string) {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, name === 'day' ? date(String(value)) : value]),
  ) as Record<string, string | number>;
}
