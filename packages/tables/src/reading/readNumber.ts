import type { TableProblemCode } from './tableProblems.ts';

/** How numbers stand in a file: may a comma be the decimal mark, and is it seen to be one in this file? */
export interface NumberHabit {
  readonly decimalComma: boolean;
  readonly commaSeen?: boolean;
}

/** A number, or why there is none. */
export type NumberReading =
  | { readonly value: number; readonly comma: boolean }
  | { readonly code: TableProblemCode; readonly facts: Readonly<Record<string, string | readonly string[]>> };

const plain = /^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
const withComma = /^-?\d+,\d+$/;
/** One to three digits, a mark and exactly three more: a thousand or a part, nobody can tell. */
const eitherWay = /^-?[1-9]\d{0,2}[.,]\d{3}$/;
const grouped = /^-?\d{1,3}(?:([ \u00a0\u202f\u2009'’.,_])\d{3})(?:\1\d{3})*(?:[.,]\d+)?$/;
const withUnit = /^(-?\d+(?:[.,]\d+)?)\s*([\p{L}%°µ][\p{L}%°µ²³/\d.]{0,14})$/u;
const notFinite = /^[+-]?(?:nan|inf|infinity|∞)$/i;

function finite(text: string): NumberReading {
  const value = Number(text);
  const vanished = value === 0 && /[1-9]/.test(text.replace(/[eE].*$/, ''));
  if (!Number.isFinite(value) || vanished) return { code: 'cell.not_finite', facts: {} };
  return { value: value === 0 ? 0 : value, comma: false };
}

function bothReadings(text: string): NumberReading {
  return {
    code: 'cell.comma_ambiguous',
    facts: { readings: [text.replace(',', '.'), text.replace(/[.,]/, '')] },
  };
}

/**
 * Which number stands in a cell? Digits, a point, an exponent; anything else is named for what it is and never guessed at.
 *
 * @param text - the cell, without spaces round it [text]
 * @param habit - may a comma be the decimal mark, and does the file use it?
 * @returns the number, or the code and facts of the fault
 * @problem cell.comma_ambiguous - 1,500 may be one and a half or fifteen hundred
 * @definition ours: docs/decisions/0011-decimal-comma.md
 * @example
 * readNumber('12.5', { decimalComma: false }) // → { value: 12.5, comma: false }
 */
export function readNumber(text: string, habit: NumberHabit): NumberReading {
  if (plain.test(text)) return habit.commaSeen === true && eitherWay.test(text) ? bothReadings(text) : finite(text);
  if (notFinite.test(text)) return { code: 'cell.not_finite', facts: {} };
  if (withComma.test(text)) {
    if (eitherWay.test(text)) return bothReadings(text);
    const likely = text.replace(',', '.');
    if (!habit.decimalComma) return { code: 'cell.decimal_comma', facts: { likely } };
    const reading = finite(likely);
    return 'value' in reading ? { ...reading, comma: true } : reading;
  }
  if (grouped.test(text)) {
    const mark = grouped.exec(text)![1]!;
    return { code: 'cell.thousands', facts: { likely: text.replaceAll(mark, '').replace(',', '.') } };
  }
  const unit = withUnit.exec(text);
  if (unit) return { code: 'cell.unit_in_number', facts: { number: unit[1]!, found: unit[2]! } };
  return { code: 'cell.not_a_number', facts: {} };
}

/**
 * Is this a number written with a comma that can only be its decimal mark?
 *
 * @param text - the cell [text]
 * @returns true or false
 * @definition ours
 */
export function isDecimalComma(text: string): boolean {
  return withComma.test(text) && !eitherWay.test(text);
}
