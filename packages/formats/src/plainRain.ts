import { dayIndexOf, daysInMonth, type RainReading } from '@eavewell/engine';
import { type RawRow, rain } from '@eavewell/tables';

/** The lines of a rain file: those of the plain form read, the others as cells for the reader that names faults. */
export interface RainLines {
  readonly readings: readonly RainReading[];
  readonly odd: readonly RawRow[];
}

const header = 'date,rain_mm';
const [zero, dash, comma, point, newLine, carriage, quote] = [0x30, 0x2d, 0x2c, 0x2e, 0x0a, 0x0d, 0x22];
const { low: firstDay, high: lastDay } = rain.columns.date.hard!;
const firstBeyondAscii = 0x80;
/** Digits before the point: from four on a number may be a code for "not read", which the full reader judges. */
const mostBefore = 3;
/** Digits in all that a double holds exactly, so that dividing by the power of ten rounds once, as reading the text does. */
const mostDigits = 15;
const powers = Array.from({ length: mostDigits + 1 }, (_, i) => 10 ** i);

/** The number of n digits at a place, or -1. */
function digits(bytes: Uint8Array, at: number, n: number): number {
  let value = 0;
  for (let i = at; i < at + n; i++) {
    const digit = bytes[i]! - zero;
    if (!(digit >= 0 && digit <= 9)) return -1;
    value = value * 10 + digit;
  }
  return value;
}

/** The day that begins a line, its comma included; null where there is none of the plain form. */
function plainDay(bytes: Uint8Array, at: number): number | null {
  if (bytes[at + 4] !== dash || bytes[at + 7] !== dash || bytes[at + 10] !== comma) return null;
  const year = digits(bytes, at, 4);
  const month = digits(bytes, at + 5, 2);
  const date = digits(bytes, at + 8, 2);
  if (year < 1 || month < 1 || month > 12 || date < 1 || date > daysInMonth(year, month)) return null;
  const index = dayIndexOf(year, month, date);
  return index >= firstDay && index <= lastDay ? index : null;
}

/** The depth that fills a line from one place to another; null for an empty one, undefined where it is not of the plain form. */
function plainDepth(bytes: Uint8Array, start: number, end: number): number | null | undefined {
  if (start === end) return null;
  let mantissa = 0;
  let pointAt = -1;
  for (let i = start; i < end; i++) {
    const digit = bytes[i]! - zero;
    if (digit >= 0 && digit <= 9) mantissa = mantissa * 10 + digit;
    else if (bytes[i] === point && pointAt < 0) pointAt = i;
    else return undefined;
  }
  const before = (pointAt < 0 ? end : pointAt) - start;
  const after = pointAt < 0 ? 0 : end - pointAt - 1;
  if (before < 1 || before > mostBefore || before + after > mostDigits || (pointAt >= 0 && after < 1)) return undefined;
  return mantissa / powers[after]!;
}

/** Where the first line under the header begins, or -1 where the header is not the plain one. */
export function afterHeader(bytes: Uint8Array): number {
  let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  for (let i = 0; i < header.length; i++) if (bytes[at++] !== header.charCodeAt(i)) return -1;
  if (bytes[at] === carriage) at++;
  return bytes[at] === newLine ? at + 1 : -1;
}

/** May the cells of these bytes be told apart by commas and line ends alone? */
function isSimple(bytes: Uint8Array): boolean {
  if (bytes.at(-1) !== newLine || bytes.includes(quote) || bytes.includes(0)) return false;
  for (let at = bytes.indexOf(carriage); at >= 0; at = bytes.indexOf(carriage, at + 1))
    if (bytes[at + 1] !== newLine) return false;
  return true;
}

/**
 * Which readings stand in a rain file of the ordinary form? The fast way: straight from the bytes, a date, a comma, a plain number or
 * nothing on each line. A line of any other form is handed on as cells. A file whose lines cannot be told apart simply (quotes,
 * another header, a last line without its end) or that has letters beyond ASCII, whose encoding it would have to find, is not read at all: the full reader takes it.
 *
 * @param bytes - the file [byte]
 * @returns the readings: day [day], rain [mm] or null, row; and the odd lines; or null where the file is not of this form
 * @law with the odd lines read, gives what the full reader gives
 * @definition ours
 */
export function plainRain(bytes: Uint8Array): RainLines | null {
  const at = afterHeader(bytes);
  if (at < 0 || !isSimple(bytes)) return null;
  const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
  const readings: RainReading[] = [];
  const odd: RawRow[] = [];
  const isAscii = plainLines(bytes, at, 2, {
    plain: (reading) => readings.push(reading),
    odd: (row, from, to) => {
      const line = bytes.subarray(from, to);
      if (line.some((byte) => byte >= firstBeyondAscii)) return false;
      odd.push({ row, cells: decoder.decode(line).split(',') });
      return true;
    },
  });
  return isAscii === null || readings.length === 0 ? null : { readings, odd };
}

/** What is done with each line: a plain one is a reading; of another, its row and where it begins and ends. */
export interface LineTaker {
  plain(reading: RainReading): void;
  /** Answers false to stop there. */
  odd(row: number, from: number, to: number): boolean;
}

/**
 * Takes the whole lines of some bytes, one after the other.
 *
 * @param bytes - bytes that end with a line end [byte]
 * @param from - where the first line begins [byte]
 * @param firstRow - its row
 * @param taker - what is done with each
 * @returns the row after the last; null where the taker stopped
 * @definition ours
 */
export function plainLines(bytes: Uint8Array, from: number, firstRow: number, taker: LineTaker): number | null {
  let at = from;
  let row = firstRow;
  for (; at < bytes.length; row++) {
    const next = bytes.indexOf(newLine, at) + 1;
    const end = next - 2 >= at && bytes[next - 2] === carriage ? next - 2 : next - 1;
    const day = end - at > 10 ? plainDay(bytes, at) : null;
    const depth = day === null ? undefined : plainDepth(bytes, at + 11, end);
    if (day !== null && depth !== undefined) taker.plain({ day, rain_mm: depth, row });
    else if (!taker.odd(row, at, end)) return null;
    at = next;
  }
  return row;
}
