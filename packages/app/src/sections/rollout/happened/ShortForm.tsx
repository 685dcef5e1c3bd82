import { type ReactNode, useId, useRef, useState } from 'react';
import { useChange } from '../../../api/useChange.ts';
import { useWho } from '../../../api/useWho.ts';
import { cellEntry, shownCell } from '../../../forms/cellEntry.ts';
import { NotSaved } from '../../../forms/FaultSummary.tsx';
import { faultOf } from '../../../forms/outcome.ts';
import { askForName } from '../../../forms/Who.tsx';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { Entered, EnteredCells } from './happenedChanges.ts';
import { type FieldAsked, ShortField } from './ShortField.tsx';
import { Asks, Faults } from './ShortFormSaid.tsx';
import { useTyped } from './typedHere.ts';

export interface ShortFormProps {
  readonly programmeId: string;
  /** Names the form on its page, which keeps what is typed under it; left out: it is gone with the form. */
  readonly formId?: string;
  /** What it asks for; where that follows from what was put in, by the cells that can be read so far. */
  readonly fields: readonly FieldAsked[] | ((cells: EnteredCells) => readonly FieldAsked[]);
  readonly press: string;
  /** What the entry comes to, once every field can be read. */
  make(cells: EnteredCells): Entered;
  /** Asked for once it is saved. */
  onDone?(): void;
  readonly children?: ReactNode;
  /** What the cells that can be read so far come to, said before it is entered. */
  preview?(cells: EnteredCells): ReactNode;
  /** Days that may be put in at one press. */
  readonly fill?: { readonly press: string; readonly cells: EnteredCells };
}

/**
 * A form of a few fields that makes one record: what is wrong stands beside its field, and what was typed stays. Under whose name
 * it is recorded is asked once on the page, not by each form.
 */
// long: the form as it is read, its state before it
export function ShortForm(props: ShortFormProps) {
  const { programmeId, formId, fields, press, make, onDone, children, fill, preview } = props;
  const { say, numbers } = useLanguage();
  const id = useId();
  const who = useWho();
  const box = useRef<HTMLFormElement>(null);
  const { change, forget, state, outcome } = useChange(programmeId);
  const typed = useTyped(formId ?? null);
  const [made, setMade] = useState<Entered | null>(null);
  const [isTried, setTried] = useState(false);
  const isSending = useRef(false);
  const [isEntered, setEntered] = useState(false);
  const entryOf = (asked: FieldAsked) => {
    const { field, column, initial = null } = asked;
    const cell = typed.cells[field] ?? null;
    const text = cell?.typed ?? shownCell(column, initial, numbers.decimalMark);
    const entry = cellEntry(column, text, numbers, cell?.chosen ?? null);
    // What was just saved changes what stands there, and is no doubt.
    const isStale = cell !== null && cell.seen !== initial && state !== 'saving' && state !== 'saved';
    return { asked, text, entry, isStale };
  };
  // What was put in may ask for more, and that for more again.
  let entries = (typeof fields === 'function' ? fields({}) : fields).map(entryOf);
  for (let count = 0; typeof fields === 'function' && count !== entries.length; ) {
    count = entries.length;
    entries = fields(cellsOf(entries)).map(entryOf);
  }
  const put = (field: string, text: string, chosen: number | null = null) => {
    const { initial = null } = entries.find(({ asked }) => asked.field === field)?.asked ?? {};
    typed.type(field, { typed: text, chosen, seen: initial });
    setMade(null);
    setEntered(false);
    if (state === 'saved') forget();
  };
  const goToFault = () =>
    requestAnimationFrame(() => box.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
  const save = async (isAccepted: boolean) => {
    setTried(true);
    if (entries.some(({ entry, isStale }) => isStale || faultOf(entry) !== null)) return goToFault();
    const next = make(cellsOf(entries));
    setMade(next);
    if (next.faults.length > 0) return goToFault();
    if (who === '') return askForName();
    if (next.asks !== undefined && !isAccepted) return;
    if (isSending.current) return;
    isSending.current = true;
    const { isSaved } = await change(next.changes, {
      sendId: typed.sendAs(),
      // What follows from it may take a while: it is entered now.
      onEntered: () => {
        typed.leave();
        setMade(null);
        setTried(false);
        setEntered(true);
      },
    });
    isSending.current = false;
    if (isSaved) onDone?.();
  };
  const told = entries.flatMap(({ asked, entry, isStale }) => {
    const said = isStale ? null : (faultOf(entry)?.said ?? made?.faults.find(({ field }) => field === asked.field));
    return said == null ? [] : [{ asked, said }];
  });
  const asks = made === null || made.faults.length > 0 || state === 'saved' ? null : (made.asks ?? null);
  return (
    <form
      ref={box}
      className="short-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void save(false);
      }}
    >
      {children}
      {isTried ? <Faults {...{ id, told }} /> : null}
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
      {preview?.(cellsOf(entries))}
      <NotSaved outcome={outcome} />
      {asks === null || who === '' ? null : (
        <Asks
          asks={asks}
          isBusy={state === 'saving'}
          onYes={() => void save(true)}
          onBack={() => {
            document.getElementById(`${id}-${asks.field}`)?.focus();
            setMade(null);
          }}
        />
      )}
      <p className="presses">
        {asks !== null && who !== '' ? null : (
          <button type="submit" className="button main" disabled={state === 'saving'}>
            {press}
          </button>
        )}
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
          {state === 'saving' ? say(isEntered ? 'forms.saved_follows' : 'forms.saving') : null}
          {state === 'saved' ? say(outcome?.isKept === true ? 'offline.kept_line' : 'forms.saved') : null}
        </span>
      </p>
    </form>
  );
}

const cellsOf = (entries: readonly { asked: FieldAsked; entry: ReturnType<typeof cellEntry> }[]): EnteredCells =>
  Object.fromEntries(entries.map(({ asked, entry }) => [asked.field, entry.kind === 'cell' ? entry.cell : null]));
