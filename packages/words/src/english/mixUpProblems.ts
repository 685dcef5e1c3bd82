import type { TableProblemCode } from '@eavewell/tables';
import type { ProblemSentence } from '../language.ts';
import type { Told } from '../problems.ts';

const say = (what: string, todo: string): ProblemSentence => ({ what, todo });

const unit = (t: Told): string => (t.has('unit') && t.text('unit') !== '(empty)' ? ` [${t.text('unit')}]` : '');

/** Good numbers in the wrong unit or place: what is likely meant is proposed, never taken. */
export const mixUpSentences = {
  'cell.other_unit': (t) =>
    say(
      `"${t.text('value')}" looks like ${t.text('other')}; the column is in ${t.has('unit') ? t.text('unit') : 'another unit'}.`,
      `Write ${t.text('likely')}${unit(t)} if that is meant. It was not used.`,
    ),
  'cell.percent_or_share': (t) =>
    say(
      `"${t.text('value')}" stands in a column in percent whose other values are above 1: it may be ${t.list('readings').join(' or ')}.`,
      'Write it in percent as the others. It was not used.',
    ),
  'cell.degrees_written': (t) =>
    say(
      `"${t.text('value')}" is written with degrees, minutes or a letter for the side of the world.`,
      `Write decimal degrees, south and west negative: ${t.text('likely')}. It was not used.`,
    ),
  'row.coordinates_swapped': (t) =>
    say(
      `Latitude and longitude look swapped: ${t.text('value')}.`,
      `Write ${t.text('likely')} if that is the place. Neither was used.`,
    ),
  'row.coordinates_far': (t) =>
    say(
      `The position ${t.text('value')} is far from the others; with latitude and longitude swapped it is near them.`,
      `Write ${t.text('likely')} if that is the place. It was used as it stands.`,
    ),
  'row.sides_in_feet': (t) =>
    say(
      `Length and width (${t.text('value')}) look like feet, beside a plan area of ${t.text('area_m2')} m².`,
      `Write ${t.text('likely')} m if that is meant. The area was used, not the sides.`,
    ),
  'row.area_in_square_feet': (t) =>
    say(
      `The plan area "${t.text('value')}" looks like square feet, beside length and width in m.`,
      `Write ${t.text('likely')} m² if that is meant. It was not used.`,
    ),
} satisfies Partial<Record<TableProblemCode, (told: Told) => ProblemSentence>>;
