import type { Column } from '@eavewell/tables';
import { useState } from 'react';
import { useLanguage } from '../language/LanguageProvider.tsx';
import { CellHistory } from './CellHistory.tsx';
import { cellEntry, type Entry, figureOf, isPercent, shownCell } from './cellEntry.ts';
import type { DraftCell, DraftStep, RowName } from './draft.ts';
import { FieldInput } from './FieldInput.tsx';
import type { Option } from './options.ts';
import { type FieldFault, faultOf } from './outcome.ts';
import { standardOf } from './settingsRows.ts';
import { useFieldWords } from './useFieldWords.ts';

export interface FieldProps {
  readonly row: RowName;
  readonly column: string;
  readonly contract: Column<unknown>;
  /** What stands in the programme; null is empty. */
  readonly present: string | null;
  readonly cell: DraftCell | null;
  readonly options: readonly Option[] | null;
  readonly isOpen: boolean;
  /** Somebody tried to save: what is missing is said too. */
  readonly isTried: boolean;
  readonly isNewRow: boolean;
  readonly programmeId: string;
  dispatch(step: DraftStep): void;
}

/** The id of a field in the page, so that the summary of what is wrong can lead to it. */
export const fieldId = ({ table, key }: RowName, column: string): string =>
  `field-${table}-${key}-${column}`.replace(/[^\w-]/g, '_');

/** One field: its name, unit, what it means, what was typed, and what is to be said of that. */
export function Field(props: FieldProps) {
  const { row, column, contract, present, cell, programmeId, dispatch } = props;
  const words = useFieldWords();
  const { numbers } = useLanguage();
  const [isFocused, setFocused] = useState(false);
  const id = fieldId(row, column);
  const typed = cell?.typed ?? shownCell(contract, present, numbers.decimalMark);
  const seen = cell === null ? present : cell.seen;
  const type = (text: string, chosen: number | null = null) =>
    dispatch({ kind: 'type', row, column, cell: { typed: text, chosen, seen } });
  const told = useTold(props, isFocused);
  const label = words.label(row.table, column);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only notes whether one is in the field
    <div className="field" onFocus={() => setFocused(true)} onBlur={() => setFocused(false)}>
      <div className="field-head">
        <label htmlFor={id}>{label}</label>
        {props.isNewRow ? null : <CellHistory programmeId={programmeId} place={keptPlace(row, column)} label={label} />}
      </div>
      <div className="field-value">
        <FieldInput
          id={id}
          label={label}
          column={contract}
          typed={typed}
          options={props.options}
          isOpen={props.isOpen}
          isInvalid={told?.fault !== undefined && told.fault !== null}
          describedBy={`${id}-about ${id}-told`}
          onType={type}
        />
        <span className="unit">{words.unit(contract)}</span>
      </div>
      <p id={`${id}-about`} className="small field-about">
        {words.about(row.table, column)}{' '}
        <EmptyMeans table={row.table} column={column} contract={contract} isRequired={contract.required} />
      </p>
      <div id={`${id}-told`}>{told === null ? null : <Told {...props} told={told} onType={type} />}</div>
    </div>
  );
}

/** Where a cell is kept: settings are fields of one row here, and rows of their own in the programme. */
function keptPlace(row: RowName, column: string) {
  if (row.table !== 'settings') return { ...row, column };
  return { table: 'settings', key: column.split('.')[0]!, column: 'value' };
}

function EmptyMeans(props: {
  readonly table: string;
  readonly column: string;
  readonly contract: Column<unknown>;
  readonly isRequired: boolean;
}) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { table, column, contract, isRequired } = props;
  const standard = table === 'settings' ? standardOf(column) : null;
  const empty =
    standard === null
      ? words.empty(table, column)
      : typeof standard === 'number'
        ? figureOf(contract, standard, numbers)
        : words.choice(standard);
  if (isRequired) return say('forms.needed');
  return empty === null ? null : say('forms.empty_means', { meaning: empty });
}

interface ToldOfField {
  readonly entry: Entry;
  readonly fault: Pick<FieldFault, 'kind' | 'said'> | null;
}

/** What is to be said of a field now; null where nothing is. */
function useTold({ contract, present, cell, isTried, isNewRow }: FieldProps, isFocused: boolean): ToldOfField | null {
  const { numbers } = useLanguage();
  if (cell === null && !(isNewRow && isTried)) return null;
  const entry = cellEntry(contract, cell?.typed ?? '', numbers, cell?.chosen ?? null);
  const isSame = entry.kind === 'cell' && entry.cell === present;
  const wrong = faultOf(entry);
  const isStale = !isNewRow && !isSame && cell !== null && cell.seen !== present;
  const stale = isStale ? ({ kind: 'stale', said: { key: 'forms.fault_changed_since', values: {} } } as const) : null;
  // While she types, a number that is not whole yet is not called wrong.
  if (isFocused && !isTried && entry.kind !== 'asks' && stale === null) return null;
  const fault = wrong ?? stale;
  const isPlain = entry.kind === 'cell' && entry.heed === null && entry.readAs === null;
  return fault === null && isPlain ? null : { entry, fault };
}

function Told(props: FieldProps & { readonly told: ToldOfField; onType(text: string, chosen?: number): void }) {
  const { say, numbers } = useLanguage();
  const words = useFieldWords();
  const { contract, cell, onType } = props;
  const { entry, fault } = props.told;
  if (fault?.kind === 'stale') return <Stale {...props} />;
  if (entry.kind === 'asks')
    return (
      <div className="field-fault">
        <p>{say('forms.which_number', { typed: cell?.typed ?? '' })}</p>
        {entry.readings.map((value) => (
          <button key={value} type="button" className="button" onClick={() => onType(cell?.typed ?? '', value)}>
            {figureOf(contract, isPercent(contract) ? value / 100 : value, numbers)}
          </button>
        ))}
      </div>
    );
  const told = fault === null && entry.kind === 'cell' ? [entry.readAs, entry.heed] : [fault?.said ?? null];
  const { offer } = entry;
  const offered = offer === null ? null : shownCell(contract, offer, numbers.decimalMark);
  return (
    <div className={fault === null ? 'field-heed' : 'field-fault'}>
      {told.map((said) => (said === null ? null : <p key={said.key}>{say(said.key, said.values)}</p>))}
      {offered === null ? null : (
        <button type="button" className="button" onClick={() => onType(offered, Number(offered.replace(',', '.')))}>
          {say('forms.write_instead', { value: offered })} {words.unit(contract)}
        </button>
      )}
    </div>
  );
}

/** Somebody changed the cell since she began: both values, and her choice. */
function Stale({ row, column, contract, present, cell, dispatch }: FieldProps) {
  const { say, numbers } = useLanguage();
  const shown = shownCell(contract, present, numbers.decimalMark) || say('forms.not_known');
  const mine = cell?.typed || say('forms.not_known');
  return (
    <div className="field-fault">
      <p>{say('forms.changed_since', { value: shown })}</p>
      <button type="button" className="button" onClick={() => dispatch({ kind: 'leaveCell', row, column })}>
        {say('forms.keep_theirs', { value: shown })}
      </button>
      <button type="button" className="button" onClick={() => dispatch({ kind: 'see', row, column, present })}>
        {say('forms.keep_mine', { value: mine })}
      </button>
    </div>
  );
}
