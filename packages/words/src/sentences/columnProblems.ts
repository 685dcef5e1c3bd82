import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence, Told } from '../problems.ts';
import { meant, part, quoted, type Sentences, says, saysOrMeant, wordFor, yes } from './telling.ts';

/** Whose entry of columns.json it is. */
const entryOf = (t: Told): string => {
  const [file, header] = ['file', 'header'].map((name) =>
    t.has(name) && !t.text(name).startsWith('(') ? t.text(name) : null,
  );
  if (header && file) return part(t, 'entryOfHeader', { file, header });
  const one = file ?? header;
  return one ? part(t, 'entryOf', { one }) : '';
};

/** Characters that cannot be seen, by their code points. */
const unseen = (t: Told): string => t.list('points').join(', ');

/** What is wrong in a JSON file, by the kind of fault, and what to do. */
function notJson(t: Told, key: 'columns.not_json' | 'settings.not_json'): ProblemSentence {
  const found = t.has('found') && !t.text('found').startsWith('(') ? t.text('found') : '';
  const kind = t.has('what') ? t.text('what') : 'unexpected';
  const values = { found, hasFound: yes(found !== '') };
  const fault = wordFor(t, 'json', `${kind}.what`, values) ?? part(t, 'json.unexpected.what', values);
  const mend = wordFor(t, 'json', `${kind}.todo`, values) ?? part(t, 'json.unexpected.todo', values);
  return says(t, key, {
    fault,
    mend,
    hasLine: yes(t.has('line')),
    line: t.text('line'),
    column: t.text('column'),
  });
}

/** Why a header that looks right is not. */
const hidden = (t: Told): string =>
  t.list('hidden').length > 0 ? part(t, 'hidden', { characters: t.list('hidden').join(', ') }) : '';

/** Headers and columns.json, characters that cannot be seen, and broken settings. */
export const columnSentences = {
  'header.column_missing': (t) =>
    says(t, 'header.column_missing', {
      expected: t.text('expected'),
      found: t.text('found'),
      hasNamed: yes(t.has('named')),
      likely: t.text('likely'),
      named: t.text('named'),
      advice: meant(t, part(t, 'addColumn')),
      hidden: hidden(t),
    }),
  'header.column_misspelt': (t) =>
    says(t, 'header.column_misspelt', {
      value: quoted(t),
      hasNamed: yes(t.has('named')),
      named: t.text('named'),
      expected: t.text('expected'),
      hidden: hidden(t),
    }),
  'header.column_twice': (t) => says(t, 'header.column_twice', { value: quoted(t) }),
  'header.column_unknown': (t) => saysOrMeant(t, 'header.column_unknown', { value: quoted(t) }),
  'header.column_unnamed': (t) => says(t, 'header.column_unnamed', { number: t.text('number') }),
  'header.columns_more': (t) => says(t, 'header.columns_more', { count: t.text('count') }),
  'header.hidden_ends': (t) => says(t, 'header.hidden_ends', { value: t.text('value'), unseen: unseen(t) }),
  'columns.not_json': (t) => notJson(t, 'columns.not_json'),
  'columns.wrong_entry': (t) =>
    says(t, 'columns.wrong_entry', { entryOf: entryOf(t), value: t.text('value'), expected: t.text('expected') }),
  'columns.unknown_file': (t) => saysOrMeant(t, 'columns.unknown_file', { value: t.text('value') }),
  'columns.unknown_column': (t) =>
    saysOrMeant(t, 'columns.unknown_column', {
      header: t.text('header'),
      file: t.text('file'),
      value: t.text('value'),
    }),
  'columns.unknown_unit': (t) =>
    says(t, 'columns.unknown_unit', {
      header: t.text('header'),
      file: t.text('file'),
      value: t.text('value'),
      column: t.text('column'),
      hasUnits: yes(t.list('units').length > 0),
      units: t.list('units').join(', '),
      hasUnit: yes(t.has('unit')),
      unit: t.text('unit'),
    }),
  'columns.unit_in_header': (t) => {
    const [first = '', ...others] = t.list('units');
    const either = others.map((unit) => part(t, 'orUnit', { unit })).join('');
    return says(t, 'columns.unit_in_header', {
      header: t.text('header'),
      file: t.text('file'),
      found: t.text('found'),
      value: t.text('value'),
      unit: t.text('unit'),
      first,
      others: either,
    });
  },
  'columns.two_for_one': (t) => says(t, 'columns.two_for_one', { value: t.text('value'), headers: t.both('headers') }),
  'columns.header_absent': (t) => saysOrMeant(t, 'columns.header_absent', { value: t.text('value') }),
  'columns.used': (t) => says(t, 'columns.used', { value: t.list('value').join('; ') }),
  'column.hidden_ends': (t) =>
    says(t, 'column.hidden_ends', { count: t.count('count'), unseen: unseen(t), value: t.text('value') }),
  'column.hidden_inside': (t) =>
    says(t, 'column.hidden_inside', { count: t.count('count'), unseen: unseen(t), value: t.text('value') }),
  'cell.control_characters': (t) =>
    says(t, 'cell.control_characters', { value: t.text('value'), hasPoints: yes(t.has('points')), unseen: unseen(t) }),
  'cell.hidden_in_id': (t) =>
    says(t, 'cell.hidden_in_id', { value: t.text('value'), unseen: unseen(t), likely: t.text('likely') }),
  'cell.hidden_characters': (t) =>
    says(t, 'cell.hidden_characters', { value: t.text('value'), unseen: unseen(t), likely: t.text('likely') }),
  'rainFile.days_again': (t) => says(t, 'rainFile.days_again', { count: t.text('count'), lastRow: t.text('lastRow') }),
  'rainFile.not_listed': (t) => says(t, 'rainFile.not_listed', { count: t.text('count'), lastRow: t.text('lastRow') }),
  'settings.not_json': (t) => notJson(t, 'settings.not_json'),
  'settings.key_twice': (t) => says(t, 'settings.key_twice', { key: t.text('key'), line: t.text('line') }),
} satisfies Partial<Sentences<TableProblemCode>>;
