import { useId, useState } from 'react';
import { useLanguage } from '../../../language/LanguageProvider.tsx';
import { nextStep } from './draggedTo.ts';
import { type MeasureEntry, type MeasureLimits, measureEntry } from './measureEntry.ts';

export interface MeasureFieldProps {
  readonly label: string;
  /** Words of the unit, behind the field. */
  readonly unit: string;
  /** What stands in the draft now; null: not known. */
  readonly value: number | null;
  /** What is saved, where the draft differs from it; null where it does not. */
  readonly saved: string | null;
  readonly limits: MeasureLimits;
  /** Called while a value is typed, so that the drawing answers; null: back to what it was. */
  onPreview(value: number | null): void;
  /** Called once it stands. */
  onChange(value: number): void;
}

/** One measure beside the drawing: what is typed answers at once, and stands when the field is left or Enter is pressed. */
export function MeasureField(props: MeasureFieldProps) {
  const { label, unit, value, saved, limits, onPreview, onChange } = props;
  const words = useLanguage();
  const { say, numbers } = words;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const entry: MeasureEntry | null = typed === null ? null : measureEntry(typed, limits, numbers.parse);
  const shown = typed ?? (value === null ? '' : plain(value, limits.decimals, numbers.decimalMark));
  const type = (text: string) => {
    setTyped(text);
    const next = measureEntry(text, limits, numbers.parse);
    onPreview(next.kind === 'value' ? next.value : null);
  };
  const stand = () => {
    if (entry?.kind === 'value' && entry.value !== value) onChange(entry.value);
    else onPreview(null);
    if (entry?.kind === 'value' || typed === '') setTyped(null);
  };
  const step = (way: 1 | -1) => {
    const from = entry?.kind === 'value' ? entry.value : (value ?? limits.least);
    setTyped(null);
    onChange(nextStep(from + way * limits.step, limits));
  };
  const fault = entry?.kind === 'wrong' ? entry : null;
  return (
    <div className="measure">
      <label htmlFor={id}>{label}</label>
      <div className="measure-value">
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={shown}
          aria-invalid={fault !== null}
          aria-describedby={`${id}-told`}
          onChange={(event) => type(event.target.value)}
          onBlur={stand}
          onKeyDown={(event) => {
            if (event.key === 'Enter') stand();
            if (event.key === 'Escape') {
              setTyped(null);
              onPreview(null);
            }
            if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
            event.preventDefault();
            step(event.key === 'ArrowUp' ? 1 : -1);
          }}
        />
        <span className="unit">{unit}</span>
      </div>
      <p id={`${id}-told`} className={fault === null ? 'small' : 'field-fault'}>
        {fault === null
          ? saved === null
            ? ''
            : say('water.saved_is', { value: saved })
          : faultWords(fault, props, words)}
      </p>
    </div>
  );
}

/** What is wrong with what was typed, and what to write. */
function faultWords(
  fault: Extract<MeasureEntry, { kind: 'wrong' }>,
  { limits, unit }: Pick<MeasureFieldProps, 'limits' | 'unit'>,
  { say, numbers }: Pick<ReturnType<typeof useLanguage>, 'say' | 'numbers'>,
): string {
  if (fault.why === 'number') return say('water.measure_number');
  if (fault.why === 'whole') return say('water.measure_whole');
  if (fault.why === 'either') {
    const [one = 0, other = 0] = fault.readings;
    const mark = numbers.decimalMark;
    return say('water.measure_either', { one: plain(one, 3, mark), other: plain(other, 3, mark) });
  }
  const { least, most } = limits;
  return say('water.measure_range', { least: numbers.given(least, ''), most: numbers.given(most, unit) });
}

/** A number as a field shows it: no groups, the decimal mark of the language. */
function plain(value: number, decimals: number, decimalMark: string): string {
  return String(Number(value.toFixed(decimals))).replace('.', decimalMark);
}
