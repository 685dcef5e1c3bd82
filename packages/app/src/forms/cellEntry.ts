import { type Column, readCell } from '@eavewell/tables';
import type { AppMessageKey, AppNumbers, MessageValues } from '@eavewell/words/app';

/** A sentence to be said in the language of the page. */
export interface Said {
  readonly key: AppMessageKey;
  readonly values: MessageValues;
}

/** What was typed into a field came to: a cell as the tables write it, a question, or why it cannot be used. */
export type Entry =
  | {
      readonly kind: 'cell';
      readonly cell: string | null;
      readonly heed: Said | null;
      readonly offer: string | null;
      /** What was read, where it could have been another number that is no value of the column. */
      readonly readAs: Said | null;
    }
  | { readonly kind: 'asks'; readonly readings: readonly [number, number] }
  | { readonly kind: 'wrong'; readonly said: Said; readonly offer: string | null };

/** How the numbers of a page are read and written. */
export type PageNumbers = Pick<AppNumbers, 'parse' | 'given' | 'percent' | 'decimalMark'>;

const plainNumber = /^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
const perCent = 100;
/** Digits that survive a product with 100 and back. */
const digits = 12;
/** Growth is a few per cent a year: under 1 % is usual there, and no sign of a share typed as one. */
const leastPercent = 1;

/** Is the column asked for by number? */
export const isNumber = ({ kind }: Column<unknown>): boolean =>
  kind === 'quantity' || kind === 'whole' || kind === 'fraction';

/** Shares are asked for and shown in per cent. */
export const isPercent = ({ kind }: Column<unknown>): boolean => kind === 'fraction';

const written = (value: number): string => String(Number(value.toPrecision(digits)));

/**
 * A cell as its field shows it: numbers with the decimal mark of the language, shares in per cent; what is no plain number
 * stands as it is.
 *
 * @param column - the column
 * @param cell - as the tables write it; null is empty [text]
 * @param decimalMark - of the language
 */
export function shownCell(column: Column<unknown>, cell: string | null, decimalMark: string): string {
  if (cell === null) return '';
  if (!isNumber(column) || !plainNumber.test(cell)) return cell;
  return written(Number(cell) * (isPercent(column) ? perCent : 1)).replace('.', decimalMark);
}

/** A figure of a column in words, with its unit. */
export function figureOf(column: Column<unknown>, value: number, numbers: PageNumbers): string {
  return isPercent(column) ? numbers.percent(value) : numbers.given(value, column.unit);
}

/**
 * What does a text typed into a field come to? The column of the tables judges it, as it judges a file.
 *
 * @param column - the column
 * @param typed - as typed; empty is "not known" [text]
 * @param numbers - of the language
 * @param chosen - which of two numbers was meant, where that was asked
 */
export function cellEntry(
  column: Column<unknown>,
  typed: string,
  numbers: PageNumbers,
  chosen: number | null = null,
): Entry {
  const text = typed.trim();
  if (text === '' || !isNumber(column)) return judged(column, text, numbers);
  const parsed = numbers.parse(text);
  switch (parsed.kind) {
    case 'number':
      return judged(column, cellOf(column, parsed.value), numbers);
    case 'ambiguous': {
      const usable = parsed.readings.filter((value) => judged(column, cellOf(column, value), numbers).kind === 'cell');
      const only = chosen ?? (usable.length === 1 ? usable[0]! : null);
      if (only === null) return { kind: 'asks', readings: parsed.readings };
      const entry = judged(column, cellOf(column, only), numbers);
      if (entry.kind !== 'cell') return entry;
      const value = figureOf(column, Number(entry.cell), numbers);
      return { ...entry, readAs: { key: 'forms.read_as', values: { value } } };
    }
    default:
      return { kind: 'wrong', said: { key: 'forms.fault_not_a_number', values: {} }, offer: null };
  }
}

/** A number as typed in the unit of the field, as the tables write it. */
export const cellOf = (column: Column<unknown>, value: number): string =>
  written(isPercent(column) ? value / perCent : value);

function judged(column: Column<unknown>, cell: string, numbers: PageNumbers): Entry {
  const { value, fault } = readCell(column, cell, { decimalComma: false });
  if (value === null && fault !== null) {
    const likely = fault.facts['likely'];
    const offer = typeof likely === 'string' && likely !== '' ? likely : null;
    return { kind: 'wrong', said: saidOf(column, fault.code, numbers), offer };
  }
  const heed = fault === null ? littlePercent(column, cell) : saidOf(column, fault.code, numbers);
  const offer = heed?.key === 'forms.heed_percent' ? written(Number(cell) * perCent) : null;
  return { kind: 'cell', cell: cell === '' ? null : cell, heed, offer, readAs: null };
}

/** Half a per cent where others have fifty: a share was likely typed. It is told, and what is meant is a press away. */
function littlePercent(column: Column<unknown>, cell: string): Said | null {
  const percent = Number(cell) * perCent;
  const isGrowth = (column.hard?.low ?? 0) < 0;
  if (!isPercent(column) || isGrowth || cell === '' || percent <= 0 || percent >= leastPercent) return null;
  return { key: 'forms.heed_percent', values: { likely: written(percent * perCent) } };
}

const faultKeys: Readonly<Record<string, AppMessageKey>> = {
  'cell.missing': 'forms.fault_missing',
  'cell.not_a_number': 'forms.fault_not_a_number',
  'cell.not_whole': 'forms.fault_not_whole',
  'cell.unsafe_id': 'forms.fault_unsafe_id',
  'cell.too_long': 'forms.fault_too_long',
  'cell.not_a_currency': 'forms.fault_not_a_currency',
  'cell.not_a_date': 'forms.fault_not_a_date',
  'cell.date_form': 'forms.fault_not_a_date',
  'cell.date_not_real': 'forms.fault_not_a_date',
  'cell.not_a_time': 'forms.fault_not_a_time',
  'cell.not_a_month_day': 'forms.fault_not_a_month_day',
  'cell.not_months': 'forms.fault_not_months',
  'cell.not_weekdays': 'forms.fault_not_weekdays',
};

function saidOf(column: Column<unknown>, code: string, numbers: PageNumbers): Said {
  const limits = code === 'cell.unusual' ? column.usual : column.hard;
  if (code === 'cell.other_unit') {
    const { otherUnit } = column;
    return { key: 'forms.fault_other_unit', values: { unit: otherUnit?.unit ?? '' } };
  }
  if (limits !== null && (code === 'cell.unusual' || code === 'cell.out_of_range')) {
    const isDate = column.kind === 'date';
    const shown = (value: number) => (isDate ? value : figureOf(column, value, numbers));
    const values = { low: shown(limits.low), high: shown(limits.high) };
    if (code === 'cell.unusual') return { key: 'forms.heed_unusual', values };
    if (isDate) return { key: 'forms.fault_not_a_date', values: {} };
    return { key: limits.above ? 'forms.fault_out_of_range_above' : 'forms.fault_out_of_range', values };
  }
  return { key: faultKeys[code] ?? 'forms.fault_other', values: {} };
}
