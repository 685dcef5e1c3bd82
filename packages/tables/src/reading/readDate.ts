import { isoDay, readIsoDay } from '@eavewell/engine';
import type { TableProblemCode } from './tableProblems.ts';

/** In which order day, month and year stand in a column, where it was said. */
export const dateOrders = ['dmy', 'mdy', 'ymd'] as const;
export type DateOrder = (typeof dateOrders)[number];

/** A day, or why there is none. */
export type DateReading =
  | { readonly value: number }
  | { readonly code: TableProblemCode; readonly facts: Readonly<Record<string, readonly string[]>> };

/** Day 1 of the spreadsheets' count is 1900-01-01, and their 1900 has a 29 February; from March 1900 on this is day 0. */
const spreadsheetDay0 = readIsoDay('1899-12-30')!;

function real(year: string, month: string, day: string): readonly string[] {
  const iso = `${year.padStart(4, '0')}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return readIsoDay(iso) === null ? [] : [iso];
}

/** A year of two digits is not read: nobody can tell the century. */
function readingsOf(text: string): readonly string[] | null {
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text) ?? /^(\d{4})(\d{2})(\d{2})$/.exec(text);
  if (yearFirst) return real(yearFirst[1]!, yearFirst[2]!, yearFirst[3]!);
  const withTime = /^(\d{4})-(\d{2})-(\d{2})[T ]\d{1,2}:\d{2}/.exec(text);
  if (withTime) return real(withTime[1]!, withTime[2]!, withTime[3]!);
  const yearLast = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/.exec(text);
  if (yearLast) {
    const [, a, b, year] = yearLast;
    return [...new Set([...real(year!, b!, a!), ...real(year!, a!, b!)])];
  }
  return /^\d{1,2}[-/.]\d{1,2}[-/.]\d{2}$/.test(text) ? [] : null;
}

/** The day that stands there in the order that was said; null where it does not stand in it. */
function inOrder(text: string, order: DateOrder): number | null {
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text);
  const yearLast = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/.exec(text);
  const [, first, second, third] = (order === 'ymd' ? yearFirst : yearLast) ?? [];
  if (first === undefined) return null;
  const [iso] =
    order === 'ymd'
      ? real(first, second!, third!)
      : order === 'dmy'
        ? real(third!, second!, first)
        : real(third!, first, second!);
  return iso === undefined ? null : readIsoDay(iso);
}

/**
 * Which day stands in a cell? Year-month-day, or the order that was said of its column; any other form is named, with the days it
 * could mean, and not used.
 *
 * @param text - the cell, without spaces round it [text]
 * @param order - the order day, month and year were said to stand in; null where nothing was said
 * @returns the day index [day], or the code and facts of the fault
 * @problem cell.date_form - 01/02/2001: day and month cannot be told apart
 * @problem cell.date_serial - 36892: a spreadsheet's count of days
 * @problem cell.date_not_real - 2026-02-30
 * @source ISO 8601-1:2019, 5.2.2 (from memory)
 * @example
 * readDate('1970-01-02') // → { value: 1 }
 * readDate('02/01/1970', 'dmy') // → { value: 1 }
 */
export function readDate(text: string, order: DateOrder | null = null): DateReading {
  const value = readIsoDay(text) ?? (order === null ? null : inOrder(text, order));
  if (value !== null) return { value };
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return { code: 'cell.date_not_real', facts: {} };
  const readings = readingsOf(text);
  if (readings !== null) return { code: 'cell.date_form', facts: { readings } };
  if (/^[1-9]\d{4}(?:\.\d+)?$/.test(text))
    return { code: 'cell.date_serial', facts: { readings: [isoDay(spreadsheetDay0 + Math.floor(Number(text)))] } };
  return { code: 'cell.not_a_date', facts: {} };
}
