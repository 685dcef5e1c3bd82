import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { calendarSentences } from './calendarProblems.ts';
import { columnSentences } from './columnProblems.ts';
import { mixUpSentences } from './mixUpProblems.ts';
import { positionProblemSentences } from './positionProblems.ts';
import { stationProblemSentences } from './stationProblems.ts';
import { workbookProblemSentences } from './workbookProblems.ts';

type Sentences<Code extends string> = Readonly<Record<Code, (told: Told) => ProblemSentence>>;

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

/** "Did you mean …?" where there is a likely one, else the other advice. */
const meant = (t: Told, otherwise: string): string => {
  const likely = t.has('likely') ? t.text('likely') : '(empty)';
  return likely === '(empty)' ? otherwise : `Did you mean ${likely}? ${otherwise}`;
};

const quoted = (t: Told): string => {
  const value = t.text('value');
  return value.startsWith('(') ? value : `"${value}"`;
};

const unit = (t: Told): string => {
  const name = t.has('unit') ? t.text('unit') : '(empty)';
  return name === '(empty)' ? '' : ` [${name}]`;
};

const count = (t: Told, name: string, one: string, many: string): string =>
  `${t.text(name)} ${t.number(name) === 1 ? one : many}`;

/** A file that is there and is nearly the one sought; empty where there is none. */
const near = (t: Told): string => {
  const likely = t.has('likely') ? t.text('likely') : '(empty)';
  return likely === '(empty)' ? '' : likely;
};

const folder = {
  'folder.missing': (t) => say(`There is no folder ${quoted(t)}.`, 'Check the path, or make one with "eavewell demo".'),
  'folder.not_a_folder': (t) => say(`${quoted(t)} is a file, not a folder.`, 'Name the folder that holds the tables.'),
  'folder.unreadable': (t) =>
    say(`The folder ${quoted(t)} could not be read: ${t.text('reason')}.`, 'Check who may read it.'),
  'folder.not_empty': (t) => say(`The folder ${quoted(t)} is not empty.`, 'Name a new folder; nothing was written.'),
} satisfies Partial<Sentences<TableProblemCode>>;

const file = {
  'file.missing': (t) =>
    say(
      `The file ${quoted(t)} is not in the folder${near(t) === '' ? '' : `, but ${near(t)} is`}.`,
      near(t) === ''
        ? 'Add it, with the columns of docs/tables.md.'
        : near(t).toLowerCase().endsWith('.csv')
          ? `Rename ${near(t)} to ${t.text('value')}, if it is meant.`
          : `Save ${near(t)} as "CSV UTF-8" under the name ${t.text('value')}, if it is meant.`,
    ),
  'file.empty': (t) => say(`The file ${quoted(t)} is empty.`, 'Fill it, or put back an earlier copy.'),
  'file.no_rows': (t) => say(`The file ${quoted(t)} has a first line and nothing under it.`, 'Add its rows.'),
  'file.no_rows_optional': (t) =>
    say(`The file ${quoted(t)} has a first line and nothing under it.`, 'Nothing to do, unless rows were lost.'),
  'file.not_a_file': (t) => say(`${quoted(t)} is a folder where a file should be.`, 'Move it and put the file there.'),
  'file.unreadable': (t) =>
    say(`The file ${quoted(t)} could not be read: ${t.text('reason')}.`, 'Check who may read it, or copy it afresh.'),
  'file.too_large': (t) =>
    say(
      `The file ${quoted(t)} is too large: ${t.text('size_MB')} MB; the most is ${t.text('largest_MB')} MB.`,
      'Check that it is the right file, or split it.',
    ),
  'file.wrong_encoding': (t) =>
    say(
      `The file ${quoted(t)} is not UTF-8 text; it looks like: ${t.text('encoding')}.`,
      'Save it again as "CSV UTF-8" from the spreadsheet.',
    ),
  'file.encoding_taken': (t) =>
    say(
      `The file ${quoted(t)} is not UTF-8 text; it was read as ${t.text('encoding')}.`,
      'Check the letters with accents in it; saved as "CSV UTF-8" there is no doubt.',
    ),
  'file.separator': (t) =>
    say(`The cells are parted by ${t.text('value')}, not by comma.`, 'Nothing to do: it was read so.'),
  'file.cut_off': (t) =>
    say(
      `The file stops in the middle of a row: ${quoted(t)}.`,
      'Copy it again from where it came from; rows may be lost. The rows before it were used.',
    ),
  'file.no_last_line_end': () =>
    say(
      'The last line has no line end, so the file may have been cut off.',
      'Compare its last row with where it came from; if all is there, end the line and save it again.',
    ),
  'file.outside': (t) =>
    say(`${quoted(t)} leads out of the programme's folder and was not opened.`, 'Put the file itself into the folder.'),
  'file.unknown': (t) =>
    say(`The file ${quoted(t)} is not one of the tables.`, 'It was left alone. Check its name if it should be used.'),
} satisfies Partial<Sentences<TableProblemCode>>;

