import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';
import { numbers } from './numbers.ts';

type WorkbookCode =
  | Extract<TableProblemCode, `workbook.${string}` | `sheet.${string}` | `carried.${string}`>
  | Exclude<Extract<TableProblemCode, `column.${string}`>, 'column.decimal_comma' | `column.hidden_${string}`>
  | 'rainFile.rows_without_gauge'
  | 'cell.formula_without_value'
  | 'cell.formula_error'
  | 'cell.value_lost'
  | 'cell.under_merge'
  | 'cell.date_swapped';
type Sentences = Readonly<Record<WorkbookCode, (told: Told) => ProblemSentence>>;

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });
const name = (t: Told) => `"${t.text('value')}"`;
const many = (t: Told, fact: string, one: string, more: string) =>
  `${numbers.quantity(t.number(fact) ?? 0, 'number')} ${t.number(fact) === 1 ? one : more}`;
const cells = (t: Told) => many(t, 'count', 'cell', 'cells');

const formats: Readonly<Record<string, string>> = {
  '.xls': 'an old workbook (.xls)',
  '.xlsb': 'a binary workbook (.xlsb)',
  '.ods': 'an OpenDocument workbook (.ods)',
};
const kinds: Readonly<Record<string, string>> = {
  text: 'text or some other kind of file',
  zip: 'a zip with other things in it',
};

const limits: Readonly<Record<string, (found: string, most: string) => string>> = {
  file_MB: (found, most) => `the file has ${found} MB; the most is ${most} MB`,
  entries: (found, most) => `it has ${found} parts; the most is ${most}`,
  inflated_MB: (found, most) => `unpacked it comes to ${found} MB or more; the most is ${most} MB`,
  inflation: (found, most) => `a part swells to ${found} times its packed size or more; the most is ${most} times`,
  cells: (found, most) => `a sheet has ${found} cells or more; the most is ${most}`,
  merged: (found, most) => `a sheet has ${found} merged ranges or more; the most is ${most}`,
  columns: (found, most) => `a table has ${found} columns; the most is ${most}`,
  rows: (found, most) => `a sheet would have ${found} rows; the most is ${most}`,
  depth: (found, most) => `its parts are nested ${found} deep; the most is ${most}`,
};

function overLimit(t: Told): string {
  const [found, most] = ['found', 'most'].map((fact) => numbers.quantity(t.number(fact) ?? 0, 'number'));
  return limits[t.text('limit')]?.(found!, most!) ?? t.text('limit');
}

/** "Did you mean …?" where there is a likely one. */
const meant = (t: Told, otherwise: string): string => {
  const likely = t.has('likely') ? t.text('likely') : '(empty)';
  return likely === '(empty)' ? otherwise : `Did you mean ${likely}? ${otherwise}`;
};

/** The columns a sheet cannot do without. */
const columnsAtLeast = (t: Told): string => {
  const columns = t.list('columns');
  return columns.length === 0 ? '' : `, with the columns ${columns.join(', ')} at least`;
};

