import { dayIndexOf, daysInMonth, type RainReading } from '@eavewell/engine';
import { rain } from '@eavewell/tables';

const header = 'date,rain_mm';
const [zero, dash, comma, point, newLine, carriage] = [0x30, 0x2d, 0x2c, 0x2e, 0x0a, 0x0d];
const { low: firstDay, high: lastDay } = rain.columns.date.hard!;
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

function day(bytes: Uint8Array, at: number): number | null {
  const year = digits(bytes, at, 4);
  const month = digits(bytes, at + 5, 2);
  const date = digits(bytes, at + 8, 2);
  if (bytes[at + 4] !== dash || bytes[at + 7] !== dash || bytes[at + 10] !== comma) return null;
  if (year < 1 || month < 1 || month > 12 || date < 1 || date > daysInMonth(year, month)) return null;
  const index = dayIndexOf(year, month, date);
  return index >= firstDay && index <= lastDay ? index : null;
}

/** Where the first line under the header begins, or -1 where the header is not the plain one. */
function afterHeader(bytes: Uint8Array): number {
  let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  for (let i = 0; i < header.length; i++) if (bytes[at++] !== header.charCodeAt(i)) return -1;
  if (bytes[at] === carriage) at++;
  return bytes[at] === newLine ? at + 1 : -1;
}

/**
 * Which readings stand in a rain file that has nothing unusual in it? The fast way through the ordinary case: a date, a comma, a
 * plain number or nothing, a line end, on every line. At the first line of any other form it gives up, and the full reader,
 * which names faults, takes the file from its start.
 *
 * @param bytes - the file [byte]
 * @returns the readings: day [day], rain [mm] or null, row; or null where the file is not plain
 * @law gives what the full reader gives, or nothing
 * @definition ours; a hot loop, so longer than most
 */
export function plainRain(bytes: Uint8Array): readonly RainReading[] | null {
  let at = afterHeader(bytes);
  if (at < 0 || at >= bytes.length) return null;
  const readings: RainReading[] = [];
  for (let row = 2; at < bytes.length; row++) {
    const index = day(bytes, at);
    if (index === null) return null;
    at += 11;
    const start = at;
    let mantissa = 0;
    let pointAt = -1;
    for (; ; at++) {
      const digit = bytes[at]! - zero;
      if (digit >= 0 && digit <= 9) mantissa = mantissa * 10 + digit;
      else if (bytes[at] === point && pointAt < 0) pointAt = at;
      else break;
    }
    const end = at;
    if (bytes[at] === carriage) at++;
    if (bytes[at] !== newLine) return null;
    at++;
    if (end === start) {
      readings.push({ day: index, rain_mm: null, row });
      continue;
    }
    const before = (pointAt < 0 ? end : pointAt) - start;
    const after = pointAt < 0 ? 0 : end - pointAt - 1;
    if (before < 1 || before > mostBefore || before + after > mostDigits || (pointAt >= 0 && after < 1)) return null;
    readings.push({ day: index, rain_mm: mantissa / powers[after]!, row });
  }
  return readings;
}
