import { dayOfPlainYear, daysInMonth } from '@eavewell/engine';

const monthDayForm = /^(\d{2})-(\d{2})$/;
const span = String.raw`(\d{1,2})(?:\s*(?:-|to)\s*(\d{1,2}))?`;
const monthsForm = new RegExp(String.raw`^${span}(?:(?:\s*;\s*|\s+)${span})*$`);
const months_count = 12;
const leapYear = 2000;
const monthNames = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/**
 * Which calendar day is written here? Month-day only.
 *
 * @param text - the cell, without spaces round it [text]
 * @returns day of a year without 29 February [day], 1 to 365, 29 February as 28 February; null where it is no such day
 * @definition ours: MM-DD
 * @example
 * readMonthDay('03-01') // → 60
 * readMonthDay('02-30') // → null
 */
export function readMonthDay(text: string): number | null {
  const found = monthDayForm.exec(text);
  if (!found) return null;
  const [month, day] = [Number(found[1]), Number(found[2])];
  if (month < 1 || month > months_count || day < 1 || day > daysInMonth(leapYear, month)) return null;
  return dayOfPlainYear(month, day);
}

/**
 * What may be meant by a day of the year that a spreadsheet has rewritten: `15-Jun`, `Jun 15`, `2026-06-15`?
 *
 * @param text - the cell, without spaces round it [text]
 * @returns month-day as it should be written [text], or null where that is not plain
 * @definition ours: a month by its English name, or a whole date
 * @example
 * likelyMonthDay('15-Jun') // → '06-15'
 */
export function likelyMonthDay(text: string): string | null {
  const dated = /^\d{4}-(\d{2}-\d{2})$/.exec(text);
  if (dated) return readMonthDay(dated[1]!) === null ? null : dated[1]!;
  const named = /^(\d{1,2})[- ]([a-z]{3})[a-z]*$/i.exec(text) ?? /^([a-z]{3})[a-z]*[- ](\d{1,2})$/i.exec(text);
  if (!named) return null;
  const [day, name] = /\d/.test(named[1]!) ? [named[1]!, named[2]!] : [named[2]!, named[1]!];
  const month = monthNames.indexOf(name.toLowerCase()) + 1;
  const written = `${String(month).padStart(2, '0')}-${day.padStart(2, '0')}`;
  return month === 0 || readMonthDay(written) === null ? null : written;
}

/**
 * Which months are written here? Numbers from 1 to 12 and spans of them, parted by spaces or semicolons: `6 to 9`, `6-9`, `11 to 2`,
 * `3; 6 to 9`.
 *
 * @param text - the cell, without spaces round it [text]
 * @returns months [month], 1 to 12, ascending, each once; null where it is no such list
 * @definition ours: a span whose last month comes before its first runs over the year's end
 * @example
 * readMonths('11 to 2') // → [1, 2, 11, 12]
 * readMonths('6;7;8') // → [6, 7, 8]
 */
export function readMonths(text: string): readonly number[] | null {
  if (!monthsForm.test(text)) return null;
  const months = new Set<number>();
  for (const [, first, last] of text.matchAll(new RegExp(span, 'g'))) {
    const [from, to] = [Number(first), Number(last ?? first)];
    if (from < 1 || from > months_count || to < 1 || to > months_count) return null;
    for (let month = from; ; month = (month % months_count) + 1) {
      months.add(month);
      if (month === to) break;
    }
  }
  return [...months].sort((a, b) => a - b);
}