const book = {
  'workbook.not_a_workbook': (t) =>
    say(
      `${name(t)} is no workbook; it seems to be ${kinds[t.text('found')] ?? t.text('found')}.`,
      'Name a workbook (.xlsx) or a folder of tables.',
    ),
  'workbook.other_format': (t) =>
    say(
      `${name(t)} is ${formats[t.text('found')] ?? t.text('found')}, which is not read.`,
      'Open it in the spreadsheet and save it as a workbook of the kind .xlsx.',
    ),
  'workbook.password': (t) =>
    say(`${name(t)} is locked with a password.`, 'Open it in the spreadsheet and save a copy without the password.'),
  'workbook.cut_off': (t) =>
    say(`${name(t)} is not whole: its end is missing.`, 'Copy or download it again from where it came from.'),
  'workbook.damaged': (t) =>
    say(
      `${name(t)} is damaged: ${t.text('reason')}.`,
      'Open it in the spreadsheet and save it again, or go back to an earlier copy.',
    ),
  'workbook.over_limit': (t) =>
    say(`${name(t)} is too large to be opened: ${overLimit(t)}.`, 'Check that it is the right file, or split it.'),
  'workbook.entry_unsafe': (t) =>
    say(
      `The workbook holds ${many(t, 'count', 'part', 'parts')} under a name that leads elsewhere: ${name(t)}.`,
      'It was not opened. No spreadsheet writes such names: ask where the file comes from.',
    ),
  'workbook.macros': () => say('The workbook holds macros.', 'Nothing to do: they are never run.'),
  'workbook.other_workbooks': () =>
    say(
      'The workbook takes values from other workbooks.',
      'The values last stored in it were used; open it in the spreadsheet to renew them.',
    ),
  'workbook.already_there': (t) => say(`The file ${name(t)} is there already.`, 'Name a new file, or say --overwrite.'),
  'carried.station_days': (t) =>
    say(`${name(t)} is a station file; its days were carried over, its flags were not.`, 'Keep the file itself too.'),
  'carried.table_left': (t) =>
    say(
      `${name(t)} cannot be carried into a workbook as it stands, and was left.`,
      'Mend what check says of it, or write it into a sheet yourself; then convert again.',
    ),
  'carried.file_left': (t) => say(`A workbook cannot hold ${name(t)}; it was left.`, 'Keep the file itself too.'),
  'carried.rows_left': (t) =>
    say(
      `${many(t, 'count', 'row', 'rows')} of ${name(t)} name no gauge a file could be called after, and were left.`,
      'Write the id of the gauge into them.',
    ),
  'carried.older_file': (t) =>
    say(
      `${name(t)} stood in the folder before and is not of this programme.`,
      'Delete it, or it is read as if it were.',
    ),
  'carried.settings_left': (t) =>
    say(`The settings in ${name(t)} could not be read, and were left.`, 'Mend them; until then no site has a verdict.'),
} satisfies Partial<Sentences>;

const sheet = {
  'sheet.missing': (t) =>
    say(
      `The workbook has no sheet ${t.text('expected')}.`,
      meant(t, `Add it${columnsAtLeast(t)} (docs/tables.md), or let "eavewell columns" match one you have.`),
    ),
  'sheet.unknown': (t) => say(`The sheet ${name(t)} is not one of the tables.`, 'It was left alone; it may stay.'),
  'sheet.misnamed': (t) =>
    say(
      `The sheet ${name(t)} is not used: it is nearly called as the table ${t.text('likely')}.`,
      `If it is that table, call it ${t.text('likely')}, letter for letter, or let "eavewell columns" match it.`,
    ),
  'sheet.matched': (t) =>
    say(
      `The sheet ${name(t)} was read as ${t.text('expected')}, as it was accepted.`,
      'Nothing to do, if it is right; "eavewell columns" shows it.',
    ),
  'sheet.not_there': (t) =>
    say(
      `The saved matching names the sheet ${name(t)}, which is not in the workbook.`,
      meant(t, 'Run "eavewell columns" again, or take it out.'),
    ),
  'sheet.twice': (t) =>
    say(
      `${many(t, 'count', 'sheet is', 'sheets are')} called ${name(t)}; none was used.`,
      'Keep one, and rename the others.',
    ),
  'sheet.unreadable': (t) =>
    say(
      `The sheet could not be read: ${t.text('reason')}.`,
      'Open the workbook in the spreadsheet and save it again, or go back to an earlier copy.',
    ),
  'sheet.hidden': (t) =>
    say(
      `The sheet ${name(t)} is hidden; it was read.`,
      'Show it, so that others know of it, or rename it if it is an old one.',
    ),
  'sheet.header_below': (t) =>
    say(
      `The column names were found in row ${t.text('headerRow')}, under ${many(t, 'count', 'row', 'rows')} such as ${name(t)}.`,
      'Nothing to do, if that is right.',
    ),
  'sheet.rows_hidden': (t) =>
    say(
      `Hidden: ${many(t, 'rows', 'row', 'rows')} and ${many(t, 'columns', 'column', 'columns')}. They were read.`,
      'Delete what should not count.',
    ),
  'sheet.merged': (t) =>
    say(
      `The cells ${t.text('value')} are merged; their value counts for the first of them only.`,
      'Part them, and write the value into each cell it is meant for.',
    ),
  'sheet.merged_ids': (t) =>
    say(
      `The cells ${t.text('value')} are merged, so ${many(t, 'count', 'row has', 'rows have')} no site.`,
      'Write the id into every row. Until then the site has no verdict.',
    ),
  'sheet.beside_table': (t) =>
    say(
      `${cells(t)} beside the table, under no column name, such as ${name(t)}.`,
      'Not used, and may stay. Name the column if it belongs to the table.',
    ),
} satisfies Partial<Sentences>;

