import type { RecordProblemCode } from '@eavewell/records';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { numbers } from './numbers.ts';
import { serverProblemSentences } from './serverProblems.ts';

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

/** What is damaged, in short; else what SQLite says of it. */
const damage: Readonly<Record<string, string>> = {
  journal: 'changes in its journal do not add up',
  record: 'a change in it is not what was written',
};

/** An instant as a person reads it, to the minute. */
const instant = (text: string) => `${numbers.date(text.slice(0, 10))}, ${text.slice(11, 16)} UTC`;

/** What to do when a data folder cannot be opened: which exports there are, of when, and how to open them elsewhere. */
function otherwise(t: Told): string {
  const [names, times] = [t.list('programmes'), t.list('exportsAt')];
  const left = 'It was left as it is: keep the folder.';
  if (names.length === 0) {
    return `${left} Type eavewell serve --data NEW --from EXPORT.zip to open the last good export in a new folder.`;
  }
  const each = names.map((name, i) => `${name}: ${instant(times[i] ?? '')}`).join('; ');
  const last = `The last good ${names.length === 1 ? 'export is' : 'exports are'} in ${t.list('exports').join('')} (${each}).`;
  const type = `Type ${t.list('command').join(' ')} to open it in a new folder.`;
  return `${left} ${last} What was entered after may be lost. ${type}`;
}

/** What is said of records, of where they are kept, and of what is asked of the server. */
export const recordProblemSentences: Readonly<Record<RecordProblemCode, (told: Told) => ProblemSentence>> = {
  ...serverProblemSentences,
  'record.unreadable': (t) =>
    say(
      `What stands there is no record: "${t.text('value')}".`,
      'It was changed by another hand. Open the last export instead.',
    ),
  'record.name_taken': (t) =>
    say(
      `Two different records are called ${t.text('value')}; nothing of what came was taken in.`,
      'Two devices share one name. Give one of them a new name, and send again.',
    ),
  'database.newer': (t) =>
    say(
      `The data folder was written by a newer version (${t.text('value')}; this one knows ${t.text('expected')}). It was not touched.`,
      'Use the newer version, or open an export with this one.',
    ),
  'database.damaged': (t) =>
    say(`The data file does not hold together (${damage[t.text('reason')] ?? t.text('reason')}).`, otherwise(t)),
  'database.missing': (t) =>
    say(`The data file ${t.text('value')} is empty or gone, though programmes were kept in it.`, otherwise(t)),
  'database.behind': (t) =>
    say(
      `The data file holds ${t.text('count')} changes of the programme ${t.text('value')}; ${t.text('expected')} were exported from it. Part of it is missing.`,
      otherwise(t),
    ),
  'database.disk_failing': (t) =>
    say(
      `The disk did not answer as it should (${t.text('reason')}).`,
      'Copy the data folder to another disk, and start from there.',
    ),
  'database.in_use': (t) =>
    say(
      `Another program has the data folder ${t.text('value')} open.`,
      'Close the other one, or use the page it opened.',
    ),
  'database.not_a_folder': (t) =>
    say(
      `A file stands where the data folder ${t.text('value')} should be.`,
      'Name another folder, or move the file away.',
    ),
  'database.no_permission': (t) =>
    say(
      `The data folder ${t.text('value')} may not be written (${t.text('reason')}).`,
      'Choose another folder, or ask who looks after this computer.',
    ),
  'database.disk_full': (t) =>
    say(
      `The disk is full: nothing could be written to ${t.text('value')}, and nothing was lost.`,
      'Make room on the disk, then do it again.',
    ),
  'database.programme_unknown': (t) =>
    say(`There is no programme ${t.text('value')} in this folder.`, 'Look at the list of programmes.'),
  'database.programme_twice': (t) =>
    say(`There is a programme ${t.text('value')} already.`, 'Give the new one another id.'),
};
