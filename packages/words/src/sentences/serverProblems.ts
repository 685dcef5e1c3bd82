import type { RecordProblemCode } from '@eavewell/records';
import type { Told } from '../problems.ts';
import { likelyOf, part, type Sentences, says, wordFor, yes } from './telling.ts';

type ServerProblemCode = Extract<
  RecordProblemCode,
  | `change.${string}`
  | `export.${string}`
  | `import.${string}`
  | `map.${string}`
  | `request.${string}`
  | `server.${string}`
>;

const changes = {
  'change.table_unknown': (t) => says(t, 'change.table_unknown', { value: t.text('value') }),
  'change.row_there': (t) => says(t, 'change.row_there', { value: t.text('value') }),
  'change.plan_outlived': (t) => says(t, 'change.plan_outlived', { value: t.text('value') }),
  'change.row_gone': (t) => says(t, 'change.row_gone', { value: t.text('value') }),
  'change.key_differs': (t) => says(t, 'change.key_differs', { value: t.text('value'), expected: t.text('expected') }),
  'change.table_as_file': (t) => says(t, 'change.table_as_file', { value: t.text('value') }),
  'change.unsound': (t) => says(t, 'change.unsound'),
  'change.nothing_to_undo': (t) => says(t, 'change.nothing_to_undo'),
  'change.nothing_to_redo': (t) => says(t, 'change.nothing_to_redo'),
  'change.changed_since': (t) => says(t, 'change.changed_since', { count: t.text('count') }),
} satisfies Partial<Sentences<ServerProblemCode>>;

const imports = {
  'import.too_large': (t) => says(t, 'import.too_large', { value: t.text('value'), largest: t.text('largest_MB') }),
  'import.kind_unknown': (t) =>
    says(t, 'import.kind_unknown', {
      ...{ value: t.text('value'), isMap: yes(t.text('found') === 'map') },
      kind: wordFor(t, 'sentKind', t.text('found')) ?? part(t, 'sentKind.other'),
    }),
  'import.zip_unreadable': (t) =>
    says(t, 'import.zip_unreadable', {
      value: t.text('value'),
      fault: wordFor(t, 'zipFault', t.text('reason')) ?? part(t, 'zipFault.other'),
    }),
  'import.empty': (t) => says(t, 'import.empty', { value: t.text('value'), hasLine: yes(t.text('found') === 'line') }),
  'import.too_many': (t) => says(t, 'import.too_many', { most: t.text('most') }),
  'import.table_twice': (t) => says(t, 'import.table_twice', { value: t.text('value'), files: t.text('files') }),
  'import.nothing_to_undo': (t) => says(t, 'import.nothing_to_undo'),
  'import.nothing_known': (t) => says(t, 'import.nothing_known', { value: t.text('value') }),
  'import.table_unknown': (t) =>
    says(t, 'import.table_unknown', {
      ...{ value: t.text('value'), hasLikely: yes(likelyOf(t) !== null), likely: likelyOf(t) ?? '' },
    }),
  'import.not_a_table': (t) => says(t, 'import.not_a_table', { value: t.text('value') }),
  'import.gone': (t) => says(t, 'import.gone'),
  'import.reading': (t) => says(t, 'import.reading'),
  'import.changed_since': (t) => says(t, 'import.changed_since'),
  'import.records_of_another': (t) => says(t, 'import.records_of_another', { value: t.text('value') }),
  'import.programme_there': (t) => says(t, 'import.programme_there', { other: t.text('other') }),
  'import.record_unreadable': (t) =>
    says(t, 'import.record_unreadable', { row: t.place.row ?? '?', value: t.text('value') }),
} satisfies Partial<Sentences<ServerProblemCode>>;

/** Why no export was kept, or none can be read, in short. */
const exportFault = (t: Told, otherwise: 'exportFault.other' | 'exportFault.not_written') =>
  wordFor(t, 'exportFault', t.text('reason')) ?? wordFor(t, 'zipFault', t.text('reason')) ?? part(t, otherwise);

const exports = {
  'export.not_kept': (t) =>
    says(t, 'export.not_kept', { value: t.text('value'), reason: exportFault(t, 'exportFault.not_written') }),
  'export.unreadable': (t) =>
    says(t, 'export.unreadable', {
      ...{ value: t.text('value'), reason: exportFault(t, 'exportFault.other') },
      hasRecords: yes(t.text('reason') !== 'no_records'),
    }),
  'export.tables_differ': (t) => says(t, 'export.tables_differ', { value: t.text('value') }),
  'export.folder_used': (t) => says(t, 'export.folder_used', { value: t.text('value') }),
} satisfies Partial<Sentences<ServerProblemCode>>;

/** What is said of changes, files that come in, and requests. */
export const serverProblemSentences: Sentences<ServerProblemCode> = {
  ...changes,
  ...imports,
  ...exports,
  'map.name_wrong': (t) => says(t, 'map.name_wrong', { value: t.text('value') }),
  'map.there': (t) => says(t, 'map.there', { value: t.text('value') }),
  'map.unreadable': (t) =>
    says(t, 'map.unreadable', {
      value: t.text('value'),
      reason: wordFor(t, 'mapFault', t.text('reason')) ?? part(t, 'mapFault.inside'),
    }),
  'request.wrong': (t) => says(t, 'request.wrong', { value: t.text('value') }),
  'request.not_found': (t) => says(t, 'request.not_found', { value: t.text('value') }),
  'request.refused': (t) =>
    says(t, 'request.refused', { reason: wordFor(t, 'refusal', t.text('reason')) ?? part(t, 'refusal.other') }),
  'request.too_large': (t) => says(t, 'request.too_large', { largest: t.text('largest_MB') }),
  'request.called_off': (t) => says(t, 'request.called_off'),
  'request.letters_missing': (t) => says(t, 'request.letters_missing', { letters: t.text('letters') }),
  'request.not_judged_yet': (t) => says(t, 'request.not_judged_yet', { state: t.text('state') }),
  'request.search_runs': (t) => says(t, 'request.search_runs'),
  'request.nothing_to_plan': (t) => says(t, 'request.nothing_to_plan'),
  'request.other_state': (t) => says(t, 'request.other_state'),
  'request.our_fault': (t) => says(t, 'request.our_fault'),
  'server.port_taken': (t) => says(t, 'server.port_taken', { value: t.text('value') }),
};
