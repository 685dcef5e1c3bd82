import type { treatmentProblems } from '@eavewell/engine';
import { type Sentences, says } from './telling.ts';

/** What room treatment finds, in words. */
export const treatmentSentences: Sentences<keyof typeof treatmentProblems> = {
  'treatment.none': (t) => says(t, 'treatment.none'),
  'treatment.part_unknown': (t) => says(t, 'treatment.part_unknown'),
  'treatment.flow_unknown': (t) => says(t, 'treatment.flow_unknown'),
  'treatment.rating_differs': (t) => says(t, 'treatment.rating_differs'),
  'treatment.pressure_unknown': (t) => says(t, 'treatment.pressure_unknown'),
  'treatment.pressure_high': (t) => says(t, 'treatment.pressure_high'),
  'treatment.lowest_flow_unknown': (t) => says(t, 'treatment.lowest_flow_unknown'),
  'treatment.lowest_flow_high': (t) => says(t, 'treatment.lowest_flow_high'),
  'treatment.demand_unknown': (t) => says(t, 'treatment.demand_unknown'),
  'treatment.taps_unknown': (t) => says(t, 'treatment.taps_unknown'),
  'treatment.temperature': (t) => says(t, 'treatment.temperature'),
  'treatment.pump_unknown': (t) => says(t, 'treatment.pump_unknown'),
  'treatment.backwash_unknown': (t) => says(t, 'treatment.backwash_unknown'),
  'treatment.units_several': (t) => says(t, 'treatment.units_several'),
  'treatment.reading_not_used': (t) => says(t, 'treatment.reading_not_used'),
  'treatment.reading_early': (t) => says(t, 'treatment.reading_early'),
  'treatment.test_sees_little': (t) => says(t, 'treatment.test_sees_little'),
  'treatment.test_not_used': (t) => says(t, 'treatment.test_not_used'),
};