const column = {
  'column.formulas': (t) =>
    say(
      `${cells(t)} of the column with a formula; the values last stored were used.`,
      'Nothing to do, if the workbook was saved after the last change.',
    ),
  'column.dates_from_numbers': (t) =>
    say(
      `${cells(t)} with a number such as ${t.text('value')} where a day is asked; it was read as ${t.text('likely')}, counted from ${t.text('system')}.`,
      'Check one or two of them, and give the column a date format.',
    ),
  'column.time_left_out': (t) =>
    say(
      `${cells(t)} with a time of day beside the day, such as ${t.text('likely')}.`,
      'The day was used; nothing to do.',
    ),
  'column.date_order_taken': (t) =>
    say(
      `The days were read ${t.text('order') === 'dayFirst' ? 'day first' : 'month first'}, as "${t.text('proof')}" shows: ${name(t)} is ${t.text('likely')}.`,
      'Check one or two of them; dates as the spreadsheet keeps them leave no doubt.',
    ),
  'column.date_order_unknown': (t) =>
    say(
      `Nothing in the column shows whether the day or the month comes first: ${name(t)} is ${t.list('readings').join(' or ')}.`,
      'Say it with "eavewell columns", write the days year-month-day, or give the column a date format. None was used.',
    ),
  'column.dates_swapped': (t) =>
    say(
      `The column has texts such as ${name(t)} and dates up to the 12th only: a spreadsheet likely took day for month, and ${t.text('other')} may be ${t.list('readings')[1] ?? 'another day'}.`,
      'Copy the column again from where it came from, as text. None of its days was used.',
    ),
  'column.date_not_asked': (t) =>
    say(
      `${cells(t)} with a date where a name or id is asked; read as ${t.text('likely')}.`,
      'A spreadsheet may have made a date of an id such as MAR-1: write it again, as text.',
    ),
  'rainFile.rows_without_gauge': (t) =>
    say(
      `No gauge is called ${name(t)}; ${many(t, 'count', 'row of rain was', 'rows of rain were')} not used.`,
      meant(t, 'Add the gauge to the sheet gauges, or correct the id.'),
    ),
} satisfies Partial<Sentences>;

const cell = {
  'cell.formula_without_value': (t) =>
    say(`${name(t)} is a formula whose value was never stored.`, 'Open the workbook in the spreadsheet, and save it.'),
  'cell.formula_error': (t) => say(`The cell shows ${t.text('value')}.`, 'Mend its formula, or write the value.'),
  'cell.value_lost': () => say('The value of the cell is lost from the file.', 'Write it again.'),
  'cell.under_merge': (t) =>
    say(`${name(t)} is hidden under merged cells; it was not used.`, 'Part the cells, and keep what is right.'),
  'cell.date_swapped': (t) =>
    say(`${name(t)} may have its day and month swapped.`, 'See what is said of its column. It was not used.'),
} satisfies Partial<Sentences>;

/** One sentence for every fault that only a workbook can have. */
export const workbookProblemSentences: Sentences = { ...book, ...sheet, ...column, ...cell };
