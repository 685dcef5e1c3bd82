import type { TableProblemCode } from '@eavewell/tables';
import type { Told } from '../problems.ts';
import { bearing, part, quoted, type Sentences, says, saysOrMeant, wordFor, yes } from './telling.ts';

type WorkbookCode =
  | Extract<TableProblemCode, `workbook.${string}` | `sheet.${string}` | `carried.${string}`>
  | Exclude<Extract<TableProblemCode, `column.${string}`>, 'column.decimal_comma' | `column.hidden_${string}`>
  | 'rainFile.rows_without_gauge'
  | 'cell.formula_without_value'
  | 'cell.formula_error'
  | 'cell.value_lost'
  | 'cell.under_merge'
  | 'cell.date_swapped';

function overLimit(t: Told): string {
  const [found = '', most = ''] = ['found', 'most'].map((fact) => t.numbers.quantity(t.count(fact), 'number'));
  return wordFor(t, 'limit', t.text('limit'), { found, most }) ?? t.text('limit');
}

/** The columns a sheet cannot do without. */
const columnsAtLeast = (t: Told): string => {
  const columns = t.list('columns');
  return columns.length === 0 ? '' : part(t, 'columnsAtLeast', { columns: columns.join(', ') });
};

const book = {
  'workbook.not_a_workbook': (t) =>
    says(t, 'workbook.not_a_workbook', {
      value: quoted(t),
      kind: wordFor(t, 'fileKind', t.text('found')) ?? t.text('found'),
    }),
  'workbook.other_format': (t) =>
    says(t, 'workbook.other_format', {
      value: quoted(t),
      format: wordFor(t, 'fileKind', t.text('found')) ?? t.text('found'),
    }),
  'workbook.password': (t) => says(t, 'workbook.password', { value: quoted(t) }),
  'workbook.cut_off': (t) => says(t, 'workbook.cut_off', { value: quoted(t) }),
  'workbook.damaged': (t) => says(t, 'workbook.damaged', { value: quoted(t), reason: t.text('reason') }),
  'workbook.over_limit': (t) => says(t, 'workbook.over_limit', { value: quoted(t), overLimit: overLimit(t) }),
  'workbook.entry_unsafe': (t) => says(t, 'workbook.entry_unsafe', { count: t.count('count'), value: quoted(t) }),
  'workbook.macros': (t) => says(t, 'workbook.macros'),
  'workbook.other_workbooks': (t) => says(t, 'workbook.other_workbooks'),
  'workbook.already_there': (t) => says(t, 'workbook.already_there', { value: quoted(t) }),
  'carried.station_days': (t) => says(t, 'carried.station_days', { value: quoted(t) }),
  'carried.table_left': (t) => says(t, 'carried.table_left', { value: quoted(t) }),
  'carried.file_left': (t) => says(t, 'carried.file_left', { value: quoted(t) }),
  'carried.rows_left': (t) => says(t, 'carried.rows_left', { count: t.count('count'), value: quoted(t) }),
  'carried.older_file': (t) => says(t, 'carried.older_file', { value: quoted(t) }),
  'carried.settings_left': (t) => says(t, 'carried.settings_left', { value: quoted(t) }),
} satisfies Partial<Sentences<WorkbookCode>>;

const sheet = {
  'sheet.missing': (t) =>
    saysOrMeant(t, 'sheet.missing', { expected: t.text('expected'), columnsAtLeast: columnsAtLeast(t) }),
  'sheet.unknown': (t) => says(t, 'sheet.unknown', { value: quoted(t) }),
  'sheet.misnamed': (t) => says(t, 'sheet.misnamed', { value: quoted(t), likely: t.text('likely') }),
  'sheet.matched': (t) => says(t, 'sheet.matched', { value: quoted(t), expected: t.text('expected') }),
  'sheet.not_there': (t) => saysOrMeant(t, 'sheet.not_there', { value: quoted(t) }),
  'sheet.twice': (t) => says(t, 'sheet.twice', { count: t.count('count'), value: quoted(t) }),
  'sheet.unreadable': (t) => says(t, 'sheet.unreadable', { reason: t.text('reason') }),
  'sheet.hidden': (t) => says(t, 'sheet.hidden', { value: quoted(t) }),
  'sheet.header_below': (t) =>
    says(t, 'sheet.header_below', { headerRow: t.text('headerRow'), count: t.count('count'), value: quoted(t) }),
  'sheet.rows_hidden': (t) => says(t, 'sheet.rows_hidden', { rows: t.count('rows'), columns: t.count('columns') }),
  'sheet.merged': (t) => says(t, 'sheet.merged', { value: t.text('value') }),
  'sheet.merged_ids': (t) =>
    says(t, 'sheet.merged_ids', { value: t.text('value'), count: t.count('count'), ...bearing(t) }),
  'sheet.beside_table': (t) => says(t, 'sheet.beside_table', { count: t.count('count'), value: quoted(t) }),
} satisfies Partial<Sentences<WorkbookCode>>;

const column = {
  'column.formulas': (t) => says(t, 'column.formulas', { count: t.count('count') }),
  'column.dates_from_numbers': (t) =>
    says(t, 'column.dates_from_numbers', {
      count: t.count('count'),
      value: t.text('value'),
      likely: t.text('likely'),
      system: t.text('system'),
    }),
  'column.time_left_out': (t) => says(t, 'column.time_left_out', { count: t.count('count'), likely: t.text('likely') }),
  'column.date_order_taken': (t) =>
    says(t, 'column.date_order_taken', {
      isDayFirst: yes(t.text('order') === 'dayFirst'),
      proof: t.text('proof'),
      value: quoted(t),
      likely: t.text('likely'),
    }),
  'column.date_order_unknown': (t) =>
    says(t, 'column.date_order_unknown', { value: quoted(t), readings: t.either('readings') }),
  'column.dates_swapped': (t) =>
    says(t, 'column.dates_swapped', {
      value: quoted(t),
      other: t.text('other'),
      reading: t.list('readings')[1] ?? part(t, 'anotherDay'),
    }),
  'column.date_not_asked': (t) =>
    says(t, 'column.date_not_asked', { count: t.count('count'), likely: t.text('likely') }),
  'rainFile.rows_without_gauge': (t) =>
    saysOrMeant(t, 'rainFile.rows_without_gauge', { value: quoted(t), count: t.count('count') }),
} satisfies Partial<Sentences<WorkbookCode>>;

const cell = {
  'cell.formula_without_value': (t) => says(t, 'cell.formula_without_value', { value: quoted(t) }),
  'cell.formula_error': (t) => says(t, 'cell.formula_error', { value: t.text('value') }),
  'cell.value_lost': (t) => says(t, 'cell.value_lost'),
  'cell.under_merge': (t) => says(t, 'cell.under_merge', { value: quoted(t) }),
  'cell.date_swapped': (t) => says(t, 'cell.date_swapped', { value: quoted(t) }),
} satisfies Partial<Sentences<WorkbookCode>>;

/** One sentence for every fault that only a workbook can have. */
export const workbookProblemSentences: Sentences<WorkbookCode> = { ...book, ...sheet, ...column, ...cell };
