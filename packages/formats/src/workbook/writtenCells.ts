import { type Column, guardText } from '@eavewell/tables';
import type { CellValue } from '../programmeTables.ts';
import { serialOfDay } from './spreadsheetDays.ts';

/** A cell as the writer of workbooks takes it. */
export type WrittenCell =
  | { readonly type: StringConstructor; readonly value: string; readonly format?: string; readonly fontWeight?: 'bold' }
  | { readonly type: NumberConstructor; readonly value: number; readonly format?: string };

const plainNumber = /^-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?$/;
export const dayFormat = 'yyyy-mm-dd';
/** Kinds of columns in which a spreadsheet would make a date or a number of what is typed: MAR-1, 03-01, 11-2. */
const stayText: readonly Column<unknown>['kind'][] = ['id', 'monthDay', 'months', 'weekdays'];
/** The format of cells that are text whatever is typed into them later. */
const textFormat = '@';
/** Letters that XML cannot hold, or that its readers change; and the mark by which a workbook writes a letter by its number. */
const notInXml =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is what it is for
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\ufffd\p{Cs}\p{Noncharacter_Code_Point}]|_(?=x[0-9A-Fa-f]{4}_)/gu;

/**
 * A text as the XML of a workbook holds it: a letter that XML cannot hold stands by its number, as `_x000D_`.
 *
 * @param text - the text [text]
 * @returns the text to write [text]
 * @law plainText gives the text back
 * @source ecma-376, Part 1, 22.9.2.19 (from memory)
 * @example
 * xmlText('a_x0041_') // → 'a_x005F_x0041_'
 */
export function xmlText(text: string): string {
  return text.replace(notInXml, numbered);
}

function numbered(letters: string): string {
  let text = '';
  for (let i = 0; i < letters.length; i++)
    text += `_x${letters.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0')}_`;
  return text;
}

/** A text as a cell. The apostrophe rule of docs/tables.md holds here too, so that the sheet may be saved as CSV. */
export function textCell(text: string): WrittenCell & { readonly value: string } {
  return { type: String, value: xmlText(guardText(text)) };
}

/** The number a text stands for in a column of numbers; null where the reader would not take it so. */
function numberOf(text: string): number | null {
  if (!plainNumber.test(text) || /^-?0\d/.test(text)) return null;
  const value = Number(text);
  const vanished = value === 0 && /[1-9]/.test(text.replace(/[eE].*$/, ''));
  return Number.isFinite(value) && !vanished ? value : null;
}

/**
 * How does a value stand in a cell of this column? As a number or a day where the column is of such and the value is one; else as
 * text, as it is: 007 stays 007, and what cannot be used stays as it stood.
 *
 * @param value - the value, or the text of a cell as it was read
 * @param column - the column; null where it is none of the table's
 * @returns the cell; null for an empty one
 * @law read again it gives the same value, or the same fault
 * @definition ours: docs/decisions/0070-workbooks.md
 */
export function sheetCell(value: CellValue, column: Column<unknown> | null): WrittenCell | null {
  if (value === null || value === '') return null;
  if (typeof value === 'boolean') return textCell(value ? 'yes' : 'no');
  const kind = column?.kind ?? null;
  const isNumber = kind === 'quantity' || kind === 'whole' || kind === 'fraction';
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written into a table`);
    return isNumber || kind === null ? { type: Number, value } : textCell(String(value));
  }
  if (kind === 'date') {
    const serial = serialOfDay(value);
    return serial === null ? textCell(value) : { type: Number, value: serial, format: dayFormat };
  }
  const number = isNumber ? numberOf(value.trim()) : null;
  if (number !== null) return { type: Number, value: number };
  return kind !== null && stayText.includes(kind) ? { ...textCell(value), format: textFormat } : textCell(value);
}
