import { isMessage } from '../catalogues.ts';
import type { Told } from '../problems.ts';
import { part, unitAside, unitBehind, yes } from './telling.ts';

/** What the contract of tables says it expects, as it says it in facts, by the message that says it in words. */
const forms: Readonly<Record<string, string>> = {
  'letters, digits, _ and -, at most 64': 'id',
  'three capital letters [ISO 4217]': 'currency',
  'HH:MM, 00:00 to 23:59': 'time',
  'MM-DD, 01-01 to 12-31': 'monthDay',
  'months by number, as 6 to 9 or 6;7;8': 'months',
  'days of the week, as sat;sun': 'weekdays',
  text: 'text',
};

const numberForm = /^(whole number|number)(?: (above )?(\S+) to (\S+))?(?: \[(.+)\])?$/;
const dateForm = /^YYYY-MM-DD, (\S+) to (\S+)$/;

/** What a cell or a setting should hold, in words. A list of choices stands as it is: they are typed so in every language. */
export function expectedIn(t: Told): string {
  const text = t.text('expected');
  const key = `problems.part.expected.${forms[text]}`;
  if (isMessage(key)) return t.say(key);
  const number = numberForm.exec(text);
  if (number) {
    const [, kind, above, low = '', high = '', unit = ''] = number;
    const values = {
      hasRange: yes(low),
      isAbove: yes(above),
      low,
      high,
      unit: (low === '' ? unitAside : unitBehind)(t, unit),
    };
    return part(t, kind === 'number' ? 'expected.number' : 'expected.whole', values);
  }
  const [, from, to] = dateForm.exec(text) ?? [];
  return from && to ? part(t, 'expected.date', { from, to }) : text;
}
