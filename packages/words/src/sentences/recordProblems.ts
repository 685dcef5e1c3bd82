import type { RecordProblemCode } from '@eavewell/records';
import type { Told } from '../problems.ts';
import { serverProblemSentences } from './serverProblems.ts';
import { part, type Sentences, says, wordFor } from './telling.ts';

/** An instant as a person reads it, to the minute. */
const instant = (t: Told, text: string) =>
  part(t, 'instant', { day: t.numbers.date(text.slice(0, 10)), time: text.slice(11, 16) });

/** What to do when a data folder cannot be opened: which exports there are, of when, and how to open them elsewhere. */
function otherwise(t: Told): string {
  const [names, times] = [t.list('programmes'), t.list('exportsAt')];
  if (names.length === 0) return part(t, 'otherwise.none');
  const each = names.map((name, i) => part(t, 'otherwise.one', { name, at: instant(t, times[i] ?? '') }));
  const [folder, command] = [t.list('exports').join(''), t.list('command').join(' ')];
  return part(t, 'otherwise.exports', { count: names.length, folder, each: each.join('; '), command });
}

/** What is said of records, of where they are kept, and of what is asked of the server. */
export const recordProblemSentences: Sentences<RecordProblemCode> = {
  ...serverProblemSentences,
  'record.unreadable': (t) => says(t, 'record.unreadable', { value: t.text('value') }),
  'record.name_taken': (t) => says(t, 'record.name_taken', { value: t.text('value') }),
  'database.newer': (t) => says(t, 'database.newer', { value: t.text('value'), expected: t.text('expected') }),
  'database.damaged': (t) =>
    says(t, 'database.damaged', {
      reason: wordFor(t, 'damage', t.text('reason')) ?? t.text('reason'),
      otherwise: otherwise(t),
    }),
  'database.missing': (t) => says(t, 'database.missing', { value: t.text('value'), otherwise: otherwise(t) }),
  'database.behind': (t) =>
    says(t, 'database.behind', {
      ...{ count: t.text('count'), value: t.text('value'), expected: t.text('expected') },
      otherwise: otherwise(t),
    }),
  'database.disk_failing': (t) => says(t, 'database.disk_failing', { reason: t.text('reason') }),
  'database.in_use': (t) => says(t, 'database.in_use', { value: t.text('value') }),
  'database.not_a_folder': (t) => says(t, 'database.not_a_folder', { value: t.text('value') }),
  'database.no_permission': (t) =>
    says(t, 'database.no_permission', { value: t.text('value'), reason: t.text('reason') }),
  'database.disk_full': (t) => says(t, 'database.disk_full', { value: t.text('value') }),
  'database.programme_unknown': (t) => says(t, 'database.programme_unknown', { value: t.text('value') }),
  'database.programme_twice': (t) => says(t, 'database.programme_twice', { value: t.text('value') }),
};
