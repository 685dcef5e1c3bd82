import type { RecordProblemCode } from '@eavewell/records';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

/** What the server refuses, and why, in short. */
const refusals: Readonly<Record<string, string>> = {
  host: 'it asked for another address than this program has',
  origin: 'it comes from a page that is not part of this program',
  token: 'it does not carry the key that this program gave at its start',
};

/** Why a zip was not read, in short. */
const zipFaults: Readonly<Record<string, string>> = {
  'zip.cut_off': 'its end is missing',
  'zip.too_many': 'it holds too many files',
  'zip.too_large': 'it would become too large',
  'zip.too_dense': 'it is packed far more densely than tables are',
  'zip.unreadable': 'it is locked with a password, or packed in an unusual way',
};

type Sentences = Readonly<Record<ServerProblemCode, (told: Told) => ProblemSentence>>;
type ServerProblemCode = Extract<
  RecordProblemCode,
  `change.${string}` | `export.${string}` | `import.${string}` | `request.${string}` | `server.${string}`
>;

const changes = {
  'change.table_unknown': (t) =>
    say(`There is no table ${t.text('value')} whose rows can be changed.`, 'Look at the list of tables.'),
  'change.row_there': (t) =>
    say(`The row ${t.text('value')} is there already.`, 'Change that row, or choose another id.'),
  'change.row_gone': (t) =>
    say(
      `The row ${t.text('value')} is no longer there; nothing was changed.`,
      'Load the page again to see what stands now.',
    ),
  'change.key_differs': (t) =>
    say(
      `The row ${t.text('value')} would be called ${t.text('expected')} by its cells.`,
      'To give a row another id, remove it and add a new one.',
    ),
  'change.unsound': () =>
    say('This change could not be written down; nothing was changed.', 'Check what was entered, and try again.'),
  'change.nothing_to_undo': () =>
    say('There is nothing to undo.', 'Only changes made on this computer can be undone here.'),
  'change.nothing_to_redo': () => say('There is nothing to redo.', 'Only what was just undone can be redone.'),
  'change.changed_since': (t) =>
    say(
      `Changed again since, and so left as they are: ${t.text('count')} cells.`,
      'Look at their history to decide which entry should stand.',
    ),
} satisfies Partial<Sentences>;

const imports = {
  'import.too_large': (t) =>
    say(
      `${t.text('value')} is larger than ${t.text('largest_MB')} MB; nothing was taken in.`,
      'Bring it in as several smaller files.',
    ),
  'import.kind_unknown': (t) =>
    say(
      `${t.text('value')} is neither a zip of a programme folder nor a CSV table; nothing was taken in.`,
      'Save the table as CSV, or pack the folder as a zip.',
    ),
  'import.zip_unreadable': (t) =>
    say(
      `The zip ${t.text('value')} could not be read: ${zipFaults[t.text('reason')] ?? 'it does not hold together'}.`,
      'Make it anew and send it again. Nothing was taken in.',
    ),
  'import.nothing_known': (t) =>
    say(`No table of a programme was found in ${t.text('value')}.`, 'Pack the folder that holds sites.csv.'),
  'import.table_unknown': (t) =>
    say(
      `The name ${t.text('value')} does not say which table this is.`,
      'Choose the table, and for readings the gauge.',
    ),
  'import.not_a_table': (t) =>
    say(
      `${t.text('value')} cannot be read as a table, so its rows cannot be compared with those that stand.`,
      'Mend the faults named for it, and send it again.',
    ),
  'import.gone': () =>
    say('This import is no longer waiting: it was taken in, cancelled, or left too long.', 'Send the file again.'),
  'import.reading': () => say('This file is still being read.', 'Wait a moment, then try again.'),
  'import.changed_since': () =>
    say(
      'The programme was changed since this file was compared with it; nothing was taken in.',
      'Look through the comparison again: it was made anew.',
    ),
  'import.records_of_another': (t) =>
    say(
      `The history in ${t.text('value')} belongs to another programme, so only its tables are compared.`,
      'To bring it in with its history, make a new programme and import it there.',
    ),
  'import.programme_there': (t) => say(`This programme is here already: ${t.text('other')}.`, 'Import the file there.'),
  'import.record_unreadable': (t) =>
    say(
      `Row ${t.place.row ?? '?'} of the history in the file is no record: "${t.text('value')}".`,
      'The file was changed by another hand. Export it again.',
    ),
} satisfies Partial<Sentences>;

/** Why no export was kept, or none can be read, in short. */
const exportFaults: Readonly<Record<string, string>> = {
  ...zipFaults,
  no_records: 'it holds no history',
  'database.disk_full': 'the disk is full',
  'database.no_permission': 'the folder may not be written',
};

const exports = {
  'export.not_kept': (t) =>
    say(
      `No export of the programme ${t.text('value')} could be kept beside it: ${exportFaults[t.text('reason')] ?? 'it could not be written'}. What was entered is kept.`,
      'Make room on the disk, or export it from the page to another one.',
    ),
  'export.unreadable': (t) =>
    say(
      `No programme can be opened from ${t.text('value')}: ${exportFaults[t.text('reason')] ?? 'it does not hold together'}.`,
      t.text('reason') === 'no_records'
        ? 'Start with a new folder, and import it from the page.'
        : 'Take an older export. Nothing was made.',
    ),
  'export.tables_differ': (t) =>
    say(
      `The tables in ${t.text('value')} are not what its history says; the history was taken.`,
      'Where they were edited by hand, import the file from the page to see what they would change.',
    ),
  'export.folder_used': (t) =>
    say(`The data folder ${t.text('value')} has programmes already; nothing was changed.`, 'Name a new folder.'),
} satisfies Partial<Sentences>;

/** What is said of changes, files that come in, and requests. */
export const serverProblemSentences: Sentences = {
  ...changes,
  ...imports,
  ...exports,
  'request.wrong': (t) =>
    say(`The request was not understood (${t.text('value')}).`, 'Load the page again. If it stays, tell us.'),
  'request.not_found': (t) => say(`There is nothing at ${t.text('value')}.`, 'Go back to the list of programmes.'),
  'request.refused': (t) =>
    say(
      `The request was refused: ${refusals[t.text('reason')] ?? 'it may not come in'}.`,
      'Open the address that was shown when the program started.',
    ),
  'request.too_large': (t) =>
    say(
      `More was sent than is taken at once (${t.text('largest_MB')} MB); nothing was written.`,
      'Send it in smaller parts.',
    ),
  'request.our_fault': () =>
    say(
      'Something went wrong in the program itself. Nothing that was entered is lost.',
      'Try again. If it stays, tell us.',
    ),
  'server.port_taken': (t) =>
    say(`Another program uses port ${t.text('value')}.`, 'Name another one with --port, or close the other program.'),
};
