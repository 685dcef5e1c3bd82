import type { TableProblemCode } from '@eavewell/tables';
import type { Told } from '../problems.ts';
import { calendarSentences } from './calendarProblems.ts';
import { columnSentences } from './columnProblems.ts';
import { expectedIn } from './expected.ts';
import { mixUpSentences } from './mixUpProblems.ts';
import { positionProblemSentences } from './positionProblems.ts';
import { rolloutTableSentences } from './rolloutTableProblems.ts';
import { stationProblemSentences } from './stationProblems.ts';
import { bearing, likelyOf, quoted, type Sentences, says, saysOrMeant, unitAsked, unitIn, yes } from './telling.ts';
import { workbookProblemSentences } from './workbookProblems.ts';

/** A file that is there and is nearly the one sought; empty where there is none. */
const near = (t: Told): string => likelyOf(t) ?? '';

const folder = {
  'folder.missing': (t) => says(t, 'folder.missing', { value: quoted(t) }),
  'folder.not_a_folder': (t) => says(t, 'folder.not_a_folder', { value: quoted(t) }),
  'folder.unreadable': (t) => says(t, 'folder.unreadable', { value: quoted(t), reason: t.text('reason') }),
  'folder.not_empty': (t) => says(t, 'folder.not_empty', { value: quoted(t) }),
} satisfies Partial<Sentences<TableProblemCode>>;

const file = {
  'file.missing': (t) =>
    says(t, 'file.missing', {
      value: quoted(t),
      hasNear: yes(near(t) !== ''),
      near: near(t),
      isCsv: yes(near(t).toLowerCase().endsWith('.csv')),
      plain: t.text('value'),
    }),
  'file.empty': (t) => says(t, 'file.empty', { value: quoted(t) }),
  'file.no_rows': (t) => says(t, 'file.no_rows', { value: quoted(t) }),
  'file.no_rows_optional': (t) => says(t, 'file.no_rows_optional', { value: quoted(t) }),
  'file.not_a_file': (t) => says(t, 'file.not_a_file', { value: quoted(t) }),
  'file.unreadable': (t) => says(t, 'file.unreadable', { value: quoted(t), reason: t.text('reason') }),
  'file.too_large': (t) =>
    says(t, 'file.too_large', { value: quoted(t), size: t.text('size_MB'), largest: t.text('largest_MB') }),
  'file.wrong_encoding': (t) => says(t, 'file.wrong_encoding', { value: quoted(t), encoding: t.text('encoding') }),
  'file.encoding_taken': (t) => says(t, 'file.encoding_taken', { value: quoted(t), encoding: t.text('encoding') }),
  'file.separator': (t) => says(t, 'file.separator', { value: t.text('value') }),
  'file.cut_off': (t) => says(t, 'file.cut_off', { value: quoted(t) }),
  'file.no_last_line_end': (t) => says(t, 'file.no_last_line_end'),
  'file.outside': (t) => says(t, 'file.outside', { value: quoted(t) }),
  'file.unknown': (t) => says(t, 'file.unknown', { value: quoted(t) }),
} satisfies Partial<Sentences<TableProblemCode>>;

const row = {
  'row.key_twice': (t) => says(t, 'row.key_twice', { value: quoted(t), firstRow: t.text('firstRow'), ...bearing(t) }),
  'row.twice_same': (t) => says(t, 'row.twice_same', { value: quoted(t), firstRow: t.text('firstRow') }),
  'row.cells_missing': (t) =>
    says(t, 'row.cells_missing', { cells: t.count('cells'), columns: t.text('columns'), missing: t.text('missing') }),
  'row.cells_too_many': (t) => says(t, 'row.cells_too_many', { cells: t.count('cells'), columns: t.text('columns') }),
  'row.quote_broken': (t) => says(t, 'row.quote_broken', { value: quoted(t) }),
  'row.empty': (t) => says(t, 'row.empty', { count: t.count('count') }),
} satisfies Partial<Sentences<TableProblemCode>>;

