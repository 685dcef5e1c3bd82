import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

const meant = (t: Told, otherwise: string): string => {
  const likely = t.has('likely') ? t.text('likely') : '(empty)';
  return likely === '(empty)' ? otherwise : `Did you mean ${likely}? ${otherwise}`;
};

/** Whose entry of columns.json it is. */
const entryOf = (t: Told): string =>
  ['file', 'header']
    .filter((name) => t.has(name) && t.text(name) !== '(empty)')
    .map((name) => ` of "${t.text(name)}"`)
    .join(' in')
    .replace(/^ of "([^"]*)" in of/, ' of "$1", header');

const cells = (t: Told): string => `${t.text('count')} ${t.number('count') === 1 ? 'cell' : 'cells'}`;

/** Characters that cannot be seen, by their code points. */
const unseen = (t: Told): string => t.list('points').join(', ');

/** What is wrong in a file of JSON, by the kind of fault. */
const jsonFaultWords: Readonly<Record<string, (found: string) => readonly [what: string, todo: string]>> = {
  empty: () => ['nothing stands in it', 'Fill it, or delete it'],
  comment: (found) => [`a remark begins (${found}), and there can be none`, 'Take the remark out'],
  trailingComma: () => ['a comma stands before the closing bracket', 'Take that comma out'],
  missingComma: (found) => [`a comma is missing before ${found}`, 'Write a comma there'],
  singleQuotes: () => ['a text stands in single quotes', 'Put it in "double quotes"'],
  curlyQuotes: () => ['a text stands in curly quotes', 'Put it in straight "double quotes"'],
  nameWithoutQuotes: (found) => [`${found} stands without quotes`, 'Put it in "double quotes"'],
  notANumber: (found) => [
    `${found} is no number as it can be written here`,
    'Write digits with a decimal point, as 0.95',
  ],
  decimalComma: () => ['a number has a decimal comma', 'Write it with a point'],
  notClosed: () => ['a bracket or a quote is opened and not closed', 'Close it; the end of the file may be lost'],
  lineInText: () => [
    'a text runs over the end of its line, or holds a mark it cannot',
    'Close its quotes on the same line',
  ],
  moreBehind: (found) => [`${found} stands behind the end`, 'Take out what stands behind the last bracket'],
  tooDeep: () => ['brackets stand too deep in each other', 'Take the inner ones out'],
  unexpected: (found) => [
    `${found === '' ? 'the end' : found} stands where it cannot`,
    'Look for a missing quote, colon or comma',
  ],
};

/** What is wrong in a JSON file, and what to do; `otherwise` ends the advice. */
function notJson(t: Told, file: string, used: string, otherwise: string): ProblemSentence {
  const found = t.has('found') ? t.text('found') : '';
  const make = jsonFaultWords[t.has('what') ? t.text('what') : 'unexpected'] ?? jsonFaultWords['unexpected']!;
  const [what, todo] = make(found === '(empty)' ? '' : found);
  const at = t.has('line') ? ` in line ${t.text('line')}, character ${t.text('column')},` : '';
  return say(`${file} could not be read:${at} ${what}. ${used}`, `${todo}${otherwise}.`);
}

/** Why a header that looks right is not. */
const hidden = (t: Told): string =>
  t.has('hidden') && t.list('hidden').length > 0
    ? ` It holds a character that cannot be seen (${t.list('hidden').join(', ')}).`
    : '';

const quoted = (t: Told): string => {
  const value = t.text('value');
  return value.startsWith('(') ? value : `"${value}"`;
};

