import type { Column } from '@eavewell/tables';
import { type cellEntry, figureOf, isPercent, shownCell } from '../../../forms/cellEntry.ts';
import { FieldInput } from '../../../forms/FieldInput.tsx';
import type { Option } from '../../../forms/options.ts';
import { faultOf } from '../../../forms/outcome.ts';
import { useFieldWords } from '../../../forms/useFieldWords.ts';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import type { EntryFault } from './happenedChanges.ts';

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

/** A field of a short form, with what is told of it. */
export function ShortField(props: {
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
export function dayInWords(values: Readonly<Record<string, unknown>>, date: (day: string) => string) {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, name === 'day' ? date(String(value)) : value]),
  ) as Record<string, string | number>;
}
