import { type Column, readCell } from '@eavewell/tables';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { isNumber } from './cellEntry.ts';
import type { Option } from './options.ts';
import { useFieldWords } from './useFieldWords.ts';

/** What every kind of field is given. */
export interface InputProps {
  readonly id: string;
  readonly column: Column<unknown>;
  readonly typed: string;
  readonly options: readonly Option[] | null;
  /** A value that is none of the options may be written. */
  readonly isOpen: boolean;
  readonly isInvalid: boolean;
  readonly describedBy: string;
  readonly label: string;
  onType(typed: string): void;
}

const isoDate = /^\d{4}-\d{2}-\d{2}$/;
const timeOfDay = /^\d{2}:\d{2}$/;

/** The field of a column, by what it holds. */
export function FieldInput(props: InputProps) {
  const { column, options, isOpen } = props;
  if (options !== null && !isOpen) return <OptionInput {...props} />;
  if (column.kind === 'choice' || column.kind === 'yesNo') return <ChoiceInput {...props} />;
  if (column.kind === 'months') return <MonthsInput {...props} />;
  if (column.kind === 'monthDay') return <MonthDayInput {...props} />;
  return <TextInput {...props} />;
}

function typeOf({ column, typed }: InputProps): string {
  if (column.kind === 'date' && (typed === '' || isoDate.test(typed))) return 'date';
  if (column.kind === 'time' && (typed === '' || timeOfDay.test(typed))) return 'time';
  return 'text';
}

function TextInput(props: InputProps) {
  const { id, column, typed, options, isInvalid, describedBy, onType } = props;
  const list = options === null ? undefined : `${id}-list`;
  return (
    <>
      <input
        id={id}
        type={typeOf(props)}
        inputMode={isNumber(column) ? 'decimal' : undefined}
        value={typed}
        list={list}
        autoComplete="off"
        spellCheck={column.kind === 'text'}
        aria-required={column.required}
        aria-invalid={isInvalid}
        aria-describedby={describedBy}
        onChange={(event) => onType(event.target.value)}
      />
      {list === undefined ? null : (
        <datalist id={list}>
          {options!.map((option) => (
            <option key={option.id} value={option.id}>
              {option.name}
            </option>
          ))}
        </datalist>
      )}
    </>
  );
}

function emptyWord({ column, options }: InputProps) {
  if (options?.some(({ isBare }) => isBare === true) === true) return 'forms.choose';
  return column.emptyMeans === null ? 'forms.not_known' : 'forms.left_empty';
}

function Select({ choices, ...props }: InputProps & { readonly choices: readonly { id: string; text: string }[] }) {
  const { say } = useLanguage();
  const { id, column, typed, isInvalid, describedBy, onType } = props;
  const isKnown = typed === '' || choices.some((choice) => choice.id === typed);
  return (
    <select
      id={id}
      value={typed}
      aria-required={column.required}
      aria-invalid={isInvalid}
      aria-describedby={describedBy}
      onChange={(event) => onType(event.target.value)}
    >
      <option value="">{say(emptyWord(props))}</option>
      {isKnown ? null : <option value={typed}>{say('forms.no_such_row', { value: typed })}</option>}
      {choices.map((choice) => (
        <option key={choice.id} value={choice.id}>
          {choice.text}
        </option>
      ))}
    </select>
  );
}

function OptionInput(props: InputProps) {
  const choices = props.options!.map(({ id, name, isBare }) => ({
    id,
    text: name === null ? id : isBare === true ? name : `${name} (${id})`,
  }));
  return <Select {...props} choices={choices} />;
}

function ChoiceInput(props: InputProps) {
  const words = useFieldWords();
  return <Select {...props} choices={props.column.choices.map((id) => ({ id, text: words.choice(id) }))} />;
}

const monthNumbers = Array.from({ length: 12 }, (_, i) => i + 1);

function useMonthNames(style: 'short' | 'long'): readonly string[] {
  const { code } = useLanguage();
  const form = new Intl.DateTimeFormat(code, { month: style, timeZone: 'UTC' });
  return monthNumbers.map((month) => form.format(new Date(Date.UTC(2001, month - 1, 1))));
}

function MonthsInput({ id, column, typed, isInvalid, describedBy, label, onType }: InputProps) {
  const names = useMonthNames('short');
  const { value } = readCell(column, typed, { decimalComma: false });
  const chosen = Array.isArray(value) ? (value as readonly number[]) : [];
  const toggle = (month: number) =>
    onType(monthNumbers.filter((one) => chosen.includes(one) !== (one === month)).join(';'));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset draws no grid
    <div role="group" id={id} tabIndex={-1} className="months" aria-label={label} aria-describedby={describedBy}>
      {monthNumbers.map((month) => (
        <label key={month}>
          <input
            type="checkbox"
            checked={chosen.includes(month)}
            aria-invalid={isInvalid}
            onChange={() => toggle(month)}
          />
          {names[month - 1]}
        </label>
      ))}
    </div>
  );
}

function MonthDayInput({ id, typed, isInvalid, describedBy, label, onType }: InputProps) {
  const { say } = useLanguage();
  const names = useMonthNames('long');
  const [month = '', day = ''] = typed.split('-');
  const put = (newMonth: string, newDay: string) =>
    onType(newMonth === '' && newDay === '' ? '' : `${newMonth}-${newDay === '' ? '' : newDay.padStart(2, '0')}`);
  return (
    // biome-ignore lint/a11y/useSemanticElements: the two fields stand on one line
    <div role="group" className="month-day" aria-label={label}>
      <input
        id={id}
        inputMode="numeric"
        size={3}
        aria-label={say('forms.day')}
        aria-invalid={isInvalid}
        aria-describedby={describedBy}
        value={day.replace(/^0/, '')}
        onChange={(event) => put(month, event.target.value.trim())}
      />
      <select aria-label={say('forms.month')} value={month} onChange={(event) => put(event.target.value, day)}>
        <option value="">{say('forms.not_known')}</option>
        {names.map((name, i) => (
          <option key={name} value={String(i + 1).padStart(2, '0')}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}
