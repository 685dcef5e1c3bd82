const names = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];
const longNames = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday'];
const parted = /[\s;,]+/;

/**
 * Which days of the week are written here? Three small letters each, parted by spaces or semicolons: `sat;sun`.
 *
 * @param text - the cell, without spaces round it [text]
 * @returns days from 0, Sunday, to 6, ascending, each once; null where it is no such list
 * @definition ours
 * @example
 * readWeekdays('sat;sun') // → [0, 6]
 * readWeekdays('Saturday') // → null
 */
export function readWeekdays(text: string): readonly number[] | null {
  if (!/^[a-z]{3}(?:(?:\s*;\s*|\s+)[a-z]{3})*$/.test(text)) return null;
  const days = text.split(parted).map((name) => names.indexOf(name));
  return days.includes(-1) ? null : [...new Set(days)].sort((a, b) => a - b);
}

/**
 * What may be meant by days of the week written otherwise: `Saturday, Sunday`, `SAT`?
 *
 * @param text - the cell, without spaces round it [text]
 * @returns the days as they should be written [text]; null where that is not plain
 * @definition ours: English names, whole or cut to three letters or more
 * @example
 * likelyWeekdays('Saturday, Sun') // → 'sat;sun'
 */
export function likelyWeekdays(text: string): string | null {
  const found = text
    .toLowerCase()
    .split(parted)
    .map((word) => (word.length < 3 ? -1 : longNames.findIndex((name) => name.startsWith(word.replace(/\.$/, '')))));
  return found.includes(-1) ? null : found.map((day) => names[day]).join(';');
}
