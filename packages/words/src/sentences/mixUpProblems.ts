import type { TableProblemCode } from '@eavewell/tables';
import { likelyOf, type Sentences, says, unitIn, yes } from './telling.ts';

/** Good numbers in the wrong unit or place: what is likely meant is proposed, never taken. */
export const mixUpSentences = {
  'cell.other_unit': (t) =>
    says(t, 'cell.other_unit', {
      value: t.text('value'),
      other: t.text('other'),
      hasUnit: yes(t.has('unit')),
      unit: t.text('unit'),
      likely: t.text('likely'),
      unit2: unitIn(t),
    }),
  'cell.percent_or_share': (t) =>
    says(t, 'cell.percent_or_share', { value: t.text('value'), readings: t.either('readings') }),
  'cell.degrees_written': (t) => says(t, 'cell.degrees_written', { value: t.text('value'), likely: t.text('likely') }),
  'row.coordinates_swapped': (t) =>
    says(t, 'row.coordinates_swapped', {
      ...{ value: t.text('value'), likely: likelyOf(t) ?? '', hasLikely: yes(likelyOf(t)) },
    }),
  'row.coordinates_far': (t) =>
    says(t, 'row.coordinates_far', { value: t.text('value'), likely: t.text('likely'), how: t.text('how') }),
  'row.sides_in_feet': (t) =>
    says(t, 'row.sides_in_feet', { value: t.text('value'), area: t.text('area_m2'), likely: t.text('likely') }),
  'row.overflow_above_wall': (t) =>
    says(t, 'row.overflow_above_wall', { value: t.text('value'), wall: t.text('wall_m') }),
  'row.positive_over_portions': (t) =>
    says(t, 'row.positive_over_portions', { value: t.text('value'), portions: t.text('portions') }),
  'row.area_in_square_feet': (t) =>
    says(t, 'row.area_in_square_feet', { value: t.text('value'), likely: t.text('likely') }),
} satisfies Partial<Sentences<TableProblemCode>>;
