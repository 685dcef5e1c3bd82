import { isoDay, readIsoDay } from '@eavewell/engine';

/** Which day a workbook counts from. */
export type DaySystem = '1900' | '1904';

/** Day 1 is 1 January 1900; the count has a 29 February 1900 that never was (day 60), so from day 61 on it runs one ahead. */
const [dayBefore1900, phantomDay] = [readIsoDay('1899-12-31')!, 60];
const day0Of1904 = readIsoDay('1904-01-01')!;
/** 9999-12-31 in either system: beyond it a number is no day. */
const lastDay = readIsoDay('9999-12-31')!;

/**
 * Which day does a spreadsheet mean by this number? Its whole part counts days, the rest is the time of day.
 *
 * @param serial - the number in the cell [day]
 * @param system - which day the workbook counts from
 * @returns year-month-day; `1900-01-00` and `1900-02-29` for days 0 and 60 of 1900, which never were; null where it is no day [text]
 * @source ecma-376, Part 1, 18.17.4.1 (from memory)
 * @example
 * dayOfSerial(36892, '1900') // → '2001-01-01'
 * dayOfSerial(60, '1900') // → '1900-02-29'
 * dayOfSerial(-1, '1904') // → null
 */
export function dayOfSerial(serial: number, system: DaySystem): string | null {
  const whole = Math.floor(serial);
  if (!Number.isFinite(serial) || whole < 0) return null;
  if (system === '1904') return day0Of1904 + whole > lastDay ? null : isoDay(day0Of1904 + whole);
  if (whole === 0) return '1900-01-00';
  if (whole === phantomDay) return '1900-02-29';
  const index = dayBefore1900 + whole - (whole > phantomDay ? 1 : 0);
  return index > lastDay ? null : isoDay(index);
}

/**
 * By which number does a spreadsheet that counts from 1900 mean this day?
 *
 * @param text - the day, year-month-day [text]
 * @returns the number [day]; null for what is no day, and for days before March 1900, on which spreadsheets differ
 * @law dayOfSerial gives the day back
 * @source ecma-376, Part 1, 18.17.4.1 (from memory)
 * @example
 * serialOfDay('2001-01-01') // → 36892
 * serialOfDay('1900-02-28') // → null
 */
export function serialOfDay(text: string): number | null {
  const index = readIsoDay(text);
  if (index === null) return null;
  const serial = index - dayBefore1900 + 1;
  return serial > phantomDay ? serial : null;
}

const minutes_per_day = 1440;
const minutes_per_hour = 60;

/**
 * Which time of day does a spreadsheet mean by this number?
 *
 * @param serial - the number in the cell; its whole part counts days [day]
 * @returns hours and minutes, to the nearest minute [text]
 * @source ecma-376, Part 1, 18.17.4.2 (from memory)
 * @example
 * timeOfSerial(0.375) // → '09:00'
 */
export function timeOfSerial(serial: number): string {
  const minutes = Math.round((serial - Math.floor(serial)) * minutes_per_day) % minutes_per_day;
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(minutes / minutes_per_hour))}:${two(minutes % minutes_per_hour)}`;
}
