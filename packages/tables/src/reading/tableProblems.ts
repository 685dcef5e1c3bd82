import type { Facts } from '@eavewell/engine';
import { problemMaker } from '@eavewell/engine';
import { positionProblems } from './positionProblems.ts';
import { rolloutProblems } from './rolloutProblems.ts';
import { stationProblems } from './stationProblems.ts';
import { workbookProblems } from './workbookProblems.ts';

/**
 * Every fault the reader of a programme folder can find, with its severity. The facts of a problem name the value found
 * and what was expected; the comment beside a code names what else stands there. Sentences are in the words package.
 */
export const tableProblems = {
  // The folder. value: the path.
  'folder.missing': 'blocker',
  'folder.not_a_folder': 'blocker',
  'folder.unreadable': 'blocker', // reason
  'folder.not_empty': 'blocker', // writing only. count
  // A file as a whole. value: its name.
  'file.missing': 'blocker', // likely: a file there that is nearly it, or ''
  'file.empty': 'blocker',
  'file.no_rows': 'blocker', // a needed table with a header and nothing under it
  'file.no_rows_optional': 'note',
  'file.not_a_file': 'blocker',
  'file.unreadable': 'blocker', // reason
  'file.too_large': 'blocker', // size_MB, largest_MB
  'file.wrong_encoding': 'blocker', // encoding: what it seems to be
  'file.encoding_taken': 'warning', // encoding: what it was read as
  'file.separator': 'note', // value: semicolon or tab
  'file.cut_off': 'blocker', // value: the last line as it stands; cells, columns
  'file.no_last_line_end': 'warning',
  'file.outside': 'blocker',
  'file.unknown': 'note',
  // The first line. value: the column as written.
  'header.column_missing': 'blocker', // expected: the column; found: all columns there; likely: the column meant, or ''; named: its unit, where another
  'header.column_misspelt': 'blocker', // expected: the column meant; named: the unit in the header, where another
  'header.column_twice': 'blocker', // count
  'header.column_unknown': 'note',
  'header.column_unnamed': 'warning', // number of the column, counted from 1
  'header.columns_more': 'note', // count of further columns that are not known or have no name
  'header.hidden_ends': 'note', // points: the characters at its ends that cannot be seen
  // columns.json. value: as written.
  'columns.not_json': 'blocker', // what, line, column
  'columns.wrong_entry': 'blocker', // file, header: whose entry; expected
  'columns.unknown_file': 'warning', // likely
  'columns.unknown_column': 'blocker', // header; likely
  'columns.unknown_unit': 'blocker', // header, column, unit; units: those there are
  'columns.unit_in_header': 'blocker', // value: the column; header, found: the unit it names, unit; units: those it may be in
  'columns.two_for_one': 'blocker', // value: the column; headers
  'columns.header_absent': 'warning', // value: the header; likely
  'columns.used': 'note', // value: header → column (unit); count
  // A row.
  'row.key_twice': 'blocker', // value: the key; firstRow; the first is used; bears: what is in doubt (contract/bearing.ts)
  'row.twice_same': 'warning', // value: the key; firstRow
  'row.cells_missing': 'warning', // cells, columns; missing: their names
  'row.cells_too_many': 'blocker', // cells, columns
  'row.quote_broken': 'blocker', // value: the line
  'row.empty': 'note', // count, rows
  // A cell. value: the cell as written; column, kind, expected, unit.
  'cell.missing': 'blocker',
  'cell.not_a_number': 'blocker',
  'cell.not_finite': 'blocker',
  'cell.not_whole': 'blocker',
  'cell.decimal_comma': 'blocker', // likely: the number with a point
  'cell.comma_ambiguous': 'blocker', // readings: the two numbers it could be
  'cell.thousands': 'blocker', // likely
  'cell.unit_in_number': 'blocker', // number, found: what stands behind it; likely: what it is in the unit of the column
  'cell.out_of_range': 'blocker', // low, high as text
  'cell.other_unit': 'blocker', // other: the unit likely meant; likely: the number in the column's unit
  'cell.percent_or_share': 'blocker', // readings: as percent, and as a share
  'cell.degrees_written': 'blocker', // likely: decimal degrees
  'row.coordinates_swapped': 'blocker', // value: both as written; likely: both, the other way round or as they are near the others; empty where they are not
  'row.coordinates_far': 'warning', // value, likely as above; how: swapped, sign or both, what brings it near the others
  'row.sides_in_feet': 'warning', // value: length × width; likely: in m; area_m2
  'row.overflow_above_wall': 'warning', // value: the overflow; wall_m: the height of the tank; both are used
  'row.positive_over_portions': 'blocker', // value: how many turned; portions: how many there were
  'row.area_in_square_feet': 'blocker', // value: the area; likely: in m²
  'cell.unusual': 'warning', // low, high as text
  'cell.date_form': 'blocker', // readings: the ISO dates it could be
  'cell.date_not_real': 'blocker',
  'cell.date_serial': 'blocker', // readings: the date a spreadsheet means by it
  'cell.not_a_date': 'blocker',
  'cell.not_a_time': 'blocker',
  'cell.not_a_month_day': 'blocker', // likely: the day, month-day, or ''
  'cell.not_months': 'blocker',
  'cell.not_weekdays': 'blocker', // likely: the days, sat;sun, or ''
  'cell.not_a_choice': 'blocker', // choices, likely
  'cell.not_a_currency': 'blocker',
  'cell.unsafe_id': 'blocker',
  'cell.too_long': 'blocker', // length, longest
  'cell.control_characters': 'blocker', // points
  'cell.hidden_in_id': 'blocker', // points; likely: the id without them
  'cell.hidden_characters': 'blocker', // points; likely: the cell without them
  'cell.letters_lost': 'warning', // a text whose bytes are not UTF-8
  'cell.bytes_unreadable': 'blocker', // any other cell whose bytes are not UTF-8
  'column.decimal_comma': 'warning', // value: the first; count
  'column.hidden_ends': 'note', // value: the first; points, count; taken off
  'column.hidden_inside': 'note', // value: the first; points, count; kept in a text
  // Links between tables. value: the id named; likely: the nearest known id, or ''.
  'link.unknown_site': 'blocker',
  'link.unknown_gauge': 'blocker',
  'link.unknown_roof': 'blocker',
  'link.unknown_tank': 'blocker',
  'link.pipe_roof_unknown': 'blocker', // of a gutter or a downpipe
  'link.unknown_part': 'blocker',
  'link.part_not_tank': 'blocker', // kind
  'link.part_not_unit': 'blocker', // kind
  'link.unknown_unit': 'blocker',
  'link.unknown_test': 'blocker',
  'link.unknown_raw_source': 'blocker',
  'link.unknown_rule': 'warning',
  'link.condition_unusable': 'warning',
  'link.joined_to_itself': 'blocker',
  'link.unknown_calendar': 'blocker',
  'link.unknown_second_source': 'blocker',
  'link.unknown_near_source': 'warning',
  'link.near_source_in_use': 'note', // value: a source that the site names as in use too
  'link.periods_overlap': 'blocker', // value: the calendar; other: the row of the period it overlaps with
  'link.class_unused': 'note', // value: a class that no site has
  'link.not_checked': 'warning', // value: the table; expected: the table that could not be read; count of rows
  'link.ids_differ_by_case': 'warning', // value, other
  // Rain files.
  'rainFile.missing': 'blocker', // value: the file; a gauge has no rain
  'rainFile.without_gauge': 'warning', // value: the file; likely
  'rainFile.day_unreadable': 'warning', // value, reason: a cell code, readings
  'rainFile.value_unreadable': 'warning', // value, reason: a cell code
  'rainFile.missing_code': 'warning', // value: the code written for "not read"; count, lastRow
  'rainFile.trace': 'warning', // value; count, lastRow; a trace is not 0 until she says so
  'rainFile.more': 'warning', // value: a rainFile code; count of further rows; lastRow
  'rainFile.two_files': 'blocker', // value: the one; other: the other
  'rainFile.days_again': 'warning', // value: the day; count, lastRow: readings of days that stood before, left out
  'rainFile.not_listed': 'warning', // count, lastRow: rows not used beyond those listed
  ...stationProblems,
  ...workbookProblems,
  ...rolloutProblems,
  // settings.json. value: as written; key, expected, used: the value used instead.
  'settings.not_json': 'blocker', // what: the kind of fault; line, column; found
  'settings.key_twice': 'blocker', // key, line
  'settings.unknown_key': 'warning', // likely
  'settings.wrong_value': 'blocker',
  'settings.unusual': 'warning', // low, high as text
  // datapackage.json.
  'package.not_json': 'warning',
  'package.path_unsafe': 'blocker', // value: the path
  'package.file_absent': 'warning', // value: the path
  ...positionProblems,
} as const;

export type TableProblemCode = keyof typeof tableProblems;

/** Makes one of the reader's problems. */
export const tableProblem = problemMaker(tableProblems);

/** A fault found in a cell, before its place is known. */
export interface Fault {
  readonly code: TableProblemCode;
  readonly facts: Facts;
}

/** A cell or a whole row that was not used, as it was written. */
export interface NotUsed {
  readonly file: string;
  readonly row: number;
  /** Left out where the whole row was not used. */
  readonly column?: string;
  readonly value: string;
  readonly code: TableProblemCode;
  readonly cells: readonly string[];
}
