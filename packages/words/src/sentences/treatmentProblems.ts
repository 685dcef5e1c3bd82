import type { treatmentProblems } from '@eavewell/engine';
import type { Told } from '../problems.ts';
import { amount, type Sentences, says } from './telling.ts';

const unit = (t: Told) => ({ unit: t.text('unit'), part: t.text('part') });
const flow = (t: Told, name: string) => amount(t, [name], 'L/h');
const pressure = (t: Told, name: string) => amount(t, [name], 'kPa');
const day = (t: Told, name: string) => t.numbers.date(t.text(name));
const ofDay = (t: Told) => ({ unit: t.text('unit'), day: day(t, 'day') });

/** What room treatment finds, in words. */
export const treatmentSentences: Sentences<keyof typeof treatmentProblems> = {
  'treatment.none': (t) => says(t, 'treatment.none'),
  'treatment.part_unknown': (t) => says(t, 'treatment.part_unknown', { ...unit(t), isNamed: t.text('isNamed') }),
  'treatment.flow_unknown': (t) => says(t, 'treatment.flow_unknown', unit(t)),
  'treatment.rating_differs': (t) =>
    says(t, 'treatment.rating_differs', {
      ...unit(t),
      rated: flow(t, 'rated_L_per_h'),
      byArea: flow(t, 'byArea_L_per_h'),
    }),
  'treatment.pressure_unknown': (t) =>
    says(t, 'treatment.pressure_unknown', { ...unit(t), isJudged: t.text('isJudged') }),
  'treatment.pressure_high': (t) =>
    says(t, 'treatment.pressure_high', {
      ...unit(t),
      drive: t.text('drive'),
      is: pressure(t, 'is_kPa'),
      most: pressure(t, 'most_kPa'),
    }),
  'treatment.lowest_flow_unknown': (t) => says(t, 'treatment.lowest_flow_unknown', unit(t)),
  'treatment.lowest_flow_high': (t) =>
    says(t, 'treatment.lowest_flow_high', {
      ...unit(t),
      lowest: flow(t, 'lowest_L_per_h'),
      clean: flow(t, 'clean_L_per_h'),
    }),
  'treatment.demand_unknown': (t) => says(t, 'treatment.demand_unknown'),
  'treatment.taps_unknown': (t) => says(t, 'treatment.taps_unknown'),
  'treatment.temperature': (t) => says(t, 'treatment.temperature', { value: amount(t, ['value'], 'C') }),
  'treatment.pump_unknown': (t) => says(t, 'treatment.pump_unknown', unit(t)),
  'treatment.backwash_unknown': (t) => says(t, 'treatment.backwash_unknown', unit(t)),
  'treatment.units_several': (t) => says(t, 'treatment.units_several', { count: t.count('count') }),
  'treatment.reading_not_used': (t) =>
    says(t, 'treatment.reading_not_used', { ...ofDay(t), reason: t.text('reason'), flow: flow(t, 'flow_L_per_h') }),
  'treatment.reading_early': (t) => says(t, 'treatment.reading_early', { ...ofDay(t), since: day(t, 'since') }),
  'treatment.test_not_used': (t) => says(t, 'treatment.test_not_used', { ...ofDay(t), since: day(t, 'since') }),
  'treatment.test_sees_little': (t) =>
    says(t, 'treatment.test_sees_little', {
      ...ofDay(t),
      pressure: pressure(t, 'pressure_kPa'),
      least: pressure(t, 'least_kPa'),
      sees: amount(t, ['sees_um'], 'um'),
      wanted: amount(t, ['wanted_um'], 'um'),
    }),
  'treatment.test_unit_unknown': (t) => says(t, 'treatment.test_unit_unknown', ofDay(t)),
  'treatment.test_volume_unknown': (t) => says(t, 'treatment.test_volume_unknown', ofDay(t)),
  'treatment.test_no_fall': (t) => says(t, 'treatment.test_no_fall', ofDay(t)),
  'treatment.test_fails': (t) =>
    says(t, 'treatment.test_fails', {
      ...ofDay(t),
      fall: amount(t, ['fall_kPa_per_min'], 'kPa/min'),
      limit: amount(t, ['limit_kPa_per_min'], 'kPa/min'),
      claimed: amount(t, ['claimed_log10'], 'log10'),
    }),
};
