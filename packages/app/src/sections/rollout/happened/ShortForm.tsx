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
import { useTyped } from './typedHere.ts';

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
  /** Names the form on its page, which keeps what is typed under it; left out: it is gone with the form. */
  readonly formId?: string;
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

/**
 * A form of a few fields that makes one record: what is wrong stands beside its field, and what was typed stays. Under whose name
 * it is recorded is asked once on the page, not by each form.
 */
// long: the form as it is read, its state before it
export function ShortForm({ programmeId, formId, fields, press, make, onDone, children, fill }: ShortFormProps) {
  const { say, numbers } = useLanguage();
  const id = useId();
  const who = useWho();
  const box = useRef<HTMLFormElement>(null);
  const { change, forget, state, outcome } = useChange(programmeId);
  const typed = useTyped(formId ?? null);
  const [made, setMade] = useState<Entered | null>(null);
  const [isTried, setTried] = useState(false);
  const entries = fields.map((asked) => {
    const { field, column, initial = null } = asked;
    const cell = typed.cells[field] ?? null;
    const text = cell?.typed ?? shownCell(column, initial, numbers.decimalMark);
    const entry = cellEntry(column, text, numbers, cell?.chosen ?? null);
    // What was just saved changes what stands there, and is no doubt.
    const isStale = cell !== null && cell.seen !== initial && state !== 'saving' && state !== 'saved';
    return { asked, text, entry, isStale };
  });
  const put = (field: string, text: string, chosen: number | null = null) => {
    const { initial = null } = fields.find((asked) => asked.field === field) ?? {};
    typed.type(field, { typed: text, chosen, seen: initial });
    setMade(null);
    if (state === 'saved') forget();
  };
  const goToFault = () =>
    requestAnimationFrame(() => box.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
  const save = async () => {
    setTried(true);
    if (entries.some(({ entry, isStale }) => isStale || faultOf(entry) !== null)) return goToFault();
    const cells = Object.fromEntries(
      entries.map(({ asked, entry }) => [asked.field, entry.kind === 'cell' ? entry.cell : null]),
    );
    const next = make(cells);
    setMade(next);
    if (next.faults.length > 0) return goToFault();
    if (who === '') return document.getElementById(whoId)?.focus();
    const { isSaved } = await change(next.changes);
    if (!isSaved) return;
    typed.leave();
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
        {entries.map(({ asked, text, entry, isStale }) => (
          <ShortField
            key={asked.field}
            id={`${id}-${asked.field}`}
            asked={asked}
            typed={text}
            {...{ entry, isTried, isStale }}
            fault={made?.faults.find(({ field }) => field === asked.field) ?? null}
            onType={(next, chosen) => put(asked.field, next, chosen)}
            onLeave={() => typed.leaveCell(asked.field)}
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
  /** Somebody changed what stood in it since it was typed. */
  readonly isStale: boolean;
  onType(typed: string, chosen?: number): void;
  onLeave(): void;
}) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { id, asked, typed, entry, fault, isTried, isStale, onType, onLeave } = props;
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
          isInvalid={told !== null || isStale}
          describedBy={`${id}-about ${id}-told`}
          onType={onType}
        />
        <span className="unit">{words.unit(column)}</span>
      </div>
      <p id={`${id}-about`} className="small field-about">
        {about}
      </p>
      <div id={`${id}-told`}>
        {isStale ? <Stale {...{ asked, typed, onType, onLeave }} /> : null}
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

/** Somebody changed what stood in a field since it was typed: both, and whose stands. */
function Stale(props: {
  readonly asked: FieldAsked;
  readonly typed: string;
  onType(typed: string): void;
  onLeave(): void;
}) {
  const { say, numbers } = useLanguage();
  const { asked, typed, onType, onLeave } = props;
  const theirs = shownCell(asked.column, asked.initial ?? null, numbers.decimalMark) || say('forms.not_known');
  return (
    <div className="field-fault">
      <p>{say('forms.changed_since', { value: theirs })}</p>
      <button type="button" className="button" onClick={onLeave}>
        {say('forms.keep_theirs', { value: theirs })}
      </button>
      <button type="button" className="button" onClick={() => onType(typed)}>
        {say('forms.keep_mine', { value: typed || say('forms.not_known') })}
      </button>
    </div>
  );
}

/** Days among the values of a sentence are said as days. */
function dayInWords(values: Readonly<Record<string, unknown>>, date: (day: string) => string) {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, name === 'day' ? date(String(value)) : value]),
  ) as Record<string, string | number>;
}