const number = {
  'cell.missing': (t) => says(t, 'cell.missing', { expected: expectedIn(t) }),
  'cell.not_a_number': (t) => says(t, 'cell.not_a_number', { value: quoted(t), unit: unitAsked(t) }),
  'cell.not_finite': (t) => says(t, 'cell.not_finite', { value: quoted(t), unit: unitAsked(t) }),
  'cell.not_whole': (t) => says(t, 'cell.not_whole', { value: quoted(t), unit: unitAsked(t) }),
  'cell.decimal_comma': (t) =>
    says(t, 'cell.decimal_comma', { value: quoted(t), hasLikely: yes(t.has('likely')), likely: t.text('likely') }),
  'cell.comma_ambiguous': (t) => says(t, 'cell.comma_ambiguous', { value: quoted(t), readings: t.either('readings') }),
  'cell.thousands': (t) =>
    says(t, 'cell.thousands', { value: quoted(t), hasLikely: yes(t.has('likely')), likely: t.text('likely') }),
  'cell.unit_in_number': (t) =>
    t.has('likely')
      ? says(t, 'cell.unit_in_number.converted', {
          value: quoted(t),
          found: t.text('found'),
          likely: t.text('likely'),
          unit: unitIn(t),
        })
      : says(t, 'cell.unit_in_number', { value: quoted(t), found: t.text('found'), unit: unitAsked(t) }),
  'cell.out_of_range': (t) =>
    says(t, 'cell.out_of_range', { value: quoted(t), low: t.text('low'), high: t.text('high'), unit: unitIn(t) }),
  'cell.unusual': (t) =>
    says(t, 'cell.unusual', { value: quoted(t), low: t.text('low'), high: t.text('high'), unit: unitIn(t) }),
  'column.decimal_comma': (t) => says(t, 'column.decimal_comma', { value: quoted(t) }),
} satisfies Partial<Sentences<TableProblemCode>>;

const cell = {
  'cell.date_form': (t) =>
    says(t, 'cell.date_form', {
      value: quoted(t),
      several: yes(t.list('readings').length > 1),
      hasReadings: yes(t.list('readings').length > 0),
      readings: t.either('readings'),
    }),
  'cell.date_not_real': (t) => says(t, 'cell.date_not_real', { value: quoted(t) }),
  'cell.date_serial': (t) =>
    says(t, 'cell.date_serial', {
      value: quoted(t),
      hasReadings: yes(t.list('readings').length > 0),
      readings: t.either('readings'),
    }),
  'cell.not_a_date': (t) => says(t, 'cell.not_a_date', { value: quoted(t) }),
  'cell.not_a_time': (t) => says(t, 'cell.not_a_time', { value: quoted(t) }),
  'cell.not_a_choice': (t) =>
    saysOrMeant(t, 'cell.not_a_choice', {
      value: quoted(t),
      choices: t.has('choices') ? t.text('choices') : expectedIn(t),
    }),
  'cell.not_a_currency': (t) => says(t, 'cell.not_a_currency', { value: quoted(t) }),
  'cell.unsafe_id': (t) => says(t, 'cell.unsafe_id', { value: quoted(t) }),
  'cell.too_long': (t) => says(t, 'cell.too_long', { length: t.text('length'), longest: t.text('longest') }),
  'cell.letters_lost': (t) => says(t, 'cell.letters_lost', { value: quoted(t) }),
  'cell.bytes_unreadable': (t) => says(t, 'cell.bytes_unreadable', { value: quoted(t) }),
} satisfies Partial<Sentences<TableProblemCode>>;

