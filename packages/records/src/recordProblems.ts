import { problemMaker } from '@eavewell/engine';

/** What can be wrong with records and with where they are kept. The words package holds one sentence for each. */
export const recordProblems = {
  'record.unreadable': 'blocker', // value: what stands there; row: its line
  'record.name_taken': 'blocker', // value: the record's name; another record has it
  'database.newer': 'blocker', // value: the version found; expected: the newest this program knows
  // folder: the data folder; programmes, exports, exportsAt: the last good export of each; command: what opens them in a new folder
  'database.damaged': 'blocker', // value: the file; reason: journal, record, or what SQLite says
  'database.missing': 'blocker', // value: the file, which is gone or empty
  'database.behind': 'blocker', // value: a programme; count: its records; expected: how many were exported
  'database.disk_failing': 'blocker', // value: the folder; reason
  'database.in_use': 'blocker', // value: the folder
  'database.not_a_folder': 'blocker', // value: the folder
  'database.no_permission': 'blocker', // value: the folder; reason
  'database.disk_full': 'blocker', // value: the folder
  'database.programme_unknown': 'blocker', // value: the id asked for
  'database.programme_twice': 'blocker', // value: the id
  // Changes that somebody asks for. value: table and key of the row.
  'change.table_unknown': 'blocker', // value: the table
  'change.row_there': 'blocker', // a row to be added is there already
  'change.row_gone': 'blocker', // a row to be changed or removed is not there
  'change.key_differs': 'blocker', // expected: the key its cells make
  'change.table_as_file': 'blocker', // value: the table's file, which is kept letter for letter
  'change.unsound': 'blocker', // no record can be made of it
  'change.plan_outlived': 'blocker', // value: sites and crews a plan names that are not there any more; count
  'change.nothing_to_undo': 'blocker',
  'change.nothing_to_redo': 'blocker',
  'change.changed_since': 'warning', // count of cells that stay because they were changed since
  // Files that come in. value: the file's name.
  'import.too_large': 'blocker', // largest_MB
  'import.kind_unknown': 'blocker', // found: what it is, such as photo or pdf
  'import.empty': 'warning', // found: nothing at all, or a first line alone; it is left out
  'import.too_many': 'blocker', // most: files at once
  'import.table_twice': 'blocker', // value: the table's file; files: the two it was sent in
  'import.nothing_to_undo': 'blocker', // nothing was mended, or nothing taken back
  'import.zip_unreadable': 'blocker', // reason: a zip code; entry
  'import.nothing_known': 'blocker', // a zip with no table of ours
  'import.table_unknown': 'blocker', // a table whose name is none of ours; likely: what it is by its headers
  'import.not_a_table': 'blocker', // a file that cannot be read as a table, where rows of it stand already
  'import.gone': 'blocker', // value: the import; it was taken in, cancelled, or waited too long
  'import.reading': 'blocker', // value: the import; it is still being read
  'import.changed_since': 'blocker', // the programme changed since; the review was made anew
  'import.records_of_another': 'warning', // the records in it belong to another programme; its tables are read alone
  'import.programme_there': 'blocker', // other: the programme here that has these records already
  'import.record_unreadable': 'blocker', // row; value: what stands there
  // Map files. value: the file's name.
  'map.name_wrong': 'blocker',
  'map.there': 'blocker', // a map file of that name is there already
  'map.unreadable': 'blocker', // reason: kind, version, cut, tiles or inside
  // What is asked of the server.
  'request.wrong': 'blocker', // value: what is wrong with it
  'request.not_found': 'blocker', // value: the path
  'request.refused': 'blocker', // reason: host, origin or token
  'request.too_large': 'blocker', // largest_MB
  'request.called_off': 'blocker', // somebody called the job off
  'request.letters_missing': 'blocker', // letters: those that no face has
  'request.not_judged_yet': 'blocker', // state: running, failed or calledOff; done_fraction
  'request.search_runs': 'blocker', // a search for a plan of the programme runs already
  'request.nothing_to_plan': 'blocker', // no site, or no crew, that can be planned
  'request.other_state': 'blocker', // the facts are not those it was asked of
  'request.our_fault': 'blocker',
  'server.port_taken': 'blocker', // value: the port
  // Exports the program keeps by itself, and starting from one. value: the export.
  'export.not_kept': 'warning', // reason: the code of the problem that stopped it
  'export.unreadable': 'blocker', // reason: a zip code, or no_records
  'export.tables_differ': 'warning', // its tables are not what its history says
  'export.folder_used': 'blocker', // value: the data folder, which has programmes already
} as const;

export type RecordProblemCode = keyof typeof recordProblems;

/** Makes one of these problems. */
export const recordProblem = problemMaker(recordProblems);