const row = {
  'row.key_twice': (t) =>
    say(
      `${quoted(t)} already stands in row ${t.text('firstRow')}, with other contents.`,
      'Keep the right one. Until then the site has no verdict.',
    ),
  'row.twice_same': (t) =>
    say(`${quoted(t)} stands twice, also in row ${t.text('firstRow')}, word for word.`, 'Delete one; it counts once.'),
  'row.cells_missing': (t) =>
    say(
      `The row has ${count(t, 'cells', 'cell', 'cells')} of ${t.text('columns')}; missing: ${t.text('missing')}.`,
      'Fill in the missing cells, or add the commas. They count as not known.',
    ),
  'row.cells_too_many': (t) =>
    say(
      `The row has ${count(t, 'cells', 'cell', 'cells')} where the first line has ${t.text('columns')}.`,
      'Look for a comma inside a text and put the text in "quotes"; in a workbook, name the column or clear the cell. The row was not used.',
    ),
  'row.quote_broken': (t) =>
    say(`A quotation mark is opened and not closed: ${quoted(t)}.`, 'Close it, or delete it. The row was not used.'),
  'row.empty': (t) =>
    say(`${count(t, 'count', 'empty row stands', 'empty rows stand')} between the others.`, 'Nothing to do.'),
} satisfies Partial<Sentences<TableProblemCode>>;

const number = {
  'cell.missing': (t) => say('The cell is empty and must not be.', `Fill it in: ${t.text('expected')}.`),
  'cell.not_a_number': (t) => say(`${quoted(t)} is not a number.`, `Write a number${unit(t)} with a decimal point.`),
  'cell.not_finite': (t) =>
    say(`${quoted(t)} is no number that can be used.`, `Write the number${unit(t)}, or leave the cell empty.`),
  'cell.not_whole': (t) => say(`${quoted(t)} is not a whole number.`, `Write a whole number${unit(t)}.`),
  'cell.decimal_comma': (t) =>
    say(`${quoted(t)} has a decimal comma.`, `Write ${t.has('likely') ? t.text('likely') : 'it'} with a point.`),
  'cell.comma_ambiguous': (t) =>
    say(`${quoted(t)} can be read two ways: ${t.list('readings').join(' or ')}.`, 'Write it without the comma.'),
  'cell.thousands': (t) =>
    say(
      `${quoted(t)} has marks between its thousands.`,
      `Write ${t.has('likely') ? t.text('likely') : 'it'} without them.`,
    ),
  'cell.unit_in_number': (t) =>
    say(
      `${quoted(t)} has ${t.text('found')} behind the number.`,
      `Write the number alone${unit(t)}; check that the unit is the same.`,
    ),
  'cell.out_of_range': (t) =>
    say(
      `${quoted(t)} cannot be right: it should be ${t.text('low')} to ${t.text('high')}${unit(t)}.`,
      'Check it, and write the right value. It was not used.',
    ),
  'cell.unusual': (t) =>
    say(
      `${quoted(t)} is unusual: most are ${t.text('low')} to ${t.text('high')}${unit(t)}.`,
      'It was used. Check that the value and its unit are right.',
    ),
  'column.decimal_comma': (t) =>
    say(
      `The column has decimal commas, such as ${quoted(t)}; they were read as points.`,
      'Check one or two of the numbers.',
    ),
} satisfies Partial<Sentences<TableProblemCode>>;