const link = {
  'link.unknown_site': (t) => saysOrMeant(t, 'link.unknown_site', { value: quoted(t) }),
  'link.unknown_gauge': (t) => saysOrMeant(t, 'link.unknown_gauge', { value: quoted(t) }),
  'link.unknown_roof': (t) => saysOrMeant(t, 'link.unknown_roof', { value: quoted(t) }),
  'link.pipe_roof_unknown': (t) => saysOrMeant(t, 'link.pipe_roof_unknown', { value: quoted(t) }),
  'link.unknown_tank': (t) => saysOrMeant(t, 'link.unknown_tank', { value: quoted(t) }),
  'link.unknown_part': (t) => saysOrMeant(t, 'link.unknown_part', { value: quoted(t) }),
  'link.part_not_unit': (t) => says(t, 'link.part_not_unit', { value: quoted(t), kind: t.text('kind') }),
  'link.unknown_unit': (t) => saysOrMeant(t, 'link.unknown_unit', { value: quoted(t) }),
  'link.unknown_test': (t) => saysOrMeant(t, 'link.unknown_test', { value: quoted(t) }),
  'link.unknown_raw_source': (t) => saysOrMeant(t, 'link.unknown_raw_source', { value: quoted(t) }),
  'link.unknown_rule': (t) => saysOrMeant(t, 'link.unknown_rule', { value: quoted(t) }),
  'link.condition_unusable': (t) =>
    says(t, 'link.condition_unusable', { value: quoted(t), field: t.text('field'), test: t.text('test') }),
  'link.part_not_tank': (t) => says(t, 'link.part_not_tank', { value: quoted(t), kind: t.text('kind') }),
  'link.joined_to_itself': (t) => says(t, 'link.joined_to_itself', { value: quoted(t) }),
  'link.not_checked': (t) => says(t, 'link.not_checked', { value: t.text('value'), expected: t.text('expected') }),
  'link.ids_differ_by_case': (t) => says(t, 'link.ids_differ_by_case', { value: quoted(t), other: t.text('other') }),
} satisfies Partial<Sentences<TableProblemCode>>;

const other = {
  'rainFile.missing': (t) =>
    says(t, 'rainFile.missing', {
      value: quoted(t),
      hasNear: yes(near(t) !== ''),
      near: near(t),
      plain: t.text('value'),
    }),
  'rainFile.without_gauge': (t) => saysOrMeant(t, 'rainFile.without_gauge', { value: quoted(t) }),
  'rainFile.day_unreadable': (t) =>
    says(t, 'rainFile.day_unreadable', {
      value: quoted(t),
      hasReadings: yes(t.list('readings').length > 0),
      readings: t.either('readings'),
    }),
  'rainFile.value_unreadable': (t) => says(t, 'rainFile.value_unreadable', { value: quoted(t) }),
  'rainFile.missing_code': (t) => says(t, 'rainFile.missing_code', { value: quoted(t), count: t.count('count') }),
  'rainFile.trace': (t) => says(t, 'rainFile.trace', { value: quoted(t), count: t.count('count') }),
  'rainFile.more': (t) => says(t, 'rainFile.more', { count: t.count('count'), lastRow: t.text('lastRow') }),
  'rainFile.two_files': (t) => says(t, 'rainFile.two_files', { value: quoted(t), other: t.text('other') }),
  'settings.unknown_key': (t) => saysOrMeant(t, 'settings.unknown_key', { key: t.text('key') }),
  'settings.wrong_value': (t) =>
    t.text('key') === t.say('problems.part.empty')
      ? says(t, 'settings.wrong_value', { value: t.text('value') })
      : says(t, 'settings.wrong_value.otherwise', {
          key: t.text('key'),
          value: t.text('value'),
          used: t.text('used'),
          expected: expectedIn(t),
        }),
  'settings.unusual': (t) =>
    says(t, 'settings.unusual', {
      key: t.text('key'),
      value: t.text('value'),
      low: t.text('low'),
      high: t.text('high'),
    }),
  'package.not_json': (t) => says(t, 'package.not_json'),
  'package.path_unsafe': (t) => says(t, 'package.path_unsafe', { value: quoted(t) }),
  'package.file_absent': (t) => says(t, 'package.file_absent', { value: quoted(t) }),
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
  ...rolloutTableSentences,
};
