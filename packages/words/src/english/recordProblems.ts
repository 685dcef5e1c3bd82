import type { RecordProblemCode } from '@eavewell/records';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { serverProblemSentences } from './serverProblems.ts';

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

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
    say(
      `The data file does not hold together (${t.text('reason')}).`,
      'Keep the folder as it is, take a copy of it, and open the last good export.',
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