const cell = {
  'cell.date_form': (t) =>
    say(
      `${quoted(t)} is not written year-month-day${t.list('readings').length > 1 ? ', and could mean more than one day' : ''}.`,
      t.list('readings').length > 0
        ? `Write ${t.list('readings').join(' or ')}, whichever is meant.`
        : 'Write it as 2026-04-30.',
    ),
  'cell.date_not_real': (t) => say(`${quoted(t)} is a day that does not exist.`, 'Write the right day.'),
  'cell.date_serial': (t) =>
    say(
      `${quoted(t)} is a date as a spreadsheet counts days.`,
      `Write the day itself${t.list('readings').length > 0 ? `, likely ${t.list('readings').join(' or ')}` : ''}.`,
    ),
  'cell.not_a_date': (t) => say(`${quoted(t)} is not a date.`, 'Write it year-month-day, as 2026-04-30.'),
  'cell.not_a_time': (t) => say(`${quoted(t)} is not a time of day.`, 'Write it as 09:00, from 00:00 to 23:59.'),
  'cell.not_a_choice': (t) =>
    say(
      `${quoted(t)} is not one of: ${t.has('choices') ? t.text('choices') : t.text('expected')}.`,
      meant(t, 'Write one of these.'),
    ),
  'cell.not_a_currency': (t) =>
    say(`${quoted(t)} is not a currency code.`, 'Write its three capital letters, as USD (ISO 4217).'),
  'cell.unsafe_id': (t) =>
    say(
      `${quoted(t)} cannot be used as an id.`,
      'Use letters without accents, digits, _ and -, at most 64. It was never used as a path.',
    ),
  'cell.too_long': (t) =>
    say(
      `The text is ${t.text('length')} characters long; the most is ${t.text('longest')}.`,
      'Shorten it; look for a quotation mark that is not closed.',
    ),
  'cell.letters_lost': (t) =>
    say(`Letters of ${quoted(t)} could not be read.`, 'Save the file as "CSV UTF-8"; check the names.'),
  'cell.bytes_unreadable': (t) =>
    say(`${quoted(t)} could not be read.`, 'Save the file as "CSV UTF-8" and check the cell.'),
} satisfies Partial<Sentences<TableProblemCode>>;

const nearest = (t: Told, otherwise: string): string => meant(t, otherwise);

const link = {
  'link.unknown_site': (t) =>
    say(`There is no site ${quoted(t)}; the row was not used.`, nearest(t, 'Correct the id, or add it to sites.csv.')),
  'link.unknown_gauge': (t) =>
    say(`There is no gauge ${quoted(t)}.`, nearest(t, 'Correct the id, or add it to gauges.csv.')),
  'link.unknown_roof': (t) =>
    say(
      `The site has no roof ${quoted(t)}; the row was not used.`,
      nearest(t, 'Correct the id, or add it to roofs.csv.'),
    ),
  'link.unknown_tank': (t) =>
    say(`The site has no tank ${quoted(t)}.`, nearest(t, 'Correct the id, or add it to tanks.csv.')),
  'link.unknown_part': (t) =>
    say(`There is no part ${quoted(t)}.`, nearest(t, 'Correct the id, or add it to parts.csv.')),
  'link.part_not_tank': (t) =>
    say(`The part ${quoted(t)} is not a tank, but: ${t.text('kind')}.`, 'Name a part whose kind is tank.'),
  'link.joined_to_itself': (t) =>
    say(`The tank ${quoted(t)} is joined to itself.`, 'Name the other tank, or leave the cell empty.'),
  'link.not_checked': (t) =>
    say(
      `Ids of ${t.text('value')} could not be checked, because ${t.text('expected')} could not be read.`,
      `Mend ${t.text('expected')} first.`,
    ),
  'link.ids_differ_by_case': (t) =>
    say(
      `${quoted(t)} and "${t.text('other')}" differ only in capital letters.`,
      'Rename one; some computers take their files for the same.',
    ),
} satisfies Partial<Sentences<TableProblemCode>>;

