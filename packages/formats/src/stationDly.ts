import { dayIndexOf, daysInMonth } from '@eavewell/engine';
import type { StationLine, StationValue } from '@eavewell/tables';

const [idEnd, yearEnd, monthEnd, elementEnd] = [11, 15, 17, 21] as const;
const [valueWidth, slotWidth, slots] = [5, 8, 31] as const;
const lineWidth = elementEnd + slots * slotWidth;

/** Where the slot of a day of the month begins. */
function slotAt(date: number): number {
  return elementEnd + (date - 1) * slotWidth;
}

/** What stands in a slot; a value that the line's end cuts short keeps a mark, so that it is not read as a smaller one. */
function slotOf(
  line: string,
  date: number,
): Pick<StationValue, 'value' | 'measurementFlag' | 'qualityFlag' | 'sourceFlag'> {
  const at = slotAt(date);
  const written = line.slice(at, at + valueWidth);
  const isCut = written.trim() !== '' && written.length < valueWidth;
  const flag = (i: number) => (line[at + valueWidth + i] ?? '').trim();
  return {
    value: isCut ? `${written}…` : written,
    measurementFlag: flag(0),
    qualityFlag: flag(1),
    sourceFlag: flag(2),
  };
}

function valuesOf(line: string, row: number): readonly StationValue[] | null {
  const stationId = line.slice(0, idEnd);
  const [year, month] = [Number(line.slice(idEnd, yearEnd)), Number(line.slice(yearEnd, monthEnd))];
  const element = line.slice(monthEnd, elementEnd);
  const isLine = /^[A-Za-z0-9_-]{11}\d{6}[A-Z0-9]{4}/.test(line) && line.length <= lineWidth;
  if (!isLine || year < 1 || month < 1 || month > 12) return null;
  return Array.from({ length: slots }, (_, i) => {
    const date = i + 1;
    const dayText = `${line.slice(idEnd, yearEnd)}-${line.slice(yearEnd, monthEnd)}-${String(date).padStart(2, '0')}`;
    const day = date <= daysInMonth(year, month) ? dayIndexOf(year, month, date) : null;
    return { row, column: `VALUE${date}`, stationId, day, dayText, element, ...slotOf(line, date) };
  });
}

/** Do the slots of this line reach the end of its month? */
function reachesMonthEnd(line: string): boolean {
  const [year, month] = [Number(line.slice(idEnd, yearEnd)), Number(line.slice(yearEnd, monthEnd))];
  const isMonth = year >= 1 && month >= 1 && month <= 12;
  return isMonth && line.length >= slotAt(daysInMonth(year, month)) + valueWidth;
}

/** The lines of a fixed-width station file, and the last of them where the file stops within it. */
export interface DlyLines {
  readonly lines: readonly StationLine[];
  readonly cut: { readonly row: number; readonly line: string } | null;
  /** Does the last line end as a line should? */
  readonly ended: boolean;
}

/**
 * Which values stand in a station file of fixed width: a line for a month of one element, 31 slots of value and three flags?
 * Lines whose blanks at the end were taken off are read as if they stood there.
 *
 * @param text - the text of the file [text]
 * @returns the lines with anything in them, each with its values, or with null where it is not of this form
 * @law slots behind the end of a month are no days
 * @source ghcn-daily, readme section III
 */
export function dlyLines(text: string): DlyLines {
  const all = text.split(/\r\n?|\n/);
  const last = all.at(-1)!;
  const ended = last === '';
  const isCut = !ended && !reachesMonthEnd(last);
  const lines = all.slice(0, isCut ? -1 : undefined).flatMap((line, i): readonly StationLine[] => {
    const row = i + 1;
    return line.trim() === '' ? [] : [{ row, cells: [line], values: valuesOf(line.trimEnd(), row) }];
  });
  return { lines, cut: isCut ? { row: all.length, line: last } : null, ended };
}
