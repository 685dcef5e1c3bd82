import type { Severity } from '@eavewell/engine';

/** What can be found in a workbook, beside the faults of any table. The place names workbook and sheet, with a `/` between. */
export const workbookProblems = {
  // The workbook as a whole. value: its name.
  'workbook.not_a_workbook': 'blocker', // found: what it seems to be
  'workbook.other_format': 'blocker', // found: the format
  'workbook.password': 'blocker',
  'workbook.cut_off': 'blocker',
  'workbook.damaged': 'blocker', // part, reason
  'workbook.over_limit': 'blocker', // limit: a name of workbookLimits; found, most
  'workbook.entry_unsafe': 'warning', // value: the name of the entry; count
  'workbook.macros': 'note',
  'workbook.other_workbooks': 'note', // count of links to other workbooks
  'workbook.already_there': 'blocker', // writing only
  // Writing a programme anew. value: the file or sheet.
  'carried.station_days': 'note', // a station file whose days were carried, without its flags
  'carried.table_left': 'blocker', // a table that only a folder can hold as it stands
  'carried.file_left': 'warning', // a file that only a folder can hold
  'carried.rows_left': 'warning', // count of rows of rain that name no gauge
  'carried.settings_left': 'blocker', // the settings could not be read
  'carried.older_file': 'warning', // a file that stood there before and would be read with the new ones
  // A sheet. value: its name.
  'sheet.missing': 'blocker', // expected: the sheet; columns: those it needs; likely: a sheet of nearly that name, or ''
  'sheet.unknown': 'note', // expected: the names of ours
  'sheet.misnamed': 'warning', // likely: the name of ours that was meant
  'sheet.matched': 'note', // expected: the sheet of ours it was accepted for
  'sheet.not_there': 'warning', // a sheet that was accepted and is no longer there; likely
  'sheet.twice': 'blocker', // count
  'sheet.unreadable': 'blocker', // reason
  'sheet.hidden': 'warning',
  'sheet.header_below': 'note', // value: the first of the title rows; headerRow; count of rows above
  'sheet.rows_hidden': 'note', // rows, columns: how many of each
  'sheet.merged': 'warning', // value: the range
  'sheet.merged_ids': 'blocker', // value: the range; count of rows whose site is not said; the place names the site likely meant; bears: what of it is in doubt
  'sheet.beside_table': 'warning', // value: the first such cell's content; count
  'rainFile.rows_without_gauge': 'warning', // value: the id in a sheet of all gauges; count of rows; likely
  // A column of a sheet. count of cells; value: the first of them.
  'column.formulas': 'note',
  'column.dates_from_numbers': 'warning', // likely: the day the first was read as; system: 1900 or 1904
  'column.time_left_out': 'note',
  'column.date_order_taken': 'warning', // order: day first or month first; proof: the value that shows it; likely: the first, read
  'column.date_order_unknown': 'blocker', // readings: both days
  'column.dates_swapped': 'blocker', // other: a date cell's day; readings: both days it could be
  'column.date_not_asked': 'warning', // a date in a column of ids or texts
  // A cell. value: what stands there.
  'cell.formula_without_value': 'blocker',
  'cell.formula_error': 'blocker',
  'cell.value_lost': 'blocker', // the file names a text or a kind it does not hold
  'cell.under_merge': 'warning', // a value that a merged cell hides
  'cell.date_swapped': 'blocker', // a date that a spreadsheet may have taken day for month
} as const satisfies Readonly<Record<string, Severity>>;

/** Why a cell of a workbook is not used whatever its column asks for. */
export type CellRefusal = 'cell.formula_without_value' | 'cell.formula_error' | 'cell.value_lost' | 'cell.date_swapped';