const other = {
  'rainFile.missing': (t) =>
    say(
      `The rain file ${quoted(t)} is not there${near(t) === '' ? '' : `, but ${near(t)} is`}.`,
      near(t) === ''
        ? 'Add it, or name another gauge for the sites that use it.'
        : `Move or rename ${near(t)} to ${t.text('value')}, if it is meant.`,
    ),
  'rainFile.without_gauge': (t) =>
    say(`No gauge belongs to the rain file ${quoted(t)}; it was not used.`, meant(t, 'Add the gauge to gauges.csv.')),
  'rainFile.day_unreadable': (t) =>
    say(
      `${quoted(t)} is not a day that can be used; the reading was left out.`,
      t.list('readings').length > 0
        ? `Write ${t.list('readings').join(' or ')}, whichever is meant.`
        : 'Write the day year-month-day, as 2026-04-30.',
    ),
  'rainFile.value_unreadable': (t) =>
    say(`${quoted(t)} is not a rainfall in mm; the day counts as not read.`, 'Write the number, or leave it empty.'),
  'rainFile.missing_code': (t) =>
    say(
      `${quoted(t)} was taken as "not read" (${count(t, 'count', 'day', 'days')}).`,
      'Leave such cells empty, to be sure.',
    ),
  'rainFile.trace': (t) =>
    say(
      `${quoted(t)} stands for a trace of rain (${count(t, 'count', 'day', 'days')}); the day counts as not read.`,
      'Write 0 where that is what you mean.',
    ),
  'rainFile.more': (t) =>
    say(
      `${count(t, 'count', 'more row has', 'more rows have')} the same fault, to row ${t.text('lastRow')}.`,
      'Mend them in the same way.',
    ),
  'rainFile.two_files': (t) =>
    say(
      `The gauge has two rain files, ${quoted(t)} and "${t.text('other')}"; neither was used.`,
      'Keep the right one, and move the other out of the folder.',
    ),
  'settings.unknown_key': (t) =>
    say(`The setting "${t.text('key')}" is not known; it was not used.`, meant(t, 'Correct it, or delete it.')),
  'settings.wrong_value': (t) =>
    t.text('key') === '(empty)'
      ? say(
          `settings.json is not one object in { }, but ${t.text('value')}; every default was used.`,
          'Put the settings between { and }, as { "programme": "…" }.',
        )
      : say(
          `The setting "${t.text('key')}" cannot be ${t.text('value')}; ${t.text('used')} was used instead.`,
          `Write: ${t.text('expected')}.`,
        ),
  'settings.unusual': (t) =>
    say(
      `The setting "${t.text('key')}" is ${t.text('value')}; most are ${t.text('low')} to ${t.text('high')}.`,
      'It was used. Check that it is meant.',
    ),
  'package.not_json': () =>
    say('datapackage.json could not be read.', 'Mend it or delete it; the tables were read without it.'),
  'package.path_unsafe': (t) =>
    say(
      `datapackage.json names a file outside the folder: ${quoted(t)}.`,
      'It was not opened. Name files of this folder only.',
    ),
  'package.file_absent': (t) =>
    say(`datapackage.json names ${quoted(t)}, which is not there.`, 'Add the file, or take its entry out.'),
} satisfies Partial<Sentences<TableProblemCode>>;

/** One sentence for every fault a folder can have. */
export const tableProblemSentences: Sentences<TableProblemCode> = {
  ...folder,
  ...file,
  ...row,
  ...number,
  ...cell,
  ...link,
  ...other,
  ...columnSentences,
  ...calendarSentences,
  ...mixUpSentences,
  ...stationProblemSentences,
  ...positionProblemSentences,
  ...workbookProblemSentences,
};