/** Headers and columns.json, characters that cannot be seen, and broken settings. */
export const columnSentences = {
  'header.column_missing': (t) =>
    say(
      `The column ${t.text('expected')} is missing; there are: ${t.text('found')}.`,
      t.has('named')
        ? `"${t.text('likely')}" names another unit (${t.text('named')}): let "eavewell columns" match it, and its values are converted.`
        : `${meant(t, 'Add the column, correct its name, or let "eavewell columns" match it.')}${hidden(t)}`,
    ),
  'header.column_misspelt': (t) =>
    say(
      `The column ${quoted(t)} is not written as it should be.`,
      t.has('named')
        ? `It names another unit (${t.text('named')}) than ${t.text('expected')}: let "eavewell columns" match it, and its values are converted. It was not used.`
        : `Write ${t.text('expected')}, letter for letter, or let "eavewell columns" match it. It was not used.${hidden(t)}`,
    ),
  'header.column_twice': (t) =>
    say(`The column ${quoted(t)} stands more than once.`, 'Keep one of them; none was used.'),
  'header.column_unknown': (t) =>
    say(`The column ${quoted(t)} is not known here.`, meant(t, 'It was not used; it may stay.')),
  'header.column_unnamed': (t) =>
    say(`Column ${t.text('number')} has no name.`, 'Name it, or delete it; it was not used.'),
  'header.columns_more': (t) =>
    say(
      `${t.text('count')} more columns are not known here, or have no name.`,
      'They were not used; they may stay. Check that it is the right file.',
    ),
  'header.hidden_ends': (t) =>
    say(
      `The header "${t.text('value')}" has characters at its ends that cannot be seen (${unseen(t)}).`,
      'It was read without them. Type it again by hand, to be sure.',
    ),
  'columns.not_json': (t) =>
    notJson(t, 'columns.json', 'No saved matching was used.', ', or delete the file and run "eavewell columns" again'),
  'columns.wrong_entry': (t) =>
    say(
      `The saved matching says${entryOf(t)}: ${t.text('value')}, which cannot be used.`,
      `Write ${t.text('expected')}, or run "eavewell columns" again.`,
    ),
  'columns.unknown_file': (t) =>
    say(
      `The saved matching names "${t.text('value')}", which is none of the tables.`,
      meant(t, 'Correct the name, or take it out.'),
    ),
  'columns.unknown_column': (t) =>
    say(
      `The saved matching gives "${t.text('header')}" of ${t.text('file')} to the column "${t.text('value')}", which there is not.`,
      meant(t, 'Name a column of docs/tables.md.'),
    ),
  'columns.unknown_unit': (t) =>
    say(
      `The saved matching says that "${t.text('header')}" of ${t.text('file')} is in ${t.text('value')}; ${t.text('column')} cannot be converted from that.`,
      t.list('units').length > 0
        ? `Use one of: ${t.list('units').join(', ')}. Gallons are usgal or impgal.`
        : `Its values must stand in ${t.has('unit') ? t.text('unit') : 'its own unit'}.`,
    ),
  'columns.unit_in_header': (t) => {
    const [first = '', ...others] = t.list('units');
    const either = others.map((unit) => ` or :${unit}`).join('');
    return say(
      `The header "${t.text('header')}" of ${t.text('file')} names another unit (${t.text('found')}) than ${t.text('value')} has (${t.text('unit')}), and nothing tells in which its values are.`,
      `Say the unit: --set '${t.text('file')}:${t.text('header')}=${t.text('value')}:${first}'${either}; in the file { "column": "${t.text('value')}", "unit": "${first}" }.`,
    );
  },
  'columns.two_for_one': (t) =>
    say(
      `Two headers stand for the column ${t.text('value')}: ${t.list('headers').join(' and ')}; neither was used.`,
      'Keep one: rename the other in the file, or take it out of the saved matching.',
    ),
  'columns.header_absent': (t) =>
    say(
      `The saved matching has the header "${t.text('value')}", which is no longer in the file.`,
      meant(t, 'Run "eavewell columns" again, or take it out of columns.json.'),
    ),
  'columns.used': (t) =>
    say(
      `A saved matching of headers was used: ${t.list('value').join('; ')}.`,
      'Nothing to do, if it is right; "eavewell columns" shows it.',
    ),
  'column.hidden_ends': (t) =>
    say(
      `${cells(t)} had characters at the ends that cannot be seen (${unseen(t)}), such as "${t.text('value')}".`,
      'Nothing to do: they were read without them.',
    ),
  'column.hidden_inside': (t) =>
    say(
      `${cells(t)} hold characters that cannot be seen (${unseen(t)}), such as "${t.text('value')}".`,
      'They were kept. Type the text again where a search does not find it.',
    ),
  'cell.control_characters': (t) =>
    say(
      `"${t.text('value')}" holds characters that cannot be seen${t.has('points') ? ` (${unseen(t)})` : ''}.`,
      'Type the cell again by hand.',
    ),
  'cell.hidden_in_id': (t) =>
    say(
      `The id "${t.text('value')}" holds a character that cannot be seen (${unseen(t)}); it looks like ${t.text('likely')} and is another.`,
      `Type it again by hand: ${t.text('likely')}, if that is meant. It was not used.`,
    ),
  'cell.hidden_characters': (t) =>
    say(
      `"${t.text('value')}" holds a character that cannot be seen (${unseen(t)}).`,
      `Type it again by hand: ${t.text('likely')}, if that is meant. It was not used.`,
    ),
  'rainFile.days_again': (t) =>
    say(
      `${t.text('count')} more readings are of days that stood before, to row ${t.text('lastRow')}; they say nothing new and were left out.`,
      'Check whether the file holds several gauges, or hours: there is one reading a day.',
    ),
  'rainFile.not_listed': (t) =>
    say(
      `${t.text('count')} more rows and cells were not used, to row ${t.text('lastRow')}; they are counted and not listed.`,
      'Mend those that are listed first, in the same way.',
    ),
  'settings.not_json': (t) =>
    notJson(t, 'settings.json', 'Every default was used.', ', or delete the file to use the defaults on purpose'),
  'settings.key_twice': (t) =>
    say(
      `The setting "${t.text('key')}" stands twice, again in line ${t.text('line')}; the last one was used.`,
      'Keep the right one. Until then no site has a verdict.',
    ),
} satisfies Partial<Record<TableProblemCode, (told: Told) => ProblemSentence>>;
