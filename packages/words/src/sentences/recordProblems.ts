import type { RecordProblemCode } from '@eavewell/records';
import { serverProblemSentences } from './serverProblems.ts';
import { type Sentences, says } from './telling.ts';

/** What is said of records, of where they are kept, and of what is asked of the server. */
export const recordProblemSentences: Sentences<RecordProblemCode> = {
  ...serverProblemSentences,
  'record.unreadable': (t) => says(t, 'record.unreadable', { value: t.text('value') }),
  'record.name_taken': (t) => says(t, 'record.name_taken', { value: t.text('value') }),
  'database.newer': (t) => says(t, 'database.newer', { value: t.text('value'), expected: t.text('expected') }),
  'database.damaged': (t) => says(t, 'database.damaged', { reason: t.text('reason') }),
  'database.in_use': (t) => says(t, 'database.in_use', { value: t.text('value') }),
  'database.not_a_folder': (t) => says(t, 'database.not_a_folder', { value: t.text('value') }),
  'database.no_permission': (t) =>
    says(t, 'database.no_permission', { value: t.text('value'), reason: t.text('reason') }),
  'database.disk_full': (t) => says(t, 'database.disk_full', { value: t.text('value') }),
  'database.programme_unknown': (t) => says(t, 'database.programme_unknown', { value: t.text('value') }),
  'database.programme_twice': (t) => says(t, 'database.programme_twice', { value: t.text('value') }),
};
