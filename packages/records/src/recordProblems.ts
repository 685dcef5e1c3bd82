import { problemMaker } from '@eavewell/engine';

/** What can be wrong with records and with where they are kept. The words package holds one sentence for each. */
export const recordProblems = {
  'record.unreadable': 'blocker', // value: what stands there; row: its line
  'record.name_taken': 'blocker', // value: the record's name; another record has it
  'database.newer': 'blocker', // value: the version found; expected: the newest this program knows
  'database.damaged': 'blocker', // value: the file; reason
  'database.in_use': 'blocker', // value: the folder
  'database.not_a_folder': 'blocker', // value: the folder
  'database.no_permission': 'blocker', // value: the folder; reason
  'database.disk_full': 'blocker', // value: the folder
  'database.programme_unknown': 'blocker', // value: the id asked for
  'database.programme_twice': 'blocker', // value: the id
} as const;

export type RecordProblemCode = keyof typeof recordProblems;

/** Makes one of these problems. */
export const recordProblem = problemMaker(recordProblems);
